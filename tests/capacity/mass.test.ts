/** Masses of a straight tub by hand, and of a wine cask as people know it. */
import { describe, expect, it } from 'vitest';
import { massesOf, woodVolume } from '../../src/capacity/mass.js';
import { capacityLitres } from '../../src/capacity/volume.js';
import { changed, cylinder, radians, solved, wineCask } from '../vessel/specs.js';

const disc = (radius: number, length: number): number => Math.PI * radius * radius * length;
const frustum = (a: number, b: number, length: number): number =>
  (Math.PI / 3) * (a * a + a * b + b * b) * length;

describe('the wood of a straight tub', () => {
  it('is the outer cylinder less what is cut out, and the head by frusta', () => {
    // inside 132; howel 133.5 from the chime's foot to 12 past a groove of 137.5, 5 wide, 30 from the end
    const foot = (142 - 133.5) * Math.tan(radians(40));
    const hollow =
      frustum(142, 133.5, foot) +
      disc(133.5, 44.5 - foot - 5) +
      disc(137.5, 5) +
      disc(132, 300 - 44.5);
    // land 4 + 0.5 deep and 4.5 thick, its middle 8 from the inside face
    const head = frustum(127.5, 133, 5.75) + disc(137.5, 4.5) + frustum(133, 117.5, 18 - 10.25);
    const wood = disc(150, 300) - hollow + head;
    expect(woodVolume(solved(cylinder)) / wood).toBeCloseTo(1, 9);
  });

  it('loses the bung hole, and gains what a flat outside stands over the circle', () => {
    const bored = changed(cylinder, { bung: { diameter: 40 } });
    const lost = woodVolume(solved(cylinder)) - woodVolume(solved(bored));
    expect(lost).toBeCloseTo((Math.PI / 4) * 1600 * 18, 3);
    const flat = changed(cylinder, { staves: { outside: 'flat' } });
    const more = woodVolume(solved(flat)) - woodVolume(solved(cylinder));
    const polygon = 16 * Math.tan(Math.PI / 16) * 150 ** 2;
    expect(more).toBeCloseTo((polygon - Math.PI * 150 ** 2) * 300, 2);
  });
});

describe('masses', () => {
  const vessel = solved(wineCask);
  const masses = massesOf(vessel);

  it('add up, with water at 0.998 kg a litre', () => {
    expect(masses.empty).toBeCloseTo(masses.wood + masses.steel, 9);
    const water = masses.fullWithWater - masses.empty;
    expect(water / capacityLitres(vessel)).toBeGreaterThan(0.998);
    expect(water / capacityLitres(vessel)).toBeLessThan(1.0);
  });

  it('of hoops are 7,850 kg/m3 of the straps as cut', () => {
    const volume = vessel.hoops.reduce(
      (sum, { cutLength, spec }) => sum + cutLength * spec.width * spec.thickness,
      0,
    );
    expect(masses.steel).toBeCloseTo(volume * 7.85e-6, 9);
  });

  it('are those that people lift: about 50 kg empty, over 250 kg full (common practice, no source)', () => {
    expect(masses.empty).toBeGreaterThan(40);
    expect(masses.empty).toBeLessThan(60);
    expect(masses.fullWithWater).toBeGreaterThan(250);
  });
});
