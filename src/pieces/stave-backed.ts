/** The stave's outline measured round the backed face: half its width is `r alpha`. For marking on a rounded outside. */
import { line } from '../geometry/curve.js';
import { fitArcs } from '../geometry/fit.js';
import type { SmoothCurve } from '../geometry/path.js';
import { drawingOf, merge, strokes } from '../drawing/build.js';
import type { Drawing } from '../drawing/drawing.js';
import type { Stave } from '../vessel/stave.js';
import type { Vessel } from '../vessel/vessel.js';
import { staveLegend } from './stave-legend.js';
import { closed } from './stave-outline.js';
import type { Words } from './words/index.js';

export function backedStave(vessel: Vessel, words: Words): Drawing {
  const stave = vessel.meanStave;
  const at = (station: number): number => vessel.bend.sectionAtStation(station);
  const [from, to] = [stave.blankEnds.bottom.outer, stave.blankEnds.top.outer];
  const outline = closed(fitArcs(backedEdge(vessel, stave), at(from), at(to)));
  const title = words.stave.backedTitle;
  const part = merge(
    strokes('outline', outline),
    strokes('centre', line({ x: from - 6, y: 0 }, { x: to + 6, y: 0 })),
  );
  const legend = staveLegend(vessel, stave, words);
  return drawingOf('stave-backed', title, part, {
    ...legend,
    notes: [words.stave.notes.backed, ...legend.notes],
  });
}

function backedEdge({ profile, bend, wall, spec }: Vessel, stave: Stave): SmoothCurve {
  return {
    at: (z) => ({ x: bend.station(z), y: profile.radius(z) * stave.alpha }),
    tangent: (z) => ({
      x:
        (1 - spec.staves.neutral * wall.thickness(z) * profile.curvature(z)) *
        Math.hypot(1, profile.slope(z)),
      y: profile.slope(z) * stave.alpha,
    }),
  };
}
