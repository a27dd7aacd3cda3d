import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { withLegend } from '../../src/drawing/legend.js';
import { textWidth } from '../../src/drawing/lettering.js';
import { overlaps } from '../../src/drawing/overlap.js';
import type { Drawing } from '../../src/drawing/drawing.js';
import { wordsIn, type Language } from '../../src/language.js';
import { pieceWords } from '../../src/pieces/words/index.js';
import { settingPlan } from '../../src/pieces/setting-plan.js';
import type { MatchedSet } from '../../src/rack/request.js';
import { specOfSet } from '../../src/sets/set-spec.js';
import { toSheets } from '../../src/sheets/sheets.js';
import { solveVessel } from '../../src/vessel/solve.js';
import { toSvg } from '../../src/writers/svg.js';
import { caskWidths, setOf } from '../sets/sets.js';
import { vesselOf, wideTub, wineCask } from './vessels.js';

function planOf(text: string, set: MatchedSet, number = 1, words = pieceWords.en): Drawing {
  const solved = solveVessel(specOfSet(vesselOf(text).spec, set, 'blank', 'Invented, set 1'));
  if (!('vessel' in solved)) throw new Error(JSON.stringify(solved.issues));
  return settingPlan({ vessel: solved.vessel, set, number }, words);
}

const bunged = `${wineCask}bung: { diameter: 50 }\n`;
const plan = planOf(bunged, setOf(caskWidths));
const scale = plan.scale!;
const joints = plan.strokes.filter(({ layer }) => layer === 'joint');

const polar = ({ x, y }: { x: number; y: number }) => ({
  radius: Math.hypot(x, y),
  azimuth: (Math.atan2(x, y) + 2 * Math.PI) % (2 * Math.PI),
});

const touching = (drawing: Drawing): string[] =>
  overlaps(drawing).map(
    ({ lettering, other }) => `${lettering.text} | ${'text' in other ? other.text : other.layer}`,
  );

describe('the ring', () => {
  test('is the spec’s circle to scale, and one stave thickness inside it', () => {
    const [outer, inner] = plan.strokes.filter(({ layer }) => layer === 'outline');
    const D = setOf(caskWidths).closesAt;
    for (const vertex of outer!.curve.vertices)
      expect(polar(vertex).radius / scale).toBeCloseTo(D / 2, 6);
    for (const vertex of inner!.curve.vertices)
      expect(polar(vertex).radius / scale).toBeCloseTo(D / 2 - 27, 6);
  });

  test('has a joint between neighbours, each turn twice the stave’s half-angle, 360 degrees in all', () => {
    expect(joints).toHaveLength(28);
    const azimuths = joints.map(({ curve }) => polar(curve.vertices[0]!).azimuth);
    const D = setOf(caskWidths).closesAt;
    let sum = 0;
    for (const [i, azimuth] of azimuths.entries()) {
      const turn = (azimuth - azimuths.at(i - 1)! + 2 * Math.PI) % (2 * Math.PI);
      expect(turn).toBeCloseTo(2 * Math.atan(caskWidths[i]! / D), 9);
      sum += turn;
    }
    expect(sum).toBeCloseTo(2 * Math.PI, 9);
  });

  test('has the bung stave’s middle at the top, and goes clockwise', () => {
    const alpha = Math.atan(caskWidths[0]! / setOf(caskWidths).closesAt);
    const azimuths = joints.map(({ curve }) => polar(curve.vertices[0]!).azimuth);
    expect(azimuths[0]).toBeCloseTo(alpha, 9);
    expect(azimuths.at(-1)).toBeCloseTo(2 * Math.PI - alpha, 9);
    expect([...azimuths].sort((a, b) => a - b)).toEqual(azimuths);
  });

  test('shows the bung hole in the bung stave, as wide as it is', () => {
    const [hole] = plan.strokes.filter(({ layer }) => layer === 'bore');
    const xs = hole!.curve.vertices.map(({ x }) => x);
    expect((Math.max(...xs) - Math.min(...xs)) / scale).toBeCloseTo(50, 9);
    expect(planOf(wideTub, tubSet()).strokes.some(({ layer }) => layer === 'bore')).toBe(false);
  });

  test('with flat faces is a polygon with steps, its faces touching the circle', () => {
    const flat = planOf(wideTub.replace('inside: flat', 'inside: flat\n  outside: flat'), tubSet());
    const [outer] = flat.strokes.filter(({ layer }) => layer === 'outline');
    const D = tubSet().closesAt;
    const corners = outer!.curve.vertices.map((vertex) => polar(vertex).radius / flat.scale!);
    const expected = tubWidths.map((width) => Math.hypot(D / 2, width / 2));
    for (const corner of corners)
      expect(expected.some((radius) => Math.abs(radius - corner) < 1e-6)).toBe(true);
    expect(outer!.curve.vertices.length).toBeGreaterThan(tubWidths.length);
  });
});

const tubWidths = Array.from({ length: 23 }, (_, i) => [92, 70, 88, 76, 80][i % 5]!);
const tubSet = (): MatchedSet => setOf(tubWidths, { bungStave: null });

describe('lettering', () => {
  test('numbers every stave and names it with mark and width', () => {
    const texts = plan.letterings.map(({ text }) => text);
    expect(texts).toContain('bung');
    for (let i = 1; i <= 28; i++) expect(texts).toContain(String(i));
    for (const [i, width] of caskWidths.entries())
      expect(texts).toContain(`A${i + 1} · ${width.toFixed(1)}`);
    expect(texts).toContain('28 staves');
  });

  const odd = [
    '<b>&amp;"x"</b>',
    '../../etc/passwd',
    '=cmd|1',
    'a\u202eb',
    '木'.repeat(40),
    '\ud800',
  ];
  test.each([
    ['a cask', bunged, setOf(caskWidths)],
    ['a tub', wideTub, tubSet()],
    ['hostile marks', bunged, setOf(caskWidths, { marks: [...odd, ...caskWidths.map(String)] })],
    [
      'long marks',
      bunged,
      setOf(caskWidths, { marks: caskWidths.map((_, i) => `${i}`.repeat(30)) }),
    ],
    ['eighty narrow ones', wineCask.replace('28', '80'), setOf(new Array<number>(80).fill(26.6))],
    [
      'a few very wide ones',
      wineCask,
      setOf([300, 290, 40, 40, 300, ...new Array<number>(30).fill(38.35)]),
    ],
  ])('touches nothing: %s', (_, text, set) => {
    const drawing = planOf(text, set);
    expect(touching(drawing)).toEqual([]);
    expect(touching(withLegend(drawing))).toEqual([]);
  });

  test('crowded numbers are every fifth', () => {
    const crowded = planOf(
      `${wineCask}bung: none\n`,
      setOf(new Array<number>(120).fill(17.75), { bungStave: null }),
    );
    const numbers = crowded.letterings.map(({ text }) => text).filter((text) => /^\d+$/.test(text));
    const fifths = Array.from({ length: 23 }, (_, i) => String(5 * (i + 1)));
    expect(numbers).toEqual(['1', ...fifths]);
    expect(touching(crowded)).toEqual([]);
  });

  test('touches nothing whatever the widths (seeded)', () => {
    const width = fc.integer({ min: 40, max: 150 });
    const property = fc.property(fc.array(width, { minLength: 12, maxLength: 40 }), (parts) => {
      // scaled to about the girth of the cask
      const share = 2136 / parts.reduce((sum, part) => sum + part, 0);
      expect(touching(planOf(wineCask, setOf(parts.map((part) => part * share))))).toEqual([]);
    });
    fc.assert(property, { seed: 5, numRuns: 25 });
  });

  test('a long mark is cut short with dots in the ring, whole in the list', () => {
    const long = 'OAK-FROM-THE-NORTH-SLOPE-2031-CORNER-BAY';
    const drawing = planOf(
      bunged,
      setOf(caskWidths, { marks: caskWidths.map((_, i) => long + i) }),
    );
    const cut = drawing.letterings.filter(({ text }) => text.endsWith('…'));
    expect(cut).toHaveLength(28);
    for (const { text, height } of cut) {
      expect(long.startsWith(text.slice(0, -1))).toBe(true);
      expect(textWidth(text, height)).toBeLessThan(60);
    }
    expect(drawing.legend.tables[0]!.rows[4]![1]).toBe(`${long}4`);
  });

  test('markup in a mark stays text in the file', () => {
    const marks = caskWidths.map((_, i) => `<script>${i}</script>`);
    const set = setOf(caskWidths, { marks });
    expect(toSvg(withLegend(planOf(bunged, set)))).not.toContain('<script>');
  });
});

describe('the checklist', () => {
  const planeOff = caskWidths.map((_, i) => (i === 1 ? 0.8 : 0));
  const cures = [
    { closes: 'large', takeOut: 'A7', putIn: 'C2', changesBy: -0.48 },
    { closes: 'small', takeOut: 'A9', putIn: 'C3', changesBy: 0.32 },
  ] as const;
  const { legend } = planOf(bunged, setOf(caskWidths, { planeOff, cures }));
  const [table] = legend.tables;

  test('has a row for each stave in setting order, with the running total and boxes to tick', () => {
    expect(table!.rows).toHaveLength(28);
    expect(table!.rows[0]).toEqual(['1', 'A1', '96.00', '0', '96.00', '', '']);
    expect(table!.rows[1]).toEqual(['2', 'A2', '78.00', '0.80', '173.20', '', '']);
    const laid = caskWidths.reduce((sum, width) => sum + width, -0.8);
    expect(table!.rows.at(-1)![4]).toBe(laid.toFixed(2));
  });

  test('flat faces: 60 beside 100 leaves a step of 2.3 mm on a cask of 678', () => {
    const rest = new Array<number>(26).fill(75.9);
    const flat = `${wineCask}  outside: flat\n`;
    expect(planOf(flat, setOf([100, 60, ...rest])).legend.notes.join('\n')).toContain('2.3 mm');
  });

  test('says where the ring closes, how sure that is, what to plane and which spares cure it', () => {
    const text = legend.notes.join('\n');
    expect(text).toContain('0.25 mm (one standard deviation');
    expect(text).toContain('Plane one stave before jointing, 0.80 mm together');
    expect(text).toContain('take out A7 and put in C2; the diameter falls by 0.48 mm');
    expect(text).toContain('take out A9 and put in C3; the diameter grows by 0.32 mm');
    expect(text).toContain('the bung stave A1 first, clockwise');
  });
});

describe.each<Language>(['de', 'fr'])('in another language: %s', (language) => {
  test('numbers have a decimal comma, marks stay as they are, and nothing touches', async () => {
    const marks = caskWidths.map((_, i) => `B1.${i}`);
    const cures = [{ closes: 'large', takeOut: 'B1.3', putIn: 'C2.5', changesBy: -0.48 }] as const;
    const words = await wordsIn(pieceWords, language);
    const drawing = planOf(bunged, setOf(caskWidths, { marks, cures }), 1, words);
    const texts = drawing.letterings.map(({ text }) => text);
    expect(texts).toContain('B1.0 · 96,0');
    expect(drawing.legend.notes.join(' ')).toMatch(/B1\.3.*C2\.5.*0,48 mm/);
    expect(drawing.legend.tables[0]!.rows[3]).toEqual([
      '4',
      'B1.3',
      '84,50',
      '0',
      '320,50',
      '',
      '',
    ]);
    expect(touching(drawing)).toEqual([]);
    expect(touching(withLegend(drawing))).toEqual([]);
  });
});

test('files are named by the number of the set', () => {
  expect(planOf(bunged, setOf(caskWidths), 12).name).toBe('set-12');
});

test.each(['a4', 'letter'] as const)('a ring of 30 is listed on one sheet of %s', (paper) => {
  const widths = Array.from({ length: 30 }, (_, i) => 70.5 + (i % 3) / 2);
  const set = setOf(widths, { marks: widths.map((_, i) => `Q${i + 101}`) });
  const drawing = planOf(bunged.replace('count: 28', 'count: 30'), set);
  const sheets = toSheets(drawing, {
    paper,
    units: 'mm',
    titleBlock: { ...vesselOf(bunged).spec.sheet, title: drawing.title, subtitle: drawing.subject },
  });
  const marks = sheets.map(({ furniture: { letterings } }) => {
    return new Set(letterings.filter(({ text }) => /^Q1\d\d$/.test(text)).map(({ text }) => text))
      .size;
  });
  expect(Math.max(...marks), `marks on each sheet: ${marks.join(', ')}`).toBe(30);
});
