/** Sizing, dips, numbers and small errors in French. */
import type { tables } from './tables.en.js';

const where = { inside: 'à l’intérieur', outside: 'à l’extérieur' };

export const tablesFrench: typeof tables = {
  sizing: {
    litres: 'Il doit contenir, litres',
    staveLength: 'Avec des douelles de cette longueur (peut rester vide)',
    keep: 'Ce qui reste',
    keeps: {
      proportions: 'les proportions : hauteur et diamètres changent du même facteur',
      heads: 'les fonds, et le bouge ou le bord : la hauteur change',
      height: 'la hauteur : les diamètres changent du même facteur',
    },
    notLitres: 'Écrivez des litres au-dessus de 0, comme 225 ou 37,5.',
    apply: 'Faire ainsi',
    nearby: 'Dimensions rondes proches',
    take: 'Prendre celle-ci',
    now: (litres) => `Il contient ${litres} litres entre les fonds.`,
    found: (litres) => `Avec ces changements il contient ${litres} litres :`,
    unreachable: (nearest) =>
      nearest === null
        ? 'Aucun récipient ne peut se faire ainsi.'
        : `Cela ne peut s’atteindre ainsi : on n’approche pas plus qu’environ ${nearest} litres, ou ce qui en sort ne peut se construire.`,
  },
  dip: {
    posture: 'Comment il est posé',
    postures: { lying: 'couché, bonde en haut', standing: 'debout' },
    depth: (unit) => `Mouillé sur la pige (${unit})`,
    holds: (litres) => `Il contient ${litres} litres.`,
    tooDeep: (full) => `La pige se mouille de 0 à ${full}.`,
    table: 'Table de jauge',
    headings: (unit) => [
      `mouillé, ${unit}`,
      'litres',
      'de la profondeur',
      'ancienne règle de jauge, litres',
    ],
    notForSale: 'Pour la fabrication et le chai, non pour la vente à la mesure.',
  },
  numbers: {
    whole: 'L’ensemble, et une douelle',
    capacity: 'Contient entre les fonds',
    recess: 'Jables et chanfreins contiennent en plus',
    empty: 'Masse, vide',
    full: 'Masse, plein d’eau',
    count: 'Douelles',
    blank: 'Ébauche, épaisse de',
    outerLength: 'Face extérieure, longue de',
    innerLength: 'Face intérieure, longue de',
    bilgeWidth: 'Largeur à l’endroit le plus large',
    laidWidth: 'Toutes les douelles côte à côte',
    endCut: 'Coupe du bout, haut et bas',
    gap: 'Un seul gabarit laisse ouvert aux bouts',
    stretch: 'La face extérieure s’allonge de',
    stations: 'Le long de la douelle',
    stationHeadings: ['station', 'largeur', 'angle de joint', 'ébauche'],
    heads: 'Fonds',
    headHeadings: ['fond', 'diamètre', 'rayon du jable', 'le peigne s’ouvre de'],
    hoops: 'Cercles',
    hoopHeadings: [
      'cercle',
      'longueur coupée',
      'tour, bord proche',
      'tour, bord lointain',
      'bord long, plus long de',
    ],
    ends: { top: 'haut', bottom: 'bas' },
  },
  slips: {
    about: 'Ce qu’une petite erreur d’établi, faite sur chaque pièce, donne au récipient fini.',
    title: 'Petites erreurs et leurs suites',
    headings: ['erreur', 'joints ouverts', 'diamètre', 'tour', 'fond plus lâche de', 'litres'],
    names: {
      'bevels-steep': (size) => `chaque angle de joint ${size} de trop`,
      'bevels-flat': (size) => `chaque angle de joint ${size} trop petit`,
      'staves-wide': (size) => `chaque douelle ${size} trop large`,
      'one-stave-wide': (size) => `une douelle ${size} trop large`,
      'groove-inset': (size) => `jable ${size} plus loin du bout`,
      'groove-depth': (size) => `jable plus profond de ${size}`,
    },
    opens: (gap, side) => `${gap} ${where[side]}`,
  },
};
