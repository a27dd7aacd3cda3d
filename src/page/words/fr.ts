/** The page in French. */
import { frenchHoop } from '../../index.js';
import { fieldsFrench } from './fields.fr.js';
import { rackFrench } from './rack.fr.js';
import { spaceFrench } from './space.fr.js';
import { tablesFrench } from './tables.fr.js';
import type { Words } from './words.js';

export const fr: Words = {
  skip: 'Vers le récipient',
  close: 'Fermer',
  bar: {
    begin: 'Commencer par …',
    open: 'Ouvrir',
    save: 'Enregistrer',
    undo: 'Annuler',
    redo: 'Rétablir',
    toInches: 'Passer des mm aux pouces',
    toMillimetres: 'Passer des pouces aux mm',
    habits: 'Unité, langue, clarté',
    language: 'Langue',
    look: 'Clair ou sombre',
    languages: { en: 'English', de: 'Deutsch', fr: 'Français' },
    looks: { device: 'Comme l’appareil', light: 'Clair', dark: 'Sombre' },
  },
  files: {
    tooLarge: 'ce fichier est trop grand pour décrire un récipient.',
    notText: 'ce n’est pas un fichier de texte en UTF-8, comme il en faut ici.',
  },
  vessel: {
    picture: 'Le récipient avec ses cotes',
    litres: 'litres',
    outOfDate: 'Voici le dernier récipient qui pouvait se construire. La raison est dite plus bas.',
  },
  notes: { errors: 'Impossible à construire :', warnings: 'Attention :', goThere: 'Y aller' },
  strip: { title: 'Patrons et gabarits' },
  parts: {
    title: 'Plus sur ce récipient',
    settings: 'Réglages',
    sizing: 'Mettre à une contenance',
    space: 'Dans l’espace',
    numbers: 'Nombres',
    dip: 'Jauge',
    slips: 'Petites erreurs',
    output: 'Imprimer et couper',
    text: 'En texte',
  },
  settings: {
    about:
      'Les nombres penchés découlent des autres tant que vous n’en tapez pas. Une case vidée y revient.',
    heads: 'Fonds supérieur et inférieur',
    headsAlike: 'pareils',
    headsApart: 'chacun pour soi',
    headOf: { top: 'Fond supérieur', bottom: 'Fond inférieur' },
    stavesAre: 'Douelles de largeur',
    staveWays: { even: 'égale', uneven: 'inégale' },
    boardsAre: 'Pièces de largeur',
    boardWays: { even: 'égale', uneven: 'inégale' },
    bung: 'Bonde',
    bungs: { bored: 'avec trou', none: 'sans' },
  },
  ...fieldsFrench,
  hoops: {
    add: 'Ajouter un cercle',
    remove: (name) => `Ôter : ${frenchHoop(name)}`,
    name: frenchHoop,
  },
  problems: {
    empty: 'Il manque un nombre ici.',
    'not-a-length':
      'Ce n’est pas une longueur. Écrivez 37 3/8, 37.375 ou 949,5 ; mm, cm ou in peuvent suivre.',
    'two-readings':
      'Cela peut dire deux nombres. Ôtez la virgule des milliers, ou mettez un point avant les décimales.',
    'odd-fraction': 'Cette fraction ne peut se lire. Écrivez-la comme 37 3/8, en pouces.',
    'not-a-number': 'Ce n’est pas un nombre.',
    'broken-text':
      'Le texte est abîmé : rien ne peut y être changé d’ici. Réparez-le d’abord sous « En texte », ou annulez.',
  },
  textPart: {
    label: (file) => `Le texte tel qu’il s’enregistre : ${file}`,
    line: (line, column) => `Ligne ${line}, colonne ${column}`,
  },
  viewer: {
    before: 'Précédent',
    after: 'Suivant',
    larger: 'Plus grand',
    smaller: 'Plus petit',
    whole: 'En entier',
    trueSize: 'Vraie grandeur',
    measure: 'Mesurer',
    canvas:
      'Dessin. Les flèches le déplacent, plus et moins changent sa taille, 0 le montre en entier, Entrée marque le milieu quand on mesure.',
    takePoints: 'Touchez deux points.',
    notes: 'Notes et tableaux',
    place: (x, y) => `x ${x}, y ${y}`,
    station: (station, width, bevel, thickness) =>
      `station ${station} : largeur ${width}, angle de joint ${bevel}, ébauche ${thickness}`,
    measured: (distance, dx, dy) => `distance ${distance} : ${dx} selon x, ${dy} selon y`,
  },
  output: {
    caution:
      'Imprimez en vraie grandeur, 100 %, et mesurez le carré avant de couper. Scie, dégauchisseuse et fraiseuse : suivez la notice du fabricant et les règles locales.',
    paper: 'Papier',
    across: 'Mon imprimante trace 100 mm en travers comme … mm',
    along: 'et 100 mm dans la longueur comme … mm',
    printed:
      'Mesurez le carré sur une feuille imprimée et tapez ici ses côtés : les impressions suivantes sont corrigées.',
    badSide: 'Écrivez ce que mesuraient 100 mm, de 90 à 110 mm. Au-delà, c’est une autre échelle.',
    formats: 'Fichiers du lot',
    lettering: 'Inscriptions en DXF',
    pack: 'Le lot entier (zip)',
    packing: 'Tracé en cours …',
    spec: 'Le texte tel quel (YAML)',
    wholeSpec: 'Le texte avec toutes les valeurs',
    jobSheet: (format) => `La fiche de travail (${format})`,
    papers: (name) => (name === 'full' ? 'une feuille en vraie grandeur' : name),
    fan: {
      title: 'Largeurs de l’éventail de douelles',
      boxes: ['Douelle la plus étroite', 'Douelle la plus large'],
      about:
        'Pour des douelles de largeurs inégales : une ligne tous les 5 mm ou tous les quarts de pouce dans l’éventail, le gabarit de joint et le chariot de scie. Des cases vides laissent les largeurs d’usage. Pour les fichiers ; les images d’ici gardent les largeurs d’usage.',
    },
    plank: {
      title: 'Planche ou panneau pour les pièces des fonds',
      boxes: ['Longueur dans le fil', 'Largeur'],
      about:
        'Ce dont la fraiseuse tire les pièces. Des cases vides prennent la planche la plus courte qui suffise. Pour les fichiers ; les images d’ici gardent cette planche.',
    },
    sizeProblems: {
      'one-alone': 'Remplissez les deux cases, ou aucune.',
      'not-above-0': 'Cela doit dépasser 0.',
      'fan-order': 'La douelle la plus large ne peut être plus étroite que la plus étroite.',
      'fan-too-wide': 'Une douelle si large fait plus de la moitié du diamètre du récipient.',
      'fan-too-many': 'Cela fait plus de 60 largeurs. Rapprochez la plus étroite et la plus large.',
      'plank-too-large': 'Cela fait plus de 20 m.',
    },
    use: { svg: 'pour regarder', dxf: 'pour la fraiseuse', pdf: 'pour imprimer' },
    letterings: { text: 'en texte', outlines: 'en contours, pour graver' },
    give: (format) => `Enregistrer en ${format}`,
  },
  ...tablesFrench,
  space: spaceFrench,
  rack: rackFrench,
};
