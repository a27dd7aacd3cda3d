import { describe, expect, it } from 'vitest';
import { workingHoopsOf } from '../../src/vessel/working-hoops.js';
import { bucket, changed, cylinder, solved, wineCask } from './specs.js';

describe('raising and truss hoops', () => {
  it('of a cask have the girth of the vessel at a twentieth, a fifth and two fifths of its height', () => {
    const hoops = workingHoopsOf(solved(wineCask));
    const rho = (472.5 ** 2 + 53 ** 2) / 106;
    const expected = [0.05, 0.2, 0.4].map((share) => {
      const z = 472.5 - share * 945;
      return 2 * Math.PI * (339 - rho + Math.sqrt(rho ** 2 - z ** 2));
    });
    expect(hoops.map(({ place }) => place)).toEqual(['end', 'quarter', 'bilge']);
    hoops.forEach(({ girth, offset, height, insideDiameter }, i) => {
      expect(girth).toBeCloseTo(expected[i]!, 8);
      expect(height).toBeCloseTo(472.5 - offset, 9);
      expect(insideDiameter * Math.PI).toBeCloseTo(girth, 8);
    });
  });

  it('over staves that are not backed go round a polygon', () => {
    const ratio = (28 * Math.tan(Math.PI / 28)) / Math.PI;
    for (const { girth, flatGirth } of workingHoopsOf(solved(wineCask)))
      expect(flatGirth / girth).toBeCloseTo(ratio, 10);
    const flat = solved(changed(wineCask, { staves: { outside: 'flat' } }));
    for (const { girth, flatGirth } of workingHoopsOf(flat)) expect(flatGirth).toBe(girth);
  });

  it('of a tub stand near both ends and in the middle, wider where it is wider', () => {
    const [top, middle, bottom] = workingHoopsOf(solved(bucket)).map(({ girth }) => girth);
    expect(top).toBeCloseTo(Math.PI * (320 - 0.1 * 50), 8);
    expect(middle).toBeCloseTo(Math.PI * 295, 8);
    expect(bottom).toBeCloseTo(Math.PI * 275, 8);
    const straight = workingHoopsOf(solved(cylinder)).map(({ girth }) => girth);
    for (const girth of straight) expect(girth).toBeCloseTo(Math.PI * 300, 8);
  });
});
