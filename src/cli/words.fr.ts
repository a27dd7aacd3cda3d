/** What the commands answer, in French. */
import { frenchText, frenchHoop } from '../index.js';
import { figureWordsFrench } from './figure-words.fr.js';
import type { CliWords } from './words.js';

export const french: CliWords = {
  typeset: frenchText,
  warning: 'avertissement',
  check: {
    good: 'peut se construire',
    warned: (warnings) =>
      `peut se construire, avec ${warnings} ${warnings === 1 ? 'avertissement' : 'avertissements'}`,
  },
  draw: {
    wrote: (files) => `${files} fichiers écrits`,
    look: (page) => `pour les voir, ouvrir ${page} dans un navigateur`,
    none: (file) => `${file} : ce récipient n’a aucune de ces pièces`,
  },
  give: {
    wrote: (file) => `${file} écrit ; ensuite : staveloft figures ${file}`,
    cannotBeBuilt: 'ceci ne peut pas se construire :',
    tryAgain: 'Changer ces clés du fichier de départ, puis essayer de nouveau.',
  },
  changes: {
    nothing: 'rien ne change',
    changed: 'changé',
    titleStays: (title) => `le titre reste : ${title}`,
    laid: (key) => `${key}, côte à côte`,
    capacity: (from, to) => `contenance ${from} -> ${to}`,
  },
  ends: { top: 'haut', bottom: 'bas' },
  vessels: { cask: 'fût', tub: 'récipient droit' },
  hoopName: frenchHoop,
  format: {
    note: {
      mm: 'longueurs en mm',
      in: 'longueurs en pouces, le 1/32 le plus proche entre parenthèses',
    },
    per100: (slope) => `${slope} mm pour 100 mm`,
    litres: (litres) => `${litres} l`,
    gallons: (gallons, litres) => `${gallons} gallons US (${litres} l)`,
  },
  size: {
    round: (step) => `dimensions rondes voisines, ${step} entiers là où elles peuvent changer`,
    headings: (unit, diameters) => [
      `hauteur ${unit}`,
      ...diameters.map((name) => `${name} ${unit}`),
      'litres',
      'écart',
    ],
    diameters: { cask: ['bouge', 'bouts'], tub: ['haut', 'bas'] },
    unreachable: (keeping, litres, reach) =>
      `en gardant ${keeping}, ${litres} litres sont hors d’atteinte : ${reach}`,
    keeps: { proportions: 'les proportions', heads: 'les fonds', height: 'la hauteur' },
    withLength: (kept) => `${kept} et cette longueur de douelle`,
    no: 'aucun récipient ne peut se faire ainsi',
    noNearer: (litres) => `on n’approche pas plus que d’environ ${litres} litres`,
  },
  recut: {
    head: 'fond',
    outside: 'extérieur des données, à côté du bois',
    inside: 'intérieur',
    atMost: (gap) => `${gap} au plus`,
    groove: {
      gone: (end) => `ancien jable, ${end} : il est coupé`,
      same: (end) => `ancien jable, ${end} : il reste en service`,
      beside: (end, fromEnd) =>
        `ancien jable, ${end} : il reste dans le peigne, son milieu à ${fromEnd} du nouveau bout : le combler, ou le raboter dans la gorge`,
      meets: (end, fromEnd) =>
        `ancien jable, ${end} : il est à ${fromEnd} du nouveau bout et entre dans le nouveau : couper davantage, ou changer heads.croze.inset`,
    },
  },
  dip: {
    postures: {
      lying: 'couché, bonde en haut ; hauteur au bouge, sur une pige par la bonde',
      standing: 'debout ; hauteur au-dessus de la face intérieure du fond',
    },
    headings: (unit) => [`hauteur ${unit}`, 'litres'],
    gallons: 'gallons US',
    oldRule: ['ancienne règle, l', 'son erreur, l'],
  },
  figures: figureWordsFrench,
  prove: {
    isFile: 'c’est un fichier : donner le dossier où draw a écrit',
    tooMany: (files) => `il contient plus de ${files} fichiers`,
    noFolder: 'il n’y a pas de tel dossier',
    noSpec: (folder) => `${folder} : il n’y a pas de spec.yaml dedans : redessiner le récipient`,
    noStaves: (picture) =>
      `${picture} : le dossier a été dessiné sans douelles, et ce sont elles qui font les joints`,
    noRing: (picture) =>
      `${picture} n’a pas été dessiné : ces fichiers ne font pas un rond de douelles`,
  },
  files: {
    cannotRead: (why) => `ne peut pas être lu : ${why}`,
    isFolder: 'c’est un dossier, non un fichier',
    tooLarge: (kilobytes) =>
      `est trop gros : les données d’un récipient ont au plus ${kilobytes} ko`,
    utf16: 'est écrit en UTF-16 : l’enregistrer en UTF-8',
    notText: 'n’est pas un fichier de texte : les données d’un récipient sont du texte YAML',
    notUtf8:
      'n’est pas un fichier de texte en UTF-8 : les données d’un récipient sont du texte YAML, enregistré en UTF-8',
    stdinOnce: 'l’entrée standard (-) ne peut tenir lieu que d’un récipient',
    nothingWritten: (why) => `rien n’a été écrit : ${why}`,
    folderInTheWay: (path) => `${path} est un dossier`,
    there: (named, more, several) =>
      `${named}${more > 0 ? ` et ${more} de plus` : ''} ${several ? 'sont' : 'est'} déjà là ; --replace remplace`,
    reasons: {
      ENOENT: 'il n’y a pas de tel fichier',
      ENOTDIR: 'une partie de son chemin est un fichier, non un dossier',
      EISDIR: 'c’est un dossier, non un fichier',
      EACCES: 'la permission manque',
      EPERM: 'la permission manque',
      EROFS: 'le disque est protégé en écriture',
      ENOSPC: 'le disque est plein',
      EDQUOT: 'le quota du disque est épuisé',
      ENAMETOOLONG: 'le nom est trop long',
      ELOOP: 'ses liens tournent en rond',
      EEXIST: 'un fichier de ce nom est dans le chemin',
      ENOTEMPTY: 'quelque chose de ce nom y a été mis entre-temps',
      EADDRINUSE: 'un autre programme s’en sert',
      EBUSY: 'un autre programme s’en sert',
    },
  },
};
