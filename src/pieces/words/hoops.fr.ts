/** What the sheets of hoops say, in French. */
import { frenchHoop } from '../../hoop-names.js';
import type { hoopWords } from './hoops.en.js';

export const hoopWordsFrench: typeof hoopWords = {
  title: 'Cercles',
  strap: (number, name, ends, pieces, section) =>
    `${number} · ${frenchHoop(name)}, ${ends} : ${pieces === 1 ? '1 feuillard' : `${pieces} feuillards`} ${section}`,
  and: ' et ',
  upperEdge: (splay, per100) => `bord du haut : le long, ${splay} de plus (${per100} pour 100)`,
  straight: 'sans pente : les deux bords pareils',
  driving: (driving) => `plus petit de ${driving}, pour être chassé`,
  lap: (lap) => `recouvrement ${lap}`,
  holes: (distance) => `d’un trou au sien ${distance}`,
  cut: (length) => `couper d’équerre à ${length}`,
  kinds: {
    end: 'cercle de montage, près de chaque bout',
    quarter: 'cercle de travail, au collet',
    bilge: 'cercle de travail, au-dessus du bouge',
    top: 'cercle de montage, près du haut',
    middle: 'cercle de travail, milieu',
    bottom: 'cercle de travail, près du bas',
  },
  notes: {
    measured:
      'Un cercle se mesure sur le plus petit périmètre qu’il couvre. Longueur à couper : ce périmètre au milieu de l’épaisseur du feuillard, et le recouvrement, moins ce que prend le chassage. Bord proche : vers le bout d’où compte sa distance.',
    pairs:
      'River chaque trou avec le sien à l’autre bout : le plus extérieur d’un bout rencontre le plus intérieur de l’autre.',
    splay:
      'Évasement : ne marteler que le bord long, également d’un bout à l’autre, jusqu’à ce que le feuillard pose le long de son gabarit d’évasement. Le bord court garde sa longueur.',
    plain: 'Un cercle sans pente est une bande droite, aussi quand il est coupé dans la tôle.',
    rivets: (play) =>
      `Rivets d’usage courant, sans source : environ deux fois et demie l’épaisseur du feuillard, trous plus larges de ${play}, deux dans le recouvrement ou trois dans un feuillard large. Acier doux, fermés à froid.`,
    driving: (percent, travel) =>
      `Chassage d’usage courant, sans source : ${percent} % du périmètre, jamais plus que ce que la pente gagne sur ${travel}. Chasser au marteau et à la chasse tout autour, peu à la fois.`,
    waste: (percent) =>
      `Acier à acheter : ${percent} % de plus pour l’équerrage et les chutes (usage courant, sans source). Masse à 7850 kg par m³.`,
    working:
      'Cercles de montage et de travail : périmètre intérieur, joints fermés, à des hauteurs d’usage courant, sans source. « Plat » : le périmètre sur des douelles pas encore arrondies.',
    steel:
      'Les bords du feuillard coupent et un cercle sous tension peut sauter : gants et lunettes, personne dans l’axe du cercle ; ébavurer tous les bords.',
    broken:
      'Vue interrompue : les deux bouts sont en vraie grandeur, le milieu est omis. La longueur à couper est le chiffre, non l’image ; le fichier pour fraiseuse a tout le feuillard.',
  },
  tables: {
    girths: {
      title: 'Périmètres et évasement',
      headings: (unit) => [
        'n°',
        'cercle',
        'bout',
        `périmètre proche ${unit}`,
        `périmètre éloigné ${unit}`,
        'pente',
        `évasement ${unit}`,
        'pour 100',
      ],
    },
    straps: {
      title: 'Feuillards à couper',
      headings: (unit, massUnit) => [
        'n°',
        'pièces',
        `longueur ${unit}`,
        `largeur × épaisseur ${unit}`,
        `recouvrement ${unit}`,
        `chassage ${unit}`,
        `rivets ${unit}`,
        `trous depuis chaque bout ${unit}`,
        `masse de chacun ${massUnit}`,
      ],
    },
    rivets: (count, diameter) => `${count} de ⌀ ${diameter}`,
    noRivets: 'aucun : souder',
    buy: {
      title: 'Acier à acheter',
      headings: (unit, massUnit) => [
        `largeur × épaisseur ${unit}`,
        'pièces',
        `longueur totale ${unit}`,
        `avec chutes ${unit}`,
        `masse ${massUnit}`,
      ],
    },
    working: {
      title: 'Cercles de montage et de travail',
      headings: (unit) => [
        'cercle',
        `sous le bout du haut ${unit}`,
        `périmètre intérieur ${unit}`,
        `plat ${unit}`,
        `diamètre intérieur ${unit}`,
      ],
    },
  },
  sheet: {
    title: (number, name) => `Cercle ${number}, ${name}, coupé dans la tôle`,
    short: (radius) => `bord court : rayon ${radius}`,
    long: (radius) => `bord long : rayon ${radius}`,
    sweep: (angle) => `ouverture ${angle}`,
    notes: {
      broken:
        'Vue interrompue : les deux bouts sont en vraie grandeur, chacun redressé ; ce qui est entre eux est omis. Tracer les bords par les rayons ; le fichier pour fraiseuse a tout le cercle.',
      use: (pieces) =>
        `En couper ${pieces} comme celui-ci dans la tôle à la place du feuillard : pas besoin de marteler. Le bord court va vers le périmètre le plus étroit.`,
      strike: (short, long) =>
        `Tracer les deux bords d’un même point au compas à verge : une latte avec un clou et deux trous de crayon, à ${short} et ${long} du clou.`,
      mark: (chord, rise) =>
        `Contrôle : les bouts du bord court sont à ${chord} l’un de l’autre en ligne droite, et son milieu s’écarte de ${rise} de cette ligne.`,
      overlap: (overlap) =>
        `Au milieu de sa largeur, les bouts se recouvrent de ${overlap} : le recouvrement, et ce que prend le chassage. Les lignes fines montrent jusqu’où.`,
      edges: 'Les bords d’acier coupent : ébavurer tout autour avant de cintrer.',
    },
  },
  splay: {
    title: 'Gabarit d’évasement',
    name: (number, name) => `${number} · ${frenchHoop(name)}`,
    short: 'bord rond : dans le creux du bord court',
    bench: 'pied sur l’établi, bout en pente contre le cercle',
    slope: (angle, per100) => `pente ${angle}, ${per100} pour 100`,
    notes: {
      curve:
        'En martelant : poser le feuillard à plat sur l’enclume ou l’établi. Son bord court se creuse ; il est assez évasé quand le bord rond du gabarit entre sans jour dans ce creux, tout le long du feuillard.',
      standing:
        'Une fois rivé : poser le cercle sur son bord long sur un établi plan et mettre le gabarit à côté, dehors. Le bout en pente doit poser contre le feuillard ; du jour au pied veut dire trop peu d’évasement, du jour en haut trop.',
      rise: 'La flèche est ce dont le bord rond s’écarte d’un bord droit sur tout le gabarit.',
    },
    table: {
      title: 'Évasement',
      headings: (unit) => [
        'n°',
        'cercle',
        'pente',
        'pente pour 100',
        'évasement pour 100',
        `rayon ${unit}`,
        `gabarit long ${unit}`,
        `flèche ${unit}`,
      ],
    },
  },
};
