/** What the pictures of the whole vessel say: section, plan of the head, the ring before bending. In French. */
import { frenchHoop } from '../../hoop-names.js';
import type { sectionWords } from './section.en.js';

const picture = (scale: string): string =>
  `Une image à l’échelle ${scale}, dans tous les formats, DXF aussi. Prendre les mesures dans ses chiffres ou dans les dessins en vraie grandeur, jamais en la mesurant.`;

export const sectionWordsFrench: typeof sectionWords = {
  title: 'Coupe et vue de l’ensemble',
  bung: 'trou de bonde',
  diameter: (size) => `⌀ ${size}`,
  hoop: (item, offset) => `${item} : ${offset}`,
  notes: {
    picture,
    views: (stave) =>
      `À gauche de l’axe : vu de l’extérieur. À droite : coupé le long de l’axe au milieu ${stave}, et en travers des pièces de chaque fond.`,
    bungStave: 'de la douelle de bonde',
    anyStave: 'd’une douelle',
    lines: 'Lignes larges : coupé. Lignes plus fines : arêtes vues. Hachuré : bois.',
    items:
      'Les numéros sont ceux de la liste. À côté d’un cercle suit la distance de son bord proche à son bout.',
    heights: 'Entre les fonds : la hauteur intérieure, de face à face.',
    depth: 'À l’intérieur : la profondeur du bord à la face du fond.',
  },
  parts: {
    title: 'Pièces',
    headings: (unit) => ['n°', 'pièce', 'nombre', `dimensions ${unit}`],
    stave: 'douelle sciée : longueur × largeur × épaisseur',
    boards: (numbers) => `pièce de fond ${numbers}`,
    dowel: 'goujon',
    hoop: (name) => `${frenchHoop(name)}, feuillard avant rivetage`,
    bung: 'trou de bonde',
    to: (from, to) => `${from} à ${to}`,
  },
  plan: {
    title: { both: 'Plan du fond', top: 'Plan du fond du haut', bottom: 'Plan du fond du bas' },
    board: (number, width) => `${number} : ${width}`,
    brand: (width, height) => `marque, ${width} × ${height}`,
    serial: (width, height) => `numéro de série, ${width} × ${height}`,
    notes: {
      seen: 'Vu de l’extérieur. Cercle extérieur : le bout des douelles ; cercle en tirets : le bord du fond dans son jable ; petits rectangles en tirets : goujons.',
      places: 'Rectangles fins : places pour une marque et un numéro de série.',
      boards: 'À côté de chaque pièce : son numéro depuis la plus basse, et sa largeur.',
      brand:
        'Marque et numéro restent à l’écart des joints. Un fer à marquer est brûlant et sa fumée malsaine : gants, air frais, de l’eau à portée ; suivre les règles locales.',
    },
  },
  raising: {
    title: 'Les douelles mises en rose, avant le cintrage',
    titleStraight: 'Les douelles dans leur cercle de montage',
    hoop: (diameter) => `cercle de montage, ⌀ intérieur ${diameter}`,
    gap: (gap) => `joints ouverts de ${gap}`,
    closed: 'joints fermés',
    notes: {
      picture,
      cask: 'Des douelles droites sont dressées dans le cercle de montage, joints fermés à cet endroit, faces extérieures pas encore arrondies ; au-dessous elles s’écartent, aussi droites qu’elles sont sciées.',
      tub: 'Les douelles d’un récipient droit ne sont pas cintrées : elles sont dressées dans le cercle de montage comme elles resteront, joints fermés sur toute leur longueur.',
      lean: (angle, per100) =>
        `Chaque douelle penche de ${angle} sur la verticale : son bout sort de ${per100} pour 100 de sa longueur.`,
      why: 'Avec moins de pente, les joints coinceraient sous le cercle avant de s’y fermer ; un cercle plus large les laisse ouverts.',
      measure:
        'Les diamètres sont pris d’une face extérieure à celle d’en face, les périmètres au ruban sur les arêtes.',
      stand:
        'Travailler avec un aide ou un second cercle : des douelles pas encore tenues peuvent tomber. Pas de doigts dans les joints quand on chasse le cercle.',
    },
    table: {
      title: 'Périmètres avant le cintrage',
      headings: (unit) => [
        'endroit',
        `du bout monté, le long de la douelle ${unit}`,
        `diamètre ${unit}`,
        `périmètre ${unit}`,
        `largeurs ensemble ${unit}`,
        `ouverture par joint ${unit}`,
      ],
      raised: 'bout monté',
      hoop: 'cercle de montage',
      bilge: 'bouge',
      middle: 'milieu',
      free: 'bout libre',
    },
  },
};
