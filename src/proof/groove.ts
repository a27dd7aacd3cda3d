/** The groove as the drawn lines put it on the bent stave. Lengths in mm. */
import type { End } from '../spec/spec.js';
import type { Vessel } from '../vessel/vessel.js';
import { heightAt, type Bending } from './bending.js';
import { insideRadius, towards } from './due.js';
import { judged, type Finding } from './finding.js';
import type { StaveLines } from './stave-lines.js';
import { tolerance } from './tolerance.js';

export interface DrawnGroove {
  readonly middle: number;
  readonly width: number;
}

/** By the lines of a stave; null where a lip is not drawn. */
export function drawnGroove(lines: StaveLines, end: End, bending: Bending): DrawnGroove | null {
  const heights = (['near', 'far'] as const).map((edge) => {
    const station = lines.drawnAt('groove-line', { end, edge });
    const section = station === null ? null : bending.sectionAtStation(station);
    return section ? heightAt(section, section.thickness) : null;
  }) as [number | null, number | null];
  const [near, far] = heights;
  if (near === null || far === null) return null;
  return { middle: (near + far) / 2, width: towards(end) * (near - far) };
}

/** Height of the groove's middle, as the spec has it. */
export function dueGrooveHeight({ spec }: Vessel, end: End): number {
  return towards(end) * (spec.height / 2 - spec.heads[end]!.croze.inset);
}

export function checkGroove(
  vessel: Vessel,
  end: End,
  { middle, width }: DrawnGroove,
  file: string,
): Finding[] {
  const { croze } = vessel.spec.heads[end]!;
  return [
    judged(
      'groove-height',
      file,
      { end },
      {
        measured: middle,
        expected: dueGrooveHeight(vessel, end),
        tolerance: tolerance.place,
      },
    ),
    judged(
      'groove-width',
      file,
      { end },
      {
        measured: width,
        expected: croze.width,
        tolerance: 2 * tolerance.place,
      },
    ),
  ];
}

/** Radius of the howel at a height: a round tool must reach the corners of a flat inside. */
export function howelRadius(vessel: Vessel, bending: Bending, height: number): number {
  const { spec, ring } = vessel;
  const corner = spec.staves.inside === 'flat' ? 1 / Math.cos(Math.max(...ring.alphas)) : 1;
  return insideRadius(bending, height) * corner + spec.howel.depth;
}

/** Radius of the groove's bottom when it is cut at a height. */
export function grooveRadius(vessel: Vessel, bending: Bending, end: End, height: number): number {
  return howelRadius(vessel, bending, height) + vessel.spec.heads[end]!.croze.depth;
}
