import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { textWidth } from '../../src/drawing/lettering.js';
import { wrap } from '../../src/drawing/wrap.js';

describe('wrapping', () => {
  it('leaves a short text alone', () => {
    expect(wrap('square to the face', 3.5, 100)).toEqual(['square to the face']);
  });

  it('breaks between words', () => {
    expect(wrap('aa bb cc', 3.5, textWidth('aa bb', 3.5) + 0.1)).toEqual(['aa bb', 'cc']);
  });

  it('breaks a word only when it is too long by itself', () => {
    const lines = wrap('of Daubenlängenmaß', 3.5, 20);
    expect(lines[0]).toBe('of');
    expect(lines.slice(1).join('')).toBe('Daubenlängenmaß');
  });

  it('takes line breaks and tabs for spaces', () => {
    expect(wrap('one\ntwo\t three', 3.5, 100)).toEqual(['one two three']);
  });

  it('gives one empty line for nothing', () => {
    expect(wrap('', 3.5, 50)).toEqual(['']);
  });

  it('keeps every character and never runs over', () => {
    const words = fc.array(fc.string({ unit: 'grapheme-ascii', minLength: 1 }), { maxLength: 12 });
    fc.assert(
      fc.property(words, fc.double({ min: 15, max: 90, noNaN: true }), (parts, width) => {
        const text = parts.join(' ');
        const lines = wrap(text, 3.5, width);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
        for (const line of lines) expect(textWidth(line, 3.5)).toBeLessThanOrEqual(width + 1e-9);
      }),
    );
  });

  it('always gets on, even where no character fits', () => {
    expect(wrap('abc', 20, 1)).toEqual(['a', 'b', 'c']);
  });
});
