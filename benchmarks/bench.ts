/** What the program costs: `npm run bench` prints one table, which the README shows. ROUNDS=5 for a quick look. */
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { cpus, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildBundles } from '../scripts/build.js';
import { drawVessel, planVessel } from '../src/index.js';
import { costs, median, type Cost } from './processes.js';
import { segmentCounts } from './segments.js';

type Row = readonly [what: string, result: string, target: string];

const rounds = Number(process.env['ROUNDS'] ?? 15);
const spec = fileURLToPath(new URL('../templates/wine-cask-225.yaml', import.meta.url));

function processRows(program: string, out: string): Row[] {
  const draw = ['draw', spec, '--out', out, '--pieces', 'stave,head', '--replace', '--quiet'];
  const cost = costs(
    {
      bare: ['-e', '0'],
      figures: [program, 'figures', spec],
      draw: [program, ...draw],
      lines: [program, ...draw, '--formats', 'svg,dxf'],
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
    ['peak memory of `draw`', `${cost.draw.memory.toFixed(0)} MB`, 'under 200 MB'],
  ];
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
  const rows = [
    ...processRows(join(scratch, 'dist/staveloft.cjs'), out),
    drawingRow(),
    ...segmentRows(),
    sizeRow(out, 'stave'),
    sizeRow(out, 'head'),
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
