/** Whether the hoops fit on the staves, clear of each other, and hold the groove. */
import type { Issue } from '../spec/issue.js';
import type { Hoop } from './hoop.js';
import { error, warning } from './issues.js';
import type { Vessel } from './vessel.js';

/** A groove without a hoop this near opens when the head is driven (design rule of this project). */
const nearGroove = 25;

export function checkHoops({
  hoops,
  heads,
  spec,
}: Pick<Vessel, 'hoops' | 'heads' | 'spec'>): Issue[] {
  const issues = [...leaving(hoops, spec.height), ...overlapping(hoops)];
  for (const head of [heads.top, heads.bottom]) {
    if (!head || hoops.length === 0) continue;
    const distance = Math.min(...hoops.map((hoop) => distanceTo(hoop, head.groove.middle)));
    if (distance > nearGroove)
      issues.push(
        warning('no-hoop-at-groove', ['hoops'], {
          distance,
          end: head.groove.end,
          allowed: nearGroove,
        }),
      );
  }
  return issues;
}

const span = (hoop: Hoop): [number, number] => [
  Math.min(hoop.nearHeight, hoop.farHeight),
  Math.max(hoop.nearHeight, hoop.farHeight),
];

function distanceTo(hoop: Hoop, height: number): number {
  const [low, high] = span(hoop);
  return Math.max(0, low - height, height - high);
}

function leaving(hoops: readonly Hoop[], height: number): Issue[] {
  return hoops
    .filter((hoop) => !(span(hoop)[0] >= -height / 2 && span(hoop)[1] <= height / 2))
    .map((hoop) => error('hoop-leaves-stave', ['hoops'], { name: hoop.spec.name, end: hoop.end }));
}

/** Hoops come from the top downwards, so each can only meet the next. */
function overlapping(hoops: readonly Hoop[]): Issue[] {
  return hoops.slice(1).flatMap((below, i) => {
    const above = hoops[i]!;
    const overlap = span(below)[1] - span(above)[0];
    if (!(overlap > 1e-9)) return [];
    return [
      error('hoops-overlap', ['hoops'], { name: above.spec.name, other: below.spec.name, overlap }),
    ];
  });
}
