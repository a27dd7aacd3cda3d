/** The picture of a proof as SVG. */
import {
  gapPicture,
  toSvg,
  withLegend,
  type ProofWords,
  type Vessel,
  type WholeProof,
} from '../index.js';

/** Null where no ring could be set up. */
export function gapDrawing(
  { joint }: WholeProof,
  { spec }: Vessel,
  words: ProofWords,
): string | null {
  const picture = joint && gapPicture(joint, words);
  return picture && toSvg(withLegend({ ...picture, subject: spec.title }));
}
