/** Every word that sheets add to a drawing, in German; the title block's as in DIN EN ISO 7200 (from memory). */
import type { SheetWords } from './words.js';

export const german: SheetWords = {
  titleBlock: {
    owner: 'Gesetzlicher Eigentümer',
    number: 'Identifikationsnummer',
    date: 'Ausgabedatum',
    sheet: 'Blatt',
    title: 'Titel',
    approved: 'Genehmigende Person',
    creator: 'Ersteller',
    documentType: 'Dokumentart',
    pattern: 'Muster in wahrer Größe',
    picture: 'Bild im Maßstab',
    scale: 'Maßstab',
    units: 'Einheiten',
    unitNames: { mm: 'mm', in: 'in' },
    sheetOf: (sheet, sheets) => `${sheet} / ${sheets}`,
  },
  proof: {
    before: ['In wahrer Größe drucken, 100 %;', 'das Quadrat messen, bevor Sie schneiden.'],
    across: 'quer 100 mm',
    along: 'längs 100 mm',
    remedy:
      'Ist eine Seite nicht 100 mm lang, so schalten Sie „an Seite anpassen“ aus und drucken noch einmal. Ist sie es dann noch nicht, lassen Sie die Blätter mit dem Gemessenen neu zeichnen, quer und längs.',
    hundred: '100 mm',
    fourInches: '4 in',
  },
  cover: {
    subtitle: (tiles, paper, scale) => {
      const size = scale === '1:1' ? 'Wahre Größe' : `Maßstab ${scale}`;
      return tiles === 1
        ? `${size}, auf 1 Blatt ${paper}`
        : `${size}, gefügt aus ${tiles} Blättern ${paper}`;
    },
    paperNames: {
      a4: 'A4',
      a3: 'A3',
      a2: 'A2',
      a1: 'A1',
      a0: 'A0',
      letter: 'Letter',
      legal: 'Legal',
      tabloid: 'Tabloid',
      full: 'eigener Größe',
    },
    howToUse: 'Schritt für Schritt',
    steps: [
      '1. Das Quadrat messen, und die Linie am Fuß jedes Blattes.',
      '2. Jedes Blatt an den feinen Linien links und oben schneiden oder falten, wo es solche hat.',
      '3. So über seinen Nachbarn legen, dass die Kreuze und die Linien der Zeichnung sich decken.',
      '4. Eine Reihe von links nach rechts fügen, dann die Reihen von oben nach unten.',
      '5. Die Stöße verkleben, dann das Ganze mit den Zahlen des Stückes vergleichen.',
    ],
    single: [
      '1. Das Quadrat messen, und die Linie am Fuß des folgenden Blattes.',
      '2. Das Stück auf dem Papier mit seinen Zahlen vergleichen, bevor Holz geschnitten wird.',
    ],
    plan: 'Wo jedes Blatt liegt',
    planLeftOut: 'gestrichelt: nichts zu zeichnen, kein Blatt',
  },
  tile: {
    identification: (sheet, sheets, scale) => `Blatt ${sheet} von ${sheets}, Maßstab ${scale}`,
    cutHere: (neighbour) => `schneiden oder falten, über ${neighbour} legen`,
    covered: (neighbour) => `${neighbour} deckt diesen Streifen`,
  },
};
