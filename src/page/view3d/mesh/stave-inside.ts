/** The finished inside of a stave along the vessel: plain inside, howel, croze and chime at the ends that have them. */
import type { Vessel } from '../../../index.js';
import type { ChainPlace } from './chain.js';

export interface InsidePlace extends ChainPlace {
  /** a surface turned about the axis; a flat inner face otherwise, whose middle has the radius */
  readonly isRound: boolean;
}

/** Between these many places the plain inside is taken as straight. */
const steps = 16;

/** From the bottom end to the top end. */
export function stavesInside(vessel: Vessel): InsidePlace[] {
  const { heads, wall, spec } = vessel;
  const isRound = spec.staves.inside === 'hollowed';
  const plain = (height: number): InsidePlace => ({
    height,
    radius: wall.insideRadius(height),
    isRound,
  });
  const end = spec.height / 2;
  const below = worked(heads.bottom.groove, -end, plain).reverse();
  const above = heads.top ? worked(heads.top.groove, end, plain) : [plain(end)];
  const [from, to] = [below.at(-1)!.height, above[0]!.height];
  const between = Array.from({ length: steps - 1 }, (_, i) =>
    plain(from + ((i + 1) / steps) * (to - from)),
  );
  return [...below, ...between, ...above];
}

type Groove = Vessel['heads']['bottom']['groove'];

/** From the howel's inner edge to the end. */
function worked(
  groove: Groove,
  end: number,
  plain: (height: number) => InsidePlace,
): InsidePlace[] {
  const { howelTo, innerLip, outerLip, chime, howelRadius } = groove;
  const round = (height: number, radius: number): InsidePlace => ({
    height,
    radius,
    isRound: true,
  });
  const howel = (height: number): InsidePlace => round(height, howelRadius(height));
  const chimeEnd = chime && [
    round(chime.footHeight, chime.footRadius),
    round(end, chime.endRadius),
  ];
  return [
    plain(howelTo),
    howel(howelTo),
    howel(innerLip),
    round(innerLip, groove.radius),
    round(outerLip, groove.radius),
    howel(outerLip),
    ...(chimeEnd ?? [howel(end)]),
  ];
}
