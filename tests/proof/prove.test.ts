/** Packs as `draw` makes them are proved, of every kind of vessel and however they are drawn. */
import { expect, test } from 'vitest';
import { everyVessel, wineCask } from '../pieces/vessels.js';
import { Pack } from './pack.js';

test.each(everyVessel)('%s: the whole pack is proved', async (_name, text) => {
  const pack = await Pack.of(text);
  const { passed, findings, notDrawn, joint } = pack.prove();
  expect(findings.filter((each) => !each.passed)).toEqual([]);
  expect({ passed, notDrawn }).toEqual({ passed: true, notDrawn: expect.any(Array) as string[] });
  expect(joint!.gaps.length).toBeGreaterThan(100);
});

const mixed = wineCask.replace(
  '  count: 28',
  '  widths: [92, 71, 80.1, 66.66, 75, 88, 64, 73.3, 79]',
);

test.each([
  ['lettering as outlines', wineCask, { letteringAs: 'outlines' as const }],
  ['no hoops', `${wineCask}hoops: []\n`, {}],
  ['flat outside', `${wineCask}  outside: flat\n`, {}],
  [
    'thinned ends, flat inside, cut',
    `${wineCask}  endThickness: 22\n  inside: flat\n  ends: cut\n`,
    {},
  ],
  [
    'nine uneven staves',
    mixed
      .replace('bilge: 678', 'bilge: 210')
      .replace('ends: 572', 'ends: 180')
      .replace('height: 945', 'height: 330'),
    {},
  ],
  ['unstretched line near the outer face', `${wineCask}  neutral: 0.2\n`, {}],
  ['parabola', wineCask.replace('arc', 'parabola'), {}],
  ['ellipse', wineCask.replace('arc', 'ellipse'), {}],
])('%s: proved', async (_name, text, options) => {
  expect((await Pack.of(text, options)).wrong()).toEqual([]);
});

test('what a file carries is told by its name', async () => {
  const { findings } = (await Pack.of(wineCask)).prove();
  const carriers = (check: string): string[] => [
    ...new Set(findings.filter((each) => each.check === check).flatMap(({ files }) => files)),
  ];
  expect(carriers('joint-gap')).toEqual(['stave.dxf']);
  expect(carriers('capacity')).toEqual(['stave.dxf']);
  expect(carriers('head-fit')).toEqual(['head.dxf']);
  expect(carriers('strap-length')).toEqual(['hoops.dxf']);
  expect(carriers('edge-groove-depth')).toEqual(['head-edge.dxf']);
  expect(carriers('units').length).toBeGreaterThan(20);
});

test('the gap of an untouched joint is that of arcs within 0.005 mm of the exact edge, twice', async () => {
  const { findings } = (await Pack.of(wineCask)).prove();
  const gaps = findings.filter(({ check }) => check === 'joint-gap');
  expect(gaps.length).toBeGreaterThan(8);
  for (const { measured } of gaps) expect(Math.abs(measured!)).toBeLessThan(0.0102);
});
