/** The heads of a vessel: `heads.top` and `heads.bottom` laid over the common keys, and defaults for the rest. */
import { wineCask, type Scale } from './default-scale.js';
import type { GivenHead, GivenHeads } from './given.js';
import { roundedDownTo, roundedTo } from './length.js';
import type { CaskOutside, HeadSpec, Spec, TubOutside } from './spec.js';

/** `chimeDepth` is how far the chime bevel reaches down from the end plane. */
export function fillHeads(
  given: GivenHeads,
  outside: CaskOutside | TubOutside,
  chimeDepth: number,
  size: Scale,
): Spec['heads'] {
  const end = outside.kind === 'cask' ? outside.ends : outside.bottom;
  const inset = outside.kind === 'cask' ? 60 : 40;
  const fill = (own: GivenHead): HeadSpec =>
    fillHead(laidOver(given, own), end, { inset, chimeDepth }, size);
  return {
    top: outside.kind === 'cask' ? fill(given.top ?? {}) : null,
    bottom: fill(given.bottom ?? {}),
  };
}

/** A head with `widths` of its own doesn't take the common `boards`, nor the other way round. */
function laidOver(common: GivenHeads, own: GivenHead): GivenHead {
  const shared = { ...common, top: undefined, bottom: undefined };
  const boards = own.boards === undefined && own.widths === undefined ? shared : own;
  return {
    ...shared,
    ...defined(own),
    boards: boards.boards,
    widths: boards.widths,
    croze: { ...shared.croze, ...defined(own.croze ?? {}) },
    edge: { ...shared.edge, ...defined(own.edge ?? {}) },
    dowels: { ...shared.dowels, ...defined(own.dowels ?? {}) },
  };
}

/** Where the end of the staves leaves room for the groove. */
interface EndSpace {
  /** a wine cask's; a tub's groove lies nearer to the floor */
  readonly inset: number;
  readonly chimeDepth: number;
}

function fillHead(given: GivenHead, endDiameter: number, space: EndSpace, size: Scale): HeadSpec {
  const thickness = given.thickness ?? size.thickness;
  const boards = given.widths?.length ?? given.boards ?? boardsFor(endDiameter);
  const width = given.croze?.width ?? size.withThickness(6, 0.5);
  const croze = {
    inset: given.croze?.inset ?? insetFor(space, width, size),
    depth: given.croze?.depth ?? size.withThickness(5, 0.75),
    width,
  };
  return {
    thickness,
    boards,
    widths: given.widths ?? null,
    clearance: given.clearance ?? 0,
    crossGrain: given.crossGrain ?? 0,
    croze,
    edge: fillEdge(given.edge ?? {}, thickness, croze, endDiameter, size),
    dowels: fillDowels(given.dowels ?? {}, thickness, endDiameter / boards, endDiameter, size),
  };
}

/**
 * With the 0.75th power of the diameter on small vessels, the square root on large ones (or no chime hoop would stand near
 * the groove), no more than an eighth of a low vessel's height; but always clear of the chime bevel.
 */
function insetFor({ inset, chimeDepth }: EndSpace, grooveWidth: number, size: Scale): number {
  const usual = Math.min(size.withDiameter(inset, 0.75), size.capped(inset, 0.5, 0.12));
  const least = roundedTo(1.1 * chimeDepth + grooveWidth / 2 + 2, size.steps.coarse);
  return Math.max(usual, Math.min(least, size.height / 3));
}

/** Six boards to the wine cask's head; a smaller head has fewer and narrower ones. */
function boardsFor(endDiameter: number): number {
  return Math.min(60, Math.max(1, Math.round(6 * (endDiameter / wineCask.ends) ** 0.7)));
}

/**
 * The rim of a head 27 thick, in proportion to the thickness: land 12 from the inside, bevels 35 and 14 wide. The land is a
 * twelfth thinner than its groove; the bevels are deeper than the groove, and well within the head.
 */
function fillEdge(
  given: NonNullable<GivenHead['edge']>,
  headThickness: number,
  croze: HeadSpec['croze'],
  endDiameter: number,
  { steps }: Scale,
): HeadSpec['edge'] {
  const share = (onWineCask: number): number =>
    roundedTo((onWineCask * headThickness) / wineCask.thickness, steps.coarse);
  const most = endDiameter / 6;
  const bevel = (onWineCask: number, beyondGroove: number): number =>
    Math.min(
      most,
      Math.max(share(onWineCask), roundedTo(croze.depth + beyondGroove, steps.coarse)),
    );
  const play = Math.min(
    croze.width,
    Math.max(steps.fine, roundedDownTo((croze.width * 11) / 12, steps.fine)),
  );
  const land = given.thickness ?? Math.min(play, headThickness);
  return {
    thickness: land,
    fromInside:
      given.fromInside ?? Math.max(land / 2, Math.min(share(12), headThickness - land / 2)),
    outerBevel: given.outerBevel ?? bevel(35, 4),
    innerBevel: given.innerBevel ?? bevel(14, 2),
  };
}

/**
 * Dowels 8 by 50 in boards 27 thick, near enough three tenths of the thickness; half as long as the boards are wide at
 * most, or those of two neighbouring joints would meet. Shorter joints have them closer, so that each still gets some.
 */
function fillDowels(
  given: NonNullable<GivenHead['dowels']>,
  headThickness: number,
  boardWidth: number,
  endDiameter: number,
  { steps }: Scale,
): HeadSpec['dowels'] {
  const ratio = headThickness / wineCask.thickness;
  const drill = 2 * steps.coarse;
  const spacing = 150 * (endDiameter / wineCask.ends) ** 0.75;
  return {
    diameter: given.diameter ?? Math.max(1, roundedTo(8 * ratio, drill)),
    length: given.length ?? roundedTo(Math.min(50 * ratio, 0.6 * boardWidth), steps.coarse),
    spacing: given.spacing ?? roundedTo(spacing, steps.coarse),
    margin: given.margin ?? roundedTo(25 * ratio, steps.coarse),
  };
}

/** Spreading a key that is there but undefined would overwrite its default. */
export function defined<T extends object>(given: T): T {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== undefined)) as T;
}
