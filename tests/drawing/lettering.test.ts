import { createRequire } from 'node:module';
import fc from 'fast-check';
import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import { readFont } from '../../scripts/make-glyphs.js';
import type { Lettering } from '../../src/drawing/drawing.js';
import { drawable } from '../../src/drawing/glyphs.js';
import {
  letteringBox,
  letteringCurves,
  letteringOutlines,
  printable,
  textWidth,
} from '../../src/drawing/lettering.js';
import { boundsOf, signedArea } from '../../src/geometry/measure.js';

const font = readFont();
const words = (text: string, more: Partial<Lettering> = {}): Lettering => ({
  text,
  at: { x: 0, y: 0 },
  height: 3.5,
  align: 'left',
  angle: 0,
  ...more,
});

/** Width by the font itself: advance widths and its own kerning table, 1493 of 2048 units to the height of capitals. */
function widthByFont(text: string, height: number): number {
  const glyphs = [...text].map((character) => font.charToGlyph(character));
  const units = glyphs.map((glyph, i) => {
    const next = glyphs[i + 1];
    const kern = next ? (font.kerningPairs[`${glyph.index},${next.index}`] ?? 0) : 0;
    return (glyph.advanceWidth ?? 0) + kern;
  });
  return (units.reduce((a, b) => a + b, 0) * height) / 1493;
}

const samples = [
  'Stave 76.4 wide at the bilge',
  'AVATAR To Way. Yo, LT "P."',
  'Daubenlänge 946,9 mm – Kopf ⌀ 556,4',
  'Tonnelier: têtes à joints, n° 3',
  'Бочка 225 литров; Βαρέλι ½ × ¾ ≤ 12° 30′',
];

describe('the width of text', () => {
  it('is what the font says', () => {
    for (const text of samples) expect(textWidth(text, 5)).toBeCloseTo(widthByFont(text, 5), 9);
  });

  it('is what the font says for any characters of the table', () => {
    const anyText = fc.array(fc.constantFrom(...drawable()), { maxLength: 30 });
    fc.assert(
      fc.property(anyText, (characters) => {
        const text = characters.join('');
        expect(textWidth(text, 3.5)).toBeCloseTo(widthByFont(printable(text), 3.5), 9);
      }),
    );
  });

  it('kerns: A and V stand closer together than apart', () => {
    expect(textWidth('AV', 10)).toBeLessThan(textWidth('A', 10) + textWidth('V', 10) - 0.5);
  });

  it('grows in proportion to the height', () => {
    expect(textWidth(samples[0]!, 7)).toBeCloseTo(2 * textWidth(samples[0]!, 3.5), 9);
  });

  it('counts no control characters, and is 0 for nothing', () => {
    expect(textWidth('a\u0000\n\tb\u200b\u00ad', 3.5)).toBe(textWidth('ab', 3.5));
    expect(textWidth('', 3.5)).toBe(0);
  });

  it('takes a letter and its combining accent as one', () => {
    expect(textWidth('e\u0301', 3.5)).toBe(textWidth('é', 3.5));
  });
});

describe('printable text', () => {
  it('is composed, character by character, with nothing left to drop', () => {
    const dropped = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu;
    for (let code = 0; code < 0xd800; code++) {
      const character = String.fromCodePoint(code);
      expect(printable(character), code.toString(16)).toBe(
        character.normalize('NFC').replaceAll(dropped, ''),
      );
    }
    expect(printable('e\u0301')).toBe('é');
  });

  it('has no character that XML, DXF or a terminal could take for something else', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (text) => {
        expect(printable(text)).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}\uFFFE\uFFFF]/u);
      }),
    );
    expect(printable('\ud800x\u202ey\u2028')).toBe('\ufffdxy');
  });
});

describe('the box of lettering', () => {
  it('starts at the anchor, is as wide as the text and leaves room above and below', () => {
    const [a, b, c, d] = letteringBox(words('Hub', { at: { x: 10, y: 20 }, height: 1.493 }));
    expect(b.x - a.x).toBeCloseTo(textWidth('Hub', 1.493), 9);
    expect(a).toEqual({ x: 10, y: expect.closeTo(20 - 0.511, 9) as number });
    expect(c.y).toBeCloseTo(20 + 2.002, 9);
    expect(d.x).toBe(10);
  });

  it('follows the alignment', () => {
    const width = textWidth('12.5', 3.5);
    expect(letteringBox(words('12.5', { align: 'centre' }))[0].x).toBeCloseTo(-width / 2, 9);
    expect(letteringBox(words('12.5', { align: 'right' }))[1].x).toBeCloseTo(0, 9);
  });

  it('turns with the text', () => {
    const level = letteringBox(words('Bung', { align: 'right' }));
    const upright = letteringBox(words('Bung', { align: 'right', angle: Math.PI / 2 }));
    level.forEach(({ x, y }, i) => {
      expect(upright[i]!.x).toBeCloseTo(-y, 9);
      expect(upright[i]!.y).toBeCloseTo(x, 9);
    });
  });

  it('holds every outline, whatever the text and its place', () => {
    const lettering = fc.record({
      text: fc.string({ unit: 'grapheme', maxLength: 12 }),
      characters: fc.array(fc.constantFrom(...drawable()), { maxLength: 12 }),
      height: fc.constantFrom(1.8, 3.5, 20),
      align: fc.constantFrom('left' as const, 'centre' as const, 'right' as const),
    });
    fc.assert(
      fc.property(lettering, ({ text, characters, height, align }) => {
        const line = words(text + characters.join(''), { height, align, at: { x: 7, y: -3 } });
        const box = letteringBox(line);
        const ink = boundsOf(...letteringCurves(line));
        if (!ink) return;
        expect(ink.minX).toBeGreaterThanOrEqual(box[0].x - 1e-9);
        expect(ink.maxX).toBeLessThanOrEqual(box[1].x + 1e-9);
        expect(ink.minY).toBeGreaterThanOrEqual(box[0].y - 1e-9);
        expect(ink.maxY).toBeLessThanOrEqual(box[2].y + 1e-9);
      }),
    );
  });
});

describe('outlines', () => {
  it('are the ones that opentype.js draws, letter by letter', () => {
    const height = 7;
    const size = (height * 2048) / 1493;
    for (const character of ['B', 'é', 'ж', 'Ω', '½', '⌀', '→']) {
      const theirs = font.charToGlyph(character).getPath(30, -40, size).commands;
      const points = theirs.flatMap((c) => (c.type === 'Z' ? [] : [{ x: c.x, y: -c.y }]));
      const ours = letteringOutlines(words(character, { at: { x: 30, y: 40 }, height }));
      const all = ours.flatMap(({ start, segments }) => [start, ...segments.map((s) => s.to)]);
      for (const point of points) {
        const nearest = Math.min(...all.map((p) => Math.hypot(p.x - point.x, p.y - point.y)));
        // opentype.js rounds path coordinates to a hundredth here and there
        expect(nearest, character).toBeLessThan(1e-6);
      }
    }
  });

  it('have a hole wherever the letter has one', () => {
    const signs = (text: string) =>
      letteringCurves(words(text)).map((curve) => Math.sign(signedArea(curve)));
    expect(signs('O').sort()).toEqual([-1, 1]);
    expect(signs('B').filter((sign) => sign === signs('I')[0])).toHaveLength(1);
    expect(signs('B')).toHaveLength(3);
  });

  it('as curves enclose the area of the true letter within the flatness', () => {
    // area of a quadratic: the polygon of its ends, and 2/3 of each triangle with the control point
    const exact = letteringOutlines(words('S', { height: 20 })).map(({ start, segments }) => {
      let [area, from] = [0, start];
      for (const { control, to } of segments) {
        area += (from.x * to.y - to.x * from.y) / 2;
        if (control) {
          const [ux, uy] = [control.x - from.x, control.y - from.y];
          const [vx, vy] = [to.x - from.x, to.y - from.y];
          area += (ux * vy - uy * vx) / 3;
        }
        from = to;
      }
      return area + (from.x * start.y - start.x * from.y) / 2;
    });
    const curves = letteringCurves(words('S', { height: 20 }));
    expect(curves).toHaveLength(1);
    expect(curves[0]!.closed).toBe(true);
    const perimeterTimesFlatness = 120 * 0.02;
    const difference = Math.abs(signedArea(curves[0]!) - exact[0]!);
    expect(difference).toBeLessThan(perimeterTimesFlatness);
    expect(difference).toBeGreaterThan(0);
  });

  it('of nothing are nothing', () => {
    expect(letteringOutlines(words(' \n'))).toEqual([]);
  });
});

describe('a second opinion', () => {
  it('on widths comes from pdfkit, which reads the font by other code and another kerning table', () => {
    const file = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
    const document = new PDFDocument({ font: file });
    // ligatures off: in this font they change how fi and fl are spaced
    const options = { features: { liga: false } } as unknown as PDFKit.Mixins.TextOptions;
    for (const text of [...samples, 'fifteen flat, offset']) {
      const width = document.fontSize(2048).widthOfString(text, options);
      expect((width * 3.5) / 1493, text).toBeCloseTo(textWidth(text, 3.5), 9);
    }
  });
});
