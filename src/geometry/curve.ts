/** Curves made of straight lines and true circular arcs: the only kind of line this project draws. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * A corner of a curve. `bulge` describes the segment that leaves it: `tan(sweep / 4)`, positive when the
 * segment turns counter-clockwise, 0 when it is straight (the convention of DXF polylines).
 */
export interface Vertex extends Point {
  readonly bulge: number;
}

/** A chain of segments. A closed curve's last segment runs back to the first vertex. */
export interface Curve {
  readonly closed: boolean;
  readonly vertices: readonly Vertex[];
}

/** A straight segment between two points. */
export function line(from: Point, to: Point): Curve {
  return { closed: false, vertices: [straight(from), straight(to)] };
}

/** An open chain of straight segments. */
export function polyline(points: readonly Point[]): Curve {
  return { closed: false, vertices: points.map(straight) };
}

/** A closed chain of straight segments. */
export function polygon(points: readonly Point[]): Curve {
  return { closed: true, vertices: points.map(straight) };
}

/** A full circle as four quarter arcs, counter-clockwise from angle 0. */
export function circle(centre: Point, radius: number): Curve {
  const quarter = Math.tan(Math.PI / 8);
  const at = (dx: number, dy: number): Vertex => ({
    x: centre.x + dx * radius,
    y: centre.y + dy * radius,
    bulge: quarter,
  });
  return { closed: true, vertices: [at(1, 0), at(0, 1), at(-1, 0), at(0, -1)] };
}

/** The arc of a circle from one angle to another (radians); it turns the way its angles run. */
export function arc(centre: Point, radius: number, from: number, to: number): Curve {
  const pieces = Math.max(1, Math.ceil(Math.abs(to - from) / (Math.PI / 2)));
  const step = (to - from) / pieces;
  const vertices: Vertex[] = [];
  for (let i = 0; i <= pieces; i++) {
    const angle = from + i * step;
    vertices.push({
      x: centre.x + radius * Math.cos(angle),
      y: centre.y + radius * Math.sin(angle),
      bulge: i < pieces ? Math.tan(step / 4) : 0,
    });
  }
  return { closed: false, vertices };
}

function straight(point: Point): Vertex {
  return { x: point.x, y: point.y, bulge: 0 };
}
