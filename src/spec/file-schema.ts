/**
 * The spec file's keys: one table of every key, what kind of value it takes, its physical limits (mm, degrees) and what it
 * means. The limits only keep out what no cooper would build; whether a vessel can be built is for the geometry to say.
 */
import * as z from 'zod';
import { choiceField, lengthField, nameField, numberField, textField } from './fields.js';
import type { Given } from './given.js';
import type { Spec, Units } from './spec.js';

export type Kind = Spec['vessel'];

export interface FileSchema {
  readonly schema: z.ZodObject & z.ZodType<Given>;
  /** the keys of each section: `''`, `heads.croze`, `hoops[]` */
  readonly keys: ReadonlyMap<string, readonly string[]>;
}

const built = new Map<string, FileSchema>();

/** The schema of one kind of vessel in one kind of units; built when first asked for. */
export function fileSchema(units: Units, kind: Kind): FileSchema {
  const name = `${units} ${kind}`;
  const schema = built.get(name) ?? build(units, kind);
  built.set(name, schema);
  return schema;
}

type Length = (min: number, max: number, about: string) => ReturnType<typeof lengthField>;
type Group = <S extends z.ZodRawShape>(place: string, about: string, shape: S) => z.ZodObject<S>;

function build(units: Units, kind: Kind): FileSchema {
  const keys = new Map<string, readonly string[]>();
  const length: Length = (min, max, about) => lengthField(units, min, max, about);
  const group: Group = (place, about, shape) => {
    keys.set(place, Object.keys(shape));
    return z.strictObject(shape).meta({ description: about }) as z.ZodObject<typeof shape>;
  };
  const shape = {
    vessel: choiceField(
      ['cask', 'tub'],
      'cask: widest in the middle; tub: any straight-sided vessel',
    ),
    title: textField(120, 'one line of text for drawings and lists').optional(),
    units: choiceField(['mm', 'in'], 'of every length in this file'),
    height: length(50, 5000, 'overall, end to end along the axis'),
    ...(kind === 'cask' ? caskSizes(length) : tubSizes(length)),
    staves: staves(length, group),
    chime: chime(length, group).nullish(),
    howel: howel(length, group).nullish(),
    heads: heads(length, group, kind).nullish(),
    hoops: z
      .array(hoop(length, group))
      .max(40)
      .meta({ description: 'top and bottom; [] for none' })
      .optional(),
    bung: bung(length, group).optional(),
    sheet: sheet(group).nullish(),
  };
  const about = `A ${kind} to be built of staves; lengths in ${units === 'mm' ? 'millimetres' : 'inches'}.`;
  return { schema: group('', about, shape), keys };
}

const caskSizes = (length: Length) => ({
  bilge: length(50, 6000, 'outside diameter at the middle'),
  ends: length(50, 6000, 'outside diameter at both ends'),
  profile: choiceField(
    ['arc', 'parabola', 'ellipse', 'measured'],
    'outside line of the wall; measured is not built yet',
  ).optional(),
});

const tubSizes = (length: Length) => ({
  top: length(50, 6000, 'outside diameter at the top'),
  bottom: length(50, 6000, 'outside diameter at the bottom'),
});

const staves = (length: Length, group: Group) =>
  group('staves', 'the planks of the wall: give count or widths', {
    count: numberField('count', 6, 80, 'how many equal staves').optional(),
    widths: z
      .array(length(10, 1000, 'across the flat outer face at the bilge, on a tub at the wider end'))
      .min(6)
      .max(80)
      .meta({ description: 'of a mixed set, in ring order, in place of count' })
      .optional(),
    thickness: length(3, 150, 'finished, at the middle of the stave').optional(),
    endThickness: length(
      3,
      150,
      'finished, at both ends; as the thickness unless given',
    ).optional(),
    inside: choiceField(
      ['hollowed', 'flat'],
      'whether the inner face is hollowed to the circle',
    ).optional(),
    outside: choiceField(
      ['rounded', 'flat'],
      'whether the outer face is backed to the circle',
    ).optional(),
    neutral: numberField(
      'share',
      0,
      1,
      'depth of the unstretched line, as a share of the thickness',
    ).optional(),
    ends: choiceField(
      ['overlong', 'cut'],
      'overlong: trimmed after bending; cut: to length on the bench',
    ).optional(),
    trim: length(0, 300, 'spare length at each end of an overlong stave').optional(),
  }).meta({ anyOf: [{ required: ['count'] }, { required: ['widths'] }] });

const chime = (length: Length, group: Group) =>
  group('chime', 'the slope on the inside of the stave ends', {
    bevelDegrees: numberField('degrees', 5, 85, 'from the end plane').optional(),
    flat: length(0, 150, 'what is left of the end, from the outer face inwards').optional(),
  });

const howel = (length: Length, group: Group) =>
  group('howel', 'the smooth band worked before the groove is cut', {
    depth: length(0, 50, 'into the wall').optional(),
    beyondGroove: length(0, 500, "how far it runs past the groove's inner lip").optional(),
  });

function heads(length: Length, group: Group, kind: Kind) {
  if (kind === 'tub') {
    const bottom = group(
      'heads.bottom',
      'overrides the keys of heads',
      head(length, group, 'heads.bottom'),
    );
    const shape = { ...head(length, group, 'heads'), bottom: bottom.nullish() };
    return group('heads', 'the bottom', shape);
  }
  const top = group('heads.top', 'overrides the keys of heads', head(length, group, 'heads.top'));
  const bottom = group(
    'heads.bottom',
    'overrides the keys of heads',
    head(length, group, 'heads.bottom'),
  );
  const shape = { ...head(length, group, 'heads'), top: top.nullish(), bottom: bottom.nullish() };
  return group('heads', 'both heads, unless top or bottom say otherwise', shape);
}

const head = (length: Length, group: Group, place: string) => ({
  thickness: length(3, 150, 'of the boards').optional(),
  boards: numberField('count', 1, 60, 'how many boards of equal width').optional(),
  widths: z
    .array(length(10, 3000, 'of a board'))
    .min(1)
    .max(60)
    .meta({ description: 'from the lowest board upwards, in place of boards' })
    .optional(),
  clearance: length(
    -20,
    50,
    'taken off the diameter of the groove; below 0 for a tight head',
  ).optional(),
  crossGrain: length(-50, 50, 'added to the diameter across the boards').optional(),
  croze: group(`${place}.croze`, 'the groove', {
    inset: length(3, 1000, "from the end plane to the groove's middle").optional(),
    depth: length(0.5, 75, 'from the howel, square to the axis').optional(),
    width: length(1, 75, 'along the axis').optional(),
  }).nullish(),
  edge: group(`${place}.edge`, "the head's rim", {
    thickness: length(0.5, 75, 'of the land that enters the groove').optional(),
    fromInside: length(0, 150, "from the head's inside face to the land's middle").optional(),
    outerBevel: length(0, 500, 'width across the outside face, from the rim').optional(),
    innerBevel: length(0, 500, 'width across the inside face, from the rim').optional(),
  }).nullish(),
  dowels: group(`${place}.dowels`, 'between the boards', {
    diameter: length(1, 75, 'of the dowel').optional(),
    length: length(3, 500, 'of the dowel').optional(),
    spacing: length(5, 3000, 'along a joint').optional(),
    margin: length(0, 1000, "from the rim's bevel to the nearest dowel").optional(),
  }).nullish(),
});

const hoop = (length: Length, group: Group) =>
  group('hoops[]', 'one hoop, or a pair', {
    name: nameField(40, 'chime, quarter, bilge or a name of your own'),
    end: choiceField(
      ['both', 'top', 'bottom'],
      'the end that offset is measured from; both makes a pair',
    ).optional(),
    offset: length(0, 5000, "along the axis, from the end plane to the hoop's near edge"),
    width: length(3, 500, 'of the strap'),
    thickness: length(0.2, 20, 'of the strap').optional(),
    lap: length(0, 1000, 'the overlap that is riveted').optional(),
  });

const bung = (length: Length, group: Group) =>
  z.union([
    group('bung', 'the bung hole; none for no hole', {
      diameter: length(3, 300, 'of the hole').optional(),
    }),
    z.literal('none'),
    z.null(),
  ]);

const sheet = (group: Group) =>
  group('sheet', 'fields of the title block (ISO 7200)', {
    owner: textField(80, 'legal owner of the drawing').optional(),
    number: textField(80, 'identification number').optional(),
    date: textField(80, 'date of issue').optional(),
    creator: textField(80, 'who made the drawing').optional(),
    approved: textField(80, 'who approved it').optional(),
  });
