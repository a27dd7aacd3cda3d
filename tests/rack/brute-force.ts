/** The best answer by trying every choice of staves: for racks of up to about 14. Shares nothing with the search. */
import type { MatchRequest } from '../../src/rack/request.js';
import type { Stock } from '../../src/rack/stock.js';

export interface BruteAnswer {
  readonly sets: number;
  /** of all sets, mm */
  readonly planing: number;
  /** whole hundredths of a millimetre, of all sets */
  readonly deviation: number;
  readonly spread: number;
  readonly rest: number;
}

interface Ring {
  readonly members: number;
  readonly count: number;
  readonly planing: number;
  readonly deviation: number;
}

const turned = (widths: readonly number[], diameter: number): number =>
  widths.reduce((sum, w) => sum + Math.atan2(w, diameter), 0);

/** The diameter by halving an interval. */
function diameterOf(widths: readonly number[]): number {
  let [low, high] = [1, 10_000];
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2;
    if (turned(widths, middle) > Math.PI) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/**
 * The ring with one stave planed, that which takes the least, found by halving, so that it closes at `diameter`; as in
 * practice in whole hundredths, unless the limit comes first. Only for rings where one stave takes it all.
 */
function planed(
  widths: readonly number[],
  { diameter, keep, limit }: { diameter: number; keep: number; limit: number },
): { planing: number; closes: number } | null {
  let best = { depth: Infinity, at: -1 };
  for (const [i, width] of widths.entries()) {
    if (i === keep) continue;
    let [low, high] = [0, width / 3];
    if (turned(widths.with(i, width - high), diameter) > Math.PI) continue;
    for (let k = 0; k < 60; k++) {
      const middle = (low + high) / 2;
      if (turned(widths.with(i, width - middle), diameter) > Math.PI) low = middle;
      else high = middle;
    }
    if (high < best.depth) best = { depth: high, at: i };
  }
  if (best.depth > limit + 1e-9) return null;
  const planing = Math.min(Math.ceil(best.depth * 100 - 1e-6) / 100, limit);
  return { planing, closes: diameterOf(widths.with(best.at, widths[best.at]! - planing)) };
}

/** Rings this near to the tolerance, mm, are looked at closely. */
const CLOSER = 1e-3;

/** All rings, as sets of bits. Blank widths; no standing staves. */
function rings({ staves }: Stock, request: MatchRequest): Ring[] {
  const { diameter, tolerance, plane, count, bung } = request;
  const found: Ring[] = [];
  for (let members = 1; members < 2 ** staves.length; members++) {
    const chosen = staves.filter((_, i) => (members >> i) & 1);
    if (chosen.length < count.min || chosen.length > count.max) continue;
    const bungs = chosen.filter((s) => bung !== null && s.bung !== false && s.width >= bung);
    if (bung !== null && bungs.length === 0) continue;
    const widths = chosen.map((s) => s.width);
    // far too small, or too large where nothing may be planed: not worth a closer look
    if (turned(widths, diameter - tolerance - CLOSER) < Math.PI) continue;
    if (plane === 0 && turned(widths, diameter + tolerance + CLOSER) > Math.PI) continue;
    const widest = Math.max(...bungs.map((s) => s.width));
    const keep = bung === null ? -1 : widths.indexOf(widest);
    let [planing, closes] = [0, diameterOf(widths)];
    if (closes > diameter + tolerance + 1e-9) {
      const job = { diameter: diameter + tolerance, keep, limit: plane };
      const result = planed(widths, job);
      if (!result) continue;
      ({ planing, closes } = result);
    }
    if (closes < diameter - tolerance - 1e-9) continue;
    found.push({ members, count: chosen.length, planing, deviation: Math.abs(closes - diameter) });
  }
  return found;
}

/** The best by the aims, one after the other, of up to `request.vessels` sets. Null when none closes. */
export function bruteForce(stock: Stock, request: MatchRequest): BruteAnswer | null {
  const all = rings(stock, request);
  const most = request.vessels === 'max' ? Infinity : request.vessels;
  const middle =
    (Math.min(...stock.staves.map((s) => s.width)) +
      Math.max(...stock.staves.map((s) => s.width))) /
    2;
  let best: BruteAnswer | null = null;
  const weigh = (chosen: readonly Ring[]): void => {
    const used = chosen.reduce((bits, ring) => bits | ring.members, 0);
    const left = stock.staves.filter((_, i) => !((used >> i) & 1));
    const counts = chosen.map((ring) => ring.count);
    const off = left.reduce((sum, s) => sum + Math.abs(s.width - middle), 0);
    const answer = {
      sets: chosen.length,
      planing: chosen.reduce((sum, ring) => sum + ring.planing, 0),
      deviation: Math.floor(chosen.reduce((sum, ring) => sum + ring.deviation, 0) * 100 + 1e-7),
      spread: Math.max(...counts) - Math.min(...counts),
      rest: left.length === 0 ? 0 : off / left.length,
    };
    if (!best || isBetter(answer, best)) best = answer;
  };
  const add = (chosen: readonly Ring[], used: number, from: number): void => {
    if (chosen.length > 0) weigh(chosen);
    if (chosen.length === most) return;
    for (let i = from; i < all.length; i++)
      if ((all[i]!.members & used) === 0) add([...chosen, all[i]!], used | all[i]!.members, i + 1);
  };
  add([], 0, 0);
  return best;
}

function isBetter(a: BruteAnswer, b: BruteAnswer): boolean {
  if (a.sets !== b.sets) return a.sets > b.sets;
  for (const aim of ['planing', 'deviation', 'spread', 'rest'] as const)
    if (Math.abs(a[aim] - b[aim]) > 1e-6) return a[aim] < b[aim];
  return false;
}
