/** What the drawn staves hold between the drawn grooves, by summing slices. */
import { capacityLitres, cubicMillimetresPerLitre } from '../capacity/volume.js';
import type { Vessel } from '../vessel/vessel.js';
import { heightAt, type Bending } from './bending.js';
import { judged, type Finding } from './finding.js';
import type { DrawnStave } from './stave.js';
import { tolerance } from './tolerance.js';

/** Six millimetres on a cask: its capacity then comes out to a hundred-thousandth. */
const slices = 160;

interface Slice {
  readonly height: number;
  readonly area: number;
}

/** `from` and `to` are the heights between which the vessel holds. */
export function checkCapacity(
  vessel: Vessel,
  ring: readonly DrawnStave[],
  from: number,
  to: number,
  bending: Bending,
): Finding {
  const files = [...new Set(ring.map(({ file }) => file))];
  const litres = volume(insideSlices(vessel, ring, bending), from, to) / cubicMillimetresPerLitre;
  const expected = capacityLitres(vessel);
  return judged(
    'capacity',
    files,
    {},
    {
      measured: litres,
      expected,
      tolerance: tolerance.capacityShare * expected,
      unit: 'litres',
    },
  );
}

/**
 * Sections of the inside, from the drawn width of the blank's inner face: its middle stands at the half-width over
 * `tan(alpha)`, and a hollowed one is hollowed further by what the blank is thicker.
 */
function insideSlices(vessel: Vessel, ring: readonly DrawnStave[], bending: Bending): Slice[] {
  const flat = vessel.spec.staves.inside === 'flat';
  const from = Math.max(...ring.map((stave) => stave.from));
  const to = Math.min(...ring.map((stave) => stave.to));
  return Array.from({ length: slices + 1 }, (_, i) => {
    // a hair inside the drawn ends
    const station = from + ((to - from) * (i + 1e-6)) / (slices + 2e-6);
    const section = bending.sectionAtStation(station);
    if (!section) return { height: NaN, area: NaN };
    const area = ring.reduce((sum, { due, halfWidth }) => {
      const half =
        (halfWidth('inner', 'upper', station) + halfWidth('inner', 'lower', station)) / 2;
      const radius = half / Math.tan(due.alpha) + due.extra * section.cos;
      return sum + (flat ? Math.tan(due.alpha) : due.alpha) * radius * radius;
    }, 0);
    return { height: heightAt(section, section.thickness), area };
  });
}

/** Trapezia between two heights; past the last slice its slope is kept, for the hair that a leaning rim stands above it. */
function volume(sections: readonly Slice[], from: number, to: number): number {
  let sum = 0;
  for (const [i, upper] of sections.entries()) {
    const lower = sections[i - 1];
    if (!lower) continue;
    const low = i === 1 ? from : Math.max(from, lower.height);
    const high = i === sections.length - 1 ? to : Math.min(to, upper.height);
    if (high <= low) continue;
    const slope = (upper.area - lower.area) / (upper.height - lower.height);
    const areaAt = (height: number): number => lower.area + slope * (height - lower.height);
    sum += ((areaAt(low) + areaAt(high)) / 2) * (high - low);
  }
  return Number.isFinite(from) && Number.isFinite(to) ? sum : NaN;
}
