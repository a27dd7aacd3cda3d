/** Any text gives a drawing or the reason why it is none; nothing throws. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toDxf } from '../../src/index.js';
import { boundsOf, signedArea } from '../../src/geometry/measure.js';
import { readDxf, type DxfDrawing } from '../../src/proof/read-dxf.js';
import { wineCask } from '../pieces/vessels.js';
import { Pack } from './pack.js';

const dxf = (...lines: (string | number)[]): string => [...lines, ''].join('\n');
const head = [0, 'SECTION', 2, 'HEADER', 9, '$INSUNITS', 70, 4, 0, 'ENDSEC'];
const file = (...entities: (string | number)[]): string =>
  dxf(...head, 0, 'SECTION', 2, 'ENTITIES', ...entities, 0, 'ENDSEC', 0, 'EOF');

function drawing(text: string): DxfDrawing {
  const read = readDxf(text);
  if (typeof read === 'string') throw new Error(read);
  return read;
}

describe('what a drawing holds', () => {
  test('the unit, or none', () => {
    expect(drawing(file()).unit).toBe(4);
    expect(drawing(dxf(0, 'SECTION', 2, 'ENTITIES', 0, 'ENDSEC', 0, 'EOF')).unit).toBeNull();
  });

  test('a circle and an arc, by area and length of the formula', () => {
    const round = file(0, 'CIRCLE', 8, 'bore', 10, 3, 20, 4, 40, 5);
    const [circle] = drawing(round).entities;
    expect(circle!.layer).toBe('bore');
    expect(signedArea(circle!.curve!)).toBeCloseTo(Math.PI * 25, 9);
    // from 350 to 10 degrees, over the zero: the chord is 2 r sin(10 degrees)
    const bow = file(0, 'ARC', 8, 'outline', 10, 0, 20, 0, 40, 10, 50, 350, 51, 10);
    const { minY, maxY, maxX } = boundsOf(drawing(bow).entities[0]!.curve!)!;
    expect(maxY - minY).toBeCloseTo(20 * Math.sin(Math.PI / 18), 9);
    expect(maxX).toBeCloseTo(10, 9);
  });

  test('a polyline with a bulge of 1 is half a circle', () => {
    const text = file(
      0,
      'LWPOLYLINE',
      8,
      'outline',
      90,
      2,
      70,
      1,
      10,
      0,
      20,
      0,
      42,
      1,
      10,
      2,
      20,
      0,
    );
    const { curve } = drawing(text).entities[0]!;
    expect(curve!.closed).toBe(true);
    expect(Math.abs(signedArea(curve!))).toBeCloseTo(Math.PI / 2, 9);
  });

  test('what other sections hold is passed over', () => {
    const tables = [0, 'SECTION', 2, 'TABLES', 0, 'TABLE', 2, 'LTYPE', 'x', 0, 0, 'ENDSEC'];
    const rest = [0, 'SECTION', 2, 'ENTITIES', 0, 'CIRCLE', 10, 3, 20, 4, 40, 5, 0, 'ENDSEC'];
    const read = drawing(dxf(...head, ...tables, ...rest, 0, 'EOF'));
    expect(read.entities).toMatchObject([{ type: 'CIRCLE', layer: '0' }]);
    expect(readDxf(dxf(...head, 0, 'SECTION', 2, 'TABLES', 0, 'EOF'))).toBe('cut-short');
  });

  test('lines end as on any system', () => {
    const text = file(0, 'LINE', 8, 'outline', 10, 1, 20, 2, 11, 3, 21, 4);
    for (const end of ['\r\n', '\r'])
      expect(drawing(text.replaceAll('\n', end))).toEqual(drawing(text));
  });

  test('an entity of another kind, or seen from below, has no curve', () => {
    const [spline] = drawing(file(0, 'SPLINE', 8, 'outline')).entities;
    expect(spline).toMatchObject({ type: 'SPLINE', curve: null, textHeight: null });
    const turned = file(0, 'CIRCLE', 8, 'bore', 10, 3, 20, 4, 40, 5, 210, 0, 220, 0, 230, -1);
    expect(drawing(turned).entities[0]!.curve).toBeNull();
  });

  test('what our writer wrote comes back', () => {
    const square = [
      { x: 0, y: 0, bulge: 0 },
      { x: 10, y: 0, bulge: 0.25 },
      { x: 10, y: 10, bulge: 0 },
    ];
    const text = toDxf({
      name: 'x',
      title: 'x',
      subject: '',
      strokes: [{ layer: 'outline', curve: { closed: true, vertices: square } }],
      letterings: [{ text: 'a', at: { x: 0, y: 0 }, height: 3.5, align: 'left', angle: 0 }],
      legend: { notes: [], tables: [] },
    });
    const { unit, entities } = drawing(text);
    expect(unit).toBe(4);
    expect(entities[0]!.curve).toEqual({ closed: true, vertices: square });
    expect(entities[1]).toMatchObject({ type: 'TEXT', layer: 'lettering', textHeight: 3.5 });
  });
});

test.each([
  ['', 'empty'],
  [' \r\n\n ', 'empty'],
  ['0\nSECTION\n\0', 'binary'],
  ['AutoCAD Binary DXF\r\n\u001a\0', 'binary'],
  ['%PDF-1.4\n', 'not-dxf'],
  ['<svg xmlns="http://www.w3.org/2000/svg"/>', 'not-dxf'],
  ['0\nEOF\n', 'not-dxf'],
  [dxf(...head), 'cut-short'],
  [file().slice(0, -8), 'cut-short'],
  [dxf(0, 'SECTION', 2, 'ENTITIES', 0, 'EOF'), 'cut-short'],
  [file(0, 'CIRCLE', 8, 'bore', 10, 'NaN', 20, 0, 40, 1), 'bad-number'],
  [file(0, 'CIRCLE', 8, 'bore', 10, '', 20, 0, 40, 1), 'bad-number'],
  [file(0, 'CIRCLE', 8, 'bore', 10, '0x10', 20, 0, 40, 1), 'bad-number'],
  [file(0, 'CIRCLE', 8, 'bore', 10, '1e300', 20, 0, 40, 1), 'bad-number'],
  [file(0, 'CIRCLE', 8, 'bore', 10, '1.2.3', 20, 0, 40, 1), 'bad-number'],
  [file(0, 'LWPOLYLINE', 8, 'outline', 70, 1, 10, 3), 'bad-number'],
  [file(0, 'LWPOLYLINE', 8, 'outline', 70, 1, 42, 3), 'bad-number'],
  [file(0, 'LINE', 8, 'outline', 10, 1, 20, 2, 11, 3), 'bad-number'],
])('%j: %s', (text, fault) => {
  expect(readDxf(text)).toBe(fault);
});

test('any text at all: a drawing or a fault', () => {
  const faults = ['empty', 'binary', 'not-dxf', 'cut-short', 'bad-number'];
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (text) => {
      const read = readDxf(text);
      expect(typeof read === 'string' ? faults.includes(read) : read.entities).toBeTruthy();
    }),
    { seed: 7 },
  );
});

const pack = await Pack.of(wineCask, { pieces: ['stave', 'head', 'hoops'] });

test('a pattern cut short or scrambled anywhere never proves, and never throws', () => {
  const text = pack.files.get('stave.dxf')!;
  fc.assert(
    fc.property(fc.integer({ min: 0, max: text.length - 5 }), (at) => {
      expect(pack.with('stave.dxf', () => text.slice(0, at)).prove().passed).toBe(false);
    }),
    { seed: 7, numRuns: 40 },
  );
  const lines = text.split('\n');
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: lines.length - 2 }),
      fc.constantFrom('', '-', '1e9', 'LINE', '0', '\u0000', 'ENDSEC', '9'.repeat(400)),
      (at, word) => {
        const spoilt = lines.with(at, word).join('\n');
        pack.and('stave.dxf', spoilt).prove();
      },
    ),
    { seed: 7, numRuns: 150 },
  );
});

test('a file of very many lines is refused, not measured', () => {
  const line = `0\nLINE\n8\noutline\n10\n1\n20\n2\n11\n3\n21\n4\n`;
  const wrong = pack.and('stave.dxf', file('@').replace('@\n', line.repeat(30_000))).wrong();
  expect(wrong[0]).toMatchObject({ check: 'file-readable', reason: 'too-many-lines' });
});
