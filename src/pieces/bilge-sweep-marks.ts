/** What is marked along the sweeps: hoops on the outside; chime, groove and howel on the inside. */
import { shortLengthText } from '../drawing/length-text.js';
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import type { Words } from './words/index.js';

export interface Mark {
  readonly height: number;
  readonly text: string;
}

/** Both edges of every hoop, with their distance along the axis from the end that the hoop belongs to. */
export function hoopMarks({ hoops, spec }: Vessel, words: Words): Mark[] {
  return hoops.flatMap((hoop) => {
    const plane = (hoop.end === 'top' ? 1 : -1) * (spec.height / 2);
    return [hoop.nearHeight, hoop.farHeight].map((height) => ({
      height,
      text: words.gauges.sweep.hoop(
        hoop.spec.name,
        shortLengthText(Math.abs(plane - height), spec.units),
      ),
    }));
  });
}

export function insideMarks({ heads, spec }: Vessel, words: Words): Mark[] {
  const { chime, groove: lip, howel } = words.gauges.sweep;
  return [heads.top, heads.bottom]
    .filter((head): head is Head => head !== null)
    .flatMap(({ groove }) => {
      const plane = groove.towardsEnd * (spec.height / 2);
      const mark = (height: number, say: (distance: string) => string): Mark => ({
        height,
        text: say(shortLengthText(Math.abs(plane - height), spec.units)),
      });
      return [
        ...(groove.chime ? [mark(groove.chime.footHeight, chime)] : []),
        mark(groove.outerLip, lip),
        mark(groove.innerLip, lip),
        mark(groove.howelTo, howel),
      ];
    });
}
