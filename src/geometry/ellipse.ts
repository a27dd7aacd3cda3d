/** An ellipse as true arcs. */
import type { Curve, Point, Vertex } from './curve.js';
import { circle } from './curve.js';
import { fitTangentArcs } from './fit.js';
import { closedFrom, joinCurves } from './join.js';
import { mergeArcs } from './merge.js';
import { fitTolerance } from './tolerance.js';
import { mirrorX, rotate, reversedRun, translate } from './transform.js';

/**
 * The closed, counter-clockwise ellipse of half-axes `a` along x and `b` along y, within `tolerance` mm. It
 * is tangent-continuous throughout and the same in all four quarters. Throws unless both are above 0.
 */
export function ellipse(centre: Point, a: number, b: number, tolerance = fitTolerance): Curve {
  if (!(a > 0 && b > 0)) throw new RangeError('an ellipse needs two half-axes above 0');
  if (a === b) return circle(centre, a);
  const quarter = fitTangentArcs(
    {
      at: (u) => ({ x: a * Math.cos(u), y: b * Math.sin(u) }),
      tangent: (u) => ({ x: -a * Math.sin(u), y: b * Math.cos(u) }),
    },
    0,
    Math.PI / 2,
    tolerance,
  );
  const right = [...exactEnds(quarter, a, b)];
  const left = reversedRun(mirrorX({ closed: false, vertices: right }).vertices);
  const upper = joinCurves([right, left]);
  const around = joinCurves([upper.vertices, rotate(upper, Math.PI).vertices]).vertices;
  // starting inside a quarter lets the arcs on both sides of each axis become one
  const shifted = [...around.slice(1, -1), ...around.slice(0, 2)];
  return translate(closedFrom([mergeArcs(shifted)]), centre.x, centre.y);
}

/** The run with its ends put on the axes, where rounding leaves them 1e-14 mm away. */
function exactEnds(run: readonly Vertex[], a: number, b: number): Vertex[] {
  const inner = run.slice(1, -1);
  return [{ x: a, y: 0, bulge: run[0]!.bulge }, ...inner, { x: 0, y: b, bulge: 0 }];
}
