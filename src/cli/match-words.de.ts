/** What `match` answers, in German. */
import { decimalComma } from '../index.js';
import type { MatchWords } from './match-words.js';

const staves = (count: number): string => (count === 1 ? '1 Daube' : `${count} Dauben`);
const sets = (count: number): string => (count === 1 ? '1 Satz' : `${count} Sätze`);

export const matchWordsGerman: MatchWords = {
  typeset: decimalComma,
  found: (found, wanted, count) =>
    `${wanted === null ? sets(found) : `${found} von ${sets(wanted)}`} aus ${staves(count)}`,
  proven: (bound) => `mehr als ${bound} ergibt kein Verfahren`,
  bound: (bound) => `mehr als ${bound} sind ausgeschlossen`,
  best: 'erwiesen die beste Wahl',
  asked: (diameter, tolerance, count, plane, bung) =>
    `verlangt: ${diameter} auf ${tolerance}, ${count} Dauben, bis ${plane} Nachhobeln je Satz, ${bung}`,
  bungOf: (width) => `Spunddaube von mindestens ${width}`,
  noBung: 'keine Spunddaube',
  measured: {
    blank: 'Breiten gelten als über die flache Außenseite gemessen, vor dem Runden',
    backed: 'Breiten gelten als von Kante zu Kante gemessen, nach dem Runden',
  },
  set: (set) => `Satz ${set}`,
  names: {
    closes: 'schließt bei',
    staves: 'Dauben',
    bungStave: 'Spunddaube',
    order: 'Folge',
    large: 'wenn zu weit',
    small: 'wenn zu eng',
  },
  closes: (diameter, sure, off) => `${diameter} ± ${sure}, ${off} zur Vorgabe`,
  staves: (count, laid) => `${count}, Kante an Kante gelegt ${laid}`,
  bungStave: (mark, width) => `${mark}, ${width}`,
  order: (measure, parts) => `${measure}: ${parts}`,
  orderParts: {
    joints: (mm) => `Fugen weichen um ${mm} ab`,
    balance: (mm) => `Breiten überwiegen einseitig um ${mm}`,
    neighbours: (mm) => `Nachbarn der ersten um ${mm} unter dem Mittel`,
    pairs: (count) => `${count} schmale Paare`,
    inLine: (count) => `${count} in einer Linie mit Bodenfugen`,
  },
  cure: (takeOut, putIn, by) => `${takeOut} heraus, ${putIn} hinein: ${by}`,
  headings: (unit) => [
    'Platz',
    'Zeichen',
    `Breite ${unit}`,
    `abhobeln ${unit}`,
    `bis hierher ${unit}`,
    '',
  ],
  bungMark: 'Spund',
  legend: [
    'Neben dem Durchmesser: eine Standardabweichung, aus der Stufe, auf die die Breiten abgelesen sind. Folge: das Maß, weniger ist besser, und woraus es besteht.',
    'Wenn zu weit, wenn zu eng: ein Ersatz vom Stapel, der einem Ring hilft, der so schließt.',
  ],
  left: (count) => `Es bleiben am Stapel: ${staves(count)}`,
  leftMore: (count) => `und ${count} weitere`,
  unfit: {
    length: (count) => `zu kurz: ${staves(count)}`,
    thickness: (count) => `zu dünn für ihren eigenen Rohling: ${staves(count)}`,
    width: (count) => `zu breit für dieses Gefäß: ${staves(count)}`,
  },
  shortfall: (set, why) => `Kein Satz ${set}: ${why}.`,
  reasons: {
    wood: (girth) => `zu wenig Holz, dem Stapel fehlen ${girth} Umfang`,
    counts: () =>
      'die Anzahl reicht nicht hin, so viele Dauben dieser Breiten ergeben den Umfang nicht',
    noBung: (_, width) =>
      `keine Daube am Stapel kann den Spund aufnehmen: keine, die dafür frei ist, ist mindestens ${width} breit`,
    bung: () => 'es ist keine Spunddaube mehr dafür da',
    widths: () => 'die Breiten am Stapel gehen innerhalb der Toleranz nicht auf',
    search: () =>
      'keiner wurde gefunden, ausgeschlossen ist er nicht; ein anderer --seed findet ihn vielleicht',
    stopped: () => 'die Suche wurde angehalten',
    standing: () => 'die stehenden Dauben lassen sich nicht ergänzen',
  },
  help: (count, widths, set) => `${staves(count)} von ${widths} würden Satz ${set} ergeben.`,
  widths: (from, to) => `${from} bis ${to}`,
  interrupted: 'angehalten: das ist das Beste bis hierher',
  progress: {
    choosing: (done, of) => `Dauben werden gewählt: ${done} von ${sets(of)}`,
    ordering: (done, of) => `Ringe werden geordnet: ${done} von ${of}`,
  },
  wrote: (files, folder) => `${files} Dateien nach ${folder} geschrieben`,
  noPatterns: (first, command) =>
    `die Dauben von Satz ${first} an haben noch keine eigenen Muster; ${command}`,
  carry: (plan) => `mit an den Stapel nehmen: ${plan}, Plan und Liste`,
  list: {
    tooLarge: (kilobytes) => `ist zu groß: eine Stapelliste hat höchstens ${kilobytes} kB`,
    notText: 'ist keine Textdatei: eine Stapelliste ist CSV-Text',
    notUtf8: 'ist keine Textdatei in UTF-8: eine Stapelliste ist CSV-Text, als UTF-8 gespeichert',
  },
  swap: {
    broken: (mark, place, of, width) =>
      `gebrochen: ${mark}, Platz ${place} von ${of}, ${width} breit`,
    closes: (diameter) =>
      `der Ring schließt bei ${diameter}; dazu passen seine Böden und seine Reifen`,
    bungStave: 'sie ist die Spunddaube; was an ihre Stelle tritt, muss es auch sein',
    headings: (unit) => [
      'Zeichen',
      `Breite ${unit}`,
      `abhobeln ${unit}`,
      `Ring schließt bei ${unit}`,
    ],
    none: 'Kein Ersatz am Stapel tritt an ihre Stelle.',
    cut: (width, from, to) =>
      `Oder eine ${width} breit schneiden; ${from} bis ${to} schließen innerhalb der Toleranz.`,
  },
};
