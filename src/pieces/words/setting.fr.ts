/** What the plan and checklist of a chosen set say, in French. Marks go in as they are, so unbroken blanks are set here. */
import type { settingWords } from './setting.en.js';

export const settingWordsFrench: typeof settingWords = {
  title: (set) => `Jeu ${set}\u00a0: l’anneau vu d’en haut, dans l’ordre de montage`,
  vesselTitle: (title, set) => `${title}, jeu ${set}`,
  bung: 'bonde',
  label: (mark, width) => `${mark} · ${width}`,
  diameter: (size) => `⌀ ${size}`,
  staves: (count) => `${count} douelles`,
  notes: {
    picture: (scale) =>
      `Une image à l’échelle ${scale}, coupée à l’endroit le plus large. Prendre les mesures dans ses chiffres, jamais en la mesurant.`,
    order: (first) =>
      `Monter les douelles dans l’ordre de leurs numéros, ${first} d’abord, dans le sens des aiguilles d’une montre vu du haut.`,
    bungStave: (mark) => `la douelle de bonde ${mark}`,
    firstStave: (mark) => `la douelle ${mark}`,
    closes: (diameter, off, sure) =>
      `L’anneau se ferme à un diamètre extérieur de ${diameter} à l’endroit le plus large, ${off}, à ${sure} près (un écart type, d’après le pas auquel les largeurs ont été lues).`,
    wider: (by) => `${by} au-dessus de la cote voulue`,
    narrower: (by) => `${by} au-dessous de la cote voulue`,
    exact: 'comme voulu',
    bench: (laid) =>
      `Après rabotage, poser les douelles à plat bord à bord sur l’établi\u00a0: la somme courante doit être celle de la liste, ${laid} en tout. Une erreur se montre à la première douelle qui diffère.`,
    asMarked: 'Aucune largeur n’est à raboter.',
    plane: (count, most) =>
      `Raboter ${count} avant le jointage, ${most} en tout\u00a0; la liste dit lesquelles et de combien.`,
    planeCount: (count) => (count === 1 ? 'une douelle' : `${count} douelles`),
    cureLarge: (takeOut, putIn, by) =>
      `De rechange\u00a0: si l’anneau se ferme trop large, ôter ${takeOut} et mettre ${putIn}\u00a0; le diamètre baisse de ${by}.`,
    cureSmall: (takeOut, putIn, by) =>
      `De rechange\u00a0: si l’anneau se ferme trop petit, ôter ${takeOut} et mettre ${putIn}\u00a0; le diamètre croît de ${by}.`,
    measure: (measure, joints, balance, pairs, inLine) =>
      `Ordre dans l’anneau, ${measure} en tout, moins vaut mieux\u00a0: les joints s’écartent de ${joints} de joints réguliers\u00a0; les largeurs penchent d’un côté de ${balance}\u00a0; ${pairs} paires des plus étroites côte à côte\u00a0; joints alignés sur des joints du fond\u00a0: ${inLine}.`,
    headJoints:
      'Petits traits autour de l’anneau\u00a0: où les joints des pièces du fond rencontrent le jable, si les pièces vont vers la première douelle.',
    flat: (step) =>
      `Les faces restent plates\u00a0: des voisines inégales laissent une marche à leur joint, ici de ${step} au plus.`,
    caution:
      'Des douelles pas encore tenues peuvent tomber\u00a0: travailler avec un aide ou un second cercle, et pas de doigts dans les joints quand on chasse le cercle.',
  },
  checklist: {
    title: 'Liste à cocher, au tas et sur l’établi',
    headings: (unit) => [
      'n°',
      'marque',
      `largeur ${unit}`,
      `raboter ${unit}`,
      `jusqu’ici ${unit}`,
      'prise',
      'montée',
    ],
  },
};
