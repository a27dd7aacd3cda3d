/** What `match` answers, in French. */
import { frenchText } from '../index.js';
import type { MatchWords } from './match-words.js';

const staves = (count: number): string => (count === 1 ? '1 douelle' : `${count} douelles`);
const sets = (count: number): string => (count === 1 ? '1 jeu' : `${count} jeux`);

export const matchWordsFrench: MatchWords = {
  typeset: frenchText,
  found: (found, wanted, count) =>
    `${wanted === null ? sets(found) : `${found} sur ${sets(wanted)}`}, de ${staves(count)}`,
  proven: (bound) => `aucune méthode n’en fait plus de ${bound}`,
  bound: (bound) => `plus de ${bound} sont exclus`,
  best: 'choix prouvé le meilleur',
  asked: (diameter, tolerance, count, plane, bung) =>
    `demandé : ${diameter} à ${tolerance} près, ${count} douelles, rabotage jusqu’à ${plane} par jeu, ${bung}`,
  bungOf: (width) => `douelle de bonde de ${width} au moins`,
  noBung: 'pas de douelle de bonde',
  measured: {
    blank: 'largeurs prises comme mesurées sur la face extérieure plate, avant l’arrondi',
    backed: 'largeurs prises comme mesurées d’arête à arête, après l’arrondi',
  },
  set: (set) => `Jeu ${set}`,
  names: {
    closes: 'se ferme à',
    staves: 'douelles',
    bungStave: 'douelle de bonde',
    order: 'ordre',
    large: 'si trop large',
    small: 'si trop petit',
  },
  closes: (diameter, sure, off) => `${diameter} ± ${sure}, ${off} de la cote voulue`,
  staves: (count, laid) => `${count}, bord à bord ${laid}`,
  bungStave: (mark, width) => `${mark}, ${width}`,
  order: (measure, parts) => `${measure} : ${parts}`,
  orderParts: {
    joints: (mm) => `joints écartés de ${mm}`,
    balance: (mm) => `largeurs penchées de ${mm}`,
    neighbours: (mm) => `voisines de la première sous la moyenne de ${mm}`,
    pairs: (count) => `${count} paires étroites`,
    inLine: (count) => `${count} alignés sur des joints du fond`,
  },
  cure: (takeOut, putIn, by) => `ôter ${takeOut}, mettre ${putIn} : ${by}`,
  headings: (unit) => [
    'n°',
    'marque',
    `largeur ${unit}`,
    `raboter ${unit}`,
    `jusqu’ici ${unit}`,
    '',
  ],
  bungMark: 'bonde',
  legend: [
    'À côté d’un diamètre : un écart type, d’après le pas auquel les largeurs ont été lues. Ordre : la mesure, moins vaut mieux, et de quoi elle est faite.',
    'Si trop large, si trop petit : une rechange du tas qui guérit un anneau qui se ferme ainsi.',
  ],
  left: (count) => `Reste au tas : ${staves(count)}`,
  leftMore: (count) => `et ${count} de plus`,
  unfit: {
    length: (count) => `trop courtes : ${staves(count)}`,
    thickness: (count) => `trop minces pour leur propre ébauche : ${staves(count)}`,
    width: (count) => `trop larges pour ce récipient : ${staves(count)}`,
  },
  shortfall: (set, why) => `Pas de jeu ${set} : ${why}.`,
  reasons: {
    wood: (girth) => `pas assez de bois, il manque au tas ${girth} de périmètre`,
    counts: () =>
      'le nombre ne convient pas, tant de douelles de ces largeurs ne font pas le périmètre',
    noBung: (_, width) =>
      `aucune douelle du tas ne peut prendre la bonde : aucune de celles permises n’a au moins ${width} de large`,
    bung: () => 'il ne reste pas de douelle de bonde pour lui',
    widths: () => 'les largeurs du tas n’y arrivent pas dans la tolérance',
    search: () =>
      'aucun n’a été trouvé, sans qu’il soit exclu ; un autre --seed le trouvera peut-être',
    stopped: () => 'la recherche a été arrêtée',
    standing: () => 'les douelles debout ne se laissent pas compléter',
  },
  help: (count, widths, set) => `${staves(count)} de ${widths} feraient le jeu ${set}.`,
  widths: (from, to) => `${from} à ${to}`,
  interrupted: 'arrêté : voici le meilleur jusqu’ici',
  progress: {
    choosing: (done, of) => `choix des douelles : ${done} sur ${sets(of)}`,
    ordering: (done, of) => `ordre des anneaux : ${done} sur ${of}`,
  },
  wrote: (files, folder) => `${files} fichiers écrits dans ${folder}`,
  noPatterns: (first, command) =>
    `à partir du jeu ${first}, les douelles n’ont pas encore de patrons ; ${command}`,
  carry: (plan) => `à emporter au tas : ${plan}, plan et liste`,
  list: {
    tooLarge: (kilobytes) => `est trop grand : une liste du tas a au plus ${kilobytes} ko`,
    notText: 'n’est pas un fichier de texte : une liste du tas est du texte CSV',
    notUtf8:
      'n’est pas un fichier de texte en UTF-8 : une liste du tas est du texte CSV, enregistré en UTF-8',
  },
  swap: {
    broken: (mark, place, of, width) =>
      `cassée : ${mark}, place ${place} sur ${of}, large de ${width}`,
    closes: (diameter) => `l’anneau se ferme à ${diameter}, à quoi vont ses fonds et ses cercles`,
    bungStave: 'c’est la douelle de bonde, et celle qui la remplace doit l’être aussi',
    headings: (unit) => [
      'marque',
      `largeur ${unit}`,
      `raboter ${unit}`,
      `l’anneau se ferme à ${unit}`,
    ],
    none: 'Aucune rechange du tas ne la remplace.',
    cut: (width, from, to) =>
      `Ou en couper une large de ${width} ; de ${from} à ${to} l’anneau se ferme dans la tolérance.`,
  },
};
