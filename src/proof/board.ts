/** Holds a drawn board against its strip of the head. */
import { boundsOf } from '../geometry/measure.js';
import type { End } from '../spec/spec.js';
import type { Vessel } from '../vessel/vessel.js';
import { samplesOf } from './contour.js';
import type { Finding } from './finding.js';
import { counted, mostOff, nearestBox, outside, type Round } from './head.js';
import type { Pattern } from './patterns.js';

/** `rim` is what the whole head is due to be; board `number` counts from 1, the lowest. */
export function checkBoard(
  vessel: Vessel,
  pattern: Pattern,
  end: End,
  number: number,
  rim: Round,
): Finding[] {
  const { file } = pattern;
  const place = { end, number };
  const { joints, dowels, spec } = vessel.heads[end]!;
  const edges = [-rim.across, ...joints, rim.across];
  const [from, to] = [edges[number - 1]!, edges[number]!];
  const middle = (from + to) / 2;
  const outlines = pattern.curves('outline');
  const offs = outlines.flatMap((curve) =>
    samplesOf(curve).map(({ point }) => {
      const inHead = { x: point.x, y: point.y + middle };
      const beyond = Math.max(outside(rim, inHead), inHead.y - to, from - inHead.y);
      return beyond;
    }),
  );
  const bores = dowels.filter(({ joint }) => joint === number || joint === number - 1);
  const boxes = pattern.curves('bore').flatMap((curve) => boundsOf(curve) ?? []);
  const half = spec.dowels.diameter / 2;
  const boreOffs = bores.map(({ x, y }) => {
    const low = Math.max(from, y - spec.dowels.length / 2) - middle;
    const high = Math.min(to, y + spec.dowels.length / 2) - middle;
    return nearestBox(boxes, [x - half, low, x + half, high]);
  });
  return [
    counted('board-outline', file, { ...place, part: 'count' }, outlines.length, 1),
    mostOff('board-outline', file, place, offs),
    counted('board-dowel', file, { ...place, part: 'count' }, boxes.length, bores.length),
    ...(bores.length > 0 ? [mostOff('board-dowel', file, place, boreOffs)] : []),
  ];
}
