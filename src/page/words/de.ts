/** The page in German. */
import { germanHoop } from '../../index.js';
import { fieldsGerman } from './fields.de.js';
import { rackGerman } from './rack.de.js';
import { spaceGerman } from './space.de.js';
import { tablesGerman } from './tables.de.js';
import type { Words } from './words.js';

export const de: Words = {
  skip: 'Zum Gefäß',
  close: 'Schließen',
  bar: {
    begin: 'Neu beginnen mit …',
    open: 'Öffnen',
    save: 'Speichern',
    undo: 'Zurück',
    redo: 'Wieder vor',
    toInches: 'Von mm auf Zoll umstellen',
    toMillimetres: 'Von Zoll auf mm umstellen',
    habits: 'Einheit, Sprache, Licht',
    language: 'Sprache',
    look: 'Hell oder dunkel',
    languages: { en: 'English', de: 'Deutsch', fr: 'Français' },
    looks: { device: 'Wie das Gerät', light: 'Hell', dark: 'Dunkel' },
  },
  files: {
    tooLarge: 'Diese Datei ist zu groß, um die eines Gefäßes zu sein.',
    notText: 'Das ist keine Textdatei in UTF-8, wie sie hier gebraucht wird.',
  },
  vessel: {
    picture: 'Das Gefäß mit seinen Maßen',
    litres: 'Liter',
    outOfDate: 'Das ist das letzte Gefäß, das sich bauen ließ. Der Grund steht unten.',
  },
  notes: { errors: 'Nicht zu bauen:', warnings: 'Achtung:', goThere: 'Dorthin' },
  strip: { title: 'Schablonen und Lehren' },
  parts: {
    title: 'Mehr zu diesem Gefäß',
    settings: 'Einstellungen',
    sizing: 'Auf Inhalt bringen',
    space: 'Im Raum',
    numbers: 'Zahlen',
    dip: 'Peilen',
    slips: 'Kleine Fehler',
    output: 'Drucken und schneiden',
    text: 'Als Text',
  },
  settings: {
    about:
      'Schräg gesetzte Zahlen ergeben sich aus den übrigen, bis Sie eine eigene eingeben. Ein geleertes Feld kehrt dorthin zurück.',
    heads: 'Oberer und unterer Boden',
    headsAlike: 'gleich',
    headsApart: 'jeder für sich',
    headOf: { top: 'Oberer Boden', bottom: 'Unterer Boden' },
    stavesAre: 'Dauben sind',
    staveWays: { even: 'gleich breit', uneven: 'verschieden breit' },
    boardsAre: 'Stücke sind',
    boardWays: { even: 'gleich breit', uneven: 'verschieden breit' },
    bung: 'Spund',
    bungs: { bored: 'mit Loch', none: 'ohne' },
  },
  ...fieldsGerman,
  hoops: {
    add: 'Reif hinzufügen',
    remove: (name) => `${germanHoop(name)} wegnehmen`,
    name: germanHoop,
  },
  problems: {
    empty: 'Hier fehlt eine Zahl.',
    'not-a-length':
      'Das ist keine Länge. Möglich sind 37 3/8, 37.375 oder 949,5; mm, cm oder in dürfen folgen.',
    'two-readings':
      'Das kann zwei Zahlen heißen. Das Komma für Tausender weglassen, oder einen Punkt vor die Dezimalen setzen.',
    'odd-fraction': 'Dieser Bruch ist nicht zu lesen. Schreiben Sie ihn wie 37 3/8, in Zoll.',
    'not-a-number': 'Das ist keine Zahl.',
    'broken-text':
      'Der Text ist beschädigt, darum lässt sich von hier aus nichts daran ändern. Erst unter „Als Text“ richten, oder zurückgehen.',
  },
  textPart: {
    label: (file) => `Der Text, wie er gespeichert wird: ${file}`,
    line: (line, column) => `Zeile ${line}, Spalte ${column}`,
  },
  viewer: {
    before: 'Vorige',
    after: 'Nächste',
    larger: 'Größer',
    smaller: 'Kleiner',
    whole: 'Ganz',
    trueSize: 'Wahre Größe',
    measure: 'Messen',
    canvas:
      'Zeichnung. Pfeiltasten verschieben, Plus und Minus vergrößern und verkleinern, 0 zeigt alles, Eingabe setzt beim Messen die Mitte als Punkt.',
    takePoints: 'Zwei Punkte antippen.',
    notes: 'Anmerkungen und Tabellen',
    place: (x, y) => `x ${x}, y ${y}`,
    station: (station, width, bevel, thickness) =>
      `Station ${station}: Breite ${width}, Fugenwinkel ${bevel}, Rohling ${thickness}`,
    measured: (distance, dx, dy) => `Abstand ${distance}: ${dx} längs x, ${dy} längs y`,
  },
  output: {
    caution:
      'In wahrer Größe drucken, 100 %, und vor dem Schneiden das Quadrat messen. Bei Säge, Fügemaschine und Fräse die Anleitung des Herstellers und die örtlichen Vorschriften befolgen.',
    paper: 'Papier',
    across: 'Mein Drucker zeichnet 100 mm quer als … mm',
    along: 'und 100 mm längs der Seite als … mm',
    printed:
      'Das Quadrat auf einem gedruckten Blatt messen und seine Seiten hier eingeben: Die nächsten Drucke sind berichtigt.',
    badSide:
      'Eingeben, was 100 mm gemessen haben, von 90 bis 110 mm. Mehr wäre ein anderer Maßstab.',
    formats: 'Dateien im Paket',
    lettering: 'Beschriftung in DXF',
    pack: 'Das ganze Paket (zip)',
    packing: 'Zeichnet …',
    spec: 'Der Text, wie er ist (YAML)',
    wholeSpec: 'Der Text mit allen Vorgaben',
    jobSheet: (format) => `Das Arbeitsblatt (${format})`,
    papers: (name) => (name === 'full' ? 'ein Blatt in wahrer Größe' : name),
    fan: {
      title: 'Breiten des Daubenfächers',
      boxes: ['Schmalste Daube', 'Breiteste Daube'],
      about:
        'Für ungleich breite Dauben: eine Linie alle 5 mm oder alle Viertelzoll im Fächer, in der Fügelehre und auf der Sägelade. Leere Felder lassen die Breiten wie üblich. Für die Dateien; die Bilder hier behalten die üblichen Breiten.',
    },
    plank: {
      title: 'Bohle oder Platte für die Stücke der Böden',
      boxes: ['Länge längs der Faser', 'Breite'],
      about:
        'Woraus die Fräse die Stücke schneidet. Leere Felder nehmen die kürzeste Bohle, die reicht. Für die Dateien; die Bilder hier behalten diese Bohle.',
    },
    sizeProblems: {
      'one-alone': 'Beide Felder ausfüllen oder keines.',
      'not-above-0': 'Das muss über 0 sein.',
      'fan-order': 'Die breiteste Daube kann nicht schmaler sein als die schmalste.',
      'fan-too-wide': 'Eine so breite Daube ist mehr als der halbe Durchmesser des Gefäßes.',
      'fan-too-many':
        'Das sind mehr als 60 Breiten. Die schmalste und die breiteste näher zusammenrücken.',
      'plank-too-large': 'Das sind mehr als 20 m.',
    },
    use: { svg: 'zum Ansehen', dxf: 'für die Fräse', pdf: 'zum Drucken' },
    letterings: { text: 'als Text', outlines: 'als Umrisse, zum Gravieren' },
    give: (format) => `Als ${format} speichern`,
  },
  ...tablesGerman,
  space: spaceGerman,
  rack: rackGerman,
};
