import fc from 'fast-check';
import { SaxesParser } from 'saxes';
import svgpath from 'svgpath';
import { describe, expect, it } from 'vitest';
import { drawingBounds } from '../../src/drawing/bounds.js';
import { drawingOf, label, leaderLabel, merge, strokes } from '../../src/drawing/build.js';
import type { Part } from '../../src/drawing/build.js';
import { letteringOutlines, printable } from '../../src/drawing/lettering.js';
import { layerNames, layerStyles } from '../../src/drawing/layers.js';
import type { Curve, Point } from '../../src/geometry/curve.js';
import { arc, circle, line, polygon } from '../../src/geometry/curve.js';
import { distanceTo } from '../../src/geometry/nearest.js';
import { segmentsOf } from '../../src/geometry/segment.js';
import { toSvg } from '../../src/writers/svg.js';

const at = (x: number, y: number) => ({ x, y });

interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

/** Reads the file with a strict XML parser: anything not well formed throws. */
function read(svg: string): Element {
  const root: Element = { name: '', attributes: {}, children: [], text: '' };
  const open = [root];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', (tag) => {
    const attributes = Object.fromEntries(
      Object.entries(tag.attributes).map(([key, { value }]) => [key, value]),
    );
    const element: Element = { name: tag.name, attributes, children: [], text: '' };
    open.at(-1)!.children.push(element);
    open.push(element);
  });
  parser.on('text', (text) => (open.at(-1)!.text += text));
  parser.on('closetag', () => open.pop());
  parser.write(svg).close();
  return root.children[0]!;
}

const svgOf = (part: Part, title = 'Test piece') => toSvg(drawingOf('test', title, part));
const group = (svg: Element, layer: string) =>
  svg.children.find((child) => child.attributes['id'] === layer)!;
const paths = (element: Element) => element.children.filter((child) => child.name === 'path');

/** Points along a path as the file has it, back in the drawing's coordinates. */
function trace(data: string, part: Part): Point[] {
  const { minX, maxY } = drawingBounds(part);
  const [left, top] = [Math.floor(minX - 5), Math.ceil(maxY + 5)];
  const points: Point[] = [];
  const fractions = Array.from({ length: 10 }, (_, i) => (i + 1) / 10);
  svgpath(data)
    .abs()
    .unshort()
    .iterate((segment, _index, x, y) => {
      const numbers = segment.slice(1) as unknown as number[];
      if (segment[0] === 'L' || segment[0] === 'M') points.push(at(numbers[0]!, numbers[1]!));
      if (segment[0] === 'Q') points.push(...fractions.map((t) => bezier([x, y, ...numbers], t)));
      if (segment[0] === 'A') points.push(...fractions.map((t) => onArc(x, y, numbers, t)));
    });
  return points.map(({ x, y }) => at(x + left, top - y));
}

/** SVG 1.1, F.6.5, for circles and the small arc: the centre lies beside the chord, on its right for sweep flag 0. */
function onArc(x: number, y: number, numbers: readonly number[], fraction: number): Point {
  const [rx, ry, turn, large, flag, toX, toY] = numbers as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  expect([ry, turn, large]).toEqual([rx, 0, 0]);
  const chord = Math.hypot(toX - x, toY - y);
  const away = Math.sqrt(Math.max(0, rx * rx - (chord * chord) / 4)) * (flag === 1 ? 1 : -1);
  const centreX = (x + toX) / 2 - (away * (toY - y)) / chord;
  const centreY = (y + toY) / 2 + (away * (toX - x)) / chord;
  const start = Math.atan2(y - centreY, x - centreX);
  const end = Math.atan2(toY - centreY, toX - centreX);
  const full = 2 * Math.PI;
  const sweep = flag === 1 ? (end - start + full) % full : -((start - end + full) % full);
  const angle = start + sweep * fraction;
  return at(centreX + rx * Math.cos(angle), centreY + rx * Math.sin(angle));
}

function bezier(numbers: readonly number[], t: number): Point {
  let row = numbers;
  while (row.length > 2) {
    row = row.slice(2).map((value, i) => row[i]! * (1 - t) + value * t);
  }
  return at(row[0]!, row[1]!);
}

describe('an SVG', () => {
  const part = merge(
    strokes('outline', polygon([at(-40.3, -10), at(60.2, -10), at(60.2, 20.7), at(-40.3, 20.7)])),
    strokes('centre', line(at(-42, 0), at(62, 0))),
    leaderLabel('bung stave', at(0, 40), at(20, 20)),
  );
  const svg = read(svgOf(part));

  it('is as large as its drawing and 5 mm all round, in whole millimetres, one unit to the millimetre', () => {
    const { width, height, viewBox } = svg.attributes;
    const { minX, maxX, minY, maxY } = drawingBounds(part);
    const [w, h] = [parseFloat(width!), parseFloat(height!)];
    expect([width, height]).toEqual([`${w}mm`, `${h}mm`]);
    expect(viewBox).toBe(`0 0 ${w} ${h}`);
    expect(Number.isInteger(w) && Number.isInteger(h)).toBe(true);
    expect(w - (maxX - minX + 10)).toBeGreaterThanOrEqual(0);
    expect(w - (maxX - minX + 10)).toBeLessThan(2);
    expect(h - (maxY - minY + 10)).toBeGreaterThanOrEqual(0);
    expect(h - (maxY - minY + 10)).toBeLessThan(2);
  });

  it('has its title and one titled group for each layer in use, in the order of the layers', () => {
    expect(svg.children[0]).toMatchObject({ name: 'title', text: 'Test piece' });
    const groups = svg.children.slice(1);
    expect(groups.map((child) => child.name)).toEqual(Array(4).fill('g'));
    expect(groups.map((child) => child.attributes['id'])).toEqual([
      'outline',
      'centre',
      'dimension',
      'lettering',
    ]);
    expect(groups[0]!.children[0]).toMatchObject({
      name: 'title',
      text: 'outline: edge that is cut through',
    });
  });

  it('draws black lines of the layer’s width and dashes, in mm, and fills nothing but letters', () => {
    const all = layerNames.filter((layer) => layer !== 'lettering');
    const full = read(svgOf(merge(...all.map((layer) => strokes(layer, circle(at(0, 0), 9))))));
    for (const layer of all) {
      const { attributes } = group(full, layer);
      expect(attributes).toMatchObject({ fill: 'none', stroke: 'black' });
      expect(Number(attributes['stroke-width'])).toBe(layerStyles[layer].width);
    }
    expect(group(full, 'hidden').attributes['stroke-dasharray']).toBe('3 0.75');
    expect(group(full, 'centre').attributes['stroke-dasharray']).toBe('6 0.75 0.125 0.75');
    expect(group(full, 'outline').attributes).not.toHaveProperty('stroke-dasharray');
    expect(group(svg, 'lettering').attributes).toMatchObject({ fill: 'black', stroke: 'none' });
  });

  it('turns y over once: what is up stays up, and nothing is mirrored', () => {
    // a flag, its cloth at the top on the right of the pole
    const flag = polygon([at(0, 0), at(0, 20), at(10, 20), at(10, 12), at(0.5, 12), at(0.5, 0)]);
    const data = paths(group(read(svgOf(strokes('outline', flag))), 'outline'))[0]!.attributes['d'];
    expect(data).toBe('M5 25L5 5L15 5L15 13L5.5 13L5.5 25Z');
  });

  it('keeps an arc’s side: a bulge to the left in the drawing is one on screen', () => {
    // counter-clockwise from the right, over the top, to the left
    const left = arc(at(0, 0), 10, 0, Math.PI / 2);
    const right = arc(at(0, 0), 10, Math.PI / 2, 0);
    const data = (curve: Curve) =>
      paths(group(read(svgOf(strokes('outline', curve))), 'outline'))[0]!.attributes['d'];
    expect(data(left)).toBe('M15 15A10 10 0 0 0 5 5');
    expect(data(right)).toBe('M5 5A10 10 0 0 1 15 15');
  });

  it('draws a circle as four arcs and closes it', () => {
    const round = read(svgOf(strokes('bore', circle(at(0, 0), 10))));
    expect(paths(group(round, 'bore'))[0]!.attributes['d']).toBe(
      'M25 15A10 10 0 0 0 15 5A10 10 0 0 0 5 15A10 10 0 0 0 15 25A10 10 0 0 0 25 15Z',
    );
  });

  it('names what the piece belongs to after its title', () => {
    const drawing = { ...drawingOf('head', 'Head', part), subject: 'Keg <1>' };
    expect(read(toSvg(drawing)).children[0]!.text).toBe('Head – Keg <1>');
  });

  it('leaves out a curve of a single point, which draws nothing', () => {
    const dot = strokes('outline', line(at(1, 1), at(1, 1)));
    expect(read(svgOf(merge(dot, label('a', at(0, 0))))).children.map((c) => c.name)).toEqual([
      'title',
      'g',
    ]);
  });

  it('draws leaders on the layer of dimensions', () => {
    expect(paths(group(svg, 'dimension'))).toHaveLength(2);
  });

  it('is the same for the same drawing', () => {
    expect(svgOf(part)).toBe(svgOf(part));
  });

  it('is refused for a drawing with nothing in it, or with a number that is none', () => {
    expect(() => svgOf(merge())).toThrow(RangeError);
    expect(() => svgOf(strokes('outline', line(at(0, NaN), at(1, 1))))).toThrow(RangeError);
    expect(() => svgOf(label('x', at(Infinity, 0)))).toThrow(RangeError);
  });
});

describe('curves read back from an SVG', () => {
  const vertex = fc.record({
    x: fc.double({ min: -900, max: 900, noNaN: true }),
    y: fc.double({ min: -900, max: 900, noNaN: true }),
    bulge: fc.oneof(
      fc.constant(0),
      fc.double({ min: -1, max: 1, noNaN: true }),
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.double({ min: -1e-3, max: 1e-3, noNaN: true }),
      fc.double({ min: -1e-6, max: 1e-6, noNaN: true }),
    ),
  });
  const curves = fc
    .record({
      closed: fc.boolean(),
      vertices: fc.array(vertex, { minLength: 3, maxLength: 6 }),
    })
    .filter((curve) => segmentsOf(curve).every(({ length }) => length > 0.01))
    .filter((curve) => segmentsOf(curve).length > 1);

  it('lie on the curves that were drawn', () => {
    fc.assert(
      fc.property(curves, (curve) => {
        const part = strokes('outline', curve);
        const data = paths(group(read(svgOf(part)), 'outline'))[0]!.attributes['d']!;
        expect(data.endsWith('Z')).toBe(curve.closed);
        for (const point of trace(data, part)) {
          // rounding moves the ends by 0.00007 and the radius by 0.00005; an arc's crown by a few times that
          expect(distanceTo(curve, point)).toBeLessThan(0.0005);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('lie within 0.0005 mm for the flat arcs of staves, up to 1,000 km of radius', () => {
    for (const rise of [53, 5, 0.5, 0.05, 0.005, 0.0005]) {
      const curve: Curve = {
        closed: false,
        vertices: [
          { x: -473, y: 32, bulge: rise / 473 },
          { x: 473, y: 38.2, bulge: 0 },
        ],
      };
      const part = strokes('outline', curve);
      const data = paths(group(read(svgOf(part)), 'outline'))[0]!.attributes['d']!;
      const away = trace(data, part).map((point) => distanceTo(curve, point));
      expect(away.length, `${rise}`).toBeGreaterThan(8);
      expect(Math.max(...away), `${rise}`).toBeLessThan(0.0005);
    }
  });
});

describe('lettering in an SVG', () => {
  const any = fc.record({
    text: fc.constantFrom('76.4', 'Größe ½″', 'AVATAR', 'Бочка', '漢'),
    x: fc.double({ min: -500, max: 500, noNaN: true }),
    y: fc.double({ min: -500, max: 500, noNaN: true }),
    angle: fc.oneof(fc.constantFrom(0, Math.PI / 2), fc.double({ min: -4, max: 4, noNaN: true })),
    height: fc.constantFrom(1.8, 3.5, 7, 20),
    align: fc.constantFrom('left' as const, 'centre' as const, 'right' as const),
  });

  it('stands where its outlines do', () => {
    fc.assert(
      fc.property(any, ({ text, x, y, ...options }) => {
        const part = label(text, at(x, y), options);
        const [path] = paths(group(read(svgOf(part)), 'lettering'));
        const { transform, d } = path!.attributes;
        const moved = svgpath(d!).transform(transform!).abs().unshort().toString();
        const ends = new Set(trace(moved, part).map((p) => `${p.x.toFixed(2)} ${p.y.toFixed(2)}`));
        const { maxX, minX, maxY, minY } = drawingBounds(part);
        for (const point of trace(moved, part)) {
          expect(point.x).toBeGreaterThan(minX - 1e-3);
          expect(point.x).toBeLessThan(maxX + 1e-3);
          expect(point.y).toBeGreaterThan(minY - 1e-3);
          expect(point.y).toBeLessThan(maxY + 1e-3);
        }
        const starts = letteringOutlines(part.letterings[0]!).map(({ start }) => start);
        for (const start of starts) {
          const near = [...ends].some((end) => {
            const [ex, ey] = end.split(' ').map(Number);
            return Math.hypot(ex! - start.x, ey! - start.y) < 0.011;
          });
          expect(near).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('that draws nothing leaves nothing', () => {
    const part = merge(strokes('outline', circle(at(0, 0), 9)), label(' \u200b', at(0, 0)));
    expect(group(read(svgOf(part)), 'lettering')).toBeUndefined();
  });

  it('is named by its own text', () => {
    const part = merge(label('Größe ½″', at(0, 0)), label('"<&>\'', at(0, 20)));
    const names = paths(group(read(svgOf(part)), 'lettering')).map(
      (p) => p.attributes['aria-label'],
    );
    expect(names).toEqual(['Größe ½″', '"<&>\'']);
  });
});

describe('hostile text', () => {
  const hostile = [
    '</title><script>alert(1)</script>',
    '" onload="alert(1)',
    "' /><image href='x'/>",
    ']]> <![CDATA[ <!-- --> <?xml ?>',
    '&lt; &#60; &unknown;',
    'line\nbreak\r\nand\ttab\u0000\u0007\u001b[31m',
    '\ud800 half a pair, \ufffe and \uffff',
    '\u202egnp.exe\u2066',
  ];

  const shape = (svg: Element): unknown => ({
    name: svg.name,
    keys: Object.keys(svg.attributes),
    children: svg.children.map(shape),
  });
  const plain = shape(read(svgOf(label('a', at(0, 0)), 'a')));

  it('stays text, in the title and in lettering', () => {
    for (const text of hostile) {
      const svg = read(svgOf(label(text, at(0, 0)), text));
      expect(shape(svg), text).toEqual(plain);
      expect(svg.children[0]!.text).toBe(printable(text));
      expect(paths(group(svg, 'lettering'))[0]!.attributes['aria-label']).toBe(printable(text));
    }
  });

  it('of any kind stays text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 60 }), (text) => {
        const svg = read(svgOf(label(`a${text}`, at(0, 0)), text));
        expect(shape(svg)).toEqual(plain);
        expect(svg.children[0]!.text).toBe(printable(text));
      }),
    );
  });
});
