/** Whether the head's edge, boards and section can be made and stand in the vessel. */
import type { Issue, SpecPath } from '../spec/issue.js';
import { wallRadius } from './groove.js';
import type { Inside } from './inside.js';
import type { Head } from './head.js';
import { error, warning } from './issues.js';

const heads: SpecPath = ['heads'];

export function checkHead(head: Head, inside: Inside): Issue[] {
  const edge = [...checkEdge(head), ...checkPlay(head), ...checkBoards(head)];
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
  const sides = [
    { key: 'innerBevel', bevel: innerBevel, height: fromInside - thickness / 2 },
    { key: 'outerBevel', bevel: outerBevel, height: spec.thickness - fromInside - thickness / 2 },
  ];
  for (const { key, bevel, height } of sides) {
    // a land that reaches the face needs no bevel there
    if (bevel < landDepth && height > 0)
      issues.push(error('bevel-narrower-than-land', path(key), { bevel, land: landDepth }));
    if (bevel > diameter / 4)
      issues.push(error('bevel-too-wide', path(key), { bevel, allowed: diameter / 4 }));
  }
  return issues;
}

/** A rim must enter the groove past its shallower lip, and be larger by no more than the wood behind the groove can give. */
function checkPlay({ spec, groove, diameter, rim }: Head): Issue[] {
  const lips = [groove.howelRadius(groove.outerLip), groove.howelRadius(groove.innerLip)];
  const least = -2 * spec.croze.depth;
  const most = 2 * (groove.radius - Math.max(...lips));
  const out = (play: number): boolean => !(play >= least && play < most);
  const values = { least, most };
  if (out(2 * groove.radius - diameter)) {
    const { clearance } = spec;
    return [error('head-misses-groove', [...heads, 'clearance'], { clearance, ...values })];
  }
  if (out(2 * (groove.radius - rim.across))) {
    const { crossGrain, clearance } = spec;
    const path: SpecPath = [...heads, 'crossGrain'];
    return [error('head-misses-groove', path, { clearance: clearance - crossGrain, ...values })];
  }
  return [];
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

/** How near two outlines may come in the comparison below before they meet (mm): rounding, not play. */
const touching = 1e-6;

/**
 * The head's section must stand clear of the wall everywhere but in its groove. Between the heights that are compared both
 * outlines are straight or nearly so, and a cask's wall bulges away from the head. A rim that is larger than its groove
 * opens the ring until it fits, so it is compared as it sits.
 */
function checkClearOfWall(head: Head, inside: Inside): Issue[] {
  const { groove, spec } = head;
  const wider = Math.max(0, spec.crossGrain / 2);
  const seated = wider - Math.max(0, head.diameter / 2 + wider - groove.radius);
  let worst = 0;
  for (const { x, y } of alongSection(head, inside)) {
    const height = head.insideFace + groove.towardsEnd * y;
    const beyondEnd = (height - inside.endPlane) * groove.towardsEnd > 0;
    if (!beyondEnd) worst = Math.max(worst, x + seated - wallRadius(groove, inside, height));
  }
  return worst > touching ? [error('head-meets-wall', [...heads, 'edge'], { overlap: worst })] : [];
}

/** Corners of the head's edge, places between them, and the places beside each corner of the wall. */
function* alongSection(head: Head, inside: Inside): Generator<{ x: number; y: number }> {
  const { groove } = head;
  const steps = 8;
  const shares = Array.from({ length: steps + 1 }, (_, k) => k / steps);
  const corners = [
    groove.howelTo,
    groove.innerLip,
    groove.outerLip,
    groove.howelFrom,
    inside.endPlane,
  ]
    .map((height) => (height - head.insideFace) * groove.towardsEnd)
    .flatMap((y) => [y - touching, y + touching]);
  for (let i = 0; i + 1 < head.section.length; i++) {
    const [a, b] = [head.section[i]!, head.section[i + 1]!];
    const beside = corners.map((y) => (y - a.y) / (b.y - a.y)).filter((k) => k > 0 && k < 1);
    for (const k of [...shares, ...beside])
      yield { x: a.x + (b.x - a.x) * k, y: a.y + (b.y - a.y) * k };
  }
}
