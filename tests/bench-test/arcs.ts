/** Segments of a polyline with bulges: straight lines and circular arcs, exactly. */

export interface XY {
  x: number;
  y: number;
}

export interface Segment {
  from: XY;
  to: XY;
  /** tan(sweep / 4), positive counter-clockwise */
  bulge: number;
}

/** Centre and radius of an arc segment; null when it is straight. */
export function circleOf({ from, to, bulge }: Segment): { centre: XY; radius: number } | null {
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  if (bulge === 0 || chord === 0) return null;
  // height of the centre over the chord, to its left
  const height = (chord * (1 - bulge * bulge)) / (4 * bulge);
  const left = { x: -(to.y - from.y) / chord, y: (to.x - from.x) / chord };
  const centre = {
    x: (from.x + to.x) / 2 + left.x * height,
    y: (from.y + to.y) / 2 + left.y * height,
  };
  return { centre, radius: (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge)) };
}

/** The point a share `u` (0 to 1) of the way along a segment. */
export function pointOn(segment: Segment, u: number): XY {
  const { from, to, bulge } = segment;
  const straight = { x: from.x + (to.x - from.x) * u, y: from.y + (to.y - from.y) * u };
  const circle = circleOf(segment);
  if (circle === null) return straight;
  // offset of the arc from its chord, by half-angles, so that flat arcs keep their digits
  const sweep = 4 * Math.atan(bulge);
  const { radius } = circle;
  const along = radius * Math.sin(Math.abs(sweep) * (u - 0.5));
  const rise =
    2 * radius * Math.sin((Math.abs(sweep) * (1 - u)) / 2) * Math.sin((Math.abs(sweep) * u) / 2);
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const direction = { x: (to.x - from.x) / chord, y: (to.y - from.y) / chord };
  // a counter-clockwise arc lies to the right of its chord
  const right = Math.sign(bulge) * rise;
  return {
    x: (from.x + to.x) / 2 + direction.x * along + direction.y * right,
    y: (from.y + to.y) / 2 + direction.y * along - direction.x * right,
  };
}

/** Height of a segment over the x axis at `x`; the segment runs from left to right or back, without turning. */
export function heightAt(segment: Segment, x: number): number {
  let [low, high] = [0, 1];
  const rising = segment.to.x > segment.from.x;
  let u = (x - segment.from.x) / (segment.to.x - segment.from.x);
  for (let i = 0; i < 60; i++) {
    const point = pointOn(segment, u);
    if (Math.abs(point.x - x) < 1e-10) break;
    if (point.x < x === rising) low = u;
    else high = u;
    const step = (x - point.x) / (segment.to.x - segment.from.x);
    const newton = u + step;
    u = newton > low && newton < high ? newton : (low + high) / 2;
  }
  return pointOn(segment, u).y;
}

/** Signed area that a closed chain of segments encloses, arcs counted exactly. */
export function areaOf(segments: readonly Segment[]): number {
  return segments.reduce((sum, segment) => {
    const { from, to } = segment;
    const circle = circleOf(segment);
    const sweep = 4 * Math.atan(segment.bulge);
    const cap = circle === null ? 0 : (circle.radius ** 2 * (sweep - Math.sin(sweep))) / 2;
    return sum + (from.x * to.y - to.x * from.y) / 2 + cap;
  }, 0);
}
