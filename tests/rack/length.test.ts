import { describe, expect, it } from 'vitest';
import { readLength, readReadings } from '../../src/rack/length.js';

describe('a length as written', () => {
  it.each([
    ['71.5', 'mm', 71.5],
    ['71,5', 'mm', 71.5],
    [' 71 ', 'mm', 71],
    ['71.5 mm', 'in', 71.5],
    ['2.5', 'in', 63.5],
    ['2 13/16', 'in', 71.4375],
    ['2-13/16', 'in', 71.4375],
    ['3/4', 'in', 19.05],
    ['2 13/16"', 'mm', 71.4375],
    ['3 in', 'mm', 76.2],
  ] as const)('%s in %s is %d mm', (text, units, mm) => {
    expect(readLength(text, units)).toBeCloseTo(mm, 9);
  });

  it.each([
    '',
    'wide',
    '-5',
    '1.2.3',
    '2 13/16',
    '7 1/3 in',
    '2 4/4 in',
    '2 0/4 in',
    '1e3',
    '71.5x',
  ])('"%s" is none in mm', (text) => {
    expect(readLength(text, 'mm')).toBeNull();
  });

  it('may be two readings with a stroke between', () => {
    expect(readReadings('71.5/72', 'mm')).toEqual([71.5, 72]);
    expect(readReadings('71,5 / 72', 'mm')).toEqual([71.5, 72]);
    expect(readReadings('71.5', 'mm')).toEqual([71.5]);
    const [first, second] = readReadings('3 1/8/3 3/16', 'in')!;
    expect(first).toBeCloseTo(79.375, 9);
    expect(second).toBeCloseTo(80.9625, 9);
    // a fraction, not two readings
    expect(readReadings('3/4', 'in')).toHaveLength(1);
    expect(readReadings('71/72/73', 'mm')).toBeNull();
  });
});
