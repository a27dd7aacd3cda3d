/** The sheet of the rack in German. */
import type { RackWords } from './rack.js';

const staves = (count: number): string => (count === 1 ? '1 Daube' : `${count} Dauben`);

export const rackGerman: RackWords = {
  title: 'Daubenstapel',
  handle: (count) => (count === 0 ? 'Daubenstapel' : `Stapel: ${staves(count)}`),
  width: (unit) => `Breite, ${unit}`,
  mark: 'Zeichen',
  add: 'Nächste',
  added: (mark, width, count) => `${mark}: ${width}. ${staves(count)} im Stapel.`,
  noStave: 'ist keine Daubenbreite: 10 bis 400 mm gelten.',
  list: 'Dauben im Stapel',
  open: 'Liste öffnen (CSV)',
  save: 'Liste sichern (CSV)',
  clear: 'Stapel leeren',
  bringBack: 'Zurückholen',
  bung: 'Spund',
  bungOf: (mark) => `Daube ${mark} kann Spunddaube sein`,
  remove: (mark) => `Daube ${mark} wegnehmen`,
  nothingTaken: 'Aus dieser Liste wurde nichts übernommen. Was an ihr nicht stimmt:',
  line: (line) => `Zeile ${line}:`,
  faults: {
    empty: () =>
      'Die Liste ist leer. Sie braucht eine Kopfzeile mit mark und width, dann eine Zeile je Daube.',
    'quote-open': () => 'Ein Anführungszeichen wird nie geschlossen.',
    'quote-followed': () => 'Nach einem schließenden Anführungszeichen folgt Text.',
    'heading-missing': (found) => `Die Kopfzeile nennt keine Spalte „${found}“.`,
    'heading-doubled': (found) => `Die Spalte „${found}“ ist doppelt.`,
    'heading-unknown': (found) => `Die Spalte „${found}“ wird nicht gelesen.`,
    'fields-extra': (found) =>
      `„${found}“ steht hinter der letzten Spalte. Ein Dezimalkomma braucht Anführungszeichen, oder Strichpunkte zwischen den Spalten.`,
    'mark-missing': () => 'Diese Daube hat kein Zeichen.',
    'mark-unprintable': () => 'Im Zeichen steht etwas, das sich nicht drucken lässt.',
    'mark-doubled': (found, line) => `Das Zeichen „${found}“ steht schon in Zeile ${line}.`,
    'width-missing': () => 'Diese Daube hat keine Breite.',
    'length-unreadable': (found) =>
      `„${found}“ ist keine Länge. Zu schreiben: 71.5, 71,5 oder 2 13/16 in.`,
    'width-absurd': (found) => `${found} ist keine Daubenbreite: 10 bis 400 mm gelten.`,
    'length-absurd': (found) => `${found} ist keine Länge oder Dicke einer Daube.`,
    'unit-mistaken': (found, heading) =>
      `„${found}“ und fast alles in dieser Spalte ist in einer anderen Einheit: „${heading}“ darüber schreiben, ebenso bei anderen in dieser Einheit.`,
    'readings-apart': (found, mm) =>
      `Die Ablesungen ${found} liegen ${mm} mm auseinander; ihr Mittel gilt. Noch einmal messen?`,
    'bung-unreadable': (found) => `„${found}“ ist weder yes noch no.`,
  },
  choose: 'Sätze wählen',
  stop: 'Anhalten, das Beste bisher nehmen',
  vessels: 'Wie viele Gefäße',
  asMany: 'so viele der Stapel hergibt',
  measuredAs: 'Die Breiten sind gemessen',
  measured: {
    blank: 'über die flache Seite, ungerundet',
    backed: 'von Ecke zu Ecke, nach dem Runden',
  },
  more: 'Wie genau, wie viele Dauben, Hobeln, Spunddaube',
  count: 'Dauben je Gefäß, etwa 25-30',
  tolerance: (unit) => `Durchmesser darf abweichen um, ${unit}`,
  plane: (unit) => `Höchstens abzuhobeln je Satz, ${unit}`,
  bungWidth: (unit) => `Spunddaube mindestens, ${unit}`,
  noBung: 'keine Spunddaube nötig',
  problems: {
    'no-vessels': 'Eine ganze Zahl über 0 schreiben.',
    'no-count': 'Eine Zahl schreiben, oder zwei wie 25-30, ab 3.',
  },
  searching: 'Es wird gewählt …',
  progress: ({ stage, done, of }) =>
    stage === 'choosing'
      ? `Wählen: bisher schließen sich ${done} von ${of} Sätzen.`
      : `Dauben ordnen: ${done} von ${of} Sätzen.`,
  failed: 'Die Suche brach ab. Bitte noch einmal, mit weniger Dauben.',
  wrong: {
    diameter: (found) => `Bei ${found} mm Durchmesser schließt sich kein Ring.`,
    vessels: (found) => `${found} ist keine Zahl von Gefäßen.`,
    'count-whole': (found) => `${found} ist keine ganze Zahl von Dauben.`,
    'count-few': (found, allowed) => `${found} Dauben: möglich sind ${allowed}.`,
    'count-order': (found) => `In ${found} steht die größere Zahl vorn.`,
    tolerance: (found, allowed) => `${found} mm Abweichung: möglich sind ${allowed} mm.`,
    plane: (found, allowed) => `${found} mm Hobeln: möglich sind ${allowed} mm.`,
    bung: (found, allowed) => `Spunddaube von ${found} mm: sie muss ${allowed} mm haben.`,
    'standing-unknown': (found) => `Im Stapel ist keine Daube ${found}.`,
    'standing-doubled': (found) => `Daube ${found} ist doppelt.`,
    'standing-many': (found, allowed) =>
      `${found} Dauben stehen: ein Gefäß darf höchstens ${allowed} haben.`,
  },
  sets: 'Gewählte Sätze',
  set: (number) => `Satz ${number}`,
  found: (sets) => (sets === 1 ? '1 Satz schließt sich.' : `${sets} Sätze schließen sich.`),
  proven: (bound) => `Mehr als ${bound} gibt kein Verfahren her.`,
  bound: (bound) => `Mehr als ${bound} sind ausgeschlossen.`,
  reasons: {
    wood: (girth) => `Für einen weiteren fehlen dem Stapel ${girth} Umfang.`,
    counts: () => 'So viele Dauben dieser Breiten ergeben den Umfang nicht.',
    noBung: (_, width) =>
      `Keine Daube am Stapel kann den Spund aufnehmen: keine, die dafür frei ist, ist mindestens ${width} breit.`,
    bung: () => 'Für einen weiteren fehlt die Spunddaube.',
    widths: () => 'Für einen weiteren gehen diese Breiten nicht genau genug auf.',
    search: () => 'Ein weiterer fand sich nicht, ausgeschlossen ist er nicht.',
    stopped: () => 'Die Suche wurde angehalten; das ist das Beste bisher.',
    standing: () => 'Die stehenden Dauben lassen sich nicht ergänzen.',
  },
  help: (count, from, to) =>
    `${staves(count)} von ${from === to ? from : `${from} bis ${to}`} ergäben einen Satz mehr.`,
  closes: (diameter, count, laid) =>
    `Schließt sich bei ${diameter}. ${staves(count)}, Kante an Kante ${laid}.`,
  standing: (done, of) => (done === of ? 'Alles steht.' : `Gesetzt: ${done} von ${of}.`),
  stands: (mark) => `Daube ${mark} ist gesetzt`,
  left: (count) => `Im Stapel bleiben ${staves(count)}:`,
  headings: (unit) => [
    ...['gesetzt', 'Platz', 'Zeichen', `Breite, ${unit}`],
    ...[`abhobeln, ${unit}`, `bis hierher, ${unit}`],
  ],
  caution:
    'Noch nicht gehaltene Dauben können fallen: mit einem Helfer oder einem zweiten Reif arbeiten, Finger aus den Fugen, wenn der Reif getrieben wird.',
  draw: 'Das Gefäß dieses Satzes zeichnen',
  begun: 'Dauben, die schon stehen, in ihrer Folge',
  begunHint: 'Sie bleiben beisammen, im ersten Satz. Oder in der Liste „steht“ antippen.',
  standsNow: 'steht',
  standsNowOf: (mark) => `Daube ${mark} steht schon`,
  enough: (count, fewest, vessels) =>
    `Im Stapel sind ${staves(count)}: ab ${fewest} je Gefäß reichen sie für höchstens ${vessels}.`,
  broken: {
    hint: 'Eine Daube ist gebrochen? Ihr Zeichen antippen.',
    ask: (mark) => `${mark}: gebrochen, was tritt an ihre Stelle?`,
    about: (mark, place, of, width) =>
      `Gebrochen: ${mark}, Platz ${place} von ${of}, ${width} breit.`,
    bungStave: 'Sie ist die Spunddaube; was an ihre Stelle tritt, muss es auch sein.',
    none: 'Kein Ersatz im Stapel tritt an ihre Stelle.',
    take: (mark) => `${mark} nehmen`,
    plane: (off) => `${off} abhobeln`,
    asItIs: 'wie sie ist',
    closes: (diameter) => `der Ring schließt sich bei ${diameter}`,
    cut: (width, from, to) =>
      `Oder eine von ${width} Breite schneiden; ${from} bis ${to} schließen genau genug.`,
    leaves: (mark) => `Wird eine genommen, verlässt ${mark} den Stapel.`,
    taken: (gone, mark) => `${mark} steht nun für ${gone}, die den Stapel verlassen hat.`,
  },
  files: 'Dateien dieses Satzes (Zip)',
  makingFiles: 'Seine Dauben werden gezeichnet …',
  noVessel: 'Dieser Satz ergibt kein Gefäß, also auch keine Dateien.',
  offTheRack: 'Diese Dauben aus dem Stapel nehmen',
  forget: 'Diese Sätze weglegen',
};
