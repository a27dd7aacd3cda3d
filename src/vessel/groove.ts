/** The inside of a stave end: chime bevel, howel and croze (the groove that holds the head). Lengths in mm. */
import { root } from '../geometry/quadrature.js';
import type { ChimeSpec, End, HeadSpec, HowelSpec } from '../spec/spec.js';
import type { Inside } from './inside.js';

export interface Groove {
  readonly end: End;
  /** +1 at the top, -1 at the bottom: the way towards the end plane */
  readonly towardsEnd: 1 | -1;
  /** height of the groove's middle */
  readonly middle: number;
  readonly width: number;
  /** radius of the groove's bottom */
  readonly radius: number;
  /** radius of the howel at a height */
  readonly howelRadius: (height: number) => number;
  /** heights between which the howel runs: from the chime's foot to its inner edge */
  readonly howelFrom: number;
  readonly howelTo: number;
  /** the chime bevel: its foot where it meets the howel, and the end plane radius at which it begins; null without one */
  readonly chime: {
    readonly footHeight: number;
    readonly footRadius: number;
    readonly endRadius: number;
  } | null;
  /** heights of the lips on the chime's side and on the inner side */
  readonly outerLip: number;
  readonly innerLip: number;
  /** depth of the groove below the howel at its deeper lip */
  readonly lipDepth: number;
  /** least inside radius that the head passes on its way in */
  readonly leastPassage: number;
  /** by how much the chime must open to let the head in, in radius */
  readonly opening: number;
}

/** The groove of one end. `chimeSpec` is null where the end has no chime bevel (the rim of a tub). */
export function grooveOf(
  end: End,
  inside: Inside,
  howel: HowelSpec,
  head: HeadSpec,
  chimeSpec: ChimeSpec | null,
): Groove {
  const towardsEnd = end === 'top' ? 1 : -1;
  const { inset, depth, width } = head.croze;
  const middle = inside.endPlane - towardsEnd * inset;
  const howelRadius = (height: number): number => inside.roundRadius(height) + howel.depth;
  const radius = howelRadius(middle) + depth;
  const outerLip = middle + (towardsEnd * width) / 2;
  const innerLip = middle - (towardsEnd * width) / 2;
  const chime = chimeSpec && chimeOf(inside, chimeSpec, howelRadius, towardsEnd, outerLip);
  const howelFrom = chime ? chime.footHeight : inside.endPlane;
  const leastPassage = Math.min(howelRadius(howelFrom), howelRadius(outerLip));
  return {
    end,
    towardsEnd,
    middle,
    width,
    radius,
    howelRadius,
    howelFrom,
    howelTo: innerLip - towardsEnd * howel.beyondGroove,
    chime,
    outerLip,
    innerLip,
    lipDepth: radius - Math.min(howelRadius(outerLip), howelRadius(innerLip)),
    leastPassage,
    opening: Math.max(0, radius - leastPassage),
  };
}

/**
 * The chime bevel leaves `flat` of the end, then falls inwards at `bevel` from the end plane until it meets the howel.
 * Null where the flat takes the whole end. A foot that is not above the groove's lip comes out as NaN: `checks.ts` refuses it.
 */
function chimeOf(
  inside: Inside,
  spec: ChimeSpec,
  howelRadius: (height: number) => number,
  towardsEnd: 1 | -1,
  lip: number,
): Groove['chime'] {
  const endRadius = inside.endRadius - spec.flat;
  if (endRadius <= howelRadius(inside.endPlane)) return null;
  const slopeRadius = (height: number): number =>
    endRadius - ((inside.endPlane - height) * towardsEnd) / Math.tan(spec.bevel);
  const footHeight = root((h) => slopeRadius(h) - howelRadius(h), inside.endPlane, lip);
  return { footHeight, footRadius: howelRadius(footHeight), endRadius };
}

/** Radius of the finished inside surface at a height near this groove: chime bevel, howel, groove, or the plain inside. */
export function wallRadius(groove: Groove, inside: Inside, height: number): number {
  const along = (from: number): number => (height - from) * groove.towardsEnd;
  if (groove.chime && along(groove.chime.footHeight) > 0) {
    const { footHeight, footRadius, endRadius } = groove.chime;
    const share = (height - footHeight) / (inside.endPlane - footHeight);
    return footRadius + share * (endRadius - footRadius);
  }
  if (along(groove.innerLip) >= 0 && along(groove.outerLip) <= 0) return groove.radius;
  if (along(groove.howelTo) >= 0) return groove.howelRadius(height);
  return inside.radius(height);
}
