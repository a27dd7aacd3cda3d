/** Sizing, dips, numbers and small errors in German. */
import type { tables } from './tables.en.js';

const where = { inside: 'innen', outside: 'außen' };

export const tablesGerman: typeof tables = {
  sizing: {
    litres: 'Es soll fassen, Liter',
    staveLength: 'Mit Dauben dieser Länge (kann leer bleiben)',
    keep: 'Was bleibt',
    keeps: {
      proportions: 'die Verhältnisse: Höhe und Durchmesser ändern sich im selben Maß',
      heads: 'die Böden und der Bauch oder der Rand: die Höhe ändert sich',
      height: 'die Höhe: die Durchmesser ändern sich im selben Maß',
    },
    notLitres: 'Liter über 0 eingeben, etwa 225 oder 37,5.',
    apply: 'So machen',
    nearby: 'Runde Maße in der Nähe',
    take: 'Dieses nehmen',
    now: (litres) => `Zwischen den Böden fasst es ${litres} Liter.`,
    found: (litres) => `Mit diesen Änderungen fasst es ${litres} Liter:`,
    unreachable: (nearest) =>
      nearest === null
        ? 'So lässt sich kein Gefäß machen.'
        : `So ist das nicht zu erreichen: Näher als etwa ${nearest} Liter kommt es nicht, oder was herauskommt, ist nicht zu bauen.`,
  },
  dip: {
    posture: 'Wie es steht',
    postures: { lying: 'liegend, Spund oben', standing: 'stehend' },
    depth: (unit) => `Nass am Stab (${unit})`,
    holds: (litres) => `Es enthält ${litres} Liter.`,
    tooDeep: (full) => `Der Stab wird von 0 bis ${full} nass.`,
    table: 'Peiltabelle',
    headings: (unit) => [`nass, ${unit}`, 'Liter', 'der Tiefe', 'alte Visierregel, Liter'],
    notForSale: 'Für den Bau und den Keller, nicht für den Verkauf nach Maß.',
  },
  numbers: {
    whole: 'Das Ganze, und eine Daube',
    capacity: 'Fasst zwischen den Böden',
    recess: 'Gargeln und Fasen fassen daneben',
    empty: 'Masse, leer',
    full: 'Masse, voll Wasser',
    count: 'Dauben',
    blank: 'Rohling, dick',
    outerLength: 'Außenseite, lang',
    innerLength: 'Innenseite, lang',
    bilgeWidth: 'Breite an der weitesten Stelle',
    laidWidth: 'Alle Dauben nebeneinandergelegt',
    endCut: 'Endschnitt, oben und unten',
    gap: 'Eine einzige Lehre lässt an den Enden offen',
    stretch: 'Außenseite dehnt sich',
    stations: 'Die Daube entlang',
    stationHeadings: ['Station', 'Breite', 'Fugenwinkel', 'Rohling'],
    heads: 'Böden',
    headHeadings: ['Boden', 'Durchmesser', 'Radius der Gargel', 'Frosch öffnet sich um'],
    hoops: 'Reifen',
    hoopHeadings: [
      'Reif',
      'Zuschnitt',
      'Umfang, nahe Kante',
      'Umfang, ferne Kante',
      'lange Kante länger um',
    ],
    ends: { top: 'oben', bottom: 'unten' },
  },
  slips: {
    about:
      'Was ein kleiner Fehler der Werkbank, an jedem Stück gemacht, am fertigen Gefäß bewirkt.',
    title: 'Kleine Fehler und ihre Folgen',
    headings: ['Fehler', 'Fugen klaffen', 'Durchmesser', 'Umfang', 'Boden loser um', 'Liter'],
    names: {
      'bevels-steep': (size) => `jeder Fugenwinkel ${size} zu groß`,
      'bevels-flat': (size) => `jeder Fugenwinkel ${size} zu klein`,
      'staves-wide': (size) => `jede Daube ${size} zu breit`,
      'one-stave-wide': (size) => `eine Daube ${size} zu breit`,
      'groove-inset': (size) => `Gargel ${size} weiter innen`,
      'groove-depth': (size) => `Gargel ${size} tiefer`,
    },
    opens: (gap, side) => `${gap} ${where[side]}`,
  },
};
