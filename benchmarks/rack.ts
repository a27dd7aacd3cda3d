/** How well and how quickly staves are chosen: rows of the table. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { matchStaves, type MatchRequest, type MatchResult } from '../src/index.js';
import { halfAngle } from '../src/rack/closing.js';
import { seeded } from '../src/rack/random.js';
import { measureRing, ringFacts } from '../src/rack/ring-measure.js';
import { orderRing } from '../src/rack/ring.js';
import { measuringStep } from '../src/rack/step.js';
import { verifyMatch } from '../src/rack/verify.js';
import { leastExcess } from './least-planing.js';
import { costs } from './processes.js';
import { shapes, widthsOf } from './rack-shapes.js';

type Row = readonly [what: string, result: string, target: string];

const sixteenth = 25.4 / 16;
const wanted: MatchRequest = {
  diameter: 678,
  measured: 'blank',
  vessels: 'max',
  count: { min: 25, max: 30 },
  tolerance: 1.5,
  plane: 2,
  bung: 90,
};
const exactly = { tolerance: 0.1, plane: 0 };

async function answerTo(widths: readonly number[], request: Partial<MatchRequest>) {
  const staves = widths.map((width, i) => {
    return { mark: `s${i}`, width, length: null, thickness: null, bung: null, note: '' };
  });
  const stock = { staves, step: measuringStep(widths) };
  const asked = { ...wanted, ...request };
  const now = (): number => performance.now() / 1000;
  const result = await matchStaves(stock, asked, { now });
  const flaws = verifyMatch(stock, asked, result);
  if (flaws.length > 0) throw new Error(flaws.join('; '));
  return result;
}

const many = [
  [
    '2,000 ordinary, within 0.1 mm, none planed',
    shapes.ordinary,
    2000,
    0.5,
    exactly,
    'the bound, under 2 s',
  ],
  ['20,000 ordinary, the same', shapes.ordinary, 20_000, 0.5, exactly, 'under 15 s'],
  ['2,000 gathered about the middle, the same', shapes.gathered, 2000, 0.5, exactly, ''],
  ['2,000 ordinary, read to 1/16 in, the same', shapes.ordinary, 2000, sixteenth, exactly, ''],
  ['2,000 ordinary, read to 2 mm, the same', shapes.ordinary, 2000, 2, exactly, ''],
  ['2,000 ordinary, read to 5 mm, the same', shapes.ordinary, 2000, 5, exactly, ''],
  ['2,000 in two clusters', shapes.clusters, 2000, 0.5, {}, 'within one'],
  ['2,000, few of them wide', shapes.fewWide, 2000, 0.5, { bung: 110 }, 'within one'],
  [
    '2,000 narrow, 28 to 30 a set',
    shapes.narrow,
    2000,
    0.5,
    { bung: null, count: { min: 28, max: 30 } },
    'within one',
  ],
  ['2,000 ordinary, read to 5 mm', shapes.ordinary, 2000, 5, {}, 'within one'],
] as const;

async function manyRows(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const [name, shape, count, step, request, target] of many) {
    const result = await answerTo(widthsOf(shape, count, step, 1), request);
    rows.push([`sets from ${name}`, ofBound(result), target]);
  }
  return rows;
}

function ofBound({ sets, upperBound, seconds }: MatchResult): string {
  return `${sets.length} of at most ${upperBound} in ${seconds.toFixed(1)} s`;
}

/** Just enough wood for the last of three casks: the rack is cut down to what they need and a little more. */
async function tightRow(): Promise<Row> {
  let [reached, near] = [0, 0];
  const racks = 10;
  for (let seed = 1; seed <= racks; seed++) {
    const widths: number[] = [];
    let girth = 0;
    for (const width of widthsOf(shapes.ordinary, 120, 0.5, seed)) {
      if (girth > 3 * Math.PI * 678 + 3) break;
      widths.push(width);
      girth += 678 * halfAngle(width, 678, 'blank');
    }
    const { sets, upperBound } = await answerTo(widths, { bung: null });
    if (sets.length === upperBound) reached++;
    if (sets.length >= upperBound - 1) near++;
  }
  return [
    'racks with just enough wood for three',
    `the bound in ${reached} of ${racks}, within one in ${near}`,
    'within one',
  ];
}

const smallSteps = [0.5, 1, sixteenth];
/** What `match` takes unless told otherwise, and a demanding cooper. */
const smallRequests = [{}, { tolerance: 0.5, plane: 0 }];

/** From racks of all shapes; 56 staves are hardly enough wood for two casks. */
async function smallRow(vessels: number): Promise<Row> {
  let proven = 0;
  let slowest = 0;
  let racks = 0;
  for (const shape of Object.values(shapes))
    for (const step of smallSteps)
      for (const count of [56, 60, 65, 70])
        for (const request of smallRequests) {
          const widths = widthsOf(shape, count, step, 31 * count + 1);
          const { provenBest, seconds } = await answerTo(widths, { ...request, vessels });
          racks++;
          if (provenBest) proven++;
          slowest = Math.max(slowest, seconds);
        }
  const casks = vessels === 1 ? 'one cask' : `${vessels} casks`;
  return [
    `${casks} from 56 to 70 staves of five shapes, proven best in all aims`,
    `${proven} of ${racks}, at most ${slowest.toFixed(1)} s`,
    'all, under 2 s',
  ];
}

/** Sets of 26 out of 29 staves, so tight that most must be planed. */
async function planingRow(): Promise<Row> {
  let [racks, alike, planed] = [0, 0, 0];
  for (let seed = 1; seed <= 12; seed++) {
    const widths = widthsOf(shapes.ordinary, 29, 0.5, seed).map((width) => width + 3);
    const [tolerance, count] = [0.02, 26];
    const excess = await leastExcess({ widths, diameter: 678, tolerance, count });
    if (excess === null) continue;
    const request = {
      vessels: 1,
      bung: null,
      tolerance,
      plane: 40,
      count: { min: count, max: count },
    };
    const [set] = (await answerTo(widths, request)).sets;
    if (!set) continue;
    const turned = set.staves.reduce(
      (sum, { width }) => sum + halfAngle(width, 678 + tolerance, 'blank'),
      0,
    );
    racks++;
    if (excess > 1e-9) planed++;
    // a hundredth of a millimetre of width is 1.5e-5 of half-angle
    if (Math.max(0, turned - Math.PI) < excess + 1.5e-5) alike++;
  }
  return [
    'least planing as integer programming finds it',
    `${alike} of ${racks} racks, ${planed} of them planed`,
    'all',
  ];
}

/** Ring order against the best of a long run. */
async function ringRow(): Promise<Row> {
  const { sets } = await answerTo(widthsOf(shapes.ordinary, 300, 0.5, 1), { vessels: 10 });
  let [ours, best] = [0, 0];
  for (const { staves, closesAt, ringMeasure } of sets) {
    const widths = staves.map(({ width, planeOff }) => width - planeOff);
    const angles = widths.map((width) => halfAngle(width, closesAt, 'blank'));
    const facts = ringFacts(widths, angles, closesAt, []);
    const long = orderRing({ facts, first: 0, run: [], starts: 400 }, seeded(99));
    ours += ringMeasure;
    best += Math.min(ringMeasure, measureRing(facts, long.order).measure);
  }
  return [
    'order round the ring, ten sets, against 400 beginnings',
    `${(ours / best).toFixed(2)} x`,
    '',
  ];
}

function processRows(program: string, spec: string, scratch: string): Row[] {
  mkdirSync(scratch, { recursive: true });
  const command = (count: number): string[] => {
    const stock = join(scratch, `rack-${count}.csv`);
    const rows = widthsOf(shapes.ordinary, count, 0.5, 1).map((width, i) => `s${i},${width}`);
    writeFileSync(stock, `mark,width\n${rows.join('\n')}\n`);
    const options = [
      '--vessels',
      'max',
      '--tolerance',
      '0.1',
      '--plane',
      '0',
      '--bung',
      '90',
      '--json',
    ];
    return [program, 'match', spec, '--stock', stock, ...options];
  };
  const cost = costs({ some: command(2000), many: command(20_000) }, 3);
  return [
    ['`match`, 2,000 staves', `${(cost.some.wall / 1000).toFixed(1)} s`, 'under 2 s'],
    ['`match`, 20,000 staves', `${(cost.many.wall / 1000).toFixed(1)} s`, 'under 15 s'],
  ];
}

export async function rackRows(program: string, spec: string, scratch: string): Promise<Row[]> {
  const rows = await manyRows();
  rows.push(await tightRow(), await smallRow(1), await smallRow(2));
  rows.push(await planingRow(), await ringRow(), ...processRows(program, spec, scratch));
  return rows;
}
