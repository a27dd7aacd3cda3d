/**
 * Makes schemas/match.schema.json and schemas/swap.schema.json, which describe what `staveloft match --json` prints, without
 * `--swap` and with it. Like that of the figures it is
 * written down here once more on purpose. Run with `npx tsx scripts/make-match-schema.ts`.
 */
import { writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { format } from 'prettier';
import * as z from 'zod';
import type { MatchFile } from '../src/cli/match-json.js';
import type { SwapFile } from '../src/cli/match-swap.js';

const folder = new URL('../schemas/', import.meta.url);

const length = (about: string) => z.number().describe(`${about}, mm`);
const count = (about: string) => z.int().min(0).describe(about);
const mark = (about: string) => z.string().describe(`mark ${about}`);

const asked = z
  .strictObject({
    diameter: length('outside diameter at the widest place, of the spec'),
    measured: z
      .enum(['blank', 'backed'])
      .describe('widths: across the flat face before backing, or corner to corner after it'),
    vessels: z.union([z.int().min(1), z.literal('max')]),
    count: z
      .strictObject({ min: z.int(), max: z.int() })
      .describe('how many staves a set may have'),
    tolerance: length('how far a set may close from the diameter'),
    plane: length('the most to be planed off the widths of one set'),
    bung: length('least width of the bung stave').nullable().describe('null: none is needed'),
  })
  .describe('what was asked for, with what is usual where nothing was said');

const stave = z.strictObject({
  mark: mark('on the rack list'),
  width: length('as measured'),
  planeOff: length('to be taken off the width'),
});

const ring = z
  .strictObject({
    unevenJoints: length('how far joints stray from even ones, root mean square'),
    imbalance: length('swing of width once round the ring'),
    lowNeighbours: length('by which neighbours of the first stave fall short of the mean width'),
    narrowPairs: count('pairs of neighbours that both belong to the narrowest quarter'),
    jointsInLine: z.number().describe('joints in line with joints of head boards, by nearness'),
    measure: z.number().describe('all of it in one number'),
  })
  .describe('what the ring measure is made of; all better when lower');

const cure = z.strictObject({
  closes: z.enum(['large', 'small']).describe('how the ring closes that this cures'),
  takeOut: mark('of the stave to take out of the ring'),
  putIn: mark('of the spare to put in'),
  changesBy: length('what that does to the closing diameter'),
});

const set = z.strictObject({
  staves: z.array(stave).describe('in setting order, from the bung stave'),
  closesAt: length('outside diameter at the widest place, after planing'),
  count: count('staves in the set'),
  bungStave: z.string().nullable().describe('its mark; null when none is needed'),
  ringMeasure: z.number().describe('of the order round the ring; better when lower'),
  ring,
  laidWidth: length('all staves edge to edge on the bench, after planing'),
  standardDeviation: length('of the closing diameter, from the step that widths were read to'),
  cures: z.array(cure).describe('spares on the rack that cure a ring that closes off'),
});

const shortfall = z
  .strictObject({
    reason: z.enum(['wood', 'counts', 'noBung', 'bung', 'widths', 'search', 'stopped', 'standing']),
    girthMissing: length('what the whole rack lacks for one set more; 0 unless for want of wood'),
  })
  .describe('why there are fewer sets than wanted');

const help = z
  .strictObject({
    staves: count('how many more'),
    fromWidth: length('least width'),
    toWidth: length('greatest width'),
    makesSet: count('which set they would make'),
  })
  .describe('staves that would make one set more');

const unfit = z.strictObject({
  mark: mark('of a stave that cannot be used'),
  because: z.enum(['length', 'thickness', 'width']),
});

const warning = z.strictObject({
  code: z.string().describe('stable name of the rule'),
  line: z.int().min(1),
  column: z.int().min(1),
  found: z.string(),
});

export const matchSchema = z
  .strictObject({
    version: z.literal(1).describe('of these keys'),
    title: z.string().describe('of the spec'),
    asked,
    sets: z.array(set),
    left: z.array(z.string()).describe('marks left on the rack, by width'),
    unfit: z.array(unfit).describe('they are among those left'),
    upperBound: count('no method makes more sets, of the number wanted'),
    proven: z.boolean().describe('whether no method makes more sets, of the number wanted'),
    provenBest: z.boolean().describe('whether no other choice is better by any aim'),
    seconds: z.number(),
    shortfall: shortfall.nullable().describe('null when there are as many sets as wanted'),
    help: help.nullable(),
    warnings: z.array(warning).describe('what is doubtful in the rack list'),
  })
  .describe(
    'Sets of staves that close, as `staveloft match --json` prints them.',
  ) satisfies z.ZodType<MatchFile>;

export const swapSchema = z
  .strictObject({
    version: z.literal(1).describe('of these keys'),
    title: z.string().describe('of the spec'),
    broken: z.strictObject({ mark: mark('of the broken stave'), width: length('as measured') }),
    place: z.int().min(1).describe('of the broken stave in the ring'),
    diameter: length('outside, at which the ring closes with the broken stave'),
    cut: z
      .strictObject({
        width: length('that closes the ring where it did'),
        from: length('least that closes within the tolerance'),
        to: length('greatest that does'),
      })
      .describe('a new stave'),
    isBungStave: z.boolean().describe('whether what takes its place must take the bung'),
    replacements: z
      .array(
        z.strictObject({
          mark: mark('of a spare on the rack'),
          width: length('as measured'),
          planeOff: length('to be taken off the width'),
          closesAt: length('outside diameter of the ring with it, after planing'),
        }),
      )
      .describe('best first'),
  })
  .describe(
    'What takes the place of a broken stave, as `staveloft match --swap --json` prints it.',
  ) satisfies z.ZodType<SwapFile>;

/** The files' texts, by name. */
export async function schemaTexts(): Promise<Record<string, string>> {
  const text = (schema: z.ZodType, title: string): Promise<string> => {
    const described = { ...z.toJSONSchema(schema, { target: 'draft-7' }), title };
    return format(JSON.stringify(described), { parser: 'json' });
  };
  return {
    'match.schema.json': await text(matchSchema, 'Sets of staves'),
    'swap.schema.json': await text(swapSchema, 'A broken stave'),
  };
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href)
  for (const [name, text] of Object.entries(await schemaTexts()))
    writeFileSync(new URL(name, folder), text);
