import { describe, expect, it } from 'vitest';
import { reductions, scaleText } from '../../src/drawing/scale.js';

describe('a scale', () => {
  it('is written as ISO 5455 writes it', () => {
    expect(scaleText()).toBe('1:1');
    expect(scaleText(0.2)).toBe('1:5');
    // ISO 5455:1979, recommended reduction scales (from memory)
    expect(reductions.map(scaleText)).toEqual(['1:2', '1:5', '1:10', '1:20', '1:50']);
  });
});
