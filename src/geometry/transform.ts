/** Moves, turns, mirrors and scales curves; arcs stay true arcs. */
import type { Curve, Point, Vertex } from './curve.js';
import { turned } from './vector.js';

/** The same line drawn the other way. A closed curve starts where it did. */
export function reverse(curve: Curve): Curve {
  const { closed } = curve;
  return { closed, vertices: closed ? reversedRing(curve.vertices) : reversedRun(curve.vertices) };
}

/** An open run of vertices the other way round; the last bulge is 0. */
export function reversedRun(run: readonly Vertex[]): Vertex[] {
  const backwards = [...run].reverse();
  return backwards.map(({ x, y }, i) => ({ x, y, bulge: opposite(backwards[i + 1]?.bulge ?? 0) }));
}

function reversedRing(ring: readonly Vertex[]): Vertex[] {
  const [first] = ring;
  return first ? reversedRun([...ring, { ...first, bulge: 0 }]).slice(0, -1) : [];
}

/** The curve moved by (`dx`, `dy`). */
export function translate(curve: Curve, dx: number, dy: number): Curve {
  return mapped(curve, ({ x, y }) => ({ x: x + dx, y: y + dy }), 1);
}

/** The curve turned counter-clockwise by an angle in radians, about the origin unless told otherwise. */
export function rotate(curve: Curve, angle: number, about: Point = { x: 0, y: 0 }): Curve {
  const move = ({ x, y }: Point): Point => {
    const arm = turned({ x: x - about.x, y: y - about.y }, angle);
    return { x: about.x + arm.x, y: about.y + arm.y };
  };
  return mapped(curve, move, 1);
}

/** Every `x` with its sign changed. */
export function mirrorX(curve: Curve): Curve {
  return mapped(curve, ({ x, y }) => ({ x: opposite(x), y }), -1);
}

/** Every `y` with its sign changed. */
export function mirrorY(curve: Curve): Curve {
  return mapped(curve, ({ x, y }) => ({ x, y: opposite(y) }), -1);
}

/** The curve enlarged about the origin; `factor` is above 0. */
export function scale(curve: Curve, factor: number): Curve {
  return mapped(curve, ({ x, y }) => ({ x: x * factor, y: y * factor }), 1);
}

function mapped(curve: Curve, move: (point: Point) => Point, handedness: 1 | -1): Curve {
  const vertices = curve.vertices.map((vertex) => {
    const { x, y } = move(vertex);
    return { x, y, bulge: handedness === 1 ? vertex.bulge : opposite(vertex.bulge) };
  });
  return { closed: curve.closed, vertices };
}

/** The number with its sign changed, and never -0. */
function opposite(value: number): number {
  return value === 0 ? 0 : -value;
}
