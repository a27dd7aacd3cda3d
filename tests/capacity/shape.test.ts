/** The shape that sizing asks must answer as the solved vessel does. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  asItCloses,
  shapeCrozeRadius,
  shapeLitres,
  shapeOf,
  shapeStaveLength,
} from '../../src/capacity/shape.js';
import { capacityLitres } from '../../src/capacity/volume.js';
import { arbitraryVessel, bucket, changed, solved, wineCask } from '../vessel/specs.js';

it('holds what the solved vessel holds, with its groove and its staves’ length', () => {
  fc.assert(
    fc.property(arbitraryVessel, (spec) => {
      const vessel = solved(spec);
      const shape = shapeOf(asItCloses(spec));
      expect(shapeLitres(shape) / capacityLitres(vessel)).toBeCloseTo(1, 9);
      expect(shapeCrozeRadius(shape, 'bottom')).toBeCloseTo(vessel.heads.bottom.groove.radius, 6);
      const { top, bottom } = vessel.meanStave.ends;
      expect(shapeStaveLength(shape)).toBeCloseTo(top.outerStation - bottom.outerStation, 6);
    }),
  );
});

it('holds nothing where there is no such vessel', () => {
  const litres = (spec: typeof wineCask): number => shapeLitres(shapeOf(spec));
  expect(litres(changed(wineCask, { outside: { ends: 678 } }))).toBeNaN();
  expect(litres(changed(wineCask, { height: 100 }))).toBeNaN();
  expect(litres(changed(bucket, { outside: { top: 30, bottom: 30 } }))).toBeNaN();
});

it('has no groove where there is no head', () => {
  expect(shapeCrozeRadius(shapeOf(bucket), 'top')).toBeNaN();
});
