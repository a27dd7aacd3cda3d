/** Whether howel, groove and chime can be cut into the stave end as the spec asks. */
import type { Issue, SpecPath } from '../spec/issue.js';
import type { Spec } from '../spec/spec.js';
import type { Inside } from './inside.js';
import type { Head } from './head.js';
import { error, warning } from './issues.js';
import type { Profile } from './profile.js';
import type { Wall } from './wall.js';

/** Wood left behind the groove: refused under this share of the thickness, warned of under the second (our judgement). */
const leastBehindGroove = 0.15;
const doubtfulBehindGroove = 1 / 3;

export function checkGroove(
  head: Head,
  inside: Inside,
  spec: Spec,
  wall: Wall,
  profile: Profile,
): Issue[] {
  const { groove } = head;
  const croze: SpecPath = ['heads', 'croze'];
  const { inset, width } = head.spec.croze;
  if (inset + width / 2 >= spec.height / 2)
    return [error('groove-past-middle', [...croze, 'inset'], { inset })];
  const bevelDepth = chimeDepth(head, inside);
  if (!(inset - width / 2 > bevelDepth)) {
    const values = { inset, bevelDepth: Number.isFinite(bevelDepth) ? bevelDepth : inset };
    return [error('groove-in-chime', [...croze, 'inset'], values)];
  }
  const t = wall.thickness(groove.middle);
  const outside = Math.min(profile.radius(groove.outerLip), profile.radius(groove.innerLip));
  const left = outside - groove.radius;
  if (left < leastBehindGroove * t)
    return [error('groove-through-wall', [...croze, 'depth'], { left, thickness: t })];
  if (left < doubtfulBehindGroove * t)
    return [warning('groove-deep', [...croze, 'depth'], { left, thickness: t })];
  return [];
}

/** How far the chime bevel reaches down from the end plane; NaN when it runs past the groove. */
function chimeDepth(head: Head, inside: Inside): number {
  const { chime } = head.groove;
  return chime ? Math.abs(inside.endPlane - chime.footHeight) : 0;
}
