/** What the nested boards of a head say, in French. */
import type { routerWords } from './router.en.js';

export const routerWordsFrench: typeof routerWords = {
  title: {
    both: 'Pièces du fond, imbriquées',
    top: 'Pièces du fond du haut, imbriquées',
    bottom: 'Pièces du fond du bas, imbriquées',
  },
  sheetOf: (title, number, count) =>
    count === 1 ? title : `${title}, panneau ${number} sur ${count}`,
  notes: {
    sheet: (width, height, thickness) =>
      `Le rectangle fin est la planche ou le panneau où l’on coupe : ${width} × ${height}, épais de ${thickness}. Son coin en bas à gauche est l’origine. Le fil suit sa longueur, et aucune pièce n’est tournée.`,
    broken:
      'Vue interrompue : les pièces sont en vraie grandeur ; le reste du panneau, où il n’y a rien, est omis. Le fichier pour fraiseuse a tout le panneau.',
    gap: (gap) =>
      `Les pièces sont à ${gap} l’une de l’autre et du bord, pour la fraise et pour les tenir ; laisser des attaches, ou la dernière coupe libère la pièce.`,
    outline:
      'Seul « outline » est coupé de part en part. « bore » est à mi-épaisseur et se perce depuis le joint ; « bevel » est la fin d’un chanfrein, sur la face extérieure ou sur l’autre.',
    seen: 'La face extérieure est en haut. Chaque numéro est celui de la pièce dans le fond, de bas en haut.',
    joints:
      'Les bords droits sont des joints : où une coupe n’est pas juste, les laisser un peu larges, jointer à la main, et penser que le bord se déplace avec eux.',
    twice: 'Un fond est dessiné ; le récipient en a deux pareils : couper deux fois.',
    tooLarge: (boards, width, height) =>
      `Non dessiné, trop grand pour ce panneau : ${boards}. Un panneau de ${width} × ${height} contiendrait chacune.`,
    board: (number, chord, width) => `pièce ${number} (${chord} × ${width})`,
  },
  table: {
    title: 'Où va chaque pièce',
    headings: (unit) => [
      'pièce',
      `corde ${unit}`,
      `largeur ${unit}`,
      `bout gauche depuis la gauche ${unit}`,
      `bord bas depuis le bas ${unit}`,
    ],
  },
};
