/** What the compass card and the dowel jig say, in French. */
import type { jigWords } from './jigs.en.js';

export const jigWordsFrench: typeof jigWords = {
  compass: {
    title: {
      both: 'Carte du compas',
      top: 'Carte du compas, haut',
      bottom: 'Carte du compas, bas',
    },
    point: 'une pointe ici',
    zero: (radius) => `l’autre sur 0 : ${radius}, rayon du jable`,
    wide: (degrees) => `1 % trop large : six pas dépassent de ${degrees}`,
    notes: {
      use: (radius) =>
        `Poser le compas sur la carte, une pointe sur la croix, l’autre sur la ligne 0 : il est ouvert à ${radius}, de l’axe au fond du jable.`,
      step: 'Faire le tour au fond du jable, légèrement, point après point sur une ligne. Six pas finissent où ils ont commencé.',
      scale: (unit) =>
        `L’échelle près du 0 dit de combien le compas est plus ou moins ouvert, en ${unit}.`,
      miss: 'Si le sixième pas dépasse le premier point, le jable est plus petit que dessiné ; s’il s’arrête avant, il est plus grand. Mesurer l’écart le long du jable et le chercher dans le tableau.',
      head: 'Faire le fond d’après le jable qui est là. Imprimer la carte en taille réelle, et mesurer d’abord son carré.',
    },
    table: {
      title: 'Ce que veut dire un écart',
      headings: (unit) => [
        'sixième pas',
        `écart ${unit}`,
        `rayon du jable ${unit}`,
        `diamètre du fond ${unit}`,
      ],
      past: 'dépasse',
      short: 's’arrête avant',
      meets: 'tombe juste',
    },
  },
  dowel: {
    title: {
      both: 'Guide de perçage pour tous les joints d’un fond',
      top: 'Guide de perçage pour tous les joints du fond du haut',
      bottom: 'Guide de perçage pour tous les joints du fond du bas',
    },
    hole: (joints, x) => `joint ${joints} : ${x}`,
    outer: 'ce bord au ras de la face extérieure',
    inner: 'face intérieure des pièces',
    middle: 'milieu des pièces',
    notes: {
      hold: 'Serrer le guide sur le joint d’une pièce, sa ligne médiane sur le milieu du fond, son bord marqué au ras de la face qui sera dehors. Les deux pièces d’un joint se percent ainsi, et leurs trous se rencontrent.',
      middle:
        'Poser les pièces ensemble comme dans le fond, milieux alignés, et tracer d’abord la ligne médiane sur toutes ; numéroter les joints depuis le plus bas.',
      which:
        'Ne percer que les trous qui portent le numéro du joint. Les places sont les mêmes des deux côtés du milieu : le guide peut être retourné bout pour bout.',
      rows: 'Il y a plusieurs guides, parce que dans un seul les trous de ces joints se couperaient.',
      depth: (diameter, depth) =>
        `Percer à ${diameter} de large et ${depth} de profondeur, d’équerre au joint ; mettre une butée sur le foret.`,
      make: (thickness) =>
        `Faire le guide en bois dur ou en acier, épais de ${thickness} ou plus, pour qu’il mène le foret ; une réglette vissée le long du bord marqué trouve la face.`,
      caution:
        'Serrer pièce et guide avant de percer, tenir les mains hors de la ligne du foret, et suivre la notice du fabricant et les règles locales.',
    },
    table: {
      title: 'Trous de chaque joint',
      headings: (unit) => ['joint', `du milieu ${unit}`],
    },
  },
};
