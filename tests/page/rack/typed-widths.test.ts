/** Widths as people and calipers type them. */
import { describe, expect, it } from 'vitest';
import { isTable, typedWidths } from '../../../src/page/rack/typed-widths.js';

describe('typed widths', () => {
  it.each([
    ['71.5', 'mm', [71.5]],
    ['71,5', 'mm', [71.5]],
    ['2 13/16', 'mm', [71.4375]],
    ['2.8125', 'in', [71.4375]],
    ['7.15 cm', 'in', [71.5]],
    ['  71.5 mm\r', 'mm', [71.5]],
    ['71.5\n72\n\n66,5\r\n', 'mm', [71.5, 72, 66.5]],
    ['71.5\t72\t66.5', 'mm', [71.5, 72, 66.5]],
  ] as const)('%j in %s', (text, units, widths) => {
    const read = typedWidths(text, units);
    expect(read.wrong).toBeNull();
    read.widths.forEach((width, i) => expect(width).toBeCloseTo(widths[i]!, 9));
    expect(read.widths).toHaveLength(widths.length);
  });

  it.each([
    ['', 'empty'],
    ['seventy', 'not-a-length'],
    ['715', 'no-stave'],
    ['7.15', 'no-stave'],
    ['-70', 'no-stave'],
    ['2 13/15x', 'not-a-length'],
  ] as const)('%j is refused: %s', (text, problem) => {
    expect(typedWidths(text, 'mm').wrong?.problem).toBe(problem);
  });

  it('takes nothing of a paste with one wrong line, and names the line', () => {
    expect(typedWidths('71\n72\nx\n73', 'mm')).toEqual({
      widths: [],
      wrong: { text: 'x', problem: 'not-a-length' },
    });
  });

  it('knows a table by its heading', () => {
    expect(isTable('\uFEFFmark;width\nA1;71,5')).toBe(true);
    expect(isTable('71.5\n72')).toBe(false);
  });
});
