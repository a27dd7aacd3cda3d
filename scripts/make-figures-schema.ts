/**
 * Makes schemas/figures.schema.json, which describes what `staveloft figures --json` prints. The shape is written down
 * here once more on purpose: changing the figures without changing this is a fault that the tests find.
 * Run with `npx tsx scripts/make-figures-schema.ts`.
 */
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { format } from 'prettier';
import * as z from 'zod';
import type { FiguresFile } from '../src/cli/figures-json.js';

const path = new URL('../schemas/figures.schema.json', import.meta.url);

const length = (about: string) => z.number().describe(`${about}, mm`);
const degrees = (about: string) => z.number().describe(`${about}, degrees`);
const count = (about: string) => z.int().min(0).describe(about);
const atEnds = (about: string) =>
  z.strictObject({ top: z.number(), bottom: z.number() }).describe(about);

const bevel = z
  .strictObject({ bilge: z.number(), top: z.number(), bottom: z.number() })
  .describe(
    'angle of the joint from square to the face: at the widest place and at both ends, degrees',
  );

const station = z.strictObject({
  s: length('place on the flat blank, from the section at mid-height towards the top'),
  z: length('height of the outer face in that section, from mid-height'),
  width: length('across the flat outer face'),
  bevelDegrees: degrees('joint bevel'),
  thickness: length('of the blank'),
});

const stave = z.strictObject({
  count: count('staves in the ring'),
  blankThickness: length('of the flat blank at the middle'),
  outerLength: length('outer face between the end cuts, trim left out'),
  innerLength: length('inner face between the end cuts, trim left out'),
  bilgeWidth: length('across the flat outer face at the bilge; tub: at the wider end'),
  endWidth: atEnds('across the flat outer face at the ends, mm'),
  endCutDegrees: atEnds(
    'angle of the end cut from square, positive where the inner face is longer',
  ),
  bevelDegrees: bevel,
  bladeTiltDegrees: degrees('tubs: tilt of a saw blade set square to the edge').optional(),
  fixedBevelGap: length('what one gauge set at the bilge leaves open per joint at the end'),
  outerStretchPercent: z.number().describe('stretch of the outer face in bending, per cent'),
  stations: z.array(station),
});

const mixedStave = z.strictObject({
  width: length('across the flat outer face at the bilge'),
  alphaDegrees: degrees('half of the angle that the stave takes in the ring'),
  blankThickness: length('of the flat blank at the middle'),
  endWidth: atEnds('across the flat outer face at the ends, mm'),
  bevelDegrees: bevel,
});

const head = z.strictObject({
  diameter: length('along the boards'),
  crozeRadius: length('from the axis to the bottom of the groove: the compass setting'),
  chimeOpening: length('by how much the chime opens in radius to let the head in'),
  boards: z.array(
    z.strictObject({
      width: length('finished'),
      length: length('of the blank, allowance included'),
    }),
  ),
  dowels: z.array(
    z.strictObject({
      joint: count('from 1, counted from the lowest'),
      x: length('from the middle, along the joint'),
    }),
  ),
});

const hoop = z.strictObject({
  name: z.string(),
  end: z.enum(['top', 'bottom']),
  offset: length('along the axis, from the end plane to the near edge'),
  width: length('of the strap'),
  nearGirth: length('of the edge towards the end'),
  farGirth: length('of the other edge'),
  slopeDegrees: degrees('of the hoop against the axis'),
  cutLength: length('with lap, driving taken off'),
  splay: length('by which hammering lengthens one edge'),
  splayPer100: length('the same for each 100 mm of the strap'),
  driving: length('allowance that was taken off the length'),
  rivets: z
    .strictObject({
      count: count('in the lap; 0: no room, weld'),
      diameter: length('of a rivet'),
      holeDiameter: length('of its hole'),
      places: z.array(z.number()).describe('along the strap from either end, mm'),
    })
    .describe('common practice'),
  mass: z.number().describe('of steel, kg'),
});

const strapToBuy = z.strictObject({
  width: length('of the strap'),
  thickness: length('of the strap'),
  pieces: count('straps to cut'),
  cutLength: length('of all pieces together'),
  length: length('the same with waste'),
  mass: z.number().describe('with waste, kg'),
});

const workingHoop = z.strictObject({
  place: z
    .enum(['end', 'quarter', 'bilge', 'top', 'middle', 'bottom'])
    .describe('a cask: in its upper half; a tub: from the top'),
  height: length('from mid-height'),
  offset: length('along the axis from the upper end plane'),
  girth: length('inside, with the joints closed'),
  flatGirth: length('the same over staves that are not backed'),
  insideDiameter: length('of the round hoop'),
});

const kilograms = (about: string) => z.number().describe(`${about}, kg`);

const masses = z.strictObject({
  wood: kilograms('staves and heads, of air-dry oak'),
  steel: kilograms('hoops'),
  empty: kilograms('wood and steel'),
  fullWithWater: kilograms('with capacity and recesses filled'),
});

const slip = z
  .strictObject({
    slip: z
      .enum([
        'bevels-steep',
        'bevels-flat',
        'staves-wide',
        'one-stave-wide',
        'groove-inset',
        'groove-depth',
      ])
      .describe('which small error of the bench: every bevel, every stave, one stave, the groove'),
    amount: z.number().describe('its size: degrees for bevels, mm for the rest'),
    jointGap: length('widest opening of a joint'),
    opensAt: z.enum(['inside', 'outside']).nullable().describe('face at which that joint opens'),
    diameter: length('change of the outside diameter at the widest place'),
    girth: length('change of the girth there'),
    headClearance: length('change of the clearance of a head made as drawn, in diameter'),
    litres: z.number().describe('change of the capacity'),
  })
  .describe('what one small error does, all else as drawn');

const warning = z.strictObject({
  code: z.string().describe('stable name of the rule'),
  key: z.string().describe('of the spec, such as heads.croze.inset; empty for the whole file'),
  text: z.string(),
});

export const figuresSchema = z
  .strictObject({
    version: z.literal(1).describe('of these keys'),
    title: z.string(),
    capacityLitres: z.number().describe('between the heads; tub: from the bottom to the rim'),
    recessLitres: z.number().describe('groove, howel and bevel recesses, not part of the capacity'),
    oimlLimitLitres: z
      .number()
      .describe('casks: what OIML R 138:2007 lets a capacity be off, either way')
      .optional(),
    masses: masses.describe('of the vessel'),
    laidWidth: length('all staves laid edge to edge on the bench'),
    closesAt: length('mixed sets: outside diameter at the bilge at which they close').optional(),
    stave: stave.describe('one stave; of a mixed set the one of the mean half-angle'),
    staves: z.array(mixedStave).describe('mixed sets: each stave, in ring order').optional(),
    heads: z.strictObject({ top: head.nullable().describe('null for a tub'), bottom: head }),
    hoops: z.array(hoop),
    strapsToBuy: z.array(strapToBuy),
    workingHoops: z.array(workingHoop),
    sensitivity: z.array(slip),
    warnings: z.array(warning),
  })
  .describe(
    'Numbers of a vessel, as `staveloft figures --json` prints them.',
  ) satisfies z.ZodType<FiguresFile>;

/** The file's text. */
export async function schemaText(): Promise<string> {
  const schema = z.toJSONSchema(figuresSchema, { target: 'draft-7' });
  return format(JSON.stringify({ ...schema, title: 'Figures of a vessel' }), { parser: 'json' });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  writeFileSync(path, await schemaText());
