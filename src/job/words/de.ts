/** The job sheet in German. Trade words are those of the drawings: Gargel, Frosch, Glättung, Steg, Lauf. */
import type { JobWords } from './job-words.js';

export const de: JobWords = {
  language: 'de',
  title: 'Werkzettel',
  ends: { top: 'oben', bottom: 'unten' },
  atEnd: (end, text) => `${end}: ${text}`,
  numbers: {
    heading: (unit) => `Das Gefäß, alle Längen in ${unit === 'mm' ? 'mm' : 'Zoll'}`,
    capacity: 'Inhalt',
    height: 'Höhe',
    bilge: '⌀ außen, Bauch',
    ends: '⌀ außen, Enden',
    top: '⌀ außen, oben',
    bottom: '⌀ außen, unten',
    wall: 'Wanddicke',
    staves: 'Dauben',
    empty: 'Masse, leer',
    full: 'Masse, voll Wasser',
  },
  list: {
    title: 'Zuschnitt, Breiten nach dem Fügen',
    headings: ['Teil', 'Anzahl', 'Länge', 'Breite', 'Dicke'],
    stave: 'Daubenrohling, mit Ersatz',
    heads: { both: 'Boden', top: 'Boden oben', bottom: 'Boden unten' },
    boards: (head, numbers) => `${head}: Stück ${numbers}`,
    dowels: (head) => `${head}: Dübel`,
    strap: (hoop, end) => `Band, ${hoop}${end === '' ? '' : `, ${end}`}`,
  },
  steps: {
    heading: 'Arbeitsfolge: abhaken, Gemessenes neben das Sollmaß schreiben',
    wood: {
      title: 'Spalten',
      text: (bolt, count, width, thickness) =>
        `Aus Stücken von ${bolt} Länge radial ${count}, grün ${width}\u00a0×\u00a0${thickness}; lufttrocknen.`,
      caution: 'Keile, Spalteisen: Augen schützen, Füße weg.',
    },
    plane: {
      title: 'Rohlinge hobeln',
      text: (length) => `Rechtwinklig auf ${length} sägen, eben hobeln. Schilder aufkleben.`,
      thickness: 'Dicke',
      caution: 'Säge, Hobel: Schutz, Schiebestock, Ohren, Augen, Staub; Anleitung beachten.',
    },
    joint: {
      title: 'Fügen',
      cask: (bilge, ends, bilgeBevel, endBevel) =>
        `Bauch ${bilge} breit, Fugenwinkel ${bilgeBevel}; Enden ${ends} breit, ${endBevel}.`,
      tub: (top, bottom, bevel, tilt) =>
        `Oben ${top} breit, unten ${bottom}; Fugenwinkel ${bevel}, Säge rechtwinklig zur Kante ${tilt}.`,
      mixed: 'Jede Daube auf die Breite ihres Schildes; Winkel nach der Fügelehre.',
      before: 'Umfang vor dem Fügen',
      laid: 'Breite, auf der Bank ausgelegt',
      caution: 'Fügebank, Abrichte: Schiebestock, Hände hinter der Schneide.',
    },
    hollow: {
      title: 'Innen höhlen',
      text: (radius) => `Radius ${radius} an der weitesten Stelle; Fugen behalten ihre Dicke.`,
      thickness: 'bleibt in der Mitte',
    },
    raise: {
      title: 'Setzen',
      text: (count) => `${count} Dauben in den Setzreif stellen, Pfeile nach oben.`,
      bung: 'Die breiteste ist die Spunddaube.',
      beforeFire: (down) => `Umfang vor dem Feuer, ${down} vom Daubenende`,
      inHoop: (down) => `Umfang im Reif, ${down} vom Daubenende`,
      caution: 'Dauben fallen, Reifen rutschen: zu zweit, Finger weg.',
    },
    fire: {
      title: 'Ausfeuern, biegen',
      text: (stretch, girth) =>
        `Nässen, durchwärmen, langsam zuziehen, Arbeitsreifen auf (am Hals: Umfang ${girth}). Außen ${stretch} % gedehnt. Abkühlen, toasten.`,
      girth: 'Umfang am Bauch',
      caution:
        'Draußen oder unter Abzug, Wasser bereit, Handschuhe, keine Glut lassen; örtliche Brandvorschriften. Heiße Dauben stehen unter Spannung: nicht in ihrer Flucht stehen.',
    },
    trim: {
      title: 'Ablängen, Frosch',
      titlePlain: 'Enden ablängen',
      text: (bevel, flat) =>
        `Rechtwinklig zur Achse; Froschfase ${bevel} vom Ende, ${flat} bleiben eben.`,
      plain: 'Rechtwinklig zur Achse, beide Enden.',
      height: 'Höhe',
    },
    groove: {
      title: 'Gargeln',
      howel: (depth) => `Glättung ${depth} tief.`,
      text: (inset, width, depth) =>
        `Gargel ${width} breit, ${depth} tief, Mitte ${inset} vom Ende.`,
      compass: 'Sechs Zirkelschritte gehen auf.',
      radius: (end) => `Zirkel, ${end}`,
    },
    round: {
      title: 'Außen runden',
      text: (radius) => `Nach der Rundungslehre, Radius ${radius} an der weitesten Stelle.`,
      girth: 'Umfang',
    },
    head: {
      title: 'Böden',
      titleOpen: 'Boden',
      joints: 'Fügen, dübeln, Schilf einlegen.',
      text: (land, depth, fromInside, outer, inner) =>
        `Steg ${land}\u00a0×\u00a0${depth}, Mitte ${fromInside} von innen; Fasen ${outer} außen, ${inner} innen.`,
      diameter: (end) => `⌀ ${end}`,
      caution: 'Säge, Bohrer, Fräse: Werkstück spannen; Anleitung beachten.',
    },
    setHead: {
      title: 'Böden einsetzen',
      titleOpen: 'Boden einsetzen',
      text: (opening, girth) =>
        `Reifen dieses Endes ab; es öffnet sich ${opening} im Radius, ${girth} im Umfang.`,
      caution: 'Lose Dauben federn: Finger aus der Gargel.',
    },
    hoop: {
      title: 'Reifen',
      place: (name, offset) => `${name} ${offset}`,
      text: (places) => `Nieten, Lauf hämmern, antreiben. Vom Ende: ${places}.`,
      caution: 'Stahlkanten schneiden, Reifen springen: Handschuhe, Schutzbrille.',
    },
    bung: { title: 'Spundloch', text: (diameter) => `⌀ ${diameter}, Mitte der Spunddaube.` },
    test: {
      title: 'Mit Wasser prüfen',
      text: 'Etwas heißes Wasser, über jedem Boden schwenken; füllen, warten.',
      open: 'Bis zum Rand füllen, quellen lassen, einen Tag warten.',
      litres: 'gefüllt',
      leaks: 'Lecks',
      caution: 'Nur Wasser, nie Druckluft. Heißes Wasser spritzt: entlüften.',
      openCaution: 'Auf festem, ebenem Grund.',
    },
    handOver: {
      title: 'Fertigstellen',
      text: 'Brandzeichen und Nummer; trocken und schattig lagern.',
      lifting: (mass) => `Voll Wasser ${mass}: Hebezeug oder Helfer.`,
      gas: 'Gärend, geschwefelt: Gas tötet, Kopf draußen lassen, Raum lüften.',
      food: 'Holz, Metall, Wachs an Lebensmitteln: örtliche Regeln; Fachbetriebe, wo das Gesetz sie verlangt.',
    },
  },
  labels: 'Schilder, ausschneiden, aufkleben: Platz im Kreis, ↑ oben, Breite; + Ersatz',
  takeCare: (caution) => `Vorsicht: ${caution}`,
};
