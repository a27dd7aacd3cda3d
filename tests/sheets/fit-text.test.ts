import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nominalHeights } from '../../src/drawing/heights.js';
import { textWidth } from '../../src/drawing/lettering.js';
import { fitText } from '../../src/sheets/fit-text.js';

describe('text for a place', () => {
  it('keeps its height where it fits', () => {
    expect(fitText('Wine cask', 60, 5)).toEqual({ text: 'Wine cask', height: 5 });
  });

  it('takes the next smaller height of ISO 3098, then an ellipsis', () => {
    const text = 'Wine cask, 225 litres, for an invented cellar';
    expect(fitText(text, textWidth(text, 3.5) + 0.1, 5).height).toBe(3.5);
    const cut = fitText(text, 30, 5);
    expect(cut.height).toBe(1.8);
    expect(cut.text).toMatch(/^Wine cask, 225.*[^ ]…$/);
  });

  it('is a single line, and nothing in no room at all', () => {
    expect(fitText('two\nlines\tof text', 100, 3.5).text).toBe('two lines of text');
    expect(fitText('Wine cask', 0.5, 3.5).text).toBe('');
    expect(fitText('', 10, 3.5).text).toBe('');
  });

  it('never is wider than its place, whatever it says', () => {
    const anyText = fc
      .array(fc.integer({ min: 0, max: 0x10ffff }), { maxLength: 80 })
      .map((codes) => String.fromCodePoint(...codes));
    const widths = fc.double({ min: 3, max: 100, noNaN: true });
    fc.assert(
      fc.property(anyText, widths, (text, width) => {
        const fitted = fitText(text, width, 5);
        expect(textWidth(fitted.text, fitted.height)).toBeLessThanOrEqual(width);
        expect(nominalHeights).toContain(fitted.height);
      }),
      { seed: 2 },
    );
  });
});
