/**
 * What must hold between one key and another, as far as no geometry of the vessel is needed to say so. A rule that touches
 * a key which is already in doubt stays silent.
 */
import { fault } from './fault.js';
import type { Given, GivenHead } from './given.js';
import type { Issue, SpecPath } from './issue.js';
import type { HeadSpec, Spec } from './spec.js';

type Values = Issue['values'];

interface Finding {
  readonly code: string;
  /** the key to blame */
  readonly path: SpecPath;
  /** the other keys that the rule looked at */
  readonly beside: readonly SpecPath[];
  readonly values: Values;
}

/** Judges what was given before defaults are filled in. */
export function checkGiven(given: Given, known: readonly Issue[]): Issue[] {
  const findings = [...outsideFindings(given), ...eitherOrFindings(given)];
  if (given.profile === 'measured') findings.push(finding('profile-not-built', ['profile']));
  return sound(findings, known);
}

/** Judges the spec with its defaults. */
export function checkSpec(spec: Spec, given: Given, known: readonly Issue[]): Issue[] {
  const ends = spec.heads.top ? (['top', 'bottom'] as const) : (['bottom'] as const);
  const heads = ends.flatMap((end) =>
    headFindings(spec.heads[end]!, (key) => headPath(given, end, key)),
  );
  const findings = [
    ...staveFindings(spec),
    ...heads,
    ...insetFindings(spec, given),
    ...hoopFindings(spec),
  ];
  return unique(sound(findings, known));
}

function finding(
  code: string,
  path: SpecPath,
  values: Values = {},
  beside: readonly SpecPath[] = [],
): Finding {
  return { code, path, beside, values };
}

function sound(findings: readonly Finding[], known: readonly Issue[]): Issue[] {
  const doubted = (path: SpecPath): boolean => known.some((issue) => related(issue.path, path));
  return findings
    .filter(({ path, beside }) => ![path, ...beside].some(doubted))
    .map(({ code, path, values }) => fault(code, path, values));
}

/** One path is the other, or leads to it. An issue of the whole file says nothing of any one key. */
function related(a: SpecPath, b: SpecPath): boolean {
  const shorter = Math.min(a.length, b.length);
  return shorter > 0 && a.slice(0, shorter).every((step, i) => step === b[i]);
}

/** Heads that share their keys share their faults: one message will do. */
function unique(issues: readonly Issue[]): Issue[] {
  const seen = new Set<string>();
  return issues.filter((issue) => {
    const name = JSON.stringify([issue.code, issue.path]);
    return !seen.has(name) && seen.add(name);
  });
}

/** A rise below this is none: the profile's radius would be a thousand kilometres, and sums of it lose the last digits. */
const leastRise = 0.001;

function outsideFindings({ bilge, ends }: Given): Finding[] {
  if (bilge === undefined || ends === undefined) return [];
  const values = { bilge, ends };
  if (Math.abs(bilge - ends) < 2 * leastRise - 1e-9)
    return [finding('bilge-equals-ends', ['bilge'], values, [['ends']])];
  return bilge < ends ? [finding('bilge-below-ends', ['bilge'], values, [['ends']])] : [];
}

function eitherOrFindings(given: Given): Finding[] {
  const findings: Finding[] = [];
  const count: SpecPath = ['staves', 'count'];
  const widths: SpecPath = ['staves', 'widths'];
  const { staves } = given;
  if (staves?.count !== undefined && staves.widths)
    findings.push(finding('count-and-widths', count, {}, [widths]));
  if (staves?.count === undefined && !staves?.widths)
    findings.push(finding('no-staves', count, {}, [widths]));
  const heads: [SpecPath, GivenHead | null | undefined][] = [
    [['heads'], given.heads],
    [['heads', 'top'], given.heads?.top],
    [['heads', 'bottom'], given.heads?.bottom],
  ];
  for (const [path, head] of heads) {
    if (head?.boards === undefined || !head.widths) continue;
    findings.push(finding('boards-and-widths', [...path, 'boards'], {}, [[...path, 'widths']]));
  }
  return findings;
}

/** Staves planed thin in the middle bend more easily, and thinned ends save wood: both are done, within reason. */
const thickestEnd = 2;
const thinnestEnd = 0.4;

function staveFindings({ staves, chime, outside }: Spec): Finding[] {
  const findings: Finding[] = [];
  const { thickness, endThickness } = staves;
  const path = (key: string): SpecPath => ['staves', key];
  const [least, most] = [thinnestEnd * thickness, thickestEnd * thickness];
  if (endThickness > most || endThickness < least) {
    const values = { endThickness, thickness, min: least, max: most };
    findings.push(
      finding('end-thickness-far-off', path('endThickness'), values, [path('thickness')]),
    );
  }
  if (chime.flat > endThickness) {
    const values = { flat: chime.flat, endThickness };
    findings.push(
      finding('chime-flat-too-wide', ['chime', 'flat'], values, [
        path('endThickness'),
        path('thickness'),
      ]),
    );
  }
  const sides = outside.kind === 'cask' ? ([outside.ends, 'ends'] as const) : narrower(outside);
  const [diameter, side] = sides;
  if (2 * Math.max(thickness, endThickness) >= diameter) {
    const values = { thickness: Math.max(thickness, endThickness), diameter, max: diameter / 2 };
    findings.push(
      finding('no-room-inside', path('thickness'), values, [path('endThickness'), [side]]),
    );
  }
  return findings;
}

const narrower = ({ top, bottom }: { top: number; bottom: number }): readonly [number, string] =>
  top < bottom ? [top, 'top'] : [bottom, 'bottom'];

/** Rounding of inches must not make a fault of a land that is just as wide as its groove. */
const slack = 1e-9;

function headFindings(head: HeadSpec, path: (key: string) => SpecPath): Finding[] {
  const findings: Finding[] = [];
  const { croze, edge, dowels, thickness } = head;
  if (edge.thickness > croze.width + slack) {
    const values = { land: edge.thickness, groove: croze.width };
    findings.push(
      finding('land-thicker-than-groove', path('edge.thickness'), values, [path('croze.width')]),
    );
  }
  const [least, most] = [edge.thickness / 2, thickness - edge.thickness / 2];
  if (edge.fromInside < least - slack || edge.fromInside > most + slack) {
    const values = { fromInside: edge.fromInside, least, most };
    const beside = [path('edge.thickness'), path('thickness')];
    findings.push(finding('land-outside-head', path('edge.fromInside'), values, beside));
  }
  if (dowels.diameter >= thickness) {
    const values = { diameter: dowels.diameter, thickness };
    findings.push(
      finding('dowel-thicker-than-head', path('dowels.diameter'), values, [path('thickness')]),
    );
  }
  if (croze.inset <= croze.width / 2) {
    const values = { inset: croze.inset, least: croze.width / 2 };
    findings.push(finding('groove-at-the-end', path('croze.inset'), values, [path('croze.width')]));
  }
  return findings;
}

function insetFindings(spec: Spec, given: Given): Finding[] {
  const { top, bottom } = spec.heads;
  const depth = (head: HeadSpec | null): number =>
    head ? head.croze.inset + head.edge.fromInside : 0;
  const taken = depth(top) + depth(bottom);
  if (taken < spec.height) return [];
  const values = { taken, height: spec.height };
  const beside = [headPath(given, 'top', 'croze.inset'), ['height']];
  return [
    finding('no-room-between-heads', headPath(given, 'bottom', 'croze.inset'), values, beside),
  ];
}

function hoopFindings({ hoops, height }: Spec): Finding[] {
  const beyond = hoops.flatMap(({ offset }, i) =>
    offset < height
      ? []
      : [finding('hoop-beyond-vessel', ['hoops', i, 'offset'], { offset, height }, [['height']])],
  );
  const doubled = hoops.flatMap((hoop, i) => {
    const first = hoops.findIndex((other) => samePlace(hoop, other));
    return first < i
      ? [finding('hoop-name-doubled', ['hoops', i, 'name'], { name: hoop.name })]
      : [];
  });
  return [...beyond, ...doubled];
}

function samePlace(a: Spec['hoops'][number], b: Spec['hoops'][number]): boolean {
  const meets = a.end === b.end || a.end === 'both' || b.end === 'both';
  return meets && a.name.toLowerCase() === b.name.toLowerCase();
}

/** Where a head's key was given: under `heads.top` or `heads.bottom` if it stands there, else under `heads`. */
function headPath(given: Given, end: 'top' | 'bottom', key: string): SpecPath {
  const steps = key.split('.');
  let node: unknown = given.heads?.[end];
  for (const step of steps) node = (node as Record<string, unknown> | null | undefined)?.[step];
  return node === undefined ? ['heads', ...steps] : ['heads', end, ...steps];
}
