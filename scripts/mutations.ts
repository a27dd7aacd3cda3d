/** Mistakes that geometry like ours invites, each as one change of the source. `mutate.ts` tries them. */

export interface Mutation {
  readonly name: string;
  readonly file: string;
  /** must occur exactly once in the file */
  readonly text: string;
  readonly replacement: string;
}

const inFolder =
  (folder: string) =>
  (file: string, name: string, text: string, replacement: string): Mutation => ({
    file: `src/${folder}/${file}`,
    name,
    text,
    replacement,
  });
const inVessel = inFolder('vessel');
const inCapacity = inFolder('capacity');
const inPieces = inFolder('pieces');
const inRack = inFolder('rack');
const inSets = inFolder('sets');
const inPage = inFolder('page');
const inSheets = inFolder('sheets');
const inWriters = inFolder('writers');
const inCli = inFolder('cli');

export const mutations: readonly Mutation[] = [
  // the wall and its bending
  inVessel('profile.ts', 'lean with the wrong sign', '-Math.atan(profile', 'Math.atan(profile'),
  inVessel(
    'wall.ts',
    'thickness square to the axis',
    'depth / Math.sqrt(1 + slope * slope)',
    'depth',
  ),
  inVessel(
    'wall.ts',
    'inner fibre on the wrong side',
    'z + slope * inwards',
    'z - slope * inwards',
  ),
  inVessel('bend.ts', 'nu = 0', 'spec.staves.neutral * wall', '0 * wall'),
  inVessel('bend.ts', 'stations without the slope', 'Math.sqrt(1 + profile.slope(z) ** 2)', '1'),
  inVessel('bend.ts', 'curvature with the wrong sign', '(1 - share(z)) *', '(1 + share(z)) *'),
  inVessel('bend.ts', 'strain of the bent length', 'part / (1 - part)', 'part'),
  // the stave
  inVessel(
    'stave.ts',
    'half-width without cos(phi)',
    'depth * Math.cos(lean(profile, z))) * tangent',
    'depth) * tangent',
  ),
  inVessel(
    'stave.ts',
    'bevel of 180/n everywhere',
    'Math.atan(tangent * Math.cos(lean(profile, z)))',
    'alpha',
  ),
  inVessel(
    'stave.ts',
    'saw tilt with sine and cosine swapped',
    'Math.asin(Math.sin(alpha) * Math.cos(lean(profile, z)))',
    'Math.asin(Math.cos(alpha) * Math.sin(lean(profile, z)))',
  ),
  inVessel(
    'stave.ts',
    'chord for arc in the width',
    '(widestHeight(spec)) * tangent',
    '(widestHeight(spec)) * alpha',
  ),
  inVessel(
    'stave.ts',
    't for T in the blank',
    'return hollowedBlankThickness(profile.radius(z), t, alpha, lean(profile, z))',
    'return t',
  ),
  inVessel(
    'stave.ts',
    'T of a level wall on a leaning one',
    'above / (cosPhi ** 2 + cosAlpha * sinPhi ** 2)',
    'above / cosPhi',
  ),
  inVessel(
    'stave.ts',
    'end cut at t instead of T',
    'wall.sectionAt(plane, blank)',
    'wall.sectionAt(plane, wall.thickness)',
  ),
  inVessel(
    'stave.ts',
    'faces of a cut end swapped',
    '{ outer: cut.outerStation, inner: cut.innerStation }',
    '{ outer: cut.innerStation, inner: cut.outerStation }',
  ),
  inPieces(
    'head-router.ts',
    'a plank cut off within its boards',
    '.find((length) => length >= reach)',
    '.find((length) => length >= reach - 500)',
  ),
  inSheets(
    'tiling.ts',
    'joins across gauges',
    'const whole = leastOf(alike, cutContours);',
    'const whole = alike;',
  ),
  inRack(
    'stray-bound.ts',
    'a fall without the third order',
    '((b - 2) * width)',
    '((b - 1) * width)',
  ),
  inRack(
    'union-promise.ts',
    'planing promised as by the flattest stave',
    'const perMm = Math.max(',
    'const perMm = Math.min(',
  ),
  inPieces(
    'stave-outline.ts',
    'faces of the drawing swapped',
    "face === 'outer' ? ()",
    "face === 'inner' ? ()",
  ),
  inPieces(
    'stave-stations.ts',
    'groove station from the outer face',
    'const z = wall.sectionAt(height, wall.thickness);',
    'const z = height;',
  ),
  inVessel(
    'ring.ts',
    'a set closes at the sum of widths over pi',
    'sum + Math.atan(width / diameter)',
    'sum + width / diameter',
  ),
  // groove and head
  inVessel(
    'groove.ts',
    'inset from the wrong end',
    'inside.endPlane - towardsEnd * inset',
    'towardsEnd * inset - inside.endPlane',
  ),
  inVessel(
    'groove.ts',
    'howel left out',
    'inside.roundRadius(height) + howel.depth',
    'inside.roundRadius(height)',
  ),
  inVessel('inside.ts', 'corners of flat staves forgotten', '1 / Math.cos(ring.widestAlpha)', '1'),
  inVessel(
    'head.ts',
    'land as deep as the groove in its middle',
    'groove.lipDepth + landBeyondGroove',
    'spec.croze.depth + landBeyondGroove',
  ),
  inVessel(
    'head.ts',
    'clearance taken off the radius',
    '2 * groove.radius - spec.clearance',
    '2 * (groove.radius - spec.clearance)',
  ),
  inVessel(
    'boards.ts',
    "a board's chord at its wrong edge",
    'Math.min(Math.abs(from), Math.abs(to))',
    'Math.max(Math.abs(from), Math.abs(to))',
  ),
  inVessel(
    'boards.ts',
    'bores judged at the joint only',
    'halfChord(inset(bevel), boreEnd)',
    'halfChord(inset(bevel), y)',
  ),
  // hoops and capacity
  inVessel(
    'hoop.ts',
    'hoop cut to the larger girth',
    'Math.min(place.nearRadius, place.farRadius)',
    'Math.max(place.nearRadius, place.farRadius)',
  ),
  inCapacity(
    'volume.ts',
    'capacity to the outside faces',
    'from: bottom.insideFace, to: top ? top.insideFace',
    'from: bottom.outsideFace, to: top ? top.outsideFace',
  ),
  inCapacity(
    'volume.ts',
    'a circle for the polygon of flat staves',
    'flat ? vessel.ring.sumOfTangents : Math.PI',
    'flat ? Math.PI : Math.PI',
  ),
  inCapacity(
    'dip.ts',
    'lying dip from the circle, not the lowest corner',
    '[-radius * section.below, radius',
    '[-radius, radius',
  ),
  // the rack: closing, planing, reading
  inRack(
    'closing.ts',
    'a backed width taken for a flat one',
    "measured === 'blank' ? Math.atan(width / diameter)",
    "measured !== 'never' ? Math.atan(width / diameter)",
  ),
  inRack(
    'closing.ts',
    'the width at an angle by the sine',
    "(measured === 'blank' ? Math.tan(angle) : Math.sin(angle))",
    'Math.sin(angle)',
  ),
  inRack(
    'planing.ts',
    'the bung stave planed',
    'if (index === job.keep || off[index] !== 0) continue;',
    'if (off[index] !== 0) continue;',
  ),
  inRack(
    'planing.ts',
    'planing rounded down',
    'Math.ceil(depth / PLANE_STEP - 1e-9)',
    'Math.floor(depth / PLANE_STEP - 1e-9)',
  ),
  inRack(
    'grid-walk.ts',
    'what is beside the steps taken from neighbours alone',
    'this.least = Math.min(alike, apart);',
    'this.least = alike;',
  ),
  inRack(
    'grid-walk.ts',
    'what is beside the steps taken from both ends alone',
    'this.most = Math.max(alike, apart);',
    'this.most = apart;',
  ),
  inRack(
    'kind-bungs.ts',
    'a bung stave that the rack need not have',
    '({ bung }) => (bung === c ? 1 : 0)',
    '() => 0',
  ),
  inRack(
    'kinds.ts',
    'a bung stave counted twice among the others',
    'reachOf(grid, count - 1, total - grid.steps[k]!)',
    'reachOf(grid, count, total)',
  ),
  inRack(
    'union-grid.ts',
    'distances from the middle always two steps apart',
    'step: isOnGrid ? 2 * grid.step : grid.step',
    'step: 2 * grid.step',
  ),
  inRack(
    'stray-bound.ts',
    'what a set strays told from the greatest cosine where it is too large',
    'off > 0 ? this.cosine2.least : this.cosine2.most',
    'this.cosine2.most',
  ),
  inRack(
    'grid-partings.ts',
    'all bung staves taken by the first of two sets',
    'Math.min(count, first.staves - this.bungs)',
    'Math.min(count, first.staves)',
  ),
  inRack('stock.ts', 'a unit mistaken wherever three staves are', 'MISTAKEN.share * all', '0'),
  inRack(
    'least-deviation.ts',
    'backed staves as steep as staves all alike',
    "if (measured === 'blank') return diameter * count",
    "if (measured !== 'never') return diameter * count",
  ),
  inRack(
    'least-deviation.ts',
    'flat staves as steep as the narrowest and widest',
    "if (measured === 'blank') return diameter * count",
    "if (measured === 'never') return diameter * count",
  ),
  inRack(
    'step.ts',
    'reading errors added up, not their squares',
    'Math.sqrt(count)) / Math.PI',
    'count) / Math.PI',
  ),
  inRack(
    'verify.ts',
    'a stave used twice goes unseen',
    '\n      if (seen.has(mark)) flaws.push',
    '\n      if (false) flaws.push',
  ),
  inRack(
    'verify.ts',
    'planing over the limit goes unseen',
    'planed > plane + SLACK',
    'planed > 10 * plane + SLACK',
  ),
  inSets('swap.ts', 'a swapped stave planed past the limit', 'Math.min(wanted, plane)', 'wanted'),
  inSets(
    'swap.ts',
    'a spare taken that does not close however it is planed',
    'if (planed === null || Math.abs(planed - diameter) > tolerance) return null;',
    'if (planed === null) return null;',
  ),
  inSets(
    'swap.ts',
    'a short spare taken',
    'spare.length < length) return false;',
    'spare.length < 0) return false;',
  ),
  inSets(
    'running-totals.ts',
    'the running total of staves before planing',
    'total += width - planeOff',
    'total += width',
  ),
  // the page: what is typed, what is kept, where things stand
  inPage(
    'state/read-length.ts',
    'a bare number of inches taken for millimetres',
    "factor ?? (units === 'in' ? 25.4 : 1)",
    'factor ?? 1',
  ),
  inPage(
    'state/edit-spec.ts',
    'an emptied group left in the spec',
    'if (!isMap(node) || node.items.length > 0) break;',
    'break;',
  ),
  inPage(
    'state/convert-units.ts',
    'lengths exchanged from the front, which moves the rest',
    'b.start - a.start',
    'a.start - b.start',
  ),
  inPage(
    'state/history.ts',
    'undo forgets what was undone before',
    'future: [present, ...future]',
    'future: [present]',
  ),
  inPage('vessel/layout.ts', 'boxes on top of one another', 'ys[i - 1]! + step', 'ys[i - 1]!'),
  inPage(
    'view3d/mesh/bung-hole.ts',
    'the diameter of the bung for its radius',
    'spec.bung.diameter / 2',
    'spec.bung.diameter',
  ),
  inPage(
    'view3d/mesh/hoop-mesh.ts',
    'the upper end of a lap within the lower one',
    'azimuth, lift: 1 }',
    'azimuth, lift: 0 }',
  ),
  inPage(
    'view3d/apart.ts',
    'hoops taken off through one another',
    'spec.offset > own.spec.offset',
    'spec.offset < own.spec.offset',
  ),
  inPage(
    'rack/typed-widths.ts',
    'a line that is no width passed over',
    'if (problem) return { widths: [], wrong: { text: line.trim(), problem } };',
    'if (problem) continue;',
  ),
  // files: the font in a PDF, and what is there already
  inWriters(
    'pdf-face.ts',
    'glyphs with a gap between them in one run of widths',
    'if (glyph !== after)',
    'if (after < 0)',
  ),
  inWriters(
    'pdf-face.ts',
    'characters beyond the basic ones left out of the font',
    'if (!isBasic(character)) beyond',
    'if (isBasic(character)) beyond',
  ),
  inCli(
    'write-whole.ts',
    'what is there already written over unasked',
    "there === 'file' && !this.replace",
    "there === 'file' && this.replace",
  ),
];
