import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import * as z from 'zod';
import { matchSchema, schemaTexts, swapSchema } from '../../scripts/make-match-schema.js';
import type { MatchFile } from '../../src/cli/match-json.js';
import { planVessel } from '../../src/index.js';
import { bucket, root, Workshop, type Answer } from './workshop.js';

const wine = readFileSync(join(root, 'templates/wine-cask-225.yaml'), 'utf8');
const rack = readFileSync(join(root, 'templates/rack-invented.csv'), 'utf8');
const keg = readFileSync(join(root, 'templates/keg-10-inches.yaml'), 'utf8');

/** Twenty staves of a bucket of 300 mm that needs about 944 mm. */
const bucketWidths = [
  52, 61.5, 55, 63, 58.5, 66, 57, 60, 62.5, 54.5, 59, 64, 56, 61, 58, 65, 53, 60.5, 57.5, 62,
];
const csvOf = (widths: readonly (number | string)[], mark = (i: number) => `B${i + 1}`): string =>
  ['mark,width', ...widths.map((width, i) => `${mark(i)},${width}`)].join('\n');
const bucketRack = csvOf(bucketWidths);

const files = {
  'bucket.yaml': bucket,
  'wine.yaml': wine,
  'keg.yaml': keg,
  'rack.csv': rack,
  'bucket.csv': bucketRack,
};

const match = (...argv: string[]): Promise<Answer> => new Workshop(files).run(['match', ...argv]);
const matchBucket = (...argv: string[]): Promise<Answer> =>
  match('bucket.yaml', '--stock', 'bucket.csv', ...argv);

async function json(...argv: string[]): Promise<MatchFile> {
  const { out, err } = await match(...argv, '--json');
  expect(err).toBe('');
  return JSON.parse(out) as MatchFile;
}

/** Half-angles to pi: what closing means, written down once more. */
function closes({ sets, asked }: MatchFile): void {
  for (const { staves, closesAt, laidWidth } of sets) {
    const widths = staves.map(({ width, planeOff }) => width - planeOff);
    const half = widths.reduce((sum, width) => sum + Math.atan(width / closesAt), 0);
    expect(half).toBeCloseTo(Math.PI, 6);
    expect(Math.abs(closesAt - asked.diameter)).toBeLessThanOrEqual(asked.tolerance + 1e-6);
    expect(laidWidth).toBeCloseTo(
      widths.reduce((sum, width) => sum + width, 0),
      5,
    );
  }
}

describe('--json', () => {
  test('has the sets that were asked for, each closing within the tolerance', async () => {
    const file = await json('wine.yaml', '--stock', 'rack.csv', '--vessels', '3');
    expect(file.version).toBe(1);
    expect(file.sets).toHaveLength(3);
    closes(file);
    for (const { staves, count, bungStave } of file.sets) {
      expect(count).toBe(staves.length);
      expect(count).toBeGreaterThanOrEqual(25);
      expect(count).toBeLessThanOrEqual(30);
      expect(staves[0]!.mark).toBe(bungStave);
      expect(staves[0]!.width).toBeGreaterThanOrEqual(90);
    }
    const used = file.sets.flatMap(({ staves }) => staves.map(({ mark }) => mark));
    expect(new Set(used).size).toBe(used.length);
    expect([...used, ...file.left].sort()).toEqual(
      rack
        .trim()
        .split('\n')
        .slice(1)
        .map((row) => row.split(',')[0])
        .sort(),
    );
    expect(file).toMatchObject({ proven: true, upperBound: 3, shortfall: null, help: null });
  });

  test('keeps to its schema, and the schema in the package is up to date (npm run schemas)', async () => {
    const text = readFileSync(join(root, 'schemas/match.schema.json'), 'utf8');
    expect(text).toBe((await schemaTexts())['match.schema.json']);
    const shipped = z.fromJSONSchema(JSON.parse(text) as Parameters<typeof z.fromJSONSchema>[0]);
    for (const vessels of ['1', 'max', '9']) {
      const file = await json('bucket.yaml', '--stock', 'bucket.csv', '--vessels', vessels);
      expect(matchSchema.safeParse(file).error).toBeUndefined();
      expect(shipped.safeParse(file).error).toBeUndefined();
      expect(shipped.safeParse({ ...file, odd: 1 }).success).toBe(false);
    }
  });

  test('lengths are mm, whatever the units of the spec', async () => {
    const widths = Array.from({ length: 40 }, (_, i) => `${1 + (i % 2)} ${1 + 2 * (i % 7)}/16`);
    const shop = new Workshop({ ...files, 'in.csv': csvOf(widths) });
    const { out } = await shop.run([
      'match',
      'keg.yaml',
      '--stock',
      'in.csv',
      '--bung',
      '2',
      '--json',
    ]);
    const file = JSON.parse(out) as MatchFile;
    expect(file.asked).toMatchObject({ diameter: 257.175, bung: 50.8, tolerance: 1.5875 });
    closes(file);
  });

  test('the order of the rows, and of their columns, plays no part', async () => {
    const rows = bucketRack.split('\n').slice(1);
    const turned = rows.map((row) => row.split(',').reverse().join(';')).reverse();
    const shop = new Workshop({ ...files, 'turned.csv': ['width;mark', ...turned].join('\r\n') });
    const { out } = await shop.run(['match', 'bucket.yaml', '--stock', 'turned.csv', '--json']);
    const { seconds: _a, ...one } = JSON.parse(out) as MatchFile;
    const { seconds: _b, ...other } = await json('bucket.yaml', '--stock', 'bucket.csv');
    expect(one).toEqual(other);
  });
});

describe('for people', () => {
  test('a table for each set, the running total ending at the laid width', async () => {
    const { code, out, err } = await matchBucket();
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^1 of 1 set from 20 staves/m);
    expect(out).toMatch(/closes at +\d{3}\.\d\d mm ± 0\.\d\d mm/);
    const laid = /laid edge to edge (\d+\.\d) mm/.exec(out)![1]!;
    const rows = [...out.matchAll(/^ +\d+ +B\d+ +\d+\.\d +\S+ +(\d+\.\d)/gm)];
    expect(rows.length).toBeGreaterThanOrEqual(14);
    expect(rows.at(-1)![1]).toBe(laid);
    expect(out).toMatch(/order +\d+\.\d: joints stray/);
    expect(out).toMatch(/^Left on the rack: \d staves$/m);
  });

  test('fewer than wanted: exit code 1, why, and what would help', async () => {
    const { code, out } = await matchBucket('--vessels', '2');
    expect(code).toBe(1);
    expect(out).toMatch(/^1 of 2 sets from 20 staves; no method makes more than 1/m);
    expect(out).toMatch(/^No set 2: not enough wood, the rack lacks \d+\.\d mm of girth\.$/m);
  });

  test('the staves that would help do, when they are added to the rack', async () => {
    const list = csvOf([...bucketWidths, 63, 57, 61, 52, 66, 59, 60, 54, 58, 62.5, 55]);
    const shop = new Workshop({ ...files, 'short.csv': list });
    const argv = ['match', 'bucket.yaml', '--vessels', '2', '--stock'];
    const { code, out } = await shop.run([...argv, 'short.csv']);
    expect(code).toBe(1);
    const said = /^(\d) staves? of ([\d.]+) mm to ([\d.]+) mm would make set 2\.$/m.exec(out);
    expect(said, out).not.toBeNull();
    const [count, from, to] = said!.slice(1).map(Number) as [number, number, number];
    for (const width of [from, to]) {
      const more = Array.from({ length: count }, (_, i) => `N${i},${width}`);
      const helped = new Workshop({ ...files, 'more.csv': [list, ...more].join('\n') });
      expect((await helped.run([...argv, 'more.csv'])).code).toBe(0);
    }
  });

  test('no bung stave', async () => {
    const { code, out } = await match('wine.yaml', '--stock', 'rack.csv', '--bung', '200');
    expect(code).toBe(1);
    expect(out).toContain('No set 1: no stave on the rack can take the bung');
    expect(out).toContain('at least 200.0 mm wide');
    for (const language of ['de', 'fr']) {
      const asked = ['--stock', 'rack.csv', '--bung', '200', '--language', language];
      expect((await match('wine.yaml', ...asked)).out).toMatch(/(mindestens|au moins) 200,0.mm/);
    }
  });

  test('max is as many as there are', async () => {
    const { code, out } = await matchBucket('--vessels', 'max');
    expect(code).toBe(0);
    expect(out).toMatch(/^1 set from 20 staves/m);
  });

  test('a rack of widths that never close', async () => {
    const shop = new Workshop({ ...files, 'alike.csv': csvOf(new Array<number>(40).fill(90)) });
    const { code, out } = await shop.run([
      ...['match', 'bucket.yaml', '--stock', 'alike.csv'],
      ...['--tolerance', '0.1', '--plane', '0'],
    ]);
    expect(code).toBe(1);
    expect(out).toMatch(/^No set 1: /m);
  });

  test('standing staves are kept', async () => {
    const standing = ['B3', 'B7', 'B11'];
    const { out, code } = await matchBucket('--standing', standing.join(','), '--json');
    expect(code).toBe(0);
    const marks = (JSON.parse(out) as MatchFile).sets[0]!.staves.map(({ mark }) => mark);
    const doubled = [...marks, ...marks];
    const at = doubled.indexOf('B3');
    expect(doubled.slice(at, at + 3)).toEqual(standing);
  });
});

test.each([
  ['de', /1 von 1 Satz aus 20 Dauben/, /schließt bei +\d{3},\d\d mm ± 0,\d\d mm/],
  ['fr', /1 sur 1 jeu, de 20 douelles/, /se ferme à +\d{3},\d\d mm ± 0,\d\d mm/],
])('--language %s: words and decimal commas, marks as they are', async (code, found, closesAt) => {
  const dotted = csvOf(bucketWidths, (i) => `B1.${i}`);
  const shop = new Workshop({ ...files, 'dotted.csv': dotted });
  const argv = ['match', 'bucket.yaml', '--stock', 'dotted.csv', '--language', code];
  const { out, err } = await shop.run([...argv, '--out', 'sets']);
  expect(err).toBe('');
  expect(out).toMatch(found);
  expect(out).toMatch(closesAt);
  expect(out).toMatch(/^ +1 +B1\.\d+ +\d+,\d /m);
  expect(shop.read('sets/set-1/stave-01.dxf')).toMatch(/B1\.\d/);
});

describe('bad input', () => {
  test.each([
    [['missing.yaml', '--stock', 'bucket.csv'], /missing\.yaml: .*no such file/],
    [['bucket.yaml', '--stock', 'missing.csv'], /missing\.csv: .*no such file/],
    [['bucket.yaml'], /--stock/],
    [['-', '--stock', '-'], /only one of/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--vessels', '0'], /whole number above 0, or max/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--vessels', '1.5'], /whole number above 0/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--count', '30-25'], /larger number first/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--count', '2'], /--count: 2 is not within 3-/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--count', 'many'], /28 or 25-30/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--tolerance', '-1'], /unknown option|no length/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--tolerance', '100'], /--tolerance: 100 mm/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--plane', 'x'], /--plane: "x" is no length in mm/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--bung', '0'], /--bung: "0" is no length/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--measured', 'blan'], /did you mean blank/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--standing', 'B1,Z9'], /no stave "Z9"/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--standing', 'B1,,B2'], /commas between/],
    [['bucket.yaml', '--stock', 'bucket.csv', '--seed', 'x'], /whole number/],
  ])('%j', async (argv, reason) => {
    const { code, out, err } = await match(...argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(reason);
  });

  test('all that is wrong with the list is named at once, with line and column, and nothing is written', async () => {
    const list = 'mark,width\nA1,60\nA1,61\nA2,wide\nA3,3\n,62\n';
    const shop = new Workshop({ ...files, 'bad.csv': list });
    const argv = ['match', 'bucket.yaml', '--stock', 'bad.csv', '--out', 'sets'];
    const { code, out, err } = await shop.run(argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    for (const place of ['bad.csv:3:1', 'bad.csv:4:4', 'bad.csv:5:4', 'bad.csv:6:1'])
      expect(err).toContain(`${place}: `);
    expect(shop.files()).not.toContain('sets/sets.csv');
  });

  test.each([
    ['de', /bad\.csv:3:1: Fehler: Das Zeichen "A1" steht schon in Zeile 2/, /keine Breite/],
    ['fr', /bad\.csv:3:1: erreur: Le repère "A1" est déjà à la ligne 2/, /largeur/],
  ])('it is said in the language asked for: %s', async (language, doubled, unreadable) => {
    const shop = new Workshop({ ...files, 'bad.csv': 'mark,width\nA1,60\nA1,61\nA2,wide\n' });
    const argv = ['match', 'bucket.yaml', '--stock', 'bad.csv', '--language', language];
    const { code, out, err } = await shop.run(argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(doubled);
    expect(err).toMatch(unreadable);
    expect(err).not.toMatch(/error:/);
  });

  test('a wrong spec and a wrong list are both named', async () => {
    const shop = new Workshop({ 'odd.yaml': 'vessel: box\n', 'bad.csv': 'mark\nA1\n' });
    const { code, err } = await shop.run(['match', 'odd.yaml', '--stock', 'bad.csv']);
    expect(code).toBe(2);
    expect(err).toContain('odd.yaml:1');
    expect(err).toContain('bad.csv:1');
  });

  test('doubtful readings are asked about, and the search goes on', async () => {
    const shop = new Workshop({ ...files, 'two.csv': `${bucketRack}\nC1,58/60.5` });
    const argv = ['match', 'bucket.yaml', '--stock', 'two.csv'];
    const { code, err } = await shop.run(argv);
    expect(code).toBe(0);
    expect(err).toMatch(/two\.csv:22:4: warning: .*measure this stave again/);
    expect((await shop.run([...argv, '--quiet'])).err).toBe('');
    const { out } = await shop.run([...argv, '--json']);
    expect((JSON.parse(out) as MatchFile).warnings).toEqual([
      { code: 'readings-apart', line: 22, column: 4, found: '58/60.5' },
    ]);
  });
});

test('the rack list may come by standard input', async () => {
  const { code } = await new Workshop(files).run(['match', 'bucket.yaml', '--stock', '-'], {
    stdin: `\uFEFF${bucketRack}`,
  });
  expect(code).toBe(0);
});

describe('--out', () => {
  const argv = ['match', 'bucket.yaml', '--stock', 'bucket.csv', '--out', 'sets'];

  test('writes plan, table, spec and a pattern for every stave', async () => {
    const shop = new Workshop(files);
    const { code, out } = await shop.run(argv);
    expect(code).toBe(0);
    expect(out).toContain('carry sets/set-1.pdf to the rack');
    const written = shop.files().filter((name) => name.startsWith('sets'));
    const { vessel } = planVessel(shop.read('sets/set-1/spec.yaml'), 'spec.yaml');
    const staves = vessel!.staves.map((_, i) => `stave-${String(i + 1).padStart(2, '0')}`);
    expect(written).toEqual(
      [
        ...['sets/set-1.pdf', 'sets/set-1.svg', 'sets/sets.csv'],
        ...['sets/set-1/index.html', 'sets/set-1/spec.yaml'],
        ...staves.flatMap((name) => [`sets/set-1/${name}.dxf`, `sets/set-1/${name}.svg`]),
      ].sort(),
    );
    expect(shop.read('sets/set-1.pdf').slice(0, 5)).toBe('%PDF-');
  });

  test('the spec of the set is taken on by draw and figures, and closes where the set does', async () => {
    const shop = new Workshop(files);
    const { sets } = JSON.parse((await shop.run([...argv, '--json'])).out) as MatchFile;
    const figures = await shop.run(['figures', 'sets/set-1/spec.yaml', '--json']);
    expect(figures.code).toBe(0);
    const { closesAt } = JSON.parse(figures.out) as { closesAt: number };
    expect(closesAt).toBeCloseTo(sets[0]!.closesAt, 3);
    const draw = ['draw', 'sets/set-1/spec.yaml', '--out', 'drawn', '--pieces', 'head'];
    expect((await shop.run(draw)).code).toBe(0);
  });

  test('the table has a row for each stave', async () => {
    const shop = new Workshop(files);
    await shop.run(argv);
    const [heading, ...rows] = shop.read('sets/sets.csv').trimEnd().split('\r\n');
    expect(heading).toBe('set,place,mark,bung,width_mm,plane_off_mm,laid_so_far_mm,closes_at_mm');
    expect(rows.length).toBeGreaterThanOrEqual(14);
    for (const row of rows)
      expect(row).toMatch(/^1,\d+,B\d+,no,[\d.]+,[\d.]+,[\d.]+,(29|30)\d(\.\d+)?$/);
  });

  test('nothing is overwritten unasked, and then nothing is written at all', async () => {
    const shop = new Workshop(files);
    await shop.run(['new', 'keg-30', '--out', 'sets.csv']);
    const again = ['match', 'bucket.yaml', '--stock', 'bucket.csv', '--out', '.'];
    const { code, err } = await shop.run(again);
    expect(code).toBe(2);
    expect(err).toMatch(/sets\.csv is there already; --replace/);
    expect(existsSync(shop.path('set-1.svg'))).toBe(false);
    expect((await shop.run([...again, '--replace'])).code).toBe(0);
    expect(shop.read('sets.csv')).toMatch(/^set,place/);
  });

  test('hostile marks stay text, in every file, and name none', async () => {
    const hostile = [
      '=1+1',
      '<script>alert(1)</script>',
      '../../up',
      '"quoted"',
      '@x',
      '-x',
      'a/b',
    ];
    const mark = (i: number): string => `"${(hostile[i % 7]! + i).replaceAll('"', '""')}"`;
    const shop = new Workshop({ ...files, 'odd.csv': csvOf(bucketWidths, mark) });
    const { code, out } = await shop.run([
      ...['match', 'bucket.yaml', '--stock', 'odd.csv', '--out', 'sets'],
    ]);
    expect(code).toBe(0);
    expect(out).toContain('<script>');
    for (const name of shop.files()) expect(name).toMatch(/^[\w./-]+$/);
    const table = shop.read('sets/sets.csv');
    expect(table).not.toMatch(/(^|,)"?[=@-]/m);
    for (const name of ['sets/set-1.svg', 'sets/set-1/index.html', 'sets/set-1/stave-02.svg'])
      expect(shop.read(name)).not.toContain('<script>alert');
  });

  test('the mark stands on each stave’s pattern', async () => {
    const shop = new Workshop(files);
    const { sets } = JSON.parse((await shop.run([...argv, '--json'])).out) as MatchFile;
    expect(shop.read('sets/set-1/stave-02.dxf')).toContain(`mark ${sets[0]!.staves[1]!.mark}`);
  });
});

describe('--swap', () => {
  const standing = bucketWidths.slice(0, 16).map((_, i) => `B${i + 1}`);
  const broken = ['--standing', standing.join(','), '--swap', 'B4'];

  test('names spares that are not in the ring, and the width to cut', async () => {
    const { code, out, err } = await matchBucket(...broken, '--tolerance', '1.5');
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^broken: B4, place 4 of 16, 63\.0 mm wide$/m);
    // 53, 60.5, 57.5 and 62 are left: the ring takes 63, and 60.5 and 62 within 1.5 mm of diameter, 4.7 mm of girth
    expect([...out.matchAll(/^ +(B\d+) /gm)].map(([, mark]) => mark)).toEqual(['B20', 'B18']);
    expect(out).toMatch(/^Or cut one 63\.0 mm wide; \d+\.\d mm to \d+\.\d mm close/m);
  });

  test('--json keeps to its schema', async () => {
    const text = readFileSync(join(root, 'schemas/swap.schema.json'), 'utf8');
    expect(text).toBe((await schemaTexts())['swap.schema.json']);
    const { out } = await matchBucket(...broken, '--json');
    expect(swapSchema.safeParse(JSON.parse(out)).error).toBeUndefined();
    expect(swapSchema.safeParse({ ...JSON.parse(out), odd: 1 }).success).toBe(false);
  });

  test('in the spec of a set, staves go by their numbers', async () => {
    const shop = new Workshop(files);
    await shop.run(['match', 'bucket.yaml', '--stock', 'bucket.csv', '--out', 'sets']);
    const argv = ['match', 'sets/set-1/spec.yaml', '--stock', 'bucket.csv', '--swap', '2'];
    const { out, code } = await shop.run(argv);
    expect(code).toBe(0);
    expect(out).toMatch(/^broken: 2, place 2 of \d+, \d+\.\d mm wide$/m);
  });

  test('no spare: exit code 1, and the width to cut all the same', async () => {
    const { code, out } = await matchBucket(...broken, '--tolerance', '0', '--plane', '0');
    expect(code).toBe(1);
    expect(out).toContain('No spare on the rack takes its place.');
    expect(out).toContain('Or cut one 63.0 mm wide');
  });

  test.each([
    [['--swap', 'B4'], /which staves stand/],
    [['--standing', 'B1,B2,B3', '--swap', 'B9'], /no stave "B9" stands in the ring/],
    [['--standing', 'B1,B2', '--swap', 'B1'], /do not make a ring/],
    [[...broken, '--out', 'x'], /writes no files/],
  ])('bad input: %j', async (argv, reason) => {
    const { code, out, err } = await matchBucket(...argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(reason);
  });
});
