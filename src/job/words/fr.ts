/** The job sheet in French. Trade words are those of the drawings: jable, peigne, gorge, languette, évasement. */
import type { JobWords } from './job-words.js';

export const fr: JobWords = {
  language: 'fr',
  title: 'Fiche de travail',
  ends: { top: 'haut', bottom: 'bas' },
  atEnd: (end, text) => `${end} : ${text}`,
  numbers: {
    heading: (unit) => `Le récipient, toutes longueurs en ${unit === 'mm' ? 'mm' : 'pouces'}`,
    capacity: 'contenance',
    height: 'hauteur',
    bilge: '⌀ extérieur, bouge',
    ends: '⌀ extérieur, bouts',
    top: '⌀ extérieur, haut',
    bottom: '⌀ extérieur, bas',
    wall: 'paroi',
    staves: 'douelles',
    empty: 'masse, vide',
    full: 'masse, plein d’eau',
  },
  list: {
    title: 'Débit, largeurs après jointage',
    headings: ['pièce', 'nombre', 'longueur', 'largeur', 'épaisseur'],
    stave: 'merrain, avec rechanges',
    heads: { both: 'fond', top: 'fond du haut', bottom: 'fond du bas' },
    boards: (head, numbers) => `${head} : pièce ${numbers}`,
    dowels: (head) => `${head} : goujons`,
    strap: (hoop, end) => `feuillard, ${hoop}${end === '' ? '' : `, ${end}`}`,
  },
  steps: {
    heading: 'Ordre du travail : cocher, écrire la mesure à côté de sa cote',
    wood: {
      title: 'Fendre',
      text: (bolt, count, width, thickness) =>
        `Billes de ${bolt} : ${count} merrains sur maille, verts ${width}\u00a0×\u00a0${thickness} ; sécher à l’air.`,
      caution: 'Coins, coutre : yeux couverts, pieds à l’écart.',
    },
    plane: {
      title: 'Raboter les merrains',
      text: (length) => `Scier d’équerre à ${length}, raboter plan. Coller les étiquettes.`,
      thickness: 'épaisseur',
      caution:
        'Scie, raboteuse : protecteurs, poussoirs, ouïe, yeux, poussière ; notice du fabricant.',
    },
    joint: {
      title: 'Jointer',
      cask: (bilge, ends, bilgeBevel, endBevel) =>
        `Bouge large de ${bilge}, angle de joint ${bilgeBevel} ; bouts ${ends}, angle ${endBevel}.`,
      tub: (top, bottom, bevel, tilt) =>
        `Haut large de ${top}, bas ${bottom} ; angle de joint ${bevel}, scie d’équerre au chant ${tilt}.`,
      mixed: 'Chaque douelle à la largeur de son étiquette ; angles au gabarit de joint.',
      before: 'périmètre avant jointage',
      laid: 'largeur étalée sur l’établi',
      caution: 'Colombe, dégauchisseuse : poussoir, mains derrière le fer.',
    },
    hollow: {
      title: 'Évider dedans',
      text: (radius) => `Rayon ${radius} au plus large ; les joints gardent leur épaisseur.`,
      thickness: 'reste au milieu',
    },
    raise: {
      title: 'Mettre en rose',
      text: (count) => `Dresser ${count} douelles dans le cercle de montage, flèches en haut.`,
      bung: 'La plus large est la douelle de bonde.',
      beforeFire: (down) => `périmètre avant le feu, à ${down} du bout`,
      inHoop: (down) => `périmètre au cercle, à ${down} du bout`,
      caution: 'Douelles et cercles tombent : un aide, doigts à l’écart.',
    },
    fire: {
      title: 'Chauffer, cintrer',
      text: (stretch, girth) =>
        `Mouiller, chauffer à cœur, serrer lentement, poser les cercles de travail (collet : périmètre ${girth}). Dehors : +${stretch} %. Refroidir ; bousiner.`,
      girth: 'périmètre au bouge',
      caution:
        'En plein air ou sous une hotte, eau à portée, gants, ne laisser aucune braise ; règles locales sur le feu. Douelles chaudes sous tension : rester hors de leur ligne.',
    },
    trim: {
      title: 'Rogner, chanfrein',
      titlePlain: 'Rogner les bouts',
      text: (bevel, flat) =>
        `D’équerre à l’axe ; chanfrein du peigne ${bevel} du bout, ${flat} restent plats.`,
      plain: 'D’équerre à l’axe, les deux bouts.',
      height: 'hauteur',
    },
    groove: {
      title: 'Jabler',
      howel: (depth) => `Gorge profonde de ${depth}.`,
      text: (inset, width, depth) =>
        `Jable large de ${width}, profond de ${depth}, milieu à ${inset} du bout.`,
      compass: 'Six pas du compas font le tour.',
      radius: (end) => `compas, ${end}`,
    },
    round: {
      title: 'Arrondir dehors',
      text: (radius) => `Au gabarit d’arrondi, rayon ${radius} au plus large.`,
      girth: 'périmètre',
    },
    head: {
      title: 'Fonds',
      titleOpen: 'Fond',
      joints: 'Jointer, goujonner, poser le jonc.',
      text: (land, depth, fromInside, outer, inner) =>
        `Languette ${land}\u00a0×\u00a0${depth}, milieu à ${fromInside} de l’intérieur ; chanfreins ${outer} dehors, ${inner} dedans.`,
      diameter: (end) => `⌀ ${end}`,
      caution: 'Scie, perceuse, fraise : brider la pièce ; notice du fabricant.',
    },
    setHead: {
      title: 'Poser les fonds',
      titleOpen: 'Poser le fond',
      text: (opening, girth) =>
        `Ôter les cercles de ce bout ; il s’ouvre de ${opening} en rayon, de ${girth} en périmètre.`,
      caution: 'Une douelle libre se détend : doigts hors du jable.',
    },
    hoop: {
      title: 'Cercles',
      place: (name, offset) => `${name} ${offset}`,
      text: (places) => `River, évaser, chasser. Du bout : ${places}.`,
      caution: 'L’acier coupe, un cercle peut sauter : gants, yeux couverts.',
    },
    bung: {
      title: 'Trou de bonde',
      text: (diameter) => `⌀ ${diameter}, au milieu de la douelle de bonde.`,
    },
    test: {
      title: 'Essai à l’eau',
      text: 'Un peu d’eau chaude, agiter sur chaque fond ; puis remplir et attendre.',
      open: 'Remplir au bord, laisser gonfler, attendre un jour.',
      litres: 'rempli',
      leaks: 'fuites',
      caution: 'De l’eau, jamais d’air comprimé. L’eau chaude gicle : laisser l’air sortir.',
      openCaution: 'Sur un appui ferme et de niveau.',
    },
    handOver: {
      title: 'Finir',
      text: 'Marque et numéro ; garder au sec et à l’ombre.',
      lifting: (mass) => `Plein d’eau ${mass} : palan ou aides.`,
      gas: 'Fermentation ou soufre : le gaz tue, ne pas y mettre la tête, aérer.',
      food: 'Bois, métal, cire au contact des aliments : règles locales ; professionnels agréés où la loi l’exige.',
    },
  },
  labels: 'Étiquettes à couper et à coller : place, ↑ haut, largeur ; + rechange',
  takeCare: (caution) => `Prudence : ${caution}`,
};
