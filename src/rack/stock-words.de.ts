import { decimalComma } from '../language.js';
import { ORDINARY_WIDTH } from './stock.js';
import type { StockWords } from './stock-words.js';

/** The headings of the list stay English in every language; in a sentence they are called by what they hold. */
const called = (heading: string): string =>
  heading === 'length' ? 'Länge' : heading === 'thickness' ? 'Dicke' : 'Breite';

export const german: StockWords = {
  severity: { error: 'Fehler', warning: 'Warnung' },
  sentences: {
    empty: () =>
      'Die Liste ist leer: Sie braucht eine Kopfzeile mit mark und width, dann eine Zeile für jede Daube.',
    'quote-open': () => 'Hier beginnt ein Anführungszeichen, das nie geschlossen wird.',
    'quote-followed': () =>
      'Nach einem schließenden Anführungszeichen folgt Text: Das ganze Feld in Anführungszeichen setzen und jedes darin verdoppeln.',
    'heading-missing': (_found, heading) => `Die erste Zeile nennt keine Spalte "${heading}".`,
    'heading-doubled': (_found, heading) =>
      `Die Spalte "${heading}" ist zweimal da: eine davon weglassen.`,
    'heading-unknown': (found) =>
      `Die Spalte "${found}" wird nicht gelesen. Bekannt sind: mark, width, length, thickness, bung, note.`,
    'fields-extra': (found, _heading, detail) =>
      `"${found}" steht hinter der letzten Spalte.` +
      (detail === ','
        ? ' Ein Dezimalkomma braucht Anführungszeichen oder Strichpunkte zwischen den Spalten.'
        : ''),
    'mark-missing': () => 'Diese Daube hat kein Zeichen (mark).',
    'mark-unprintable': () =>
      'Im Zeichen (mark) steht ein Zeilenumbruch oder etwas anderes, das sich nicht drucken lässt.',
    'mark-doubled': (found, _heading, detail) =>
      `Das Zeichen "${found}" steht schon in Zeile ${detail}: Jede Daube braucht ihr eigenes.`,
    'width-missing': () => 'Diese Daube hat keine Breite (width).',
    'length-unreadable': (found, heading, detail) =>
      `"${found}" ist keine ${readAs(heading)}. Richtig wäre ${detail === 'in' ? '2.8 oder 2 13/16' : '71,5 oder 71.5'}` +
      (heading === 'width' ? ', auch zwei Ablesungen mit einem Schrägstrich dazwischen' : '') +
      (detail === 'mm' ? `; für Zoll über die Spalte "${heading} (in)" schreiben.` : '.'),
    'width-absurd': (found) =>
      decimalComma(
        `Eine Breite von ${found} hat keine Daube: Genommen wird zwischen ${ORDINARY_WIDTH.least} und ${ORDINARY_WIDTH.most} mm.`,
      ),
    'length-absurd': (found, heading) =>
      decimalComma(`Eine ${readAs(heading)} von ${found} hat keine Daube.`),
    'unit-mistaken': (found, _heading, detail) => {
      const [read, meant] = detail.endsWith('(mm)')
        ? ['Zoll', 'Millimeter']
        : ['Millimeter', 'Zoll'];
      return (
        `"${found}" und fast alles in dieser Spalte wurde als ${read} gelesen, was keine Daube hat; als ${meant} ginge es an: ` +
        `über die Spalte "${detail}" schreiben, ebenso bei anderen Spalten in ${meant}.`
      );
    },
    'readings-apart': (found, _heading, detail) =>
      decimalComma(
        `Die beiden Ablesungen ${found} liegen ${detail} mm auseinander: diese Daube noch einmal messen? Es gilt ihr Mittel.`,
      ),
    'bung-unreadable': (found) => `"${found}" ist weder yes noch no.`,
  },
};

function readAs(heading: string): string {
  return `${called(heading)} (${heading})`;
}
