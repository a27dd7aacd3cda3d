/** Every word that sheets add to a drawing, in French; the title block's as in NF EN ISO 7200 (from memory). */
import type { SheetWords } from './words.js';

export const french: SheetWords = {
  titleBlock: {
    owner: 'Propriétaire légal',
    number: 'Numéro d’identification',
    date: 'Date d’édition',
    sheet: 'Feuille',
    title: 'Titre',
    approved: 'Approbateur',
    creator: 'Créateur',
    documentType: 'Type de document',
    pattern: 'Gabarit en vraie grandeur',
    picture: 'Image à l’échelle',
    scale: 'Échelle',
    units: 'Unités',
    unitNames: { mm: 'mm', in: 'in' },
    sheetOf: (sheet, sheets) => `${sheet} / ${sheets}`,
  },
  proof: {
    before: ['Imprimer en taille réelle, 100 % ;', 'mesurer le carré avant de couper.'],
    across: 'en largeur 100 mm',
    along: 'en longueur 100 mm',
    remedy:
      'Si un côté ne mesure pas 100 mm, désactivez « ajuster à la page » et imprimez de nouveau. S’il ne les mesure toujours pas, refaites tracer les feuilles avec ce que vous avez mesuré, en largeur et en longueur.',
    hundred: '100 mm',
    fourInches: '4 in',
  },
  cover: {
    subtitle: (tiles, paper, scale) => {
      const size = scale === '1:1' ? 'Vraie grandeur' : `Échelle ${scale}`;
      return tiles === 1
        ? `${size}, sur 1 feuille ${paper}`
        : `${size}, à assembler de ${tiles} feuilles ${paper}`;
    },
    paperNames: {
      a4: 'A4',
      a3: 'A3',
      a2: 'A2',
      a1: 'A1',
      a0: 'A0',
      letter: 'Letter',
      legal: 'Legal',
      tabloid: 'Tabloid',
      full: 'à sa propre taille',
    },
    howToUse: 'Pas à pas',
    steps: [
      '1. Mesurer le carré, et la ligne au pied de chaque feuille.',
      '2. Couper ou plier chaque feuille aux lignes fines à gauche et en haut, là où elle en a.',
      '3. La poser sur sa voisine de sorte que les croix et les lignes du dessin coïncident.',
      '4. Assembler une rangée de gauche à droite, puis les rangées de haut en bas.',
      '5. Coller les joints, puis comparer l’ensemble aux chiffres de la pièce.',
    ],
    single: [
      '1. Mesurer le carré, et la ligne au pied de la feuille qui suit.',
      '2. Comparer la pièce sur papier à ses chiffres avant de couper le bois.',
    ],
    plan: 'Où va chaque feuille',
    planLeftOut: 'en tirets : rien à dessiner, pas de feuille',
  },
  tile: {
    identification: (sheet, sheets, scale) => `Feuille ${sheet} sur ${sheets}, échelle ${scale}`,
    cutHere: (neighbour) => `couper ou plier, poser sur ${neighbour}`,
    covered: (neighbour) => `${neighbour} couvre cette bande`,
  },
};
