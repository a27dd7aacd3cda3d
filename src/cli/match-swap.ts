/** `match --swap`: what takes the place of one broken stave. */
import { measuredWidths, shortLengthText, swapStave } from '../index.js';
import type { MatchRequest, RingStave, Spec, Stock, Swap, Vessel } from '../index.js';
import { columns } from './columns.js';
import { exitCode, type ExitCode } from './exit-code.js';
import { settled } from './figures-json.js';
import type { Io } from './io.js';
import { swapFaults } from './match-faults.js';
import type { MatchOptions } from './match-options.js';
import type { MatchWords } from './match-words.js';
import { refuse } from './refuse.js';
import { oneLine } from './say.js';

interface Ring {
  readonly staves: readonly RingStave[];
  /** staves of the list that stand in it */
  readonly taken: ReadonlySet<string>;
}

export function swap(
  { vessel, stock, request }: { vessel: Vessel; stock: Stock; request: MatchRequest },
  options: MatchOptions & { readonly swap: string },
  words: MatchWords,
  io: Io,
): ExitCode {
  const ring = ringOf(vessel, stock, request);
  const broken = ring?.staves.findIndex(({ mark }) => mark === options.swap.trim()) ?? -1;
  if (!ring || broken < 0)
    return refuse(ring ? swapFaults.unknown(options.swap) : swapFaults.noRing, io);
  const spares = stock.staves.filter(({ mark }) => !ring.taken.has(mark));
  const found = swapStave({ ring: ring.staves, broken, spares, request });
  if (!found) return refuse(swapFaults.open, io);
  io.out(options.json ? swapJson(vessel.spec, found) : swapText(vessel.spec, ring, found, words));
  return found.replacements.length > 0 ? exitCode.done : exitCode.no;
}

/** The staves that stand, or else those of a mixed set's spec, which go by their numbers; null when there are neither. */
function ringOf({ spec, ring }: Vessel, stock: Stock, request: MatchRequest): Ring | null {
  const { standing, measured } = request;
  if (standing) {
    const known = new Map(stock.staves.map((stave) => [stave.mark, stave.width]));
    const staves = standing.map((mark) => ({ mark, width: known.get(mark)! }));
    return { staves, taken: new Set(standing) };
  }
  const { widths } = spec.staves;
  if (!widths) return null;
  const asMeasured = measuredWidths(widths, ring.closesAt, measured);
  const staves = asMeasured.map((width, i) => ({ mark: String(i + 1), width }));
  return { staves, taken: new Set() };
}

/** As `--json` gives it: lengths in mm; `schemas/swap.schema.json` describes it. */
export interface SwapFile extends Swap {
  readonly version: 1;
  readonly title: string;
}

function swapJson({ title }: Spec, found: Swap): string {
  const file: SwapFile = { version: 1, title, ...found };
  return `${JSON.stringify(file, settled, 2)}\n`;
}

function swapText({ title, units }: Spec, ring: Ring, found: Swap, words: MatchWords): string {
  const { swap: say, typeset } = words;
  const bare = (mm: number, decimals = 1): string => typeset(shortLengthText(mm, units, decimals));
  const text = (mm: number, decimals = 1): string => `${bare(mm, decimals)} ${units}`;
  const { broken, place, diameter, cut, replacements } = found;
  const rows = replacements.map(({ mark, width, planeOff, closesAt }) => [
    oneLine(mark).trimEnd(),
    bare(width),
    planeOff > 0 ? bare(planeOff, 2) : '-',
    bare(closesAt, 2),
  ]);
  const lines = [
    title,
    say.broken(broken.mark, place, ring.staves.length, text(broken.width)),
    say.closes(text(diameter, 2)),
    ...(found.isBungStave ? [say.bungStave] : []),
  ];
  const table = rows.length > 0 ? columns([say.headings(units), ...rows]) : oneLine(say.none);
  const widths = say.cut(text(cut.width), text(cut.from), text(cut.to));
  return `${lines.map(oneLine).join('')}\n${table}\n${oneLine(widths)}`;
}
