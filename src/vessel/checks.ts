/** What cannot be built, and what a cooper should be warned of, once the parts are made. */
import type { Issue } from '../spec/issue.js';
import type { End } from '../spec/spec.js';
import { checkGroove } from './check-groove.js';
import { checkHead } from './check-head.js';
import { checkHoops } from './check-hoops.js';
import { checkBung, checkStaves } from './check-staves.js';
import type { Head } from './head.js';
import { insideAt } from './inside.js';
import { error } from './issues.js';
import type { Vessel } from './vessel.js';

type Parts = Omit<Vessel, 'warnings'>;

/** Everything that needs the finished parts. */
export function checkParts(vessel: Parts): Issue[] {
  const heads = checkHeads(vessel);
  const pastMiddle = heads.some(({ code }) => code === 'groove-past-middle');
  return [
    ...heads,
    ...(pastMiddle ? [] : checkHeadsApart(vessel)),
    ...checkStaves(vessel),
    ...checkBung(vessel),
    ...checkHoops(vessel),
  ];
}

/** Heads alike share their keys and therefore their faults; of unlike heads the one to blame is named. */
function checkHeads(vessel: Parts): Issue[] {
  const { top, bottom } = vessel.heads;
  const alike = !top || JSON.stringify(top.spec) === JSON.stringify(bottom.spec);
  const issues = [top, bottom].flatMap((head) => {
    if (!head) return [];
    const found = checkOneHead(vessel, head);
    return alike ? found : found.map((issue) => ofHead(issue, head.groove.end));
  });
  const name = ({ code, path }: Issue): string => JSON.stringify([code, path]);
  return [...new Map(issues.map((issue) => [name(issue), issue])).values()];
}

function checkOneHead({ spec, ring, profile, wall }: Parts, head: Head): Issue[] {
  const inside = insideAt(head.groove.end, spec, ring, profile, wall);
  const groove = checkGroove(head, inside, spec, wall, profile);
  return groove.some((issue) => issue.severity === 'error')
    ? groove
    : [...groove, ...checkHead(head, inside)];
}

function ofHead(issue: Issue, end: End): Issue {
  const [heads, ...rest] = issue.path;
  return { ...issue, path: [heads!, end, ...rest] };
}

/** A tub's bottom must leave room below the rim. */
function checkHeadsApart({ heads, spec }: Parts): Issue[] {
  const limit = heads.top ? heads.top.insideFace : spec.height / 2;
  const between = limit - heads.bottom.insideFace;
  return between > 0 ? [] : [error('heads-meet', ['heads', 'croze', 'inset'], { between })];
}
