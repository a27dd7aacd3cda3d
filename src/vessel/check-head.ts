/** Whether the head's edge, boards and section can be made and stand in the vessel. */
import type { Issue, SpecPath } from '../spec/issue.js';
import { wallRadius } from './groove.js';
import type { Inside } from './inside.js';
import type { Head } from './head.js';
import { error, warning } from './issues.js';

const heads: SpecPath = ['heads'];

export function checkHead(head: Head, inside: Inside): Issue[] {
  const edge = [...checkEdge(head), ...checkBoards(head)];
  return edge.length > 0 && edge.some((issue) => issue.severity === 'error')
    ? edge
    : [...edge, ...checkClearOfWall(head, inside)];
}

function checkEdge({ spec, landDepth, groove, diameter }: Head): Issue[] {
  const { thickness, fromInside, outerBevel, innerBevel } = spec.edge;
  const path = (key: string): SpecPath => [...heads, 'edge', key];
  const issues: Issue[] = [];
  if (thickness > groove.width) {
    issues.push(
      error('land-thicker-than-groove', path('thickness'), {
        land: thickness,
        groove: groove.width,
      }),
    );
  }
  if (fromInside < thickness / 2 || fromInside + thickness / 2 > spec.thickness) {
    const values = { fromInside, least: thickness / 2, most: spec.thickness - thickness / 2 };
    issues.push(error('land-outside-head', path('fromInside'), values));
  }
  for (const [key, bevel] of [
    ['outerBevel', outerBevel],
    ['innerBevel', innerBevel],
  ] as const) {
    if (bevel < landDepth)
      issues.push(error('bevel-narrower-than-land', path(key), { bevel, land: landDepth }));
    if (bevel > diameter / 4)
      issues.push(error('bevel-too-wide', path(key), { bevel, allowed: diameter / 4 }));
  }
  return issues;
}

function checkBoards({ spec, rim, boards, joints, dowels }: Head): Issue[] {
  const issues: Issue[] = [];
  const laid = spec.widths?.reduce((sum, width) => sum + width, 0);
  if (laid !== undefined && laid < 2 * rim.across) {
    return [error('boards-too-narrow', [...heads, 'widths'], { laid, needed: 2 * rim.across })];
  }
  const outermost = Math.max(...joints.map(Math.abs), 0);
  if (outermost >= rim.across) {
    return [
      error('board-outside-head', [...heads, 'widths'], { joint: outermost, radius: rim.across }),
    ];
  }
  const without = joints
    .map((_, i) => i + 1)
    .filter((joint) => !dowels.some((dowel) => dowel.joint === joint));
  if (without.length > 0 && boards.length > 1) {
    issues.push(
      warning('joints-without-dowels', [...heads, 'dowels'], { joints: without.join(', ') }),
    );
  }
  const thick = spec.dowels.diameter > 0.6 * spec.thickness;
  if (thick)
    issues.push(
      warning('dowels-thick', [...heads, 'dowels', 'diameter'], {
        diameter: spec.dowels.diameter,
        thickness: spec.thickness,
      }),
    );
  return issues;
}

/**
 * The head's section must stand clear of the wall everywhere but in its groove. Both outlines are straight or nearly so
 * between the corners that are compared, and the wall bulges away from the head, so corners and a few places between do.
 */
function checkClearOfWall(head: Head, inside: Inside): Issue[] {
  const { groove, spec } = head;
  let worst = 0;
  for (const { x, y } of alongSection(head)) {
    const height = head.insideFace + groove.towardsEnd * y;
    const inGroove =
      x > groove.radius - groove.lipDepth && Math.abs(height - groove.middle) <= groove.width / 2;
    const beyondEnd = (height - inside.endPlane) * groove.towardsEnd > 0;
    if (inGroove || beyondEnd) continue;
    worst = Math.max(
      worst,
      x + Math.max(0, spec.crossGrain / 2) - wallRadius(groove, inside, height),
    );
  }
  return worst > 1e-6 ? [error('head-meets-wall', [...heads, 'edge'], { overlap: worst })] : [];
}

function* alongSection(head: Head): Generator<{ x: number; y: number }> {
  const steps = 8;
  for (let i = 0; i + 1 < head.section.length; i++) {
    const [a, b] = [head.section[i]!, head.section[i + 1]!];
    for (let k = 0; k <= steps; k++)
      yield { x: a.x + ((b.x - a.x) * k) / steps, y: a.y + ((b.y - a.y) * k) / steps };
  }
}
