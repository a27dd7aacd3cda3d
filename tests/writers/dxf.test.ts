import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { letteringCurves } from '../../src/drawing/lettering.js';
import { layerNames, layerStyles } from '../../src/drawing/layers.js';
import type { Curve } from '../../src/geometry/curve.js';
import { arc, circle, line, polygon } from '../../src/geometry/curve.js';
import { signedArea } from '../../src/geometry/measure.js';
import { toDxf } from '../../src/writers/dxf.js';
import { anyCurve } from '../geometry/arbitrary.js';
import { pointsAlong } from '../geometry/sampling.js';
import { drawingOf, fullDrawing, lettered, parsed, polylinesOf, textsOf } from './dxf-drawings.js';

/** The file as its pairs of code and value. */
function pairs(dxf: string): [number, string][] {
  const lines = dxf.split('\n');
  expect(lines.pop()).toBe('');
  expect(lines.length % 2).toBe(0);
  return lines.flatMap((code, i) => (i % 2 === 0 ? [[Number(code), lines[i + 1]!]] : []));
}

/** The values that follow the name of a header variable. */
function variable(dxf: string, name: string): string[] {
  const all = pairs(dxf);
  const start = all.findIndex(([code, value]) => code === 9 && value === name) + 1;
  expect(start).toBeGreaterThan(0);
  const end = all.findIndex(([code], i) => i >= start && (code === 9 || code === 0));
  return all.slice(start, end).map(([, value]) => value);
}

describe('the file', () => {
  const dxf = toDxf(fullDrawing());

  test('is AC1015 in millimetres (DXF reference: $INSUNITS 4 is mm, $MEASUREMENT 1 metric)', () => {
    expect(variable(dxf, '$ACADVER')).toEqual(['AC1015']);
    expect(variable(dxf, '$INSUNITS')).toEqual(['4']);
    expect(variable(dxf, '$MEASUREMENT')).toEqual(['1']);
    expect(variable(dxf, '$EXTMAX')).toEqual(['310', '200', '0']);
    expect(variable(dxf, '$EXTMIN')).toEqual(['-310', '-200', '0']);
  });

  test('has every section once and in order, and ends', () => {
    const all = pairs(dxf);
    const sections = all.filter((_, i) => all[i - 1]?.[1] === 'SECTION').map(([, value]) => value);
    const order = ['HEADER', 'CLASSES', 'TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS'];
    expect(sections).toEqual(order);
    expect(all.at(-1)).toEqual([0, 'EOF']);
  });

  test('gives each object a handle of its own, all below the seed; every owner exists', () => {
    const all = pairs(dxf);
    const body = all.slice(all.findIndex(([, value]) => value === 'CLASSES'));
    const handles = body.filter(([code]) => code === 5 || code === 105).map(([, value]) => value);
    expect(new Set(handles).size).toBe(handles.length);
    const seed = parseInt(variable(dxf, '$HANDSEED')[0]!, 16);
    expect(Math.max(...handles.map((handle) => parseInt(handle, 16)))).toBeLessThan(seed);
    const owners = body.filter(([code]) => code === 330 || code === 350).map(([, value]) => value);
    for (const owner of owners) expect(['0', ...handles]).toContain(owner);
  });

  test('is 7-bit text, the same every time, without a date', () => {
    expect(dxf).toMatch(/^[\n\x20-\x7e]*$/);
    expect(toDxf(fullDrawing())).toBe(dxf);
    expect(dxf).not.toMatch(/TDCREATE|TDUPDATE|FINGERPRINTGUID/);
  });

  test('an empty drawing, and one of empty curves, is a valid file without entities', () => {
    expect(parsed(toDxf(drawingOf([]))).entities).toEqual([]);
    const nothing = [{ layer: 'outline' as const, curve: polygon([]) }];
    expect(parsed(toDxf(drawingOf(nothing))).entities).toEqual([]);
  });

  test('holds no NaN: such a drawing is a bug and throws', () => {
    const curve = line({ x: 0, y: NaN }, { x: 1, y: 1 });
    expect(() => toDxf(drawingOf([{ layer: 'outline', curve }]))).toThrow(RangeError);
  });
});

describe('layers', () => {
  const all = pairs(toDxf(drawingOf([])));

  test('all nine are there with line type, weight in 1/100 mm and colour 7', () => {
    for (const name of layerNames) {
      const start = all.findIndex(([code, value]) => code === 2 && value === name);
      const entry = Object.fromEntries(all.slice(start + 1, start + 5));
      const { width, lineType } = layerStyles[name];
      expect(entry[370]).toBe(String(Math.round(width * 100)));
      expect(entry[62]).toBe('7');
      expect(entry[6] === 'Continuous').toBe(lineType === 'continuous');
    }
  });

  test('dashes are in mm: a dashed line of 0.25 mm has marks of 3 mm and gaps of 0.75 mm', () => {
    const start = all.findIndex(([code, value]) => code === 2 && value === 'dashed-025');
    const pattern = all.slice(start, start + 10).filter(([code]) => code === 49);
    expect(pattern.map(([, value]) => value)).toEqual(['3', '-0.75']);
  });

  test('entities take everything from their layer', () => {
    const written = pairs(toDxf(fullDrawing()));
    const start = written.findIndex(([, value]) => value === 'ENTITIES');
    const end = written.findIndex(([, value]) => value === 'OBJECTS');
    const codes = new Set(written.slice(start + 1, end).map(([code]) => code));
    for (const code of [6, 62, 370, 420, 48, 60]) expect(codes.has(code)).toBe(false);
  });
});

describe('curves', () => {
  const outline = (curve: Curve) => polylinesOf(toDxf(drawingOf([{ layer: 'outline', curve }])));

  test('a circle is one closed polyline of four arcs, bulge .414214 each (DXF reference)', () => {
    const [ring, ...more] = outline(circle({ x: 10, y: 20 }, 278.2));
    expect(more).toEqual([]);
    expect(ring!.layer).toBe('outline');
    expect(ring!.curve.closed).toBe(true);
    for (const { bulge } of ring!.curve.vertices) expect(bulge).toBeCloseTo(0.414214, 6);
    expect(signedArea(ring!.curve)).toBeCloseTo(Math.PI * 278.2 ** 2, 1);
  });

  test('an open curve stays open, with no bulge at its end', () => {
    const [open] = outline(arc({ x: 0, y: 0 }, 10, 0, 1));
    expect(open!.curve.closed).toBe(false);
    expect(open!.curve.vertices.at(-1)!.bulge).toBe(0);
  });

  test('neighbours that round to one point become one, also across the seam; a lone point is no line', () => {
    const square = polygon([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10.00002, y: 0 },
      { x: 10, y: 10 },
      { x: 0.00001, y: 0.00001 },
    ]);
    expect(outline(square)[0]!.curve.vertices.length).toBe(3);
    expect(outline(line({ x: 1, y: 1 }, { x: 1.00001, y: 1 }))).toEqual([]);
  });

  test('read back, any curve lies within 0.0001 mm of what was drawn', () => {
    fc.assert(
      fc.property(anyCurve, (curve) => {
        const read = outline(curve)[0]!.curve;
        fc.pre(read.vertices.length === curve.vertices.length);
        const expected = pointsAlong(curve, 12);
        const off = pointsAlong(read, 12).map((p, i) =>
          Math.hypot(p.x - expected[i]!.x, p.y - expected[i]!.y),
        );
        expect(Math.max(...off)).toBeLessThan(0.0001);
      }),
      { seed: 11, numRuns: 200 },
    );
  });

  test('rounding a bulge alone moves a stave edge by less than 0.00005 mm', () => {
    // half a circle across 10 m and a rise of 0.001 mm on 2 m: the largest and the flattest
    for (const [chord, bulge] of [
      [10_000, 1],
      [2000, 1e-6 / 3],
      [960, 0.0166666666666],
    ]) {
      const curve: Curve = {
        closed: false,
        vertices: [
          { x: 0, y: 0, bulge: bulge! },
          { x: chord!, y: 0, bulge: 0 },
        ],
      };
      const [read] = outline(curve);
      expect(Math.abs(read!.curve.vertices[0]!.bulge - bulge!) * (chord! / 2)).toBeLessThan(5e-5);
    }
  });

  test('strokes come layer by layer, leaders after the dimensions', () => {
    const leader = line({ x: 0, y: 0 }, { x: 5, y: 5 });
    const strokes = (['station', 'dimension', 'outline'] as const).map((layer) => ({
      layer,
      curve: line({ x: 0, y: 0 }, { x: 1, y: 1 }),
    }));
    const written = polylinesOf(toDxf(drawingOf(strokes, [lettered('far', { leader })])));
    expect(written.map(({ layer }) => layer)).toEqual([
      'outline',
      'station',
      'dimension',
      'dimension',
    ]);
    expect(written.at(-1)!.curve.vertices[1]).toMatchObject({ x: 5, y: 5 });
  });

  test('dashes run on round the vertices of dashed lines only', () => {
    const flags = (layer: 'outline' | 'hidden') =>
      pairs(toDxf(drawingOf([{ layer, curve: circle({ x: 0, y: 0 }, 9) }]))).filter(
        ([code], i, all) => code === 70 && all[i - 1]?.[0] === 90,
      )[0]![1];
    expect(flags('outline')).toBe('1');
    expect(flags('hidden')).toBe('129');
  });
});

describe('lettering', () => {
  test('keeps height, anchor, alignment and direction', () => {
    const [text] = textsOf(
      toDxf(drawingOf([], [lettered('bung', { align: 'centre', angle: Math.PI / 2, height: 7 })])),
    );
    expect(text).toMatchObject({ text: 'bung', layer: 'lettering', textHeight: 7, rotation: 90 });
    expect(text).toMatchObject({ halign: 1, endPoint: { x: 3, y: 4 } });
    const [left] = textsOf(toDxf(drawingOf([], [lettered('bung')])));
    expect(left).toMatchObject({ startPoint: { x: 3, y: 4 }, rotation: 0 });
  });

  test('goes out as closed outlines on request, and then as no text', () => {
    const drawing = drawingOf([], [lettered('o')]);
    const dxf = toDxf(drawing, { letteringAs: 'outlines', outlinesOf: letteringCurves });
    expect(textsOf(dxf)).toEqual([]);
    const outlines = polylinesOf(dxf);
    expect(outlines.length).toBe(2);
    expect(outlines.every(({ layer, curve }) => layer === 'lettering' && curve.closed)).toBe(true);
  });

  test('text without a character that shows is left out', () => {
    expect(parsed(toDxf(drawingOf([], [lettered(' \n\u200b ')]))).entities).toEqual([]);
  });
});

test('no text adds an entity, changes another or breaks the file', () => {
  const hostile = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc
      .array(
        fc.constantFrom(
          '\n',
          '\r\n',
          '0',
          'LINE',
          'ENDSEC',
          'EOF',
          '%%',
          '%',
          'd',
          '\\',
          'U+000A',
          'M+1',
          '^',
          'J',
          ' ',
          '\0',
          'ä',
          '😀',
          '\ud800',
          '\u2028',
        ),
        { maxLength: 30 },
      )
      .map((parts) => parts.join('')),
  );
  const curve = circle({ x: 0, y: 0 }, 10);
  const [clean] = parsed(toDxf(drawingOf([{ layer: 'outline', curve }]))).entities;
  fc.assert(
    fc.property(hostile, (text) => {
      const dxf = toDxf(
        drawingOf([{ layer: 'outline', curve }], [lettered(text), lettered('end')]),
      );
      expect(dxf).toMatch(/^[\n\x20-\x7e]*$/);
      const [first, ...texts] = parsed(dxf).entities;
      expect(first).toEqual(clean);
      expect(texts.every(({ type }) => type === 'TEXT')).toBe(true);
      expect([1, 2]).toContain(texts.length);
      expect(texts.at(-1)).toMatchObject({ text: 'end' });
    }),
    { seed: 5, numRuns: 400 },
  );
});
