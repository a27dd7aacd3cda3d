import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { reductions } from '../../src/drawing/scale.js';
import { boundsOf, signedArea } from '../../src/geometry/measure.js';
import { integrate } from '../../src/geometry/quadrature.js';
import { partsOf } from '../../src/pieces/section-parts.js';
import { sectionHeads } from '../../src/pieces/section-head.js';
import { section } from '../../src/pieces/section.js';
import { en } from '../../src/pieces/words/en.js';
import { toSheets } from '../../src/sheets/sheets.js';
import { wallRadius } from '../../src/vessel/groove.js';
import type { Head } from '../../src/vessel/head.js';
import { insideAt } from '../../src/vessel/inside.js';
import { widestHeight } from '../../src/vessel/profile.js';
import type { Vessel } from '../../src/vessel/vessel.js';
import { everyVessel, vesselOf, wineCask } from './vessels.js';

const words = en;
const curvesOn = (drawing: Drawing, layer: string) =>
  drawing.strokes.filter((stroke) => stroke.layer === layer).map(({ curve }) => curve);
const headsOf = ({ heads }: Vessel): Head[] =>
  [heads.top, heads.bottom].filter((head) => head !== null);

describe.each(everyVessel)('section of %s', (_name, text) => {
  const vessel = vesselOf(text);
  const drawing = section(vessel, words);
  const scale = drawing.scale!;
  const { spec, profile } = vessel;

  it('is at a scale of ISO 5455 and says so', () => {
    expect(reductions).toContain(scale);
    expect(drawing.legend.notes[0]).toContain(`1:${Math.round(1 / scale)}`);
  });

  it('has the height and the greatest diameter of the vessel, measured back from its lines', () => {
    const sides = curvesOn(drawing, 'outline').filter(({ vertices }) => vertices.length > 4);
    const bounds = boundsOf(...sides)!;
    expect((bounds.maxY - bounds.minY) / scale).toBeCloseTo(spec.height, 2);
    const radius = profile.radius(widestHeight(spec));
    const halfBung = spec.bung ? spec.bung.diameter / 2 : 0;
    const seen = spec.vessel === 'cask' ? profile.radius(halfBung) : radius;
    expect(bounds.maxX / scale).toBeCloseTo(seen, 1);
    const seenBounds = boundsOf(...curvesOn(drawing, 'joint'))!;
    expect(-seenBounds.minX / scale).toBeGreaterThan(radius - 0.05);
  });

  it('cuts as much wood from the stave as there is between outside and inside', () => {
    // the plane's area by heights, apart from the curves that are drawn
    const end = spec.height / 2;
    const stops = headsOf(vessel).flatMap(({ groove }) => [
      ...[groove.howelTo, groove.innerLip, groove.outerLip],
      ...(groove.chime ? [groove.chime.footHeight] : []),
    ]);
    const bung = spec.bung ? [spec.bung.diameter / 2, -spec.bung.diameter / 2] : [];
    const heights = [-end, ...stops, ...bung, 0, end].sort((a, b) => a - b);
    const thickness = (z: number): number => {
      if (spec.bung && Math.abs(z) < spec.bung.diameter / 2) return 0;
      const head = z > 0 ? vessel.heads.top : vessel.heads.bottom;
      const inside = insideAt(z > 0 ? 'top' : 'bottom', spec, vessel.ring, profile, vessel.wall);
      return profile.radius(z) - (head ? wallRadius(head.groove, inside, z) : inside.radius(z));
    };
    const wood = heights
      .slice(1)
      .reduce((sum, to, i) => sum + integrate(thickness, heights[i]! + 1e-9, to - 1e-9), 0);
    const [first, second] = curvesOn(drawing, 'outline');
    const faces = spec.bung ? [first!, second!] : [first!];
    const drawn = faces.reduce((sum, face) => sum + Math.abs(signedArea(face)), 0) / scale ** 2;
    // arcs within 0.005 mm on paper, along both sides
    expect(Math.abs(drawn - wood)).toBeLessThan((2 * spec.height * 0.005) / scale);
  });

  it('counts every part', () => {
    const parts = partsOf(vessel, words);
    const total = (of: (part: string) => boolean): number =>
      parts.filter(({ part }) => of(part)).reduce((sum, { count }) => sum + count, 0);
    const boards = headsOf(vessel).reduce((sum, { boards: each }) => sum + each.length, 0);
    const dowels = headsOf(vessel).reduce((sum, { dowels: each }) => sum + each.length, 0);
    expect(parts[0]!.count).toBe(vessel.staves.length);
    expect(total((part) => part.startsWith('board '))).toBe(boards);
    expect(total((part) => part === 'dowel')).toBe(dowels);
    expect(parts.flatMap(({ hoops }) => hoops)).toHaveLength(vessel.hoops.length);
    expect(parts.flatMap(({ heads }) => heads)).toHaveLength(headsOf(vessel).length);
  });

  it('fits one sheet of the paper of its units, its plan too, with lists on sheets after it', () => {
    const titleBlock = { ...spec.sheet, title: '', subtitle: '' };
    for (const each of [drawing, ...sectionHeads(vessel, words)]) {
      const paper = spec.units === 'in' ? 'letter' : 'a4';
      const sheets = toSheets(each, { paper, units: spec.units, titleBlock });
      expect(sheets.filter(({ content }) => content.length > 0)).toHaveLength(1);
      expect(sheets[0]!.content).toHaveLength(1);
    }
  });

  it('has its places for brand and number on one board each, and its head as wide as it is', () => {
    const named = sectionHeads(vessel, words);
    for (const plan of named) {
      const head = plan.name.endsWith('top') ? vessel.heads.top! : headsOf(vessel).at(-1)!;
      const own = plan.name === 'section-head' ? headsOf(vessel)[0]! : head;
      const rim = boundsOf(...curvesOn(plan, 'hidden'))!;
      expect((rim.maxX - rim.minX) / plan.scale!).toBeCloseTo(2 * own.rim.along, 1);
      expect((rim.maxY - rim.minY) / plan.scale!).toBeCloseTo(2 * own.rim.across, 1);
      const places = curvesOn(plan, 'station').map((curve) => boundsOf(curve)!);
      expect(places).toHaveLength(2);
      for (const { minY, maxY } of places) {
        const [low, high] = [minY / plan.scale!, maxY / plan.scale!];
        expect(high - low).toBeGreaterThan(4);
        expect(own.joints.some((y) => y > low && y < high)).toBe(false);
      }
    }
  });
});

describe('the section of a cask', () => {
  it('has every hoop cut and numbered, and wood hatched inside its outline only', () => {
    const vessel = vesselOf(wineCask);
    const drawing = section(vessel, words);
    const straps = curvesOn(drawing, 'outline').filter(({ vertices }) => vertices.length === 4);
    expect(straps).toHaveLength(vessel.hoops.length);
    for (const [i, strap] of straps.entries()) {
      const { width, thickness } = vessel.hoops[i]!.spec;
      expect(Math.abs(signedArea(strap)) / drawing.scale! ** 2).toBeCloseTo(width * thickness, 6);
    }
    const numbers = drawing.letterings.filter(({ text }) => /^\d: /.test(text));
    expect(numbers).toHaveLength(vessel.hoops.length);
  });
});
