/** Every message's wording, in English; `wording.ts` says how it is built and how to add one. */
import { asWritten } from '../language.js';
import type { Manner, Say } from './say.js';
import { wordingOf as words, type Wording, type Wordings } from './wording.js';

const unitNames: Record<string, string> = { mm: 'millimetres', in: 'inches' };
const didYouMean = (say: Say): string =>
  say.has('meant') ? `Did you mean \`${say.word('meant')}\`?` : '';

function wrongLength(say: Say, problem: string): Wording {
  const other = say.word('meant');
  const hint = say.has('meant')
    ? `The number would suit ${unitNames[other]}: did you mean \`units: ${other}\`?`
    : `Lengths in this file are in ${unitNames[say.units]}: check the number.`;
  return words(say.length('found'), say.range('min', 'max'), `\`${say.key}\` is ${problem}.`, hint);
}

function unreadableLength(say: Say, remedy: string): Wording {
  const text = `\`${say.key}\` is a length, and this cannot be read as one.`;
  return words(say.word('found'), say.range('min', 'max'), text, remedy);
}

const kinds: Record<string, string> = {
  count: 'a whole number',
  share: 'a share',
  degrees: 'an angle in degrees',
  length: 'a length',
};

function allowedNumber(say: Say): string {
  if (say.word('unit') === 'length') return say.range('min', 'max');
  const unit = say.word('unit') === 'degrees' ? ' degrees' : '';
  return `${say.number('min')} to ${say.number('max')}${unit}`;
}

function wrongNumber(say: Say, found: string, text: string): Wording {
  return words(found, allowedNumber(say), text);
}

const syntaxProblems: Record<string, string> = {
  TAB_AS_INDENT: 'A tab stands where the line is indented. Indent with spaces.',
  BAD_INDENT:
    'The line is indented differently from its neighbours. Keys of one section start in one column.',
  MISSING_CHAR:
    'Something is missing here or above: a closing quote, bracket or brace, or a comma or a blank after a colon.',
  BLOCK_AS_IMPLICIT_KEY:
    'Two keys stand on one line, or a text with a colon in it has no quotes. Write one key a line, and such text in quotes.',
  MULTILINE_IMPLICIT_KEY: 'This line has no colon after its key. Write `key: value`.',
  KEY_OVER_1024_CHARS: 'The key is over a thousand characters long.',
  BAD_DQ_ESCAPE:
    'A backslash between double quotes starts a code that does not exist. Use single quotes.',
  BAD_SCALAR_START: 'Text that begins with @ or ` must stand in quotes.',
  BAD_ALIAS: 'Text that begins with * or & must stand in quotes.',
};
const otherSyntax =
  'This cannot be read as YAML. Check the brackets, quotes and colons of this line and the one above.';

const messages = {
  // The file as a whole

  'file-empty': () =>
    words(
      'no keys',
      'a spec',
      'The file is empty. A spec needs at least vessel, units, height, the outside diameters and staves.',
    ),
  'file-too-big': (say) =>
    words(
      `${say.number('found')} characters`,
      `${say.number('most')} characters`,
      'The file is too big for a spec and was not read.',
    ),
  'file-too-long': (say) =>
    words(
      `more than ${say.number('most')} words and signs`,
      `${say.number('most')} words and signs`,
      'The file is too long for a spec and was not read.',
    ),
  'not-a-text-file': () =>
    words(
      'bytes that are not text',
      'text in UTF-8',
      'This is not a text file, or not one in UTF-8. Save it as plain text in UTF-8.',
    ),
  'nested-too-deep': (say) =>
    words(
      `more than ${say.number('most')} levels`,
      `${say.number('most')} levels`,
      'Lists or sections stand inside one another too deeply. A spec needs four levels.',
    ),
  'yaml-syntax': (say) => words('', '', syntaxProblems[say.word('problem')] ?? otherSyntax),
  'several-documents': () =>
    words(
      'a second document',
      'one vessel a file',
      'A line `---` starts a second document here. Put each vessel in a file of its own.',
    ),
  'yaml-directive': () =>
    words(
      'a line that starts with %',
      'plain YAML',
      'Directives such as %YAML are not used in a spec. Take the line out.',
    ),
  'root-not-keys': () =>
    words(
      'a list or a single value',
      'lines of `key: value`',
      'The file is not a spec: it does not consist of keys with values.',
    ),
  'yaml-alias': (say) =>
    words(
      say.word('found'),
      'the value itself',
      'References with * are not used in a spec. Write the value itself, or put the text in quotes.',
    ),
  'yaml-anchor': (say) =>
    words(
      say.word('found'),
      'the value alone',
      'Marks with & are not used in a spec. Take the mark out, or put the text in quotes.',
    ),
  'yaml-tag': (say) =>
    words(
      say.word('found'),
      'the value alone',
      'Types with ! are not used in a spec. Take the type out, or put the text in quotes.',
    ),
  'merge-key': () =>
    words('<<', 'the keys themselves', 'The key `<<` is not used in a spec. Write out the keys.'),
  'more-issues': (say) =>
    words(
      `${say.number('more')} more`,
      '',
      'There are more faults than are shown. Mend these first.',
    ),
  'not-understood': (say) =>
    words(say.word('found'), '', `\`${say.key}\` cannot be used as it stands.`),

  // Keys

  missing: (say) =>
    words('nothing', 'a value', `\`${say.key}\` is missing, and has no default. Add it.`),
  'no-staves': () =>
    words(
      'nothing',
      '`staves.count` or `staves.widths`',
      'How many staves? Add `staves: { count: ... }`, or `widths: [...]` for a mixed set.',
    ),
  'unknown-key': (say) => {
    const near = say.has('meant') ? `Did you mean \`${say.word('meant')}\`?` : '';
    const away = say.has('elsewhere') ? `It belongs under ${say.word('elsewhere')}.` : '';
    return words(
      say.word('found'),
      say.word('allowed'),
      `\`${say.key}\` is not a key of a spec.`,
      near || away || 'Take it out.',
    );
  },
  'key-doubled': (say) =>
    words(
      'the key again',
      'each key once',
      `\`${say.key}\` stands twice, first on line ${say.number('first')}. Take one of them out.`,
    ),
  'key-not-text': () =>
    words(
      'a key that is not a word',
      'words as keys',
      'This line has no word as its key. Write `key: value`.',
    ),
  'key-of-other-vessel': (say) =>
    say.word('vessel') === 'cask'
      ? words(
          say.key,
          'bilge and ends',
          `\`${say.key}\` belongs to a tub. A cask has bilge and ends; or write \`vessel: tub\`.`,
        )
      : words(
          say.key,
          'top and bottom',
          `\`${say.key}\` belongs to a cask. A tub has top and bottom; or write \`vessel: cask\`.`,
        ),
  'tub-without-top': () =>
    words(
      'heads.top',
      'heads.bottom',
      'A tub has a bottom only, and no top head. Take `heads.top` out.',
    ),

  // Values

  'not-a-group': (say) =>
    words(
      say.word('found'),
      'keys with values',
      `\`${say.key}\` holds keys, such as \`{ key: value }\` or indented lines below it.`,
    ),
  'not-a-list': (say) =>
    words(
      say.word('found'),
      'a list',
      `\`${say.key}\` is a list: write it in square brackets, or as lines that start with a dash; [] for none.`,
    ),
  'list-too-long': (say) =>
    words(
      `${say.number('found')} entries`,
      `at most ${say.number('most')}`,
      `\`${say.key}\` has too many entries.`,
    ),
  'list-too-short': (say) =>
    words(
      `${say.number('found')} entries`,
      `at least ${say.number('least')}`,
      `\`${say.key}\` has too few entries.`,
    ),
  'not-a-choice': (say) =>
    words(
      say.word('found'),
      say.word('allowed'),
      `\`${say.key}\` must be one of these words.`,
      didYouMean(say),
    ),
  'not-a-bung': (say) =>
    words(
      say.word('found'),
      '{ diameter: ... } or none',
      'Write `bung: { diameter: ... }`, or `bung: none`.',
    ),
  'not-text': (say) =>
    words(say.word('found'), 'one line of text', `\`${say.key}\` must be text. Put it in quotes.`),
  'text-of-several-lines': (say) =>
    words(
      say.word('found'),
      'one line of text',
      `\`${say.key}\` has a line break in it. Write it on one line.`,
    ),
  'text-unprintable': (say) =>
    words(
      say.word('character'),
      'letters, digits and signs',
      `\`${say.key}\` has a character in it that cannot be printed. Take it out.`,
    ),
  'text-too-long': (say) =>
    words(
      `${say.number('length')} characters`,
      `at most ${say.number('most')}`,
      `\`${say.key}\` is too long for a drawing.`,
    ),
  'name-not-plain': (say) =>
    words(
      say.word('found'),
      'letters, digits, blanks, hyphens, single points',
      `\`${say.key}\` becomes part of file names. Use a plain name, such as chime.`,
    ),
  'not-a-number': (say) =>
    wrongNumber(
      say,
      say.word('found'),
      `\`${say.key}\` is ${kinds[say.word('unit')] ?? 'a number'}: write digits, without quotes.`,
    ),
  'not-finite': (say) =>
    wrongNumber(say, say.word('found'), `\`${say.key}\` must be a finite number.`),
  'not-whole': (say) =>
    wrongNumber(say, say.word('found'), `\`${say.key}\` must be a whole number.`),
  'number-out-of-range': (say) =>
    wrongNumber(say, say.number('found'), `\`${say.key}\` is outside what can be built.`),
  'length-too-small': (say) => wrongLength(say, 'too small'),
  'length-too-large': (say) => wrongLength(say, 'too large'),
  'not-a-length': (say) =>
    unreadableLength(
      say,
      say.units === 'in'
        ? 'Write inches as 37.375 or 37 3/8.'
        : 'Write millimetres as a number, such as 945 or 37.5.',
    ),
  'comma-in-number': (say) => unreadableLength(say, 'Write a point for the decimals, not a comma.'),
  'unit-in-length': (say) =>
    unreadableLength(
      say,
      `Write the number alone: \`units: ${say.units}\` says what it is measured in.`,
    ),
  'quoted-number': (say) => unreadableLength(say, 'Take the quotes away.'),
  'fraction-in-millimetres': (say) =>
    unreadableLength(say, 'Fractions are for inches: did you mean `units: in`?'),

  // One key against another

  'profile-not-built': () =>
    words(
      'measured',
      'arc, parabola, ellipse',
      'A measured profile is not built yet. Choose the formula that comes nearest.',
    ),
  'bilge-below-ends': (say) =>
    words(
      say.length('bilge'),
      `more than the ends, ${say.length('ends')}`,
      'A cask is widest at its bilge. Are bilge and ends exchanged?',
    ),
  'bilge-equals-ends': (say) =>
    words(
      say.length('bilge'),
      `more than the ends, ${say.length('ends')}`,
      'A vessel as wide at its bilge as at its ends has straight staves: write `vessel: tub`, with top and bottom.',
    ),
  'count-and-widths': () =>
    words(
      'both count and widths',
      'one of them',
      'Equal staves have a count, a mixed set has widths. Take one of them out.',
    ),
  'boards-and-widths': () =>
    words(
      'both boards and widths',
      'one of them',
      'Equal boards have a number, unequal ones have widths. Take one of them out.',
    ),
  'end-thickness-far-off': (say) =>
    words(
      say.length('endThickness'),
      say.range('min', 'max'),
      `The ends of a stave ${say.length('thickness')} thick cannot differ from it so much.`,
    ),
  'chime-flat-too-wide': (say) =>
    words(
      say.length('flat'),
      `at most ${say.length('endThickness')}`,
      'The flat of the chime is wider than the stave end is thick. Make it narrower.',
    ),
  'no-room-inside': (say) =>
    words(
      say.length('thickness'),
      `less than ${say.length('max')}`,
      `Staves so thick leave no room inside a vessel of ${say.length('diameter')}.`,
    ),
  'land-thicker-than-groove': (say) =>
    words(
      say.length('land'),
      `at most ${say.length('groove')}`,
      "The head's land is thicker than its groove is wide, and does not enter. Make the land thinner or the groove wider.",
    ),
  'land-outside-head': (say) =>
    words(
      say.length('fromInside'),
      say.range('least', 'most'),
      "The head's land would lie partly outside the board. Move it with `edge.fromInside`, or make the head thicker.",
    ),
  'dowel-thicker-than-head': (say) =>
    words(
      say.length('diameter'),
      `less than ${say.length('thickness')}`,
      'The dowels are thicker than the head. Take thinner ones.',
    ),
  'groove-at-the-end': (say) =>
    words(
      say.length('inset'),
      `more than ${say.length('least')}`,
      'The groove would break out at the end of the staves. Set it further in.',
    ),
  'no-room-between-heads': (say) =>
    words(
      say.length('taken'),
      `less than ${say.length('height')}`,
      'Chimes and heads take up the whole height. Make `croze.inset` smaller.',
    ),
  'hoop-beyond-vessel': (say) =>
    words(
      say.length('offset'),
      `less than ${say.length('height')}`,
      'The hoop lies beyond the other end. The offset counts from the end plane along the axis.',
    ),
  'hoop-name-doubled': (say) =>
    words(
      say.word('name'),
      'a name for each',
      'Two hoops at one end have the same name. Give each its own.',
    ),

  // What the geometry finds

  'staves-do-not-close': (say) =>
    words(
      say.length('closesAt'),
      `about ${say.length('wanted')}`,
      'Staves of these widths close at this diameter, far from the one that the spec asks for. Add or leave out staves, or change the diameter.',
    ),
  'staves-close-elsewhere': (say) =>
    words(
      say.length('closesAt'),
      `about ${say.length('wanted')}`,
      'The set closes at a diameter of its own; all figures and patterns are for that one.',
    ),
  'wall-too-steep': (say) =>
    words(
      say.degrees('leanDegrees'),
      `at most ${say.degrees('allowed')}`,
      'The wall leans too much at the end to hold a head and hoops. Bring the diameters closer together, or make the vessel higher.',
    ),
  'profile-ends-early': (say) =>
    words(
      say.length('reach'),
      `at least ${say.length('needed')}`,
      'The wall closes before the staves end, measured from mid-height. Bring the diameters closer together, or take a smaller `staves.trim`.',
    ),
  'wall-too-thick': (say) =>
    words(
      say.length('thickness'),
      `well under the radius, ${say.length('radius')}`,
      'The staves are too thick for so narrow a vessel. Make them thinner, or more of them.',
    ),
  'bend-too-tight': (say) =>
    words(
      say.length('thickness'),
      `a fifth of the bend's radius, ${say.length('bendRadius')}, at most`,
      'No stave of this thickness bends so far. Make it thinner, or the bilge smaller.',
    ),
  'heads-meet': () =>
    words('', '', 'The two heads meet inside the cask. Make `croze.inset` smaller.'),
  'outer-face-stretches': (say) =>
    words(
      `${say.number('percent')} %`,
      `${say.number('allowed')} %`,
      'The outer face must stretch more than wood is sure to bear, even hot and wet. Thinner staves, or less bilge, bend more safely.',
    ),
  'joint-vanishes': (say) =>
    words(
      say.length('left'),
      `up to ${say.length('thickness')}`,
      'Rounding the outside of flat staves leaves no wood at the joints. Take thicker or more staves, or `inside: hollowed`.',
    ),
  'joint-thin': (say) =>
    words(
      say.length('left'),
      `nearer to ${say.length('thickness')}`,
      'Rounding the outside of flat staves leaves the joints thin. Thicker or more staves, or `inside: hollowed`, leave more.',
    ),
  'ends-too-thin': (say) =>
    words(
      say.length('left'),
      'more than nothing',
      'Nothing is left of the stave ends. Make `staves.endThickness` larger.',
    ),
  'neighbours-step': (say) =>
    words(
      say.length('step'),
      'no step',
      'With a flat outside, staves of unlike width do not meet flush: a step stands on the outside. Put like beside like, or write `outside: rounded`.',
    ),
  'groove-past-middle': (say) =>
    words(
      say.length('inset'),
      'less than half the height',
      'The groove lies past the middle of the vessel. `croze.inset` counts from the end plane.',
    ),
  'groove-in-chime': (say) =>
    words(
      say.length('inset'),
      `beyond the bevel, ${say.length('bevelDepth')} deep`,
      'The chime bevel runs into the groove. Set the groove further in, make the chime flatter or leave more of it flat.',
    ),
  'groove-through-wall': (say) =>
    words(
      say.length('left'),
      `a good part of ${say.length('thickness')}`,
      'The groove leaves almost nothing of the wall. Make croze or howel shallower, or the ends thicker.',
    ),
  'groove-deep': (say) =>
    words(
      say.length('left'),
      `a third of ${say.length('thickness')}`,
      'The groove leaves little wood behind it, and the stave may break there. Make croze or howel shallower.',
    ),
  'bevel-narrower-than-land': (say) =>
    words(
      say.length('bevel'),
      `at least ${say.length('land')}`,
      "The head's bevel would end within the land that stands in the groove. Make it wider.",
    ),
  'bevel-too-wide': (say) =>
    words(
      say.length('bevel'),
      `at most ${say.length('allowed')}`,
      "The head's bevel takes up too much of the head. Make it narrower.",
    ),
  'boards-too-narrow': (say) =>
    words(
      say.length('laid'),
      `at least ${say.length('needed')}`,
      'The boards laid side by side are narrower than the head. Add width.',
    ),
  'board-outside-head': (say) =>
    words(
      say.length('joint'),
      `less than ${say.length('radius')}`,
      'A joint between boards lies outside the head, counted from its centre: the outer board is not needed. Leave it out or change the widths.',
    ),
  'joints-without-dowels': (say) =>
    words(
      `joint ${say.word('joints')}`,
      '',
      'No dowel finds room in this joint. Smaller dowels, spacing or margin may; else glue or rush must do.',
    ),
  'dowels-thick': (say) =>
    words(
      say.length('diameter'),
      `a third to a half of ${say.length('thickness')}`,
      'The dowels leave little of the boards beside them. Thinner ones hold better.',
    ),
  'head-misses-groove': (say) =>
    words(
      say.length('clearance'),
      say.range('least', 'most'),
      'With this play the head would not reach into its groove, or not go into it. Change clearance or crossGrain.',
    ),
  'head-meets-wall': (say) =>
    words(
      say.length('overlap'),
      'clear of the wall',
      'The head would cut into the wall outside its groove. Widen the bevels, or move the land with `edge.fromInside`.',
    ),
  'no-hoop-at-groove': (say) =>
    words(
      say.length('distance'),
      `within ${say.length('allowed')}`,
      `No hoop lies near the groove at the ${say.word('end')}: it may open when the head is driven. Move a hoop nearer.`,
    ),
  'hoop-leaves-stave': (say) =>
    words(
      say.word('name'),
      'between the end planes',
      `The ${say.word('name')} hoop at the ${say.word('end')} reaches past the stave ends. Change its offset or width.`,
    ),
  'hoops-overlap': (say) =>
    words(
      say.length('overlap'),
      'clear of each other',
      `The hoops ${say.word('name')} and ${say.word('other')} lie over one another. Change an offset or a width.`,
    ),
  'bung-wider-than-stave': (say) =>
    words(
      say.length('diameter'),
      `less than ${say.length('width')}`,
      'The bung hole is wider than the widest stave. Make it smaller, or give a wider bung stave.',
    ),
  'bung-leaves-little': (say) =>
    words(
      say.length('diameter'),
      `three quarters of ${say.length('width')}`,
      'The bung hole leaves little of its stave on either side. A smaller bung or a wider stave is safer.',
    ),
} satisfies Wordings['messages'];

const manner: Manner = {
  typeset: asWritten,
  range: (least, most) => `${least} to ${most}`,
  degrees: (number) => `${number} degrees`,
  about: (fraction) => `about ${fraction}`,
  shown: asWritten,
  unknown: (code) => `The rule \`${code}\` is not met.`,
};

/** What each language has a wording for. */
export type Code = keyof typeof messages;

export const english = { messages, manner } satisfies Wordings;
