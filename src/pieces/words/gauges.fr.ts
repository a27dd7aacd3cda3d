/** What the gauges and jigs say, in French. */
import { frenchHoop } from '../../hoop-names.js';
import type { gaugeWords } from './gauges.en.js';

const ofEnd = (title: string, end: string | null): string => (end ? `${title}, ${end}` : title);

export const gaugeWordsFrench: typeof gaugeWords = {
  places: {
    bilge: 'au bouge',
    ends: 'aux bouts',
    top: 'au bout du haut',
    bottom: 'au bout du bas',
    all: 'tout le long de la douelle',
  },
  square:
    'Le tenir d’équerre à la face de la douelle, non à l’axe du récipient : près des bouts, ce n’est pas la même chose.',
  hook: 'ce bord sur le bout de la douelle',
  held: 'tenu de l’intérieur',
  joint: {
    title: 'Gabarit de joint pour douelles de toute largeur',
    plate: (place) => `joint ${place}`,
    held: 'bord rond : face extérieure ; bras : joint',
    card: (place) => `angle ${place}`,
    stock: 'talon de la fausse équerre sur ce bord',
    notes: {
      use: 'Mettre le coin intérieur du gabarit sur l’arête de la douelle, son bord rond en travers de la face extérieure, son bras le long du joint. Aucun jour ne doit paraître le long du bras. Essayer les deux joints.',
      round:
        'S’en servir sur la face arrondie : le joint y est d’équerre à l’arrondi, quelle que soit la largeur de la douelle.',
      flat: 'La face extérieure reste plate : le bord rond pose sur les deux arêtes de la face, avec un jour au milieu.',
      ticks:
        'Les traits du bord rond sont des largeurs à l’endroit le plus large : l’autre arête de la douelle tombe sur le trait de sa propre largeur, ici aussi.',
      card: 'Pour une face plate, régler une fausse équerre sur la carte : le talon sur le bord du bas, la lame sur la ligne de la largeur de la douelle. Puis tenir le talon sur la face extérieure. Le trait mixte est d’équerre.',
    },
    table: {
      title: 'Angles de joint',
      headings: (unit, places) => [
        `largeur ${unit}`,
        ...places.flatMap((place) => [place, 'pour 100']),
      ],
    },
  },
  backing: {
    title: 'Gabarit d’arrondi pour la face extérieure',
    plate: (place, radius) => `arrondi ${place} : rayon ${radius}`,
    edge: 'ce bord en travers de la face extérieure',
    notes: [
      'Arrondir la face extérieure jusqu’à ce que le bord rond y pose d’un joint à l’autre, sans jour.',
      'Près des bouts, il est plus plat que le cercle du récipient à cet endroit, parce que la face penche.',
    ],
  },
  hollowing: {
    title: 'Gabarit d’évidage pour la face intérieure',
    plate: (place, radius) => `évidage ${place} : rayon ${radius}`,
    edge: 'ce bord en travers du creux',
    notes: {
      use: 'Évider la face intérieure jusqu’à ce que le bord rond y pose sans jour, d’un joint à l’autre ou aussi loin que va le gabarit.',
      depth: (thickness) =>
        `Laisser ${thickness} de bois au milieu du bouge ; vérifier au compas d’épaisseur, le gabarit ne dit pas la profondeur.`,
    },
  },
  sweep: {
    title: 'Gabarits de bouge, dehors et dedans',
    outside: 'gabarit du dehors',
    inside: 'gabarit du dedans',
    outsideHeld: 'bord courbe le long de la face extérieure',
    insideHeld: 'bord courbe le long de la face intérieure',
    stave: 'douelle',
    hoop: (name, distance) => `${frenchHoop(name)}, bord, ${distance}`,
    chime: (distance) => `pied du chanfrein du peigne, ${distance}`,
    groove: (distance) => `lèvre du jable, ${distance}`,
    howel: (distance) => `bord de la gorge, ${distance}`,
    notes: {
      use: 'Découper les deux plaques. Tenir celle du dehors au milieu de la face extérieure d’une douelle, celle du dedans au milieu de sa face intérieure, toutes deux droites, dans un plan par l’axe du récipient.',
      bend: 'Après le cintrage et le refroidissement, aucun jour ne doit paraître. Dehors, du jour au bouge veut dire trop peu cintré, du jour aux bouts trop cintré ; dedans, c’est l’inverse. Corriger avant de creuser le jable.',
      straight:
        'La douelle d’un récipient droit reste droite : les deux bords le sont aussi, et montrent gauche et creux.',
      ends: 'Les plaques sont aussi longues que le récipient est haut : leurs bouts sont les plans des bouts.',
      marks:
        'Les lignes en travers sont des hauteurs dans le récipient : bords des cercles dehors ; peigne, jable et gorge dedans. Les chiffres sont des distances du bout, le long de l’axe.',
    },
  },
  listing: {
    title: 'Chariot de scie : guides pour douelles effilées',
    blade:
      'lame le long de ce bord ; les repères sont les plans des bouts à la première et à la seconde coupe',
    first: 'guide, 1re coupe : chant brut contre lui',
    second: 'guide, 2e coupe : première coupe contre lui',
    firstAway: (distance) => `1re coupe : ${distance} de la lame`,
    secondAway: (distance) => `2e coupe : ${distance} de la lame`,
    ends: (first, second) => `${first} d’abord, ${second} ensuite`,
    notes: {
      tilt: (angle) =>
        `Incliner la lame de ${angle} au-dessus du chariot et scier le bord de celui-ci avec elle : ce bord est la ligne de la lame. La douelle pose sur le chariot par sa face extérieure, la plus large.`,
      first: (width) =>
        `Première coupe : un chant brut droit, dans le fil, contre le guide. L’ébauche est large d’au moins ${width}.`,
      second:
        'Seconde coupe : mettre le guide sur son autre ligne et retourner la douelle bout pour bout, la face extérieure toujours sur le chariot : la première coupe est alors contre le guide.',
      taper: (angle, per100) =>
        `Chaque chant s’écarte de ${angle} (${per100} pour 100) de la ligne médiane de la douelle ; le second guide fait le double avec la lame, de l’autre côté.`,
      width: (width) =>
        `Dessiné pour une douelle large de ${width} au bout le plus large. Pour d’autres largeurs, déplacer le guide selon le tableau, aux deux bouts d’un chariot de cette longueur.`,
    },
    table: {
      title: 'Guide depuis la lame, aux deux bouts du chariot',
      headings: (unit) => [
        `largeur ${unit}`,
        'biais',
        'lame',
        `première, bas ${unit}`,
        `première, haut ${unit}`,
        `seconde, bas ${unit}`,
        `seconde, haut ${unit}`,
      ],
    },
  },
  croze: {
    plate: (end) => (end ? `jable, ${end}` : 'jable'),
    title: (end) => ofEnd('Gabarit de jable', end),
    groove: (width, depth) => `jable large de ${width}, profond de ${depth} depuis la gorge`,
    howel: (depth) => `gorge, profonde de ${depth}`,
    foot: 'la gorge finit ici',
    notes: {
      hold: 'Tenir la plaque dans le récipient sur une ligne vers son axe, le crochet sur le bout rogné et au ras de l’extérieur, l’ergot dans le jable.',
      light:
        'C’est juste quand crochet, gorge au-dessus et au-dessous du jable et ergot touchent tous. Crochet décollé : jable trop près du bout. Ergot qui n’entre pas : jable trop loin, ou trop étroit. Corps décollé : jable trop peu profond.',
      compass: (radius) =>
        `Le fond du jable est à ${radius} de l’axe : l’essai au compas a le dernier mot.`,
      wear: 'Le faire en bois dur ou en tôle : l’ergot est aussi large que le jable, et le papier s’use.',
    },
  },
  chime: {
    plate: (end) => (end ? `peigne, ${end}` : 'peigne'),
    title: (end) => ofEnd('Gabarit de peigne', end),
    flat: (flat) => `plat, ${flat} du bout restent`,
    bevel: (angle, per100) => `chanfrein ${angle} du bout, ${per100} pour 100`,
    howel: 'gorge',
    notes: {
      hold: 'Tenir la plaque dans le récipient sur une ligne vers son axe, le crochet sur le bout rogné et au ras de l’extérieur.',
      light:
        'C’est juste quand crochet, chanfrein et gorge touchent tous. Du jour le long du chanfrein : peigne coupé trop profond ; crochet décollé : pas assez profond.',
      order: 'Vérifier le peigne avant de creuser le jable : le jabloir court dessus.',
    },
  },
};
