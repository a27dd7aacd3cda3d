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
 * The simplex method on a full table, with Bland's rule (R. G. Bland, New finite pivoting rules for the simplex method,
 * Mathematics of Operations Research 2, 1977), which can't go round in circles. The gain must be limited.
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
  for (let turn = 0; turn < MOST_EXCHANGES; turn++) {
    const enters = profit.findIndex((value, k) => k < width - 1 && value > TINY);
    if (enters < 0) break;
    const leaves = tightest(table, basis, enters);
    if (leaves < 0) break;
    pivot(table, profit, leaves, enters);
    basis[leaves] = enters;
  }
  const amounts = gain.map(() => 0);
  for (const [i, thing] of basis.entries())
    if (thing < things) amounts[thing] = table[i]![width - 1]!;
  return { amounts, prices: limits.map((_, i) => Math.max(0, -profit[things + i]!)) };
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
