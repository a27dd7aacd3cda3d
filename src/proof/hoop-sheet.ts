/** Holds a hoop that is cut from sheet, a ring sector, against its seat: the lengths of its two edges and its width. */
import { segmentsOf, type Segment } from '../geometry/segment.js';
import type { Strap } from '../vessel/strap.js';
import { judged, type Finding } from './finding.js';
import { counted } from './head.js';
import { dueStrap, type Seat } from './hoops.js';
import type { Pattern } from './patterns.js';
import { tolerance } from './tolerance.js';

/**
 * Both edges turn through the same angle about one point. Without the lap that angle is their difference over the width,
 * and the lap, measured in the middle of the width, turns on by its length over the mean radius.
 */
export function checkHoopSheet(strap: Strap, seat: Seat, pattern: Pattern): Finding[] {
  const { file } = pattern;
  const place = { number: strap.number, hoop: strap.spec.name, end: strap.hoop.end };
  const outlines = pattern.curves('outline');
  const count = counted('sheet-edge', file, { ...place, part: 'count' }, outlines.length, 1);
  const [outline] = outlines;
  if (!outline) return [count];
  const { width, lap } = strap.spec;
  const { short, long } = dueStrap(strap, seat);
  const turn = (long - short) / width;
  const radii = { short: short / turn, long: short / turn + width };
  const sweep = turn + lap / (radii.short + width / 2);
  const drawn = edgesOf(segmentsOf(outline));
  const edges = (['short', 'long'] as const).map((edge, i) =>
    judged(
      'sheet-edge',
      file,
      { ...place, edge },
      {
        measured: drawn?.edges[i] ?? null,
        expected: radii[edge] * sweep,
        tolerance: tolerance.strap,
      },
    ),
  );
  const widths = drawn?.ends ?? [NaN];
  return [
    count,
    ...edges,
    ...widths.map((measured) =>
      judged('sheet-width', file, place, { measured, expected: width, tolerance: tolerance.strap }),
    ),
  ];
}

interface Sector {
  /** lengths of the curved edges, the short one first */
  readonly edges: readonly [number, number];
  /** lengths of the straight ends */
  readonly ends: readonly number[];
}

/** Null when the contour is not two arcs with a straight end between them on either side. */
function edgesOf(segments: readonly Segment[]): Sector | null {
  const isArc = ({ curvature }: Segment): boolean => curvature !== 0;
  const first = segments.findIndex((segment) => !isArc(segment));
  const runs: number[] = [];
  const ends: number[] = [];
  for (const segment of [...segments.slice(first), ...segments.slice(0, first)]) {
    if (!isArc(segment)) {
      ends.push(segment.length);
      runs.push(0);
    } else runs.push((runs.pop() ?? 0) + segment.length);
  }
  const [one, other] = runs;
  if (first < 0 || one === undefined || other === undefined || runs.length !== 2) return null;
  return { edges: [Math.min(one, other), Math.max(one, other)], ends };
}
