/** What the drawings of staves and the gauge for their angles say, in French. */
import { frenchHoop } from '../../hoop-names.js';
import type { Words } from './index.js';

export const staveWordsFrench: Pick<Words, 'stave' | 'fan' | 'endGauge'> = {
  stave: {
    title: (count) => `Douelle, ${count} en rond`,
    backedTitle: 'Contour de la douelle sur la face arrondie',
    mixedTitle: (number, count, width) => `Douelle ${number} sur ${count}, large de ${width}`,
    marked: (title, mark) => `${title}, marque ${mark}`,
    station: (s, width, bevel, thickness) => `${s} : ${width} · ${bevel} · ${thickness}`,
    outerEnd: (end) => `bout ${end}, face extérieure`,
    innerEnd: (end, angle) => `bout ${end}, intérieur, ${angle}`,
    cutEnd: (end, angle) => `bout ${end}, coupe ${angle}`,
    blankEnd: (trim) => `ébauche, surcote ${trim}`,
    groove: 'lèvre du jable, intérieur',
    howel: 'bord de la gorge, intérieur',
    hoopEdge: frenchHoop,
    notes: {
      closes: (count, diameter) =>
        `${count} douelles comme celle-ci ferment à un diamètre extérieur de ${diameter} à l’endroit le plus large.`,
      closesMixed: (count, diameter) =>
        `Une de ${count} douelles de largeurs inégales qui ferment ensemble à un diamètre extérieur de ${diameter}.`,
      faces: (thickness) =>
        `La face extérieure est vers vous. En tirets : la face intérieure de l’ébauche plate, ${thickness} au-dessous. Le bout du haut est à droite.`,
      key: 'Au-dessus de chaque station : distance du milieu, largeur de la face extérieure, angle de joint, épaisseur de l’ébauche. Au-dessous : bords des cercles sur la face extérieure ; jable, gorge et plans des bouts sur la face nommée.',
      bevel: (bilge, bilgeSlope, end, endSlope) =>
        `Angle de joint, compté de l’équerre à la face : ${bilge} à l’endroit le plus large (${bilgeSlope} pour 100), ${end} au bout (${endSlope} pour 100).`,
      fixedBevel: (gap) =>
        `L’angle change le long de la douelle : un seul gabarit, réglé à l’endroit le plus large, laisse au bout ${gap} d’ouverture par joint, à l’intérieur.`,
      evenBevel: (angle, slope) =>
        `Angle de joint, compté de l’équerre à la face : ${angle} (${slope} pour 100), le même tout le long de la douelle.`,
      blade: (tilt) =>
        `Une lame de scie mise d’équerre au chant de la douelle s’incline de ${tilt}.`,
      endCut: (end, angle, longer) =>
        `Coupe du bout ${end} : ${angle} de l’équerre ; la face intérieure est ${longer} que l’extérieure.`,
      longer: (by) => `de ${by} plus longue`,
      shorter: (by) => `de ${by} plus courte`,
      overlong: (trim) =>
        `Les deux faces dépassent de ${trim} le bout le plus long et sont sciées d’équerre ; rogner aux plans des bouts après le cintrage.`,
      squareEnd: (end) => `Coupe du bout ${end} : d’équerre.`,
      routerLength: (end, add) =>
        `Pour une fraiseuse : « outline » est la face extérieure, et la face intérieure est plus longue au bout ${end}. Y ajouter ${add} avant de fraiser, ou la coupe du bout manque de bois.`,
      routerEdges:
        'Une fraiseuse coupe « outline » d’équerre : l’angle de joint demande de tourner la pièce, d’incliner l’outil, ou un coup de rabot après.',
      hollow: (t) =>
        `Évider la face intérieure jusqu’à une épaisseur de ${t} au milieu ; les joints gardent toute l’épaisseur de l’ébauche là où le récipient est le plus large.`,
      flatInside: 'La face intérieure reste plate.',
      rounded: 'Arrondir la face extérieure au cercle du récipient après le jointage.',
      flatOutside: 'La face extérieure reste plate.',
      grain: 'Le fil suit la douelle, sans la quitter.',
      bung: (diameter) =>
        `Sur la douelle de bonde seulement : trou de bonde de ${diameter}, son milieu à la station 0.`,
      backed:
        'Le contour de cette feuille est pris sur la face arrondie : sa largeur est mesurée le long de l’arrondi.',
    },
    table: {
      title: 'Stations',
      headings: (unit) => [
        `station ${unit}`,
        `hauteur ${unit}`,
        `largeur ${unit}`,
        'angle',
        'pour 100',
        `ébauche ${unit}`,
      ],
    },
  },
  fan: {
    title: 'Éventail de douelles pour largeurs inégales',
    label: (width, bevel, thickness) => `large de ${width} · ${bevel} · ébauche ${thickness}`,
    notes: {
      use: 'Chaque paire de lignes est la face extérieure d’une largeur à l’endroit le plus large. Poser le milieu de l’ébauche sur la ligne médiane, trouver sa largeur, tracer cette paire.',
      cut: 'Seule la plus grande largeur est dessinée en contour ; les autres sont des lignes à tracer.',
      why: 'Toutes les largeurs d’une douelle diminuent ensemble, un seul gabarit sert donc à toutes celles du stock.',
    },
    table: {
      title: 'Largeurs',
      headings: (unit) => [
        `largeur ${unit}`,
        `aux bouts ${unit}`,
        'angle',
        'angle aux bouts',
        `ébauche ${unit}`,
      ],
    },
  },
  endGauge: {
    title: 'Gabarit des angles de joint et des coupes de bout',
    joint: (place, angle, slope) => `joint ${place} : ${angle}, ${slope} pour 100`,
    endCut: (end, angle, slope) => `coupe de bout ${end} : ${angle}, ${slope} pour 100`,
    widest: 'au bouge',
    even: 'tout le long de la douelle',
    atEnd: (end) => `au bout ${end}`,
    atEnds: 'aux bouts',
    bothEnds: 'les deux bouts',
    face: 'ce bord sur la face extérieure',
    wood: 'douelle, face extérieure en haut',
    notes: {
      use: 'Découper chaque gabarit. Son pied pose sur la face extérieure, en travers pour un joint, en long pour une coupe de bout ; aucun jour ne doit paraître le long du bras.',
      set: 'Ou régler une fausse équerre sur l’angle.',
      blade: (tilt) =>
        `Une scie mise d’équerre au chant de la douelle s’incline plutôt de ${tilt}.`,
    },
  },
};
