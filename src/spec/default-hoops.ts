/** The hoops of a vessel that names none: where they stand goes with the height, how wide they are with the girth. */
import { wineCask, type Scale } from './default-scale.js';
import { roundedTo } from './length.js';
import type { HoopSpec, Spec } from './spec.js';

/** Below this bilge a third pair of hoops would leave no wood to see, and two pairs hold (keg of about 15 litres). */
const smallCask = 300;
/** Above this a tub's staves want a hoop between top and bottom. */
const tallTub = 350;

export function defaultHoops(vessel: Spec['vessel'], size: Scale): HoopSpec[] {
  return vessel === 'cask' ? caskHoops(size) : tubHoops(size);
}

function caskHoops(size: Scale): HoopSpec[] {
  const { width, offset } = sizes(size);
  const chime = size.hoop({
    name: 'chime',
    offset: offset.chime,
    width: width(40),
    thickness: gauge(size, 1.8),
  });
  const thickness = gauge(size, 1.5);
  const bilge = size.hoop({
    name: 'bilge',
    offset: size.withHeight(255),
    width: width(35),
    thickness,
  });
  if (size.diameter < smallCask) return [chime, bilge];
  const quarter = size.hoop({
    name: 'quarter',
    offset: size.withHeight(105),
    width: width(32),
    thickness,
  });
  return [chime, quarter, bilge];
}

/** The bottom hoop stands over the groove; the top one lower than the rim, where a hand or a lid goes. */
function tubHoops(size: Scale): HoopSpec[] {
  const { width, offset } = sizes(size);
  const thickness = gauge(size, 1.5);
  const bottom = size.hoop({
    name: 'chime',
    end: 'bottom',
    offset: offset.chime,
    width: width(40),
    thickness: gauge(size, 1.8),
  });
  const top = size.hoop({
    name: 'chime',
    end: 'top',
    offset: size.withHeight(105),
    width: width(35),
    thickness,
  });
  if (size.height <= tallTub) return [bottom, top];
  const middle = size.hoop({
    name: 'quarter',
    end: 'bottom',
    offset: size.withHeight(330),
    width: width(35),
    thickness,
  });
  return [bottom, middle, top];
}

/** No strap is wider than a share of the height, or the pairs would meet on a low vessel. */
function sizes(size: Scale) {
  return {
    width: (onWineCask: number): number => size.capped(onWineCask, 0.6, 0.08),
    offset: { chime: size.capped(3, 0.5, 0.02) },
  };
}

/** Thinner straps on smaller vessels. */
const gauge = (size: Scale, onWineCask: number): number =>
  roundedTo(onWineCask * Math.sqrt(size.diameter / wineCask.diameter), size.steps.fine);
