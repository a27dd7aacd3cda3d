/** Hoops on a vessel that was cut shorter: each stays where it sits on the wood, as far as there is still wood. */
import type { End, HoopSpec } from '../spec/spec.js';

/** Bare wood between two hoops that had to move together (mm; our judgement). */
const betweenHoops = 3;

/**
 * A hoop that would stand over the new end moves to the distance from it that it had from the old one; those below it give way,
 * towards the bilge, where they would meet it. A hoop at both ends is two where the ends lose unlike amounts.
 */
export function recutHoops(
  hoops: readonly HoopSpec[],
  off: Readonly<Record<End, number>>,
): HoopSpec[] {
  if (off.top === 0 && off.bottom === 0) return [...hoops];
  const apart = hoops.flatMap((hoop) => atItsEnds(hoop, off));
  const groups = (['both', 'top', 'bottom'] as const).map((end) =>
    shifted(
      apart.filter((hoop) => hoop.end === end),
      end === 'both' ? off.top : off[end],
    ),
  );
  const moved = new Map(groups.flat());
  return apart.map((hoop) => moved.get(hoop)!);
}

function atItsEnds(hoop: HoopSpec, off: Readonly<Record<End, number>>): HoopSpec[] {
  if (hoop.end !== 'both' || off.top === off.bottom) return [hoop];
  return [
    { ...hoop, end: 'top' },
    { ...hoop, end: 'bottom' },
  ];
}

function shifted(hoops: readonly HoopSpec[], by: number): [HoopSpec, HoopSpec][] {
  let free = 0;
  const ordered = [...hoops].sort((a, b) => a.offset - b.offset);
  return ordered.map((hoop) => {
    const kept = hoop.offset - by >= 0 ? hoop.offset - by : hoop.offset;
    const offset = Math.max(kept, free);
    free = offset + hoop.width + betweenHoops;
    return [hoop, { ...hoop, offset }];
  });
}
