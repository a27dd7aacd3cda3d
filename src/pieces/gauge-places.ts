/** The places along a stave that gauges are made for, and what they are called. */
import type { Vessel } from '../vessel/vessel.js';
import type { Words } from './words/index.js';

export interface GaugePlace {
  readonly name: string;
  /** height of the outer face in the section that the gauge is held in, mm */
  readonly z: number;
}

/** Bilge and ends of a cask; both ends of a tub, or one place for all of it when it is a cylinder. */
export function gaugePlaces({ spec, profile }: Vessel, words: Words): GaugePlace[] {
  const { places } = words.gauges;
  const [top, bottom] = [spec.height / 2, -spec.height / 2];
  if (spec.vessel === 'cask')
    return [
      { name: places.bilge, z: 0 },
      { name: places.ends, z: top },
    ];
  if (profile.radius(top) === profile.radius(bottom)) return [{ name: places.all, z: 0 }];
  return [
    { name: places.top, z: top },
    { name: places.bottom, z: bottom },
  ];
}

/** Where the joint bevel differs: a tub's is the same along the whole stave. */
export function bevelPlaces(vessel: Vessel, words: Words): GaugePlace[] {
  if (vessel.spec.vessel === 'cask') return gaugePlaces(vessel, words);
  return [{ name: words.gauges.places.all, z: 0 }];
}
