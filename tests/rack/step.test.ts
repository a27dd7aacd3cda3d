import { describe, expect, it } from 'vitest';
import { closingDeviation, measuringStep } from '../../src/rack/step.js';

describe('the measuring step', () => {
  it('is the coarsest of the usual ones on which all readings lie', () => {
    expect(measuringStep([71, 72, 80])).toBe(1);
    expect(measuringStep([71, 72.5])).toBe(0.5);
    expect(measuringStep([71, 72.3])).toBe(0.1);
    expect(measuringStep([45 * 1.5875, 47 * 1.5875])).toBeCloseTo(25.4 / 16, 12);
    expect(measuringStep([])).toBe(0);
  });

  it('is every second or fifth millimetre where that is no chance', () => {
    const every = (step: number, count: number): number[] =>
      Array.from({ length: count }, (_, i) => 60 + step * i);
    expect(measuringStep(every(2, 10))).toBe(2);
    expect(measuringStep(every(5, 5))).toBe(5);
    expect(measuringStep([...every(2, 20), 71])).toBe(1);
    expect(measuringStep([...every(5, 8), 72.5])).toBe(0.5);
  });

  it('is a rule’s own mark for few sizes, however many staves are of them', () => {
    const many = Array.from({ length: 200 }, (_, i) => [70, 80, 90][i % 3]!);
    expect(measuringStep(many)).toBe(1);
    expect(measuringStep(Array(40).fill(80))).toBe(1);
    expect(measuringStep([62, 64, 66, 68, 70, 72, 74, 76, 78])).toBe(1);
  });

  it('seldom takes whole millimetres for coarser ones', () => {
    // of a rack of 12 staves between 60 and 100 mm, read to 1 mm
    let state = 4711;
    const unit = (): number => (state = (state * 1103515245 + 12345) % 2147483648) / 2147483648;
    const racks = Array.from({ length: 5000 }, () =>
      Array.from({ length: 12 }, () => Math.round(60 + 40 * unit())),
    );
    expect(racks.filter((rack) => measuringStep(rack) > 1).length).toBeLessThanOrEqual(5);
  });
});

describe('the standard deviation of a closing diameter', () => {
  it('is about 0.25 mm for 28 staves read to half a millimetre, 0.8 mm read to a sixteenth of an inch', () => {
    expect(closingDeviation(0.5, 28)).toBeCloseTo(0.243, 3);
    expect(closingDeviation(25.4 / 16, 28)).toBeCloseTo(0.772, 3);
  });

  it('agrees with rounding a great many rings', () => {
    // a plain congruential generator, so that nothing is shared with the code under test
    let state = 12345;
    const unit = (): number => (state = (state * 1103515245 + 12345) % 2147483648) / 2147483648;
    const girthErrors = Array.from({ length: 4000 }, () => {
      let error = 0;
      for (let i = 0; i < 28; i++) {
        const width = 60 + 40 * unit();
        error += Math.round(width * 2) / 2 - width;
      }
      return error / Math.PI;
    });
    const variance = girthErrors.reduce((sum, e) => sum + e * e, 0) / girthErrors.length;
    // of 4000 samples a standard deviation is known to about 1.1 %
    expect(Math.sqrt(variance) / closingDeviation(0.5, 28)).toBeCloseTo(1, 1);
  });
});
