/** Every word of the page that shows a vessel's patterns, in German. */
import type { IndexPageWords } from './index-page.words.js';

export const german: IndexPageWords = {
  language: 'de',
  intro:
    'Die Bilder auf dieser Seite sind klein und nicht maßstäblich. Arbeiten Sie nach den Dateien darunter.',
  noPicture: 'kein Bild: SVG war nicht verlangt',
  spec: 'Die Angaben, mit allen Vorgaben ausgeschrieben:',
  jobSheet: 'Der Werkzettel, Zahlen und Arbeitsschritte für die Werkbank:',
  formats: { svg: 'SVG, wahre Größe', dxf: 'DXF, Millimeter', pdf: 'PDF, zum Drucken' },
  sections: [
    {
      heading: 'Zum Drucken',
      lines: [
        'Die PDF in wahrer Größe drucken, 100 %, ohne „an Seite anpassen“.',
        'Das Quadrat von 100 mm und die Linie auf dem Blatt messen, bevor Sie schneiden; auch das zusammengefügte Muster messen.',
        'Stimmt das Quadrat nicht, neu zeichnen mit dem, was es maß: --printed 99.6x99.8.',
      ],
    },
    {
      heading: 'Zum Fräsen oder Sägen',
      lines: [
        'In DXF und SVG ist eine Einheit ein Millimeter. Nur die Ebene „outline“ wird durchgeschnitten.',
        'Fugenwinkel und Endschnitte verlangen, dass das Werkstück gedreht, das Werkzeug geneigt oder nachgehobelt wird; jede Zeichnung nennt die Winkel.',
        'Zuerst eines aus Abfallholz schneiden und messen.',
      ],
    },
    {
      heading: 'Vorsicht',
      lines: [
        'Abrichte, Säge, Fräse: Schutz angebracht, Schiebestock, auf Augen, Ohren und Staub achten; die Anleitung des Herstellers befolgen.',
        'Ausfeuern: im Freien oder unter einem Abzug, Wasser bereit, Handschuhe; keine Glut im Fass lassen; örtliche Brandvorschriften befolgen.',
        'Setzen und Biegen: heiße nasse Dauben und Reifen stehen unter Spannung; Gesicht und Finger aus ihrem Weg.',
        'Reifen: Stahlkanten sind scharf, und getriebene Reifen können springen; Handschuhe, Augen geschützt.',
        'Heben: ein volles Fass von 225 Litern wiegt über 250 kg; ein Hebezeug oder ein zweites Paar Hände benutzen.',
        'Gärende oder geschwefelte Gefäße: Gas kann geruchlos töten; nie den Kopf hineinstecken, den Raum lüften.',
        'Dichtheit mit Wasser prüfen, nie mit Druckluft.',
        'Holz, Metall und alles andere, was Speisen oder Getränke berührt: örtliche Lebensmittelvorschriften befolgen.',
      ],
    },
  ],
};
