/** What must hold within a head, and between the heads. */
import { finding, type Finding } from './findings.js';
import type { Given } from './given.js';
import type { SpecPath } from './issue.js';
import type { HeadSpec, Spec } from './spec.js';

/** Judges both heads; keys that they share are blamed once. */
export function headsFindings(spec: Spec, given: Given): Finding[] {
  const ends = spec.heads.top ? (['top', 'bottom'] as const) : (['bottom'] as const);
  const each = ends.flatMap((end) =>
    headFindings(spec.heads[end]!, (key) => headPath(given, end, key)),
  );
  return [...each, ...insetFindings(spec, given)];
}

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

/** Where a head's key was given: under `heads.top` or `heads.bottom` if it stands there, else under `heads`. */
function headPath(given: Given, end: 'top' | 'bottom', key: string): SpecPath {
  const steps = key.split('.');
  let node: unknown = given.heads?.[end];
  for (const step of steps) node = (node as Record<string, unknown> | null | undefined)?.[step];
  return node === undefined ? ['heads', ...steps] : ['heads', end, ...steps];
}
