/**
 * Fills in what a file leaves out, in proportion to the vessel. Every rule goes through one known vessel: the wine cask of
 * about 225 litres, 945 high and 678 at the bilge, whose ordinary dimensions stand below as they are (common practice,
 * no source). Other sizes follow powers of the ratio to it, since nothing on a small cask shrinks as fast as its girth:
 * a 10-litre keg of 255 mm has staves of 16, not of 10. What the cooper gives is kept, and the rest follows from that.
 */
import { defined, fillHeads } from './default-heads.js';
import { defaultHoops } from './default-hoops.js';
import { scale, stepsOf, type Scale } from './default-scale.js';
import type { Given } from './given.js';
import { radiansOf, roundedTo } from './length.js';
import type { CaskOutside, Spec, StaveSpec, TubOutside } from './spec.js';

/** Null while a key that has no default is missing. */
export function fillIn(given: Given): Spec | null {
  const { vessel, units, height } = given;
  const outside = outsideOf(given);
  const count = given.staves?.widths?.length ?? given.staves?.count;
  if (!vessel || !units || height === undefined || !outside || count === undefined) return null;
  const size = scale(outside, height, given.staves?.thickness, stepsOf[units]);
  const staves = fillStaves(given.staves ?? {}, count, size);
  const chime = fillChime(given.chime ?? {}, staves, size);
  const chimeDepth = (staves.endThickness - chime.flat) * Math.tan(chime.bevel);
  return {
    vessel,
    title: given.title ?? (vessel === 'cask' ? 'Cask' : 'Tub'),
    units,
    height,
    outside,
    staves,
    chime,
    howel: fillHowel(given.howel ?? {}, size),
    heads: fillHeads(given.heads ?? {}, outside, chimeDepth, size),
    hoops: given.hoops?.map((hoop) => size.hoop(hoop)) ?? defaultHoops(vessel, size),
    bung: fillBung(given.bung, vessel, staves, size),
    sheet: {
      owner: '',
      number: '',
      date: '',
      creator: '',
      approved: '',
      ...defined(given.sheet ?? {}),
    },
  };
}

function outsideOf(given: Given): CaskOutside | TubOutside | null {
  const { vessel, bilge, ends, profile = 'arc', top, bottom } = given;
  if (vessel === 'tub')
    return top === undefined || bottom === undefined ? null : { kind: 'tub', top, bottom };
  if (bilge === undefined || ends === undefined || profile === 'measured') return null;
  return { kind: 'cask', bilge, ends, profile };
}

function fillStaves(given: NonNullable<Given['staves']>, count: number, size: Scale): StaveSpec {
  const { thickness } = size;
  return {
    count,
    widths: given.widths ?? null,
    thickness,
    endThickness: given.endThickness ?? thickness,
    inside: given.inside ?? 'hollowed',
    outside: given.outside ?? 'rounded',
    neutral: given.neutral ?? 0.5,
    ends: given.ends ?? 'overlong',
    trim: given.trim ?? size.withThickness(10),
  };
}

function fillChime(
  given: NonNullable<Given['chime']>,
  staves: StaveSpec,
  size: Scale,
): Spec['chime'] {
  return {
    bevel: radiansOf(given.bevelDegrees ?? 40),
    flat: given.flat ?? Math.min(size.withThickness(10), staves.endThickness),
  };
}

function fillHowel(given: NonNullable<Given['howel']>, size: Scale): Spec['howel'] {
  return {
    depth: given.depth ?? size.withThickness(2),
    beyondGroove: given.beyondGroove ?? size.withThickness(20),
  };
}

/** A bung of 50, slowly smaller on smaller casks; and two thirds of its stave at most, so that wood is left beside it. */
function fillBung(
  given: Given['bung'],
  vessel: Spec['vessel'],
  staves: StaveSpec,
  size: Scale,
): Spec['bung'] {
  if (given === null || given === 'none') return null;
  if (given === undefined && vessel === 'tub') return null;
  if (given?.diameter !== undefined) return { diameter: given.diameter };
  const widest = staves.widths
    ? Math.max(...staves.widths)
    : (Math.PI * size.diameter) / staves.count;
  const step = size.steps.coarse;
  return { diameter: Math.min(size.withDiameter(50, 0.5), roundedTo((2 / 3) * widest, step)) };
}
