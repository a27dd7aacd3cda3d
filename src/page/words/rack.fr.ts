/** The sheet of the rack in French. */
import type { RackWords } from './rack.js';

const staves = (count: number): string => (count === 1 ? '1 douelle' : `${count} douelles`);

export const rackFrench: RackWords = {
  title: 'Tas de douelles',
  handle: (count) => (count === 0 ? 'Tas de douelles' : `Tas : ${staves(count)}`),
  width: (unit) => `Largeur, ${unit}`,
  mark: 'Marque',
  add: 'Suivante',
  added: (mark, width, count) => `${mark} : ${width}. ${staves(count)} dans le tas.`,
  noStave: 'n’est pas une largeur de douelle : de 10 à 400 mm.',
  list: 'Douelles du tas',
  open: 'Ouvrir une liste (CSV)',
  save: 'Enregistrer la liste (CSV)',
  clear: 'Vider le tas',
  bringBack: 'Les remettre',
  bung: 'bonde',
  bungOf: (mark) => `La douelle ${mark} peut porter la bonde`,
  remove: (mark) => `Ôter la douelle ${mark}`,
  nothingTaken: 'Rien n’a été pris de cette liste. Ce qui n’y va pas :',
  line: (line) => `Ligne ${line} :`,
  faults: {
    empty: () =>
      'la liste est vide. Il lui faut un en-tête avec mark et width, puis une ligne par douelle.',
    'quote-open': () => 'un guillemet n’est jamais fermé.',
    'quote-followed': () => 'du texte suit un guillemet fermant.',
    'heading-missing': (found) => `l’en-tête ne nomme pas de colonne « ${found} ».`,
    'heading-doubled': (found) => `la colonne « ${found} » est là deux fois.`,
    'heading-unknown': (found) => `la colonne « ${found} » n’est pas lue.`,
    'fields-extra': (found) =>
      `« ${found} » dépasse la dernière colonne. Une virgule décimale veut des guillemets, ou des points-virgules entre les colonnes.`,
    'mark-missing': () => 'cette douelle n’a pas de marque.',
    'mark-unprintable': () => 'la marque a un caractère qui ne s’imprime pas.',
    'mark-doubled': (found, line) => `la marque « ${found} » est déjà à la ligne ${line}.`,
    'width-missing': () => 'cette douelle n’a pas de largeur.',
    'length-unreadable': (found) =>
      `« ${found} » n’est pas une longueur. Écrivez 71.5, 71,5 ou 2 13/16 in.`,
    'width-absurd': (found) => `${found} n’est pas une largeur de douelle : de 10 à 400 mm.`,
    'length-absurd': (found) => `${found} n’est ni longueur ni épaisseur d’une douelle.`,
    'unit-mistaken': (found, heading) =>
      `« ${found} » et presque toute cette colonne sont dans une autre unité : intitulez-la « ${heading} », et de même les autres dans cette unité.`,
    'readings-apart': (found, mm) =>
      `les lectures ${found} diffèrent de ${mm} mm ; leur moyenne est prise. Mesurer encore ?`,
    'bung-unreadable': (found) => `« ${found} » n’est ni yes ni no.`,
  },
  choose: 'Choisir des jeux',
  stop: 'Arrêter, prendre le meilleur jusqu’ici',
  vessels: 'Combien de récipients',
  asMany: 'autant que le tas en donne',
  measuredAs: 'Les largeurs sont mesurées',
  measured: {
    blank: 'sur la face plate, avant d’arrondir',
    backed: 'd’un coin à l’autre, après avoir arrondi',
  },
  more: 'Précision, nombre de douelles, rabotage, douelle de bonde',
  count: 'Douelles par récipient, comme 25-30',
  tolerance: (unit) => `Le diamètre peut s’écarter de, ${unit}`,
  plane: (unit) => `À raboter au plus par jeu, ${unit}`,
  bungWidth: (unit) => `Douelle de bonde d’au moins, ${unit}`,
  noBung: 'sans douelle de bonde',
  problems: {
    'no-vessels': 'Écrivez un nombre entier au-dessus de 0.',
    'no-count': 'Écrivez un nombre, ou deux comme 25-30, à partir de 3.',
  },
  searching: 'Choix en cours …',
  progress: ({ stage, done, of }) =>
    stage === 'choosing'
      ? `Choix : ${done} jeux sur ${of} se ferment jusqu’ici.`
      : `Mise en ordre : ${done} jeux sur ${of}.`,
  failed: 'La recherche s’est rompue. Essayez encore, avec moins de douelles.',
  wrong: {
    diameter: (found) => `Aucun anneau ne se ferme à ${found} mm de diamètre.`,
    vessels: (found) => `${found} n’est pas un nombre de récipients.`,
    'count-whole': (found) => `${found} n’est pas un nombre entier de douelles.`,
    'count-few': (found, allowed) => `${found} douelles : possible ${allowed}.`,
    'count-order': (found) => `${found} a le plus grand nombre d’abord.`,
    tolerance: (found, allowed) => `Un écart de ${found} mm : possible ${allowed} mm.`,
    plane: (found, allowed) => `Raboter ${found} mm : possible ${allowed} mm.`,
    bung: (found, allowed) => `Une douelle de bonde de ${found} mm : il faut ${allowed} mm.`,
    'standing-unknown': (found) => `Le tas n’a pas de douelle ${found}.`,
    'standing-doubled': (found) => `La douelle ${found} est là deux fois.`,
    'standing-many': (found, allowed) =>
      `${found} douelles montées : un récipient en a ${allowed} au plus.`,
  },
  sets: 'Jeux choisis',
  set: (number) => `Jeu ${number}`,
  found: (sets) => (sets === 1 ? '1 jeu se ferme.' : `${sets} jeux se ferment.`),
  proven: (bound) => `Aucune méthode n’en fait plus de ${bound}.`,
  bound: (bound) => `Plus de ${bound} sont exclus.`,
  reasons: {
    wood: (girth) => `Pour un de plus il manque au tas ${girth} de tour.`,
    counts: () => 'Tant de douelles de ces largeurs ne font pas le tour.',
    noBung: (_, width) =>
      `Aucune douelle du tas ne peut prendre la bonde : aucune de celles permises n’a au moins ${width} de large.`,
    bung: () => 'Pour un de plus il manque une douelle de bonde.',
    widths: () => 'Pour un de plus ces largeurs ne tombent pas assez juste.',
    search: () => 'Un de plus n’a pas été trouvé, sans être exclu.',
    stopped: () => 'La recherche a été arrêtée ; voici le meilleur jusqu’ici.',
    standing: () => 'Les douelles montées ne se laissent pas compléter.',
  },
  help: (count, from, to) =>
    `${staves(count)} de ${from === to ? from : `${from} à ${to}`} feraient un jeu de plus.`,
  closes: (diameter, count, laid) =>
    `Se ferme à ${diameter}. ${staves(count)}, bord à bord ${laid}.`,
  standing: (done, of) => (done === of ? 'Tout est monté.' : `Montées : ${done} sur ${of}.`),
  stands: (mark) => `La douelle ${mark} est montée`,
  left: (count) => `Restent dans le tas ${staves(count)} :`,
  headings: (unit) => [
    ...['montée', 'n°', 'marque', `largeur, ${unit}`],
    ...[`raboter, ${unit}`, `jusqu’ici, ${unit}`],
  ],
  caution:
    'Des douelles pas encore tenues peuvent tomber : travaillez avec un aide ou un second cercle, pas de doigts dans les joints quand on chasse le cercle.',
  draw: 'Dessiner le récipient de ce jeu',
  begun: 'Douelles déjà montées, dans leur ordre',
  begunHint: 'Elles restent côte à côte, dans le premier jeu. Ou touchez « montée » dans la liste.',
  standsNow: 'montée',
  standsNowOf: (mark) => `La douelle ${mark} est déjà montée`,
  enough: (count, fewest, vessels) =>
    `Le tas a ${staves(count)} : à ${fewest} au moins par récipient, assez pour ${vessels} au plus.`,
  broken: {
    hint: 'Une douelle est cassée ? Touchez sa marque.',
    ask: (mark) => `${mark} : cassée, qu’est-ce qui la remplace ?`,
    about: (mark, place, of, width) =>
      `Cassée : ${mark}, place ${place} sur ${of}, large de ${width}.`,
    bungStave: 'C’est la douelle de bonde, et celle qui la remplace doit l’être aussi.',
    none: 'Aucune rechange du tas ne la remplace.',
    take: (mark) => `Prendre ${mark}`,
    plane: (off) => `raboter ${off}`,
    asItIs: 'telle quelle',
    closes: (diameter) => `l’anneau se ferme à ${diameter}`,
    cut: (width, from, to) =>
      `Ou en tailler une large de ${width} ; de ${from} à ${to} on reste assez juste.`,
    leaves: (mark) => `Dès qu’une est prise, ${mark} quitte le tas.`,
    taken: (gone, mark) => `${mark} prend la place de ${gone}, qui a quitté le tas.`,
  },
  files: 'Fichiers de ce jeu (zip)',
  makingFiles: 'Ses douelles se dessinent …',
  noVessel: 'Ce jeu ne fait pas de récipient, donc pas de fichiers.',
  offTheRack: 'Ôter ces douelles du tas',
  forget: 'Ranger ces jeux',
};
