/** Every message's wording, in French; `wording.ts` says how it is built and how to add one. */
import { frenchText } from '../language.js';
import type { Manner, Say } from './say.js';
import { wordingOf as words, type Wording } from './wording.js';
import type { AllWordings } from './wordings.js';

const unitNames: Record<string, string> = { mm: 'millimètres', in: 'pouces' };
const ends: Record<string, string> = { top: 'haut', bottom: 'bas' };
const endOf = (say: Say): string => ends[say.word('end')] ?? say.word('end');
const didYouMean = (say: Say): string =>
  say.has('meant') ? `Est-ce \`${say.word('meant')}\` ?` : '';

function wrongLength(say: Say, problem: string): Wording {
  const other = say.word('meant');
  const hint = say.has('meant')
    ? `Le nombre conviendrait en ${unitNames[other]} : est-ce \`units: ${other}\` ?`
    : `Les longueurs de ce fichier sont en ${unitNames[say.units]} : vérifier le nombre.`;
  return words(
    say.length('found'),
    say.range('min', 'max'),
    `\`${say.key}\` est ${problem}.`,
    hint,
  );
}

function unreadableLength(say: Say, remedy: string): Wording {
  const text = `\`${say.key}\` est une longueur, et ceci ne se lit pas comme telle.`;
  return words(say.word('found'), say.range('min', 'max'), text, remedy);
}

const kinds: Record<string, string> = {
  count: 'un nombre entier',
  share: 'une part',
  degrees: 'un angle en degrés',
  length: 'une longueur',
};

function allowedNumber(say: Say): string {
  if (say.word('unit') === 'length') return say.range('min', 'max');
  const unit = say.word('unit') === 'degrees' ? ' degrés' : '';
  return `${say.number('min')} à ${say.number('max')}${unit}`;
}

function wrongNumber(say: Say, found: string, text: string): Wording {
  return words(found, allowedNumber(say), text);
}

const syntaxProblems: Record<string, string> = {
  TAB_AS_INDENT: 'La ligne est en retrait par une tabulation. Mettre des espaces.',
  BAD_INDENT:
    'La ligne n’a pas le retrait de ses voisines. Les clés d’une section commencent dans une même colonne.',
  MISSING_CHAR:
    'Il manque quelque chose ici ou au-dessus : un guillemet ou un crochet fermant, une accolade, une virgule, ou une espace après un deux-points.',
  BLOCK_AS_IMPLICIT_KEY:
    'Deux clés sont sur une ligne, ou un texte avec deux-points n’a pas de guillemets. Écrire une clé par ligne, et un tel texte entre guillemets.',
  MULTILINE_IMPLICIT_KEY: 'Cette ligne n’a pas de deux-points après sa clé. Écrire `clé: valeur`.',
  KEY_OVER_1024_CHARS: 'La clé a plus de mille caractères.',
  BAD_DQ_ESCAPE:
    'Une barre oblique inverse entre guillemets doubles commence un code qui n’existe pas. Prendre des guillemets simples.',
  BAD_SCALAR_START: 'Un texte qui commence par @ ou ` doit être entre guillemets.',
  BAD_ALIAS: 'Un texte qui commence par * ou & doit être entre guillemets.',
};
const otherSyntax =
  'Ceci ne se lit pas comme du YAML. Vérifier crochets, guillemets et deux-points de cette ligne et de celle au-dessus.';

const messages: AllWordings['messages'] = {
  // The file as a whole

  'file-empty': () =>
    words(
      'aucune clé',
      'les données d’un récipient',
      'Le fichier est vide. Il faut au moins vessel, units, height, les diamètres extérieurs et staves.',
    ),
  'file-too-big': (say) =>
    words(
      `${say.number('found')} caractères`,
      `${say.number('most')} caractères`,
      'Le fichier est trop gros et n’a pas été lu.',
    ),
  'file-too-long': (say) =>
    words(
      `plus de ${say.number('most')} mots et signes`,
      `${say.number('most')} mots et signes`,
      'Le fichier est trop long et n’a pas été lu.',
    ),
  'not-a-text-file': () =>
    words(
      'des octets qui ne sont pas du texte',
      'du texte en UTF-8',
      'Ce n’est pas un fichier de texte, ou pas en UTF-8. L’enregistrer en texte simple, UTF-8.',
    ),
  'nested-too-deep': (say) =>
    words(
      `plus de ${say.number('most')} niveaux`,
      `${say.number('most')} niveaux`,
      'Des listes ou des sections sont trop profondément l’une dans l’autre. Quatre niveaux suffisent.',
    ),
  'yaml-syntax': (say) => words('', '', syntaxProblems[say.word('problem')] ?? otherSyntax),
  'several-documents': () =>
    words(
      'un second document',
      'un récipient par fichier',
      'Une ligne `---` commence ici un second document. Mettre chaque récipient dans son propre fichier.',
    ),
  'yaml-directive': () =>
    words(
      'une ligne qui commence par %',
      'du YAML simple',
      'Des directives comme %YAML ne servent pas ici. Ôter la ligne.',
    ),
  'root-not-keys': () =>
    words(
      'une liste ou une seule valeur',
      'des lignes `clé: valeur`',
      'Le fichier ne décrit pas un récipient : il n’est pas fait de clés avec des valeurs.',
    ),
  'yaml-alias': (say) =>
    words(
      say.word('found'),
      'la valeur même',
      'Les renvois par * ne servent pas ici. Écrire la valeur même, ou mettre le texte entre guillemets.',
    ),
  'yaml-anchor': (say) =>
    words(
      say.word('found'),
      'la valeur seule',
      'Les marques par & ne servent pas ici. Ôter la marque, ou mettre le texte entre guillemets.',
    ),
  'yaml-tag': (say) =>
    words(
      say.word('found'),
      'la valeur seule',
      'Les types par ! ne servent pas ici. Ôter le type, ou mettre le texte entre guillemets.',
    ),
  'merge-key': () =>
    words('<<', 'les clés mêmes', 'La clé `<<` ne sert pas ici. Écrire les clés en entier.'),
  'more-issues': (say) =>
    words(
      `${say.number('more')} de plus`,
      '',
      'Il y a plus de fautes qu’on n’en montre. Corriger d’abord celles-ci.',
    ),
  'not-understood': (say) =>
    words(say.word('found'), '', `\`${say.key}\` ne peut pas servir tel quel.`),

  // Keys

  missing: (say) =>
    words(
      'rien',
      'une valeur',
      `\`${say.key}\` manque et n’a pas de valeur par défaut. L’ajouter.`,
    ),
  'no-staves': () =>
    words(
      'rien',
      '`staves.count` ou `staves.widths`',
      'Combien de douelles ? Ajouter `staves: { count: ... }`, ou `widths: [...]` pour des largeurs inégales.',
    ),
  'unknown-key': (say) => {
    const away = say.has('elsewhere') ? `Sa place est sous ${say.word('elsewhere')}.` : '';
    return words(
      say.word('found'),
      say.word('allowed'),
      `\`${say.key}\` n’est pas une clé ici.`,
      didYouMean(say) || away || 'L’ôter.',
    );
  },
  'key-doubled': (say) =>
    words(
      'la clé encore une fois',
      'chaque clé une fois',
      `\`${say.key}\` y est deux fois, d’abord à la ligne ${say.number('first')}. En ôter une.`,
    ),
  'key-not-text': () =>
    words(
      'une clé qui n’est pas un mot',
      'des mots comme clés',
      'Cette ligne n’a pas de mot pour clé. Écrire `clé: valeur`.',
    ),
  'key-of-other-vessel': (say) =>
    say.word('vessel') === 'cask'
      ? words(
          say.key,
          'bilge et ends',
          `\`${say.key}\` va avec un récipient droit (tub). Un fût a bilge et ends ; ou écrire \`vessel: tub\`.`,
        )
      : words(
          say.key,
          'top et bottom',
          `\`${say.key}\` va avec un fût (cask). Un récipient droit a top et bottom ; ou écrire \`vessel: cask\`.`,
        ),
  'tub-without-top': () =>
    words(
      'heads.top',
      'heads.bottom',
      'Un récipient droit (tub) n’a de fond qu’en bas. Ôter `heads.top`.',
    ),

  // Values

  'not-a-group': (say) =>
    words(
      say.word('found'),
      'des clés avec des valeurs',
      `\`${say.key}\` contient des clés, comme \`{ clé: valeur }\` ou des lignes en retrait au-dessous.`,
    ),
  'not-a-list': (say) =>
    words(
      say.word('found'),
      'une liste',
      `\`${say.key}\` est une liste : entre crochets, ou en lignes qui commencent par un tiret ; [] pour aucune.`,
    ),
  'list-too-long': (say) =>
    words(
      `${say.number('found')} entrées`,
      `au plus ${say.number('most')}`,
      `\`${say.key}\` a trop d’entrées.`,
    ),
  'list-too-short': (say) =>
    words(
      `${say.number('found')} entrées`,
      `au moins ${say.number('least')}`,
      `\`${say.key}\` a trop peu d’entrées.`,
    ),
  'not-a-choice': (say) =>
    words(
      say.word('found'),
      say.word('allowed'),
      `\`${say.key}\` doit être un de ces mots.`,
      didYouMean(say),
    ),
  'not-a-bung': (say) =>
    words(
      say.word('found'),
      '{ diameter: ... } ou none',
      'Écrire `bung: { diameter: ... }`, ou `bung: none`.',
    ),
  'not-text': (say) =>
    words(
      say.word('found'),
      'une ligne de texte',
      `\`${say.key}\` doit être du texte. Le mettre entre guillemets.`,
    ),
  'text-of-several-lines': (say) =>
    words(
      say.word('found'),
      'une ligne de texte',
      `\`${say.key}\` contient un saut de ligne. L’écrire sur une ligne.`,
    ),
  'text-unprintable': (say) =>
    words(
      say.word('character'),
      'des lettres, des chiffres et des signes',
      `\`${say.key}\` contient un caractère qui ne s’imprime pas. L’ôter.`,
    ),
  'text-too-long': (say) =>
    words(
      `${say.number('length')} caractères`,
      `au plus ${say.number('most')}`,
      `\`${say.key}\` est trop long pour un dessin.`,
    ),
  'name-not-plain': (say) =>
    words(
      say.word('found'),
      'lettres, chiffres, espaces, traits d’union, points isolés',
      `\`${say.key}\` entre dans des noms de fichiers. Prendre un nom simple, comme chime.`,
    ),
  'not-a-number': (say) =>
    wrongNumber(
      say,
      say.word('found'),
      `\`${say.key}\` est ${kinds[say.word('unit')] ?? 'un nombre'} : écrire des chiffres, sans guillemets.`,
    ),
  'not-finite': (say) =>
    wrongNumber(say, say.word('found'), `\`${say.key}\` doit être un nombre fini.`),
  'not-whole': (say) =>
    wrongNumber(say, say.word('found'), `\`${say.key}\` doit être un nombre entier.`),
  'number-out-of-range': (say) =>
    wrongNumber(say, say.number('found'), `\`${say.key}\` est hors de ce qui peut se construire.`),
  'length-too-small': (say) => wrongLength(say, 'trop petit'),
  'length-too-large': (say) => wrongLength(say, 'trop grand'),
  'not-a-length': (say) =>
    unreadableLength(
      say,
      say.units === 'in'
        ? 'Écrire les pouces comme 37.375 ou 37 3/8.'
        : 'Écrire les millimètres comme un nombre, tel 945 ou 37.5.',
    ),
  'comma-in-number': (say) =>
    unreadableLength(say, 'Dans le fichier, les décimales suivent un point, non une virgule.'),
  'unit-in-length': (say) =>
    unreadableLength(
      say,
      `Écrire le nombre seul : \`units: ${say.units}\` dit en quoi il est mesuré.`,
    ),
  'quoted-number': (say) => unreadableLength(say, 'Ôter les guillemets.'),
  'fraction-in-millimetres': (say) =>
    unreadableLength(say, 'Les fractions sont pour les pouces : est-ce `units: in` ?'),

  // One key against another

  'profile-not-built': () =>
    words(
      'measured',
      'arc, parabola, ellipse',
      'Un profil mesuré n’existe pas encore. Choisir la formule la plus proche.',
    ),
  'bilge-below-ends': (say) =>
    words(
      say.length('bilge'),
      `plus que les bouts, ${say.length('ends')}`,
      'Un fût est le plus large au bouge. bilge et ends sont-ils échangés ?',
    ),
  'bilge-equals-ends': (say) =>
    words(
      say.length('bilge'),
      `plus que les bouts, ${say.length('ends')}`,
      'Un récipient aussi large au bouge qu’aux bouts a des douelles droites : écrire `vessel: tub`, avec top et bottom.',
    ),
  'count-and-widths': () =>
    words(
      'count et widths',
      'l’un des deux',
      'Des douelles égales ont un nombre (count), des inégales des largeurs (widths). Ôter l’un des deux.',
    ),
  'boards-and-widths': () =>
    words(
      'boards et widths',
      'l’un des deux',
      'Des pièces de fond égales ont un nombre (boards), des inégales des largeurs (widths). Ôter l’un des deux.',
    ),
  'end-thickness-far-off': (say) =>
    words(
      say.length('endThickness'),
      say.range('min', 'max'),
      `Les bouts d’une douelle épaisse de ${say.length('thickness')} ne peuvent pas s’en écarter autant.`,
    ),
  'chime-flat-too-wide': (say) =>
    words(
      say.length('flat'),
      `au plus ${say.length('endThickness')}`,
      'Le plat du peigne est plus large que le bout de la douelle n’est épais. Le faire plus étroit.',
    ),
  'no-room-inside': (say) =>
    words(
      say.length('thickness'),
      `moins de ${say.length('max')}`,
      `Des douelles si épaisses ne laissent pas de place dans un récipient de ${say.length('diameter')}.`,
    ),
  'land-thicker-than-groove': (say) =>
    words(
      say.length('land'),
      `au plus ${say.length('groove')}`,
      'La languette du fond est plus épaisse que son jable n’est large, et n’y entre pas. Amincir la languette ou élargir le jable.',
    ),
  'land-outside-head': (say) =>
    words(
      say.length('fromInside'),
      say.range('least', 'most'),
      'La languette sortirait en partie du fond. La déplacer par `edge.fromInside`, ou épaissir le fond.',
    ),
  'dowel-thicker-than-head': (say) =>
    words(
      say.length('diameter'),
      `moins de ${say.length('thickness')}`,
      'Les goujons sont plus épais que le fond. En prendre de plus minces.',
    ),
  'groove-at-the-end': (say) =>
    words(
      say.length('inset'),
      `plus de ${say.length('least')}`,
      'Le jable éclaterait au bout des douelles. Le mettre plus en dedans.',
    ),
  'no-room-between-heads': (say) =>
    words(
      say.length('taken'),
      `moins de ${say.length('height')}`,
      'Peignes et fonds prennent toute la hauteur. Réduire `croze.inset`.',
    ),
  'hoop-beyond-vessel': (say) =>
    words(
      say.length('offset'),
      `moins de ${say.length('height')}`,
      'Le cercle est au-delà de l’autre bout. `offset` se compte du plan du bout, le long de l’axe.',
    ),
  'hoop-name-doubled': (say) =>
    words(
      say.word('name'),
      'un nom pour chacun',
      'Deux cercles d’un même bout ont le même nom. Donner à chacun le sien.',
    ),

  // What the geometry finds

  'staves-do-not-close': (say) =>
    words(
      say.length('closesAt'),
      `environ ${say.length('wanted')}`,
      'Des douelles de ces largeurs ferment à ce diamètre, loin de celui qui est demandé. Ajouter ou ôter des douelles, ou changer le diamètre.',
    ),
  'staves-close-elsewhere': (say) =>
    words(
      say.length('closesAt'),
      `environ ${say.length('wanted')}`,
      'Le jeu ferme à un diamètre à lui ; tous les chiffres et gabarits sont pour celui-là.',
    ),
  'wall-too-steep': (say) =>
    words(
      say.degrees('leanDegrees'),
      `au plus ${say.degrees('allowed')}`,
      'La paroi penche trop au bout pour tenir fond et cercles. Rapprocher les diamètres, ou faire le récipient plus haut.',
    ),
  'profile-ends-early': (say) =>
    words(
      say.length('reach'),
      `au moins ${say.length('needed')}`,
      'La paroi se ferme avant que les douelles ne finissent, compté de la mi-hauteur. Rapprocher les diamètres, ou réduire `staves.trim`.',
    ),
  'wall-too-thick': (say) =>
    words(
      say.length('thickness'),
      `bien moins que le rayon, ${say.length('radius')}`,
      'Les douelles sont trop épaisses pour un récipient si étroit. Les amincir, ou en prendre plus.',
    ),
  'bend-too-tight': (say) =>
    words(
      say.length('thickness'),
      `au plus un cinquième du rayon de cintrage, ${say.length('bendRadius')}`,
      'Aucune douelle de cette épaisseur ne se cintre autant. L’amincir, ou réduire le bouge.',
    ),
  'heads-meet': () =>
    words('', '', 'Les deux fonds se rencontrent dans le fût. Réduire `croze.inset`.'),
  'outer-face-stretches': (say) =>
    words(
      `${say.number('percent')} %`,
      `${say.number('allowed')} %`,
      'La face extérieure doit s’allonger plus que le bois ne le supporte à coup sûr, même chaud et mouillé. Des douelles plus minces, ou moins de bouge, se cintrent plus sûrement.',
    ),
  'joint-vanishes': (say) =>
    words(
      say.length('left'),
      `jusqu’à ${say.length('thickness')}`,
      'Arrondir l’extérieur de douelles plates ne laisse pas de bois aux joints. Prendre des douelles plus épaisses ou plus nombreuses, ou `inside: hollowed`.',
    ),
  'joint-thin': (say) =>
    words(
      say.length('left'),
      `plus près de ${say.length('thickness')}`,
      'Arrondir l’extérieur de douelles plates laisse les joints minces. Des douelles plus épaisses ou plus nombreuses, ou `inside: hollowed`, en laissent plus.',
    ),
  'ends-too-thin': (say) =>
    words(
      say.length('left'),
      'plus que rien',
      'Il ne reste rien des bouts des douelles. Augmenter `staves.endThickness`.',
    ),
  'neighbours-step': (say) =>
    words(
      say.length('step'),
      'pas de marche',
      'Avec l’extérieur plat, des douelles de largeurs inégales n’affleurent pas : il reste une marche au-dehors. Mettre les semblables côte à côte, ou écrire `outside: rounded`.',
    ),
  'groove-past-middle': (say) =>
    words(
      say.length('inset'),
      'moins de la demi-hauteur',
      'Le jable est au-delà du milieu du récipient. `croze.inset` se compte du plan du bout.',
    ),
  'groove-in-chime': (say) =>
    words(
      say.length('inset'),
      `au-delà du chanfrein, profond de ${say.length('bevelDepth')}`,
      'Le chanfrein du peigne entre dans le jable. Mettre le jable plus en dedans, faire le chanfrein plus plat ou laisser plus de plat.',
    ),
  'groove-through-wall': (say) =>
    words(
      say.length('left'),
      `une bonne part de ${say.length('thickness')}`,
      'Le jable ne laisse presque rien de la paroi. Faire jable ou gorge (howel) moins profonds, ou les bouts plus épais.',
    ),
  'groove-deep': (say) =>
    words(
      say.length('left'),
      `un tiers de ${say.length('thickness')}`,
      'Le jable laisse peu de bois derrière lui, et la douelle peut y casser. Faire jable ou gorge (howel) moins profonds.',
    ),
  'bevel-narrower-than-land': (say) =>
    words(
      say.length('bevel'),
      `au moins ${say.length('land')}`,
      'Le chanfrein du fond finirait dans la languette qui est dans le jable. L’élargir.',
    ),
  'bevel-too-wide': (say) =>
    words(
      say.length('bevel'),
      `au plus ${say.length('allowed')}`,
      'Le chanfrein prend trop du fond. Le faire plus étroit.',
    ),
  'boards-too-narrow': (say) =>
    words(
      say.length('laid'),
      `au moins ${say.length('needed')}`,
      'Les pièces côte à côte sont plus étroites que le fond. Ajouter de la largeur.',
    ),
  'board-outside-head': (say) =>
    words(
      say.length('joint'),
      `moins de ${say.length('radius')}`,
      'Un joint entre pièces tombe hors du fond, compté de son centre : la pièce extérieure est de trop. L’ôter ou changer les largeurs.',
    ),
  'joints-without-dowels': (say) =>
    words(
      `joint ${say.word('joints')}`,
      '',
      'Aucun goujon ne trouve place dans ce joint. Des goujons, écarts ou marges plus petits le peuvent ; sinon colle ou jonc doivent suffire.',
    ),
  'dowels-thick': (say) =>
    words(
      say.length('diameter'),
      `du tiers à la moitié de ${say.length('thickness')}`,
      'Les goujons laissent peu des pièces à côté d’eux. De plus minces tiennent mieux.',
    ),
  'head-misses-groove': (say) =>
    words(
      say.length('clearance'),
      say.range('least', 'most'),
      'Avec ce jeu, le fond n’atteindrait pas son jable, ou n’y entrerait pas. Changer clearance ou crossGrain.',
    ),
  'head-meets-wall': (say) =>
    words(
      say.length('overlap'),
      'libre de la paroi',
      'Le fond entrerait dans la paroi hors de son jable. Élargir les chanfreins, ou déplacer la languette par `edge.fromInside`.',
    ),
  'no-hoop-at-groove': (say) =>
    words(
      say.length('distance'),
      `à moins de ${say.length('allowed')}`,
      `Aucun cercle n’est près du jable du bout ${endOf(say)} : il peut s’ouvrir quand on chasse le fond. Rapprocher un cercle.`,
    ),
  'hoop-leaves-stave': (say) =>
    words(
      say.word('name'),
      'entre les plans des bouts',
      `Le cercle ${say.word('name')} du bout ${endOf(say)} dépasse les bouts des douelles. Changer offset ou width.`,
    ),
  'hoops-overlap': (say) =>
    words(
      say.length('overlap'),
      'l’un à côté de l’autre',
      `Les cercles ${say.word('name')} et ${say.word('other')} se recouvrent. Changer offset ou width.`,
    ),
  'bung-wider-than-stave': (say) =>
    words(
      say.length('diameter'),
      `moins de ${say.length('width')}`,
      'Le trou de bonde est plus large que la plus large douelle. Le réduire, ou donner une douelle de bonde plus large.',
    ),
  'bung-leaves-little': (say) =>
    words(
      say.length('diameter'),
      `trois quarts de ${say.length('width')}`,
      'Le trou de bonde laisse peu de sa douelle de chaque côté. Une bonde plus petite ou une douelle plus large est plus sûre.',
    ),
};

/** `shown.ts` has these, and the values and quoted texts of the file itself. */
function shown(english: string): string {
  if (english === 'nothing') return 'rien';
  if (english === 'a group of keys') return 'un groupe de clés';
  return english.replace(/^a list of (\d+)$/, 'une liste de $1');
}

const manner: Manner = {
  typeset: frenchText,
  range: (least, most) => `${least} à ${most}`,
  degrees: (number) => `${number} degrés`,
  about: (fraction) => `environ ${fraction}`,
  shown,
  unknown: (code) => `La règle \`${code}\` n’est pas respectée.`,
};

export const french: AllWordings = { messages, manner };
