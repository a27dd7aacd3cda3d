/** What must hold between one key and another, as far as no geometry of the vessel is needed to say so. */
import { finding, sound, unique, type Finding } from './findings.js';
import type { Given, GivenHead } from './given.js';
import type { Issue, SpecPath } from './issue.js';
import { headsFindings } from './rules-heads.js';
import type { Spec } from './spec.js';

/** Judges what was given before defaults are filled in. */
export function checkGiven(given: Given, known: readonly Issue[]): Issue[] {
  const findings = [...outsideFindings(given), ...eitherOrFindings(given)];
  if (given.profile === 'measured') findings.push(finding('profile-not-built', ['profile']));
  return sound(findings, known);
}

/** Judges the spec with its defaults. */
export function checkSpec(spec: Spec, given: Given, known: readonly Issue[]): Issue[] {
  const findings = [...staveFindings(spec), ...headsFindings(spec, given), ...hoopFindings(spec)];
  return unique(sound(findings, known));
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
