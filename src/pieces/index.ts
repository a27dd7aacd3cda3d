/** The list of pieces: what can be drawn of a vessel, in the order in which it is shown. To add one, add a line. */
import type { Drawing } from '../drawing/drawing.js';
import { typesetDrawing } from '../drawing/typeset.js';
import { asWritten } from '../language.js';
import type { Vessel } from '../vessel/vessel.js';
import { backingGauge } from './backing-gauge.js';
import { bilgeSweep } from './bilge-sweep.js';
import { chimeGauges } from './chime-gauge.js';
import { crozeGauges } from './croze-gauge.js';
import { hollowingGauge } from './hollowing-gauge.js';
import { jointGauge } from './joint-gauge.js';
import { listingJig } from './listing-jig.js';
import { compassCards } from './compass-card.js';
import { dipRods } from './dip-rod.js';
import { dowelJigs } from './dowel-jig.js';
import { endGauge } from './end-gauge.js';
import { headEdges } from './head-edge.js';
import { headBoards } from './head-boards.js';
import { headRouters, type RouterOptions } from './head-router.js';
import { heads } from './head.js';
import { hoopSheets } from './hoop-sheet.js';
import { hoops } from './hoops.js';
import { raising } from './raising.js';
import { section } from './section.js';
import { sectionHeads } from './section-head.js';
import { splayGauge } from './splay-gauge.js';
import { mixedStaves, stave } from './stave.js';
import { backedStave } from './stave-backed.js';
import { staveFan } from './stave-fan.js';
import type { Words } from './words/index.js';

export interface PieceOptions {
  readonly words: Words;
  /** widths of the stave fan, mm; 60 to 110 unless given */
  readonly fan?: { readonly from: number; readonly to: number };
  /** what the boards of a head are cut from */
  readonly router?: RouterOptions;
}

export interface Piece {
  readonly name: string;
  /** one line for the list of pieces */
  readonly about: string;
  /** drawn only when it is asked for by name */
  readonly onRequest?: true;
  /** no drawing, one, or several where the vessel has several of it */
  readonly draw: (vessel: Vessel, options: PieceOptions) => readonly Drawing[];
}

export const pieces: readonly Piece[] = [
  {
    name: 'stave',
    about: 'the flat stave, both faces, with bevels and end cuts',
    draw: (v, o) => [stave(v, o.words)],
  },
  {
    name: 'stave-each',
    about: 'each stave of a mixed set: stave-01, stave-02 ...',
    draw: (v, o) => mixedStaves(v, o.words),
  },
  {
    name: 'stave-backed',
    about: 'the stave’s outline measured round the backed face',
    onRequest: true,
    draw: (v, o) => [backedStave(v, o.words)],
  },
  {
    name: 'stave-fan',
    about: 'nested outlines for staves of uneven width',
    draw: (v, o) => [staveFan(v, o.words, o.fan)],
  },
  {
    name: 'head',
    about: 'the head with its boards, bevels and dowels',
    draw: (v, o) => heads(v, o.words),
  },
  {
    name: 'head-board',
    about: 'each board of the head: head-board-1 ...',
    draw: (v, o) => headBoards(v, o.words),
  },
  {
    name: 'head-edge',
    about: 'section of the head’s rim in its groove',
    draw: (v, o) => headEdges(v, o.words),
  },
  {
    name: 'end-gauge',
    about: 'joint bevels and end cuts, to set a bevel gauge by',
    draw: (v, o) => [endGauge(v, o.words)],
  },
  {
    name: 'hoops',
    about:
      'every strap with its lap, rivet holes and driving; steel to buy; raising and truss hoops',
    draw: (v, o) => hoops(v, o.words),
  },
  {
    name: 'hoop-sheet',
    about: 'hoops as ring sectors to cut from sheet: hoop-sheet-1 ...',
    draw: (v, o) => hoopSheets(v, o.words),
  },
  {
    name: 'splay-gauge',
    about: 'how far the long edge of each strap is hammered, and the slope of the riveted hoop',
    draw: (v, o) => splayGauge(v, o.words),
  },
  {
    name: 'joint-gauge',
    about: 'the joint bevel for every stave width, held on the outer face',
    draw: (v, o) => [jointGauge(v, o.words, o.fan)],
  },
  {
    name: 'backing-gauge',
    about: 'templates for rounding the outer face',
    draw: (v, o) => backingGauge(v, o.words),
  },
  {
    name: 'hollowing-gauge',
    about: 'templates for hollowing the inner face',
    draw: (v, o) => hollowingGauge(v, o.words),
  },
  {
    name: 'bilge-sweep',
    about: 'the long profile outside and inside, to check the bend; hoops, groove and howel',
    draw: (v, o) => [bilgeSweep(v, o.words)],
  },
  {
    name: 'listing-jig',
    about: 'fences for sawing a tub’s tapered staves (a cask’s edges are curved: use its stave)',
    draw: (v, o) => listingJig(v, o.words, o.fan),
  },
  {
    name: 'croze-gauge',
    about: 'groove and howel: distance, width and depth, held on the stave end',
    draw: (v, o) => crozeGauges(v, o.words),
  },
  {
    name: 'chime-gauge',
    about: 'the chime’s flat and bevel, held on the stave end',
    draw: (v, o) => chimeGauges(v, o.words),
  },
  {
    name: 'dowel-jig',
    about: 'a drilling guide for the dowels of all joints of a head',
    draw: (v, o) => dowelJigs(v, o.words),
  },
  {
    name: 'compass-card',
    about: 'a scale to set a compass by, for six steps round the groove',
    draw: (v, o) => compassCards(v, o.words),
  },
  {
    name: 'dip-rod',
    about: 'rods marked in litres and gallons, lying and standing',
    draw: (v, o) => dipRods(v, o.words),
  },
  {
    name: 'section',
    about: 'the whole vessel to a scale, cut and from outside, with its parts; a plan of the head',
    draw: (v, o) => [section(v, o.words), ...sectionHeads(v, o.words)],
  },
  {
    name: 'raising',
    about:
      'the ring before bending, to a scale: girths in the raising hoop and of the splayed ends',
    draw: (v, o) => [raising(v, o.words)],
  },
  {
    name: 'head-router',
    about: 'all boards of a head nested on a plank or sheet for a router: head-router-1 ...',
    draw: (v, o) => headRouters(v, o.words, o.router),
  },
];

/** Draws the pieces that are named, or all but those on request. Names that no piece has are ignored: check them first. */
export function drawPieces(
  vessel: Vessel,
  options: PieceOptions,
  names?: readonly string[],
): Drawing[] {
  return [...eachDrawing(vessel, options, names)];
}

/** The same one after the other, each piece when it is asked for. */
export function* eachDrawing(
  vessel: Vessel,
  options: PieceOptions,
  names?: readonly string[],
): Generator<Drawing> {
  const wanted = names
    ? pieces.filter((piece) => names.includes(piece.name))
    : pieces.filter((piece) => !piece.onRequest);
  const subject = vessel.spec.title;
  const { typeset } = options.words;
  for (const piece of wanted)
    for (const each of piece.draw(vessel, options))
      yield { ...(typeset === asWritten ? each : typesetDrawing(each, typeset)), subject };
}
