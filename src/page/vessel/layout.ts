/** Where the vessel and the boxes of its figures lie on the screen, in pixels. Knows nothing of the page's elements. */
import type { Vessel } from '../../index.js';
import {
  bilge,
  bottom,
  ends,
  fieldOfHead,
  grooveInset,
  height,
  hoopOffset,
  staveCount,
  staveThickness,
  staveWidths,
  top,
  type Field,
} from '../state/fields.js';

export interface Room {
  readonly width: number;
  readonly height: number;
}

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Figure {
  readonly field: Field;
  /** the hoop's name; by its key otherwise */
  readonly label?: string;
  /** the middle of its box */
  readonly at: Spot;
  /** dimension lines have arrows at both ends, leaders at the last */
  readonly line: readonly Spot[];
  readonly arrows: 'both' | 'last';
}

export interface Layout {
  /** pixels per millimetre */
  readonly scale: number;
  /** where the axis meets mid-height */
  readonly origin: Spot;
  readonly figures: readonly Figure[];
  /** the middle of the inside, on its cut half */
  readonly inside: Spot;
}

/** A box with its label. */
export const boxSize = { width: 104, height: 70 } as const;
const wideEnough = 700;
const gap = 10;

/** `headsApart`: the head that has its groove's box has one of its own. */
export function layOut(vessel: Vessel, room: Room, headsApart = false): Layout {
  const { spec } = vessel;
  const isWide = room.width >= wideEnough;
  const right = boxSize.width + 5 * gap;
  const left = isWide ? boxSize.width + 6 * gap : gap;
  const above = boxSize.height + 2 * gap;
  // a tub's lower diameter, and on a narrow screen the boxes that find no room beside the vessel
  const rows = (spec.vessel === 'tub' ? 1 : 0) + (isWide ? 0 : 1);
  const below = rows === 0 ? 3 * gap : rows * (boxSize.height + gap) + gap;
  const ends = [-0.5, 0, 0.5].map((share) => vessel.profile.radius(share * spec.height));
  const widest = Math.max(...ends);
  const scale = Math.min(
    (room.width - left - right) / (2 * widest),
    (room.height - above - below) / spec.height,
  );
  const origin = {
    x: left + (room.width - left - right) / 2,
    y: above + (room.height - above - below) / 2,
  };
  const frame: Frame = { vessel, room, headsApart, scale, origin, widest, isWide };
  const figures = [...diameters(frame), ...atRight(frame), ...atLeft(frame)];
  const inner = vessel.wall.insideRadius(0) * scale;
  return { scale, origin, figures, inside: { x: origin.x + inner / 2, y: origin.y } };
}

interface Frame {
  readonly vessel: Vessel;
  readonly room: Room;
  readonly headsApart: boolean;
  readonly scale: number;
  readonly origin: Spot;
  readonly widest: number;
  readonly isWide: boolean;
}

/** A point of the vessel, `x` from the axis and `y` from mid-height upwards, on the screen. */
function place({ origin, scale }: Frame, x: number, y: number): Spot {
  return { x: origin.x + x * scale, y: origin.y - y * scale };
}

function across(frame: Frame, field: Field, z: number, shift: number, boxShift: number): Figure {
  const radius = frame.vessel.profile.radius(z);
  const [from, to] = [place(frame, -radius, z), place(frame, radius, z)];
  const line = [from, to].map(({ x, y }) => ({ x, y: y + shift }));
  return { field, at: { x: frame.origin.x, y: from.y + boxShift }, line, arrows: 'both' };
}

function diameters(frame: Frame): Figure[] {
  const { spec, profile } = frame.vessel;
  const end = spec.height / 2;
  const above = -gap - boxSize.height / 2 - 4;
  if (spec.vessel === 'tub')
    return [
      across(frame, top, end, -gap, above),
      across(frame, bottom, -end, gap, gap + boxSize.height / 2 + 4),
    ];
  const middle = across(frame, bilge, 0, 0, 0);
  const shift = (profile.radius(0) * frame.scale) / 2;
  return [
    across(frame, ends, end, -gap, above),
    { ...middle, at: { x: frame.origin.x - shift, y: frame.origin.y } },
  ];
}

/** The height with its dimension line; the groove and the wall's thickness on leaders. */
function atRight(frame: Frame): Figure[] {
  const { vessel, room, origin, isWide, widest, scale } = frame;
  const { profile, heads, spec, wall } = vessel;
  const lineX = origin.x + widest * scale + 2 * gap;
  const x = lineX + 2 * gap + boxSize.width / 2;
  const { groove } = heads.top ?? heads.bottom;
  const wallZ = -0.25 * spec.height * groove.towardsEnd;
  const wallAt = place(frame, profile.radius(wallZ) - wall.thickness(wallZ) / 2, wallZ);
  const [high, low] = [spec.height / 2, -spec.height / 2].map((z) => place(frame, 0, z).y);
  const step = boxSize.height * 1.1;
  const upper = { x, y: Math.min(high! + 3 * gap, origin.y - step) };
  const foot = room.height - boxSize.height / 2 - gap;
  const lower = { x, y: isWide ? Math.max(low! - 3 * gap, origin.y + step) : foot };
  const [inset, thickness] = groove.towardsEnd > 0 ? [upper, lower] : [lower, upper];
  const line = [high!, low!].map((y) => ({ x: lineX, y }));
  const insetField = frame.headsApart ? fieldOfHead(groove.end)(grooveInset) : grooveInset;
  return [
    { field: height, at: { x, y: origin.y }, line, arrows: 'both' },
    leader(insetField, inset, -1, place(frame, groove.radius, groove.middle)),
    leader(staveThickness, thickness, -1, wallAt),
  ];
}

/** From the box's edge to the place; `side` is the side of the box that it leaves from. */
function leader(field: Field, at: Spot, side: -1 | 1, to: Spot): Figure {
  const from = { x: at.x + (side * boxSize.width) / 2, y: at.y + 10 };
  return { field, at, line: [from, to], arrows: 'last' };
}

/** From above the box's name, straight up as far as the box is wide enough. */
function leaderUp(field: Field, at: Spot, to: Spot): Figure {
  const reach = boxSize.width / 2 - gap;
  const x = Math.min(at.x + reach, Math.max(at.x - reach, to.x));
  return { field, at, line: [{ x, y: at.y - boxSize.height / 2 }, to], arrows: 'last' };
}

/** How many staves; where there is room, how far in each hoop lies. */
function atLeft(frame: Frame): Figure[] {
  const { vessel, room, isWide } = frame;
  const { spec, profile } = vessel;
  const count = spec.staves.widths ? staveWidths : staveCount;
  const x = isWide
    ? frame.origin.x - frame.widest * frame.scale - 4 * gap - boxSize.width / 2
    : boxSize.width / 2 + gap;
  const low = room.height - boxSize.height / 2 - gap;
  const staveAt = (share: number): Spot =>
    place(frame, -share * profile.radius(-spec.height / 4), -spec.height / 4);
  // beside the box of a tub's lower diameter, which lies between
  if (!isWide) return spec.staves.widths ? [] : [leaderUp(count, { x, y: low }, staveAt(0.8))];
  const staves = leader(count, { x, y: low }, 1, staveAt(0.5));
  const hoops = spec.hoops.map((hoop, i) => {
    const seen = vessel.hoops.find(({ spec: own }) => own === hoop)!;
    const z = (seen.nearHeight + seen.farHeight) / 2;
    const to = place(frame, -profile.radius(z), z);
    return { ...leader(hoopOffset(i), { x, y: to.y }, 1, to), label: hoop.name };
  });
  const ordered = hoops.sort((a, b) => a.at.y - b.at.y);
  const all = spec.staves.widths ? ordered : [...ordered, staves];
  return spreadOut(all, room.height);
}

/** Boxes in a column, moved down as far as they would overlap, then up from the lower edge. */
function spreadOut(figures: readonly Figure[], height: number): Figure[] {
  const step = boxSize.height + 4;
  const ys = figures.map(({ at }) => at.y);
  for (let i = 0; i < ys.length; i++)
    ys[i] = Math.max(ys[i]!, i === 0 ? boxSize.height / 2 + gap : ys[i - 1]! + step);
  for (let i = ys.length - 1; i >= 0; i--)
    ys[i] = Math.min(ys[i]!, i === ys.length - 1 ? height - step / 2 - gap : ys[i + 1]! - step);
  return figures.map((figure, i) => {
    const at = { x: figure.at.x, y: ys[i]! };
    return { ...figure, at, line: [{ x: figure.line[0]!.x, y: at.y + 10 }, figure.line[1]!] };
  });
}
