/** A small linear programme: the most gain from amounts that keep to limits. For some dozen rows and columns. */

export interface LinearProgramme {
  /** of one of each thing */
  readonly gain: readonly number[];
  /** by limit: what one of each thing takes of it */
  readonly takes: readonly (readonly number[])[];
  /** none negative, so that nothing at all is allowed */
  readonly limits: readonly number[];
}

export interface LinearAnswer {
  /** of each thing */
  readonly amounts: readonly number[];
  /** of each limit: what a little more of it would gain */
  readonly prices: readonly number[];
}

/** Smaller than this is rounding. */
const TINY = 1e-9;
/** Exchanges that are given at most; the answer stays within the limits when they end. */
const MOST_EXCHANGES = 5000;

/**
 * The simplex method on a full table. What gains most by one enters first; when that hasn't helped for a while, Bland's rule
 * is kept (R. G. Bland, New finite pivoting rules for the simplex method, Mathematics of Operations Research 2, 1977),
 * which can't go round in circles, until it has. The gain must be limited.
 */
export function mostGain({ gain, takes, limits }: LinearProgramme): LinearAnswer {
  const things = gain.length;
  const width = things + limits.length + 1;
  const table = takes.map((row, i) => {
    const line = new Float64Array(width);
    line.set(row);
    line[things + i] = 1;
    line[width - 1] = limits[i]!;
    return line;
  });
  const profit = new Float64Array(width);
  profit.set(gain);
  const basis = limits.map((_, i) => things + i);
  let [gained, idle] = [0, 0];
  for (let turn = 0; turn < MOST_EXCHANGES; turn++) {
    const enters = idle < PATIENCE ? mostProfitable(profit) : firstProfitable(profit);
    if (enters < 0) break;
    const leaves = tightest(table, basis, enters);
    if (leaves < 0) break;
    pivot(table, profit, leaves, enters);
    basis[leaves] = enters;
    const now = -profit[width - 1]!;
    idle = now > gained + TINY ? 0 : idle + 1;
    gained = Math.max(gained, now);
  }
  const amounts = gain.map(() => 0);
  for (const [i, thing] of basis.entries())
    if (thing < things) amounts[thing] = table[i]![width - 1]!;
  return { amounts, prices: limits.map((_, i) => Math.max(0, -profit[things + i]!)) };
}

/** Exchanges without gain before Bland's rule is kept. */
const PATIENCE = 40;

/** -1 when none gains. The last place is what has been gained. */
function mostProfitable(profit: Float64Array): number {
  let [best, most] = [-1, TINY];
  for (let k = 0; k < profit.length - 1; k++) if (profit[k]! > most) [best, most] = [k, profit[k]!];
  return best;
}

function firstProfitable(profit: Float64Array): number {
  return profit.findIndex((value, k) => k < profit.length - 1 && value > TINY);
}

/** The row that lets the least in; of equals the one that entered with the lowest number. */
function tightest(
  table: readonly Float64Array[],
  basis: readonly number[],
  enters: number,
): number {
  let [best, least] = [-1, Infinity];
  for (const [i, row] of table.entries()) {
    if (row[enters]! <= TINY) continue;
    const ratio = row.at(-1)! / row[enters]!;
    const isEqual = Math.abs(ratio - least) <= TINY && basis[i]! < basis[best]!;
    if (ratio < least - TINY || isEqual) [best, least] = [i, ratio];
  }
  return best;
}

function pivot(
  table: readonly Float64Array[],
  profit: Float64Array,
  at: number,
  enters: number,
): void {
  const row = table[at]!;
  const by = row[enters]!;
  for (let k = 0; k < row.length; k++) row[k] = row[k]! / by;
  for (const other of [...table, profit]) {
    const times = other[enters]!;
    if (other === row || times === 0) continue;
    for (let k = 0; k < row.length; k++) other[k] = other[k]! - times * row[k]!;
    other[enters] = 0;
  }
}
