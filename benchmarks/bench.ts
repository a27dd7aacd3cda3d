/** What the program costs: `npm run bench` prints one table, which the README shows. ROUNDS=5 for a quick look. */
import { mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildBundles } from '../scripts/build.js';
import { drawVessel, planVessel } from '../src/index.js';
import { pageRows } from './page.js';
import { costs, median, type Cost } from './processes.js';
import { rackRows } from './rack.js';
import { segmentCounts } from './segments.js';

type Row = readonly [what: string, result: string, target: string];

const rounds = Number(process.env['ROUNDS'] ?? 15);
const spec = fileURLToPath(new URL('../templates/wine-cask-225.yaml', import.meta.url));

function processRows(program: string, out: string): Row[] {
  const draw = ['draw', spec, '--out', out, '--pieces', 'stave,head', '--replace', '--quiet'];
  const whole = (number: number): string => join(out, `whole-${number}`);
  let drawn = 0;
  const pack = () => [program, 'draw', spec, '--out', whole(drawn++), '--quiet'];
  // the first round draws what is proved
  const cost = costs(
    {
      bare: ['-e', '0'],
      figures: [program, 'figures', spec],
      draw: [program, ...draw],
      lines: [program, ...draw, '--formats', 'svg,dxf'],
      pack,
      prove: [program, 'prove', whole(0)],
    },
    rounds,
  );
  const times = ({ wall, cpu }: Cost): string =>
    `${wall.toFixed(0)} ms, ${cpu.toFixed(0)} ms of processor`;
  const ratios = ({ wall, cpu }: Cost): string =>
    `${(wall / cost.bare.wall).toFixed(2)} x, ${(cpu / cost.bare.cpu).toFixed(2)} x of processor`;
  return [
    ['bare `node -e 0`', times(cost.bare), ''],
    ['`figures`', `${times(cost.figures)}: ${ratios(cost.figures)}`, '1.6 x, under 2'],
    [
      '`draw`, stave and head, 3 formats',
      `${times(cost.draw)}: ${ratios(cost.draw)}`,
      '3 x, under 4.5',
    ],
    ['the same without PDF', `${times(cost.lines)}: ${ratios(cost.lines)}`, ''],
    [
      '`draw`, the whole pack, 3 formats, into a new folder',
      `${times(cost.pack)}: ${ratios(cost.pack)}`,
      'under 6 x',
    ],
    ['`prove` of that pack', `${times(cost.prove)}: ${ratios(cost.prove)}`, 'under 4 x'],
    ['peak memory of `draw`', `${cost.draw.memory.toFixed(0)} MB`, 'under 200 MB'],
  ];
}

/** Casks of every height, in one command. */
function manySpecs(count: number): string[] {
  const text = readFileSync(spec, 'utf8');
  return Array.from({ length: count }, (_, i) => {
    const file = join(scratch, `cask-${String(i).padStart(3, '0')}.yaml`);
    const height = (850 + (150 * i) / count).toFixed(2);
    writeFileSync(file, text.replace(/^height:.*$/m, `height: ${height}`));
    return file;
  });
}

function manyRow(program: string, count: number, pieces: readonly string[], aim: string): Row {
  const out = join(scratch, `many-${count}`);
  const draw = [program, 'draw', ...manySpecs(count), '--out', out, '--replace', '--quiet'];
  const { many } = costs({ many: [...draw, ...pieces] }, 1);
  rmSync(out, { recursive: true });
  const each = `${(many.wall / count).toFixed(0)} ms, ${(many.cpu / count).toFixed(0)} ms of processor a spec`;
  const what = pieces.length > 0 ? 'stave and head' : 'the whole pack';
  return [`\`draw\` of ${count} specs, ${what}, 3 formats`, each, aim];
}

/** From the text of a spec to a finished drawing, once the compiler has warmed up. */
function drawingRow(): Row {
  const text = readFileSync(spec, 'utf8');
  const once = (): number => {
    const start = performance.now();
    drawVessel(planVessel(text, spec).vessel!, { pieces: ['stave'] });
    return performance.now() - start;
  };
  for (let i = 0; i < 300; i++) once();
  const time = median(Array.from({ length: 300 }, once));
  return ['spec to stave drawing, in process, warm', `${time.toFixed(2)} ms`, 'under 2 ms'];
}

function segmentRows(): Row[] {
  const { vessel } = planVessel(readFileSync(spec, 'utf8'), spec);
  return drawVessel(vessel!, { pieces: ['stave', 'head'] }).map(({ name, strokes }) => {
    const outlines = strokes.filter(({ layer }) => layer === 'outline');
    const counts = outlines.map(({ curve }) => segmentCounts(curve));
    const sum = (key: 'arcs' | 'chords'): number =>
      counts.reduce((total, each) => total + each[key], 0);
    return [
      `outline of ${name}, segments`,
      `${sum('arcs')} (a polyline: ${sum('chords')})`,
      '',
    ] as const;
  });
}

function sizeRow(out: string, piece: string): Row {
  const sizes = ['svg', 'dxf', 'pdf'].map((format) => {
    const { size } = statSync(join(out, `${piece}.${format}`));
    return `${(size / 1000).toFixed(0)} kB ${format.toUpperCase()}`;
  });
  return [`size of ${piece}`, sizes.join(', '), ''];
}

const scratch = mkdtempSync(join(tmpdir(), 'staveloft-bench-'));
try {
  await buildBundles(join(scratch, 'dist'));
  const out = join(scratch, 'out');
  const program = join(scratch, 'dist/staveloft.cjs');
  const rows = [
    ...processRows(program, out),
    manyRow(program, 200, ['--pieces', 'stave,head'], '60 ms on two cores'),
    manyRow(program, 20, [], ''),
    drawingRow(),
    ...segmentRows(),
    sizeRow(out, 'stave'),
    sizeRow(out, 'head'),
    ...(await pageRows()),
    ...(await rackRows(join(scratch, 'dist/staveloft.cjs'), spec, join(scratch, 'racks'))),
  ];
  const processor = `${cpus().length} x ${cpus()[0]?.model.trim() ?? 'unknown'}`;
  console.log(
    `Node ${process.version}, ${process.platform}, ${processor}, medians of ${rounds} runs\n`,
  );
  console.log('| what | measured | aim |\n| --- | --- | --- |');
  for (const row of rows) console.log(`| ${row.join(' | ')} |`);
} finally {
  rmSync(scratch, { recursive: true });
}
