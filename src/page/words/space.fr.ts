/** The view in space in French. */
import type { SpaceWords } from './space.js';

export const spaceFrench: SpaceWords = {
  canvas:
    'Le récipient dans l’espace. Les flèches le tournent, plus et moins l’approchent et l’éloignent, 0 le remet. La liste au-dessous choisit une partie.',
  left: 'Tourner à gauche',
  right: 'Tourner à droite',
  up: 'Basculer vers le haut',
  down: 'Basculer vers le bas',
  reset: 'Comme au début',
  apart: 'Démonté le long de l’axe',
  without:
    'Ce navigateur ne peut montrer le récipient dans l’espace (il n’a pas WebGL 2). En voici la coupe.',
  chooseOne:
    'Touchez une partie, ou choisissez-la dans la liste, pour voir son dessin et ses nombres.',
  staves: 'Douelles',
  hoops: 'Cercles',
  hoop: 'Cercle',
  strap: 'Feuillard',
  rivets: 'Rivets du recouvrement',
  width: 'Largeur',
  bevel: 'Angle du joint à l’endroit le plus large',
  bevelAt: 'Angle du joint',
  boardWidth: 'Pièce, large de',
  boardLength: 'Ébauche, longue de',
  thick: 'Épaisseur',
  dowels: 'Goujons dans ses joints',
  boards: { top: 'Pièces du fond supérieur', bottom: 'Pièces du fond inférieur' },
  stave: (number, count) => `Douelle ${number} sur ${count}`,
};
