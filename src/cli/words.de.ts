/** What the commands answer, in German. */
import { decimalComma, germanHoop } from '../index.js';
import { figureWordsGerman } from './figure-words.de.js';
import type { CliWords } from './words.js';

export const german: CliWords = {
  typeset: decimalComma,
  warning: 'Warnung',
  check: {
    good: 'lässt sich bauen',
    warned: (warnings) =>
      `lässt sich bauen, mit ${warnings} ${warnings === 1 ? 'Warnung' : 'Warnungen'}`,
  },
  draw: {
    wrote: (files) => `${files} Dateien geschrieben`,
    look: (page) => `zum Ansehen ${page} in einem Browser öffnen`,
    none: (file) => `${file}: dieses Gefäß hat keines dieser Stücke`,
  },
  give: {
    wrote: (file) => `${file} geschrieben; weiter mit: staveloft figures ${file}`,
    cannotBeBuilt: 'das lässt sich nicht bauen:',
    tryAgain: 'Diese Schlüssel in der Ausgangsdatei ändern, dann noch einmal versuchen.',
  },
  changes: {
    nothing: 'es ändert sich nichts',
    changed: 'geändert',
    titleStays: (title) => `der Titel bleibt: ${title}`,
    laid: (key) => `${key}, nebeneinandergelegt`,
    capacity: (from, to) => `Inhalt ${from} -> ${to}`,
  },
  ends: { top: 'oben', bottom: 'unten' },
  vessels: { cask: 'Fass', tub: 'gerades Gefäß' },
  hoopName: germanHoop,
  format: {
    note: { mm: 'Längen in mm', in: 'Längen in Zoll, das nächste 1/32 in Klammern' },
    per100: (slope) => `${slope} mm je 100 mm`,
    litres: (litres) => `${litres} Liter`,
    gallons: (gallons, litres) => `${gallons} US-Gallonen (${litres} Liter)`,
  },
  size: {
    round: (step) => `runde Maße in der Nähe, ganze ${step}, wo sie sich ändern dürfen`,
    headings: (unit, diameters) => [
      `Höhe ${unit}`,
      ...diameters.map((name) => `${name} ${unit}`),
      'Liter',
      'Abweichung',
    ],
    diameters: { cask: ['Bauch', 'Enden'], tub: ['oben', 'unten'] },
    unreachable: (keeping, litres, reach) =>
      `${litres} Liter sind nicht zu erreichen, wenn ${keeping} bleiben soll: ${reach}`,
    keeps: { proportions: 'das Verhältnis der Maße', heads: 'der Boden', height: 'die Höhe' },
    withLength: (kept) => `${kept} mit dieser Daubenlänge`,
    no: 'so lässt sich kein Gefäß machen',
    noNearer: (litres) => `näher als etwa ${litres} Liter kommt es nicht`,
  },
  recut: {
    head: 'Boden',
    outside: 'Außenseite der Angaben neben dem Holz',
    inside: 'Innenseite',
    atMost: (gap) => `höchstens ${gap}`,
    groove: {
      gone: (end) => `alte Gargel, ${end}: ist abgeschnitten`,
      same: (end) => `alte Gargel, ${end}: bleibt in Gebrauch`,
      beside: (end, fromEnd) =>
        `alte Gargel, ${end}: bleibt im Frosch, ihre Mitte ${fromEnd} vom neuen Ende: füllen, oder in die Glättung hobeln`,
      meets: (end, fromEnd) =>
        `alte Gargel, ${end}: liegt ${fromEnd} vom neuen Ende und läuft in die neue: mehr abschneiden, oder heads.croze.inset ändern`,
    },
  },
  dip: {
    postures: {
      lying: 'liegend, Spund oben; Höhe am Bauch, an einem Stab durch den Spund',
      standing: 'stehend; Höhe über der Innenseite des Bodens',
    },
    headings: (unit) => [`nasse Höhe ${unit}`, 'Liter'],
    gallons: 'US-Gallonen',
    oldRule: ['alte Regel, l', 'ihr Fehler, l'],
  },
  figures: figureWordsGerman,
  prove: {
    isFile: 'es ist eine Datei: den Ordner nennen, in den draw geschrieben hat',
    tooMany: (files) => `darin sind mehr als ${files} Dateien`,
    noFolder: 'einen solchen Ordner gibt es nicht',
    noSpec: (folder) => `${folder}: darin ist keine spec.yaml: das Gefäß neu zeichnen lassen`,
    noStaves: (picture) =>
      `${picture}: der Ordner wurde ohne Dauben gezeichnet, und sie bilden die Fugen`,
    noRing: (picture) =>
      `${picture} wurde nicht gezeichnet: diese Dateien ergeben keinen Kreis von Dauben`,
  },
  files: {
    cannotRead: (why) => `lässt sich nicht lesen: ${why}`,
    isFolder: 'es ist ein Ordner, keine Datei',
    tooLarge: (kilobytes) => `ist zu groß: Angaben zu einem Gefäß haben höchstens ${kilobytes} kB`,
    utf16: 'ist in UTF-16 geschrieben: als UTF-8 speichern',
    notText: 'ist keine Textdatei: Angaben zu einem Gefäß sind YAML-Text',
    notUtf8:
      'ist keine Textdatei in UTF-8: Angaben zu einem Gefäß sind YAML-Text, als UTF-8 gespeichert',
    stdinOnce: 'die Standardeingabe (-) kann nur für ein Gefäß stehen',
    nothingWritten: (why) => `nichts wurde geschrieben: ${why}`,
    folderInTheWay: (path) => `${path} ist ein Ordner`,
    there: (named, more, several) =>
      `${named}${more > 0 ? ` und ${more} weitere` : ''} ${several ? 'sind' : 'ist'} schon da; --replace überschreibt`,
    reasons: {
      ENOENT: 'eine solche Datei gibt es nicht',
      ENOTDIR: 'ein Teil des Pfades ist eine Datei, kein Ordner',
      EISDIR: 'es ist ein Ordner, keine Datei',
      EACCES: 'es fehlt die Erlaubnis',
      EPERM: 'es fehlt die Erlaubnis',
      EROFS: 'der Datenträger ist schreibgeschützt',
      ENOSPC: 'der Datenträger ist voll',
      EDQUOT: 'der zugeteilte Platz ist aufgebraucht',
      ENAMETOOLONG: 'der Name ist zu lang',
      ELOOP: 'die Verweise führen im Kreis',
      EEXIST: 'eine Datei dieses Namens ist im Weg',
      ENOTEMPTY: 'inzwischen liegt dort etwas dieses Namens',
      EADDRINUSE: 'ein anderes Programm benutzt ihn',
      EBUSY: 'ein anderes Programm benutzt die Datei',
    },
  },
};
