/** Folders that do not close fail, and for the right reason. */
import { describe, expect, test } from 'vitest';
import * as spoil from '../bench-test/mutate-dxf.js';
import { wideTub, wineCask } from '../pieces/vessels.js';
import { proofReport } from '../../src/index.js';
import { checksOf, Pack } from './pack.js';

const pack = await Pack.of(wineCask);

describe('one joint edge moved outwards by 0.1 mm', () => {
  const moved = pack.with('stave.dxf', (text) => spoil.edgeMoved(text, 'outline', 0.1));
  const wrong = moved.wrong();

  test('the edge is found, with what it is off', () => {
    const [edge, ...others] = wrong.filter(({ check }) => check === 'stave-edge');
    expect(others).toEqual([]);
    expect(edge).toMatchObject({ files: ['stave.dxf'], place: { face: 'outer', side: 'upper' } });
    expect(edge!.measured).toBeCloseTo(0.1, 2);
  });

  test('the joint closes too early at its outer edge, at every station', () => {
    const gaps = wrong.filter(({ check }) => check === 'joint-gap');
    // a joint is as far in as its edge is out, but for the cosine of half the angle of a stave
    for (const { measured } of gaps) {
      expect(measured).toBeGreaterThan(-0.112);
      expect(measured).toBeLessThan(-0.088);
    }
    const all = moved.prove().findings.filter(({ check }) => check === 'joint-gap');
    expect(gaps).toHaveLength(all.length);
  });

  test('the girth is larger by it on every stave', () => {
    for (const { measured, expected } of wrong.filter(({ check }) => check === 'girth'))
      expect(measured! - expected!).toBeCloseTo(28 * 0.1, 0);
  });

  test('heads and hoops are not blamed', () => {
    expect(checksOf(wrong).filter((check) => /head|hoop|strap/.test(check))).toEqual([]);
  });
});

test('the hidden edge moved outwards by 0.1 mm, on the other side', () => {
  const wrong = pack.with('stave.dxf', (text) => spoil.edgeMoved(text, 'hidden', 0.1)).wrong();
  expect(checksOf(wrong)).toContain('joint-gap');
  const [edge] = wrong.filter(({ check }) => check === 'stave-edge');
  expect(edge).toMatchObject({ place: { face: 'inner', side: 'upper' } });
});

describe('a missing arc', () => {
  test('flattened to its chord, the edge is off', () => {
    const wrong = pack.with('stave.dxf', (text) => spoil.arcFlattened(text, 'outline')).wrong();
    expect(checksOf(wrong)).toEqual(expect.arrayContaining(['stave-edge', 'joint-gap']));
  });

  test('left out, the contour is open there', () => {
    const wrong = pack.with('stave.dxf', (text) => spoil.opened(text, 'outline')).wrong();
    const [open] = wrong.filter(({ check }) => check === 'closed-contours');
    expect(open).toMatchObject({
      files: ['stave.dxf'],
      reason: 'open',
      place: { layer: 'outline' },
    });
    // the last segment of the contour is what is missing: its length is known
    expect(open!.measured).toBeGreaterThan(1);
    // and no joint can be measured without a contour
    expect(checksOf(wrong)).toContain('joint-gap');
  });

  test('of a head: it is no longer round', () => {
    const wrong = pack.with('head.dxf', (text) => spoil.arcFlattened(text, 'outline')).wrong();
    expect(checksOf(wrong)).toEqual(expect.arrayContaining(['head-rim', 'head-fit']));
  });

  test('all contours of a file taken away', () => {
    const wrong = pack.with('stave.dxf', (text) => spoil.layerEmptied(text, 'outline')).wrong();
    expect(wrong.find(({ check }) => check === 'stave-contour')).toMatchObject({ measured: 0 });
    expect(checksOf(wrong)).toEqual(expect.arrayContaining(['joint-gap', 'capacity']));
  });
});

test.each([
  'stave.dxf',
  'head.dxf',
  'hoops.dxf',
  'head-board-2.dxf',
  'dowel-jig.dxf',
  'croze-gauge.dxf',
])('a doubled line in %s', (name) => {
  const wrong = pack.with(name, (text) => spoil.doubled(text, 'outline')).wrong();
  expect(wrong).toContainEqual(expect.objectContaining({ check: 'doubled-lines', files: [name] }));
  expect(wrong.every(({ files }) => files.includes(name))).toBe(true);
});

describe('inches for millimetres', () => {
  test('the header says inches', () => {
    const wrong = pack.with('stave.dxf', (text) => spoil.unitChanged(text, 1)).wrong();
    expect(wrong).toEqual([
      expect.objectContaining({ check: 'units', reason: 'unit-1', measured: 1, expected: 4 }),
    ]);
  });

  test.each([
    [1 / 25.4, 'inch-small'],
    [25.4, 'inch-large'],
  ])('coordinates times %d', (factor, reason) => {
    const wrong = pack.with('head.dxf', (text) => spoil.scaled(text, factor)).wrong();
    expect(wrong).toEqual([
      expect.objectContaining({ check: 'scale', reason, files: ['head.dxf'] }),
    ]);
  });

  test('a gauge, which the vessel gives no size: by its lettering', () => {
    const large = (text: string): string => text.replace(/^( *40\n)3\.5$/gm, '$188.9');
    const wrong = pack.with('backing-gauge.dxf', large).wrong();
    expect(wrong).toEqual([expect.objectContaining({ check: 'scale', reason: 'lettering' })]);
  });
});

describe('another cask’s stave swapped in', () => {
  test.each([
    ['a taller cask', wineCask.replace('945', '955')],
    ['a wider cask', wineCask.replace('678', '680')],
    ['one stave more', wineCask.replace('28', '29')],
    ['thicker', `${wineCask}  thickness: 28\n`],
    ['another profile', wineCask.replace('arc', 'parabola')],
    ['another neutral line', `${wineCask}  neutral: 0.4\n`],
  ])('%s', async (_name, other) => {
    const { files } = await Pack.of(other, { pieces: ['stave'] });
    const wrong = pack.with('stave.dxf', () => files.get('stave.dxf')!).wrong();
    expect(checksOf(wrong)).toEqual(expect.arrayContaining(['stave-edge']));
    expect(wrong.some(({ files: named }) => named.includes('stave.dxf'))).toBe(true);
    expect(wrong.filter(({ check }) => check === 'units')).toEqual([]);
  });

  test('a tub’s', async () => {
    const { files } = await Pack.of(wideTub, { pieces: ['stave'] });
    const wrong = pack.with('stave.dxf', () => files.get('stave.dxf')!).wrong();
    expect(wrong[0]).toMatchObject({ check: 'scale', files: ['stave.dxf'] });
  });
});

describe('a file deleted', () => {
  const names = [...pack.files.keys()].filter((name) => name !== 'spec.yaml');
  test.each(names)('%s', (name) => {
    const wrong = pack.without(name).wrong();
    expect(wrong[0]).toMatchObject({ check: 'file-there', files: [name] });
    expect(checksOf(wrong).filter((check) => check !== 'file-there')).toEqual(
      name === 'stave.dxf' ? ['joint-gap', 'capacity'] : [],
    );
  });

  test('the page as well: what the vessel is judged by must be there', () => {
    const wrong = pack.without('index.html', 'head.dxf').wrong();
    expect(wrong.flatMap(({ files }) => files)).toEqual(['index.html', 'head.dxf']);
    expect(checksOf(pack.without('index.html', 'stave.dxf').wrong())).toContain('capacity');
  });

  test('a file of a picture or for paper counts as well', async () => {
    const drawn = await Pack.of(wideTub, { formats: ['svg', 'dxf'] });
    expect(drawn.without('head.svg').wrong()).toMatchObject([{ files: ['head.svg'] }]);
  });
});

test('a file too many, of another vessel', () => {
  const wrong = pack.and('head-board-7.dxf', pack.files.get('head-board-6.dxf')!).wrong();
  expect(wrong).toMatchObject([{ check: 'file-belongs', files: ['head-board-7.dxf'] }]);
});

test('hostile text in a finding stays text', () => {
  const odd = pack.with('stave.dxf', (text) => text.replace('LWPOLYLINE', '\u001b[31mSPLINE'));
  const report = proofReport(odd.prove(), 'x', 'y');
  expect(report.failures.join(' ')).toContain('SPLINE');
  expect(report.verdict).toMatch(/^Not proved: \d+ of \d+/);
});
