import makerjs from 'makerjs';
import { describe, expect, it } from 'vitest';
import { boundsOf, lengthOf, signedArea } from '../../src/geometry/measure.js';
import { label, leaderLabel, merge, strokes } from '../../src/drawing/build.js';
import { toMakerModel } from '../../src/drawing/maker.js';
import type { Curve } from '../../src/geometry/curve.js';
import { arc, circle, line, polygon } from '../../src/geometry/curve.js';
import { rotate } from '../../src/geometry/transform.js';

const at = (x: number, y: number) => ({ x, y });

/** Two bowed edges and two straight ends, one bulge to either side, one of nearly 3 m radius. */
const stave: Curve = {
  closed: true,
  vertices: [
    { x: -473, y: -32, bulge: 0.0125 },
    { x: 473, y: -32, bulge: 0 },
    { x: 473, y: 32, bulge: -0.3 },
    { x: 0, y: 200, bulge: 1.7 },
    { x: -473, y: 32, bulge: 0 },
  ],
};
const shapes = [
  stave,
  circle(at(30, -20), 17),
  polygon([at(0, 0), at(9, 0), at(3, 8)]),
  rotate(stave, 1.234),
];

function chainsOf(curve: Curve): makerjs.IChain[] {
  const found = makerjs.model.findChains(toMakerModel(strokes('outline', curve)));
  return found as makerjs.IChain[];
}

describe('as a maker.js model', () => {
  it('every closed shape is one endless chain of the same length', () => {
    for (const shape of shapes) {
      const chains = chainsOf(shape);
      expect(chains).toHaveLength(1);
      expect(chains[0]!.endless).toBe(true);
      expect(chains[0]!.pathLength).toBeCloseTo(lengthOf(shape), 6);
    }
  });

  it('an open curve is one chain with ends', () => {
    const chains = chainsOf(arc(at(0, 0), 50, 2, -1));
    expect(chains).toHaveLength(1);
    expect(chains[0]!.endless).toBe(false);
    expect(chains[0]!.pathLength).toBeCloseTo(150, 9);
  });

  it('a drawing has the extents that we give it', () => {
    // maker.js rounds angles to 1e-7 degrees where it looks for extents
    for (const shape of shapes) {
      const { low, high } = makerjs.measure.modelExtents(toMakerModel(strokes('outline', shape)))!;
      const ours = boundsOf(shape)!;
      expect(low![0]).toBeCloseTo(ours.minX, 6);
      expect(low![1]).toBeCloseTo(ours.minY, 6);
      expect(high![0]).toBeCloseTo(ours.maxX, 6);
      expect(high![1]).toBeCloseTo(ours.maxY, 6);
    }
  });

  it('a circle and a polygon enclose the area that we give them', () => {
    // maker.js turns a chain into points; an arc of 17 mm in steps of 0.05 mm loses less than 1e-5 of the area
    for (const shape of shapes.slice(1, 3)) {
      const points = makerjs.chain.toKeyPoints(chainsOf(shape)[0]!, 0.05);
      const area = points.reduce((sum, point, i) => {
        const next = points[(i + 1) % points.length]!;
        return sum + (point[0]! * next[1]! - next[0]! * point[1]!) / 2;
      }, 0);
      expect(Math.abs(Math.abs(area) / Math.abs(signedArea(shape)) - 1)).toBeLessThan(1e-4);
    }
  });

  it('has one model for each layer in use, on a layer of the same name', () => {
    const part = merge(
      strokes('outline', shapes[1]!),
      strokes('centre', line(at(-9, 0), at(9, 0))),
      leaderLabel('bung', at(60, 60), at(40, -5)),
    );
    const { models, units } = toMakerModel(part);
    expect(Object.keys(models!)).toEqual(['outline', 'centre', 'dimension', 'lettering']);
    for (const [name, model] of Object.entries(models!)) expect(model.layer).toBe(name);
    expect(units).toBe('mm');
    expect(Object.keys(models!['dimension']!.models!)).toHaveLength(2);
  });

  it('has lettering as captions that do not add to its extents', () => {
    const part = merge(strokes('outline', shapes[1]!), label('far\n away', at(500, 500)));
    const model = toMakerModel(part);
    const captions = makerjs.model.getAllCaptionsOffset(model);
    expect(captions.map((caption) => caption.text)).toEqual(['far away']);
    expect(captions[0]!.anchor.origin[0]).toBeCloseTo(500, 9);
    expect(makerjs.measure.modelExtents(model)!.high![0]).toBeCloseTo(47, 9);
  });

  it('writes the millimetres of its curves to a DXF of maker.js', () => {
    const dxf = makerjs.exporter.toDXF(toMakerModel(strokes('outline', shapes[2]!)));
    expect(dxf).toContain('outline');
    expect(dxf).toMatch(/\n9\n/);
  });
});
