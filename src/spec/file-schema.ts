/**
 * The spec file's keys: one table of every key, what kind of value it takes, its physical limits (mm, degrees) and what it
 * means. The limits only keep out what no cooper would build; whether a vessel can be built is for the geometry to say.
 */
import * as z from 'zod/mini';
import {
  choiceField,
  forEditors,
  lengthField,
  nameField,
  numberField,
  textField,
} from './fields.js';
import type { Given } from './given.js';
import type { Spec, Units } from './spec.js';

export type Kind = Spec['vessel'];
export type FileSchema = z.ZodMiniObject & z.ZodMiniType<Given>;

/** The schema of one kind of vessel in one kind of units; built when first asked for. */
export const fileSchema = remembered(build);

/** The same with no key required, for what is left of a file with faults. */
export const partialSchema = remembered((units, kind): FileSchema =>
  z.partial(fileSchema(units, kind)),
);

function remembered(make: (units: Units, kind: Kind) => FileSchema): typeof make {
  const made = new Map<string, FileSchema>();
  return (units, kind) => {
    const name = `${units} ${kind}`;
    const schema = made.get(name) ?? make(units, kind);
    made.set(name, schema);
    return schema;
  };
}

type Length = (min: number, max: number, about: string) => ReturnType<typeof lengthField>;

function build(units: Units, kind: Kind): FileSchema {
  const length: Length = (min, max, about) => lengthField(units, min, max, about);
  const named = units === 'mm' ? 'millimetres' : 'inches';
  return group(`A ${kind} to be built of staves; lengths in ${named}.`, {
    vessel: choiceField(
      ['cask', 'tub'],
      'cask: widest in the middle; tub: any straight-sided vessel',
    ),
    title: z.optional(textField(120, 'one line of text for drawings and lists')),
    units: choiceField(['mm', 'in'], 'of every length in this file'),
    height: length(50, 5000, 'overall, end to end along the axis'),
    ...(kind === 'cask' ? caskSizes(length) : tubSizes(length)),
    staves: staves(length),
    chime: chime(length),
    howel: howel(length),
    heads: heads(length, kind),
    hoops: z.optional(list(hoop(length), 0, 40, 'top and bottom; [] for none')),
    bung: z.optional(bung(length)),
    sheet: sheet(),
  });
}

function group<S extends z.core.$ZodLooseShape>(description: string, shape: S) {
  return z.strictObject(shape).register(forEditors, { description });
}

/** A group of keys that may all be left out, as may the group: `chime:` with nothing below it says nothing. */
function section<S extends z.core.$ZodLooseShape>(description: string, shape: S) {
  const keys = z.partial(z.strictObject(shape));
  return z.nullish(keys.register(forEditors, { description }));
}

function list<T extends z.core.SomeType>(
  item: T,
  least: number,
  most: number,
  description: string,
) {
  const entries = z.array(item).check(z.minLength(least), z.maxLength(most));
  return entries.register(forEditors, { description });
}

const caskSizes = (length: Length) => ({
  bilge: length(50, 6000, 'outside diameter at the middle'),
  ends: length(50, 6000, 'outside diameter at both ends'),
  profile: z.optional(
    choiceField(
      ['arc', 'parabola', 'ellipse', 'measured'],
      'outside line of the wall; measured is not built yet',
    ),
  ),
});

const tubSizes = (length: Length) => ({
  top: length(50, 6000, 'outside diameter at the top'),
  bottom: length(50, 6000, 'outside diameter at the bottom'),
});

const staves = (length: Length) =>
  section('the planks of the wall: give count or widths', {
    count: numberField('count', 6, 80, 'how many equal staves'),
    widths: list(
      length(10, 1000, 'across the flat outer face at the bilge, on a tub at the wider end'),
      6,
      80,
      'of a mixed set, in ring order, in place of count',
    ),
    thickness: length(3, 150, 'finished, at the middle of the stave'),
    endThickness: length(3, 150, 'finished, at both ends; as the thickness unless given'),
    inside: choiceField(['hollowed', 'flat'], 'whether the inner face is hollowed to the circle'),
    outside: choiceField(['rounded', 'flat'], 'whether the outer face is backed to the circle'),
    neutral: numberField(
      'share',
      0,
      1,
      'depth of the unstretched line, as a share of the thickness',
    ),
    ends: choiceField(
      ['overlong', 'cut'],
      'overlong: trimmed after bending; cut: to length on the bench',
    ),
    trim: length(0, 300, 'spare length at each end of an overlong stave'),
  });

const chime = (length: Length) =>
  section('the slope on the inside of the stave ends', {
    bevelDegrees: numberField('degrees', 5, 85, 'from the end plane'),
    flat: length(0, 150, 'what is left of the end, from the outer face inwards'),
  });

const howel = (length: Length) =>
  section('the smooth band worked before the groove is cut', {
    depth: length(0, 50, 'into the wall'),
    beyondGroove: length(0, 500, "how far it runs past the groove's inner lip"),
  });

function heads(length: Length, kind: Kind) {
  const common = head(length);
  const own = { bottom: section('overrides the keys of heads', common) };
  if (kind === 'tub') return section('the bottom', { ...common, ...own });
  const top = section('overrides the keys of heads', common);
  return section('both heads, unless top or bottom say otherwise', { ...common, top, ...own });
}

const head = (length: Length) => ({
  thickness: length(3, 150, 'of the boards'),
  boards: numberField('count', 1, 60, 'how many boards of equal width'),
  widths: list(
    length(10, 3000, 'of a board'),
    1,
    60,
    'from the lowest board upwards, in place of boards',
  ),
  clearance: length(-20, 50, 'taken off the diameter of the groove; below 0 for a tight head'),
  crossGrain: length(-50, 50, 'added to the diameter across the boards'),
  croze: section('the groove', {
    inset: length(3, 1000, "from the end plane to the groove's middle"),
    depth: length(0.5, 75, 'from the howel, square to the axis'),
    width: length(1, 75, 'along the axis'),
  }),
  edge: section("the head's rim", {
    thickness: length(0.5, 75, 'of the land that enters the groove'),
    fromInside: length(0, 150, "from the head's inside face to the land's middle"),
    outerBevel: length(0, 500, 'width across the outside face, from the rim'),
    innerBevel: length(0, 500, 'width across the inside face, from the rim'),
  }),
  dowels: section('between the boards', {
    diameter: length(1, 75, 'of the dowel'),
    length: length(3, 500, 'of the dowel'),
    spacing: length(5, 3000, 'along a joint'),
    margin: length(0, 1000, "from the rim's bevel to the nearest dowel"),
  }),
});

const hoop = (length: Length) =>
  group('one hoop, or a pair', {
    name: nameField(40, 'chime, quarter, bilge or a name of your own'),
    end: z.optional(
      choiceField(
        ['both', 'top', 'bottom'],
        'the end that offset is measured from; both makes a pair',
      ),
    ),
    offset: length(0, 5000, "along the axis, from the end plane to the hoop's near edge"),
    width: length(3, 500, 'of the strap'),
    thickness: z.optional(length(0.2, 20, 'of the strap')),
    lap: z.optional(length(0, 1000, 'the overlap that is riveted')),
  });

const bung = (length: Length) =>
  z.union([
    group('the bung hole; none for no hole', {
      diameter: z.optional(length(3, 300, 'of the hole')),
    }),
    z.literal('none'),
    z.null(),
  ]);

const sheet = () =>
  section('fields of the title block (ISO 7200)', {
    owner: textField(80, 'legal owner of the drawing'),
    number: textField(80, 'identification number'),
    date: textField(80, 'date of issue'),
    creator: textField(80, 'who made the drawing'),
    approved: textField(80, 'who approved it'),
  });
