/** What the pictures of the whole vessel say: section, plan of the head, the ring before bending. In German. */
import { germanHoop } from '../../hoop-names.js';
import type { sectionWords } from './section.en.js';

const picture = (scale: string): string =>
  `Ein Bild im Maßstab ${scale}, in jedem Format, auch DXF. Maße aus seinen Zahlen oder aus den Zeichnungen in wahrer Größe nehmen, nie daraus abmessen.`;

export const sectionWordsGerman: typeof sectionWords = {
  title: 'Schnitt und Ansicht des Ganzen',
  bung: 'Spundloch',
  diameter: (size) => `⌀ ${size}`,
  hoop: (item, offset) => `${item}: ${offset}`,
  notes: {
    picture,
    views: (stave) =>
      `Links der Achse: von außen gesehen. Rechts: längs der Achse durch die Mitte ${stave} geschnitten, und quer zu den Stücken jedes Bodens.`,
    bungStave: 'der Spunddaube',
    anyStave: 'einer Daube',
    lines:
      'Breite Linien: durchgeschnitten. Schmalere Linien: sichtbare Kanten. Schraffiert: Holz.',
    items:
      'Die Nummern sind die der Liste. Neben einem Reif steht der Abstand seiner nahen Kante von seinem Ende.',
    heights: 'Zwischen den Böden: die Höhe innen, von Seite zu Seite.',
    depth: 'Innen: die Tiefe vom oberen Rand bis auf den Boden.',
  },
  parts: {
    title: 'Teile',
    headings: (unit) => ['Nr.', 'Teil', 'Anzahl', `Maße ${unit}`],
    stave: 'Daube, gesägt: Länge × Breite × Dicke',
    boards: (numbers) => `Stück ${numbers}`,
    dowel: 'Dübel',
    hoop: (name) => `${germanHoop(name)}, Band vor dem Vernieten`,
    bung: 'Spundloch',
    to: (from, to) => `${from} bis ${to}`,
  },
  plan: {
    title: {
      both: 'Draufsicht des Bodens',
      top: 'Draufsicht des oberen Bodens',
      bottom: 'Draufsicht des unteren Bodens',
    },
    board: (number, width) => `${number}: ${width}`,
    brand: (width, height) => `Brandzeichen, ${width} × ${height}`,
    serial: (width, height) => `Seriennummer, ${width} × ${height}`,
    notes: {
      seen: 'Von außen gesehen. Äußerer Kreis: das Ende der Dauben; gestrichelter Kreis: der Rand des Bodens in seiner Gargel; kleine gestrichelte Rechtecke: Dübel.',
      places: 'Schmale Rechtecke: Plätze für ein Brandzeichen und eine Seriennummer.',
      boards: 'Neben jedem Stück: seine Nummer, von unten gezählt, und seine Breite.',
      brand:
        'Zeichen und Nummer bleiben von den Fugen weg. Ein Brenneisen ist heiß, sein Rauch ungesund: Handschuhe, frische Luft, Wasser bereit; örtliche Vorschriften befolgen.',
    },
  },
  raising: {
    title: 'Die gesetzten Dauben vor dem Biegen',
    titleStraight: 'Die Dauben in ihrem Setzreif',
    hoop: (diameter) => `Setzreif, innen ⌀ ${diameter}`,
    gap: (gap) => `Fugen klaffen ${gap}`,
    closed: 'Fugen geschlossen',
    notes: {
      picture,
      cask: 'Gerade Dauben stehen im Setzreif, dort mit geschlossenen Fugen, die Außenseiten noch nicht gerundet; darunter spreizen sie sich, so gerade, wie sie gesägt sind.',
      tub: 'Die Dauben eines geraden Gefäßes werden nicht gebogen: sie stehen im Setzreif, wie sie bleiben, mit überall geschlossenen Fugen.',
      lean: (angle, per100) =>
        `Jede Daube neigt sich um ${angle} aus dem Lot: ihr Ende wandert auf je 100 ihrer Länge um ${per100} hinaus.`,
      why: 'Bei weniger Neigung klemmten die Fugen unter dem Reif, bevor sie sich in ihm schließen; ein weiterer Reif lässt sie offen.',
      measure:
        'Durchmesser sind von Außenseite zu gegenüberliegender Außenseite gemessen, Umfänge mit dem Band um die Kanten.',
      stand:
        'Mit einem Helfer oder einem zweiten Reif arbeiten: noch nicht gehaltene Dauben können fallen. Finger aus den Fugen, wenn der Reif getrieben wird.',
    },
    table: {
      title: 'Umfänge vor dem Biegen',
      headings: (unit) => [
        'Stelle',
        `vom gesetzten Ende, längs der Daube ${unit}`,
        `Durchmesser ${unit}`,
        `Umfang ${unit}`,
        `Breiten zusammen ${unit}`,
        `offen je Fuge ${unit}`,
      ],
      raised: 'gesetztes Ende',
      hoop: 'Setzreif',
      bilge: 'Bauch',
      middle: 'Mitte',
      free: 'freies Ende',
    },
  },
};
