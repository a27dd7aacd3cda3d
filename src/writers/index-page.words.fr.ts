/** Every word of the page that shows a vessel's patterns, in French. */
import type { IndexPageWords } from './index-page.words.js';

export const french: IndexPageWords = {
  language: 'fr',
  intro:
    'Les images de cette page sont petites et ne sont pas à l’échelle. Travaillez d’après les fichiers au-dessous.',
  noPicture: 'pas d’image : SVG n’a pas été demandé',
  spec: 'Les données, avec toutes les valeurs par défaut :',
  jobSheet: 'La fiche de travail, nombres et étapes à prendre à l’établi :',
  formats: { svg: 'SVG, vraie grandeur', dxf: 'DXF, millimètres', pdf: 'PDF, à imprimer' },
  sections: [
    {
      heading: 'Pour imprimer',
      lines: [
        'Imprimer le PDF en taille réelle, 100 %, sans « ajuster à la page ».',
        'Mesurer le carré de 100 mm et la ligne de la feuille avant de couper ; mesurer aussi le gabarit assemblé.',
        'Si le carré n’est pas juste, tracer de nouveau avec ce qu’il mesurait : --printed 99.6x99.8.',
      ],
    },
    {
      heading: 'Pour fraiser ou scier',
      lines: [
        'En DXF et SVG, une unité est un millimètre. Seul le calque « outline » est coupé de part en part.',
        'Les angles de joint et les coupes de bout demandent que la pièce soit tournée, l’outil incliné, ou un coup de rabot après ; chaque dessin donne les angles.',
        'Couper d’abord un essai dans une chute et le mesurer.',
      ],
    },
    {
      heading: 'Prudence',
      lines: [
        'Dégauchisseuse, scie, fraise : protecteurs en place, poussoirs, attention aux yeux, aux oreilles et à la poussière ; suivre la notice du fabricant.',
        'Chauffe : dehors ou sous une hotte, de l’eau à portée, des gants ; pas de braises laissées dedans ; suivre les règles locales sur le feu.',
        'Mise en rose et cintrage : les douelles chaudes et mouillées et les cercles sont sous tension ; en écarter le visage et les doigts.',
        'Cercles : les bords d’acier coupent et un cercle chassé peut sauter ; gants, yeux protégés.',
        'Levage : un fût plein de 225 litres pèse plus de 250 kg ; prendre un palan ou une seconde paire de bras.',
        'Récipients qui fermentent ou sont soufrés : le gaz peut tuer sans odeur ; ne jamais y mettre la tête, aérer la pièce.',
        'Essayer l’étanchéité à l’eau, jamais à l’air comprimé.',
        'Bois, métal et tout ce qui touche aliments ou boissons : suivre les règles alimentaires locales.',
      ],
    },
  ],
};
