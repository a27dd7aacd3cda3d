/** A small seeded generator: the same seed gives the same answer on every machine. */

export interface Random {
  /** at least 0, below 1 */
  unit(): number;
  /** a whole number at least 0, below `limit` */
  below(limit: number): number;
}

/** A Weyl sequence through a 32-bit avalanche mixer; good enough to choose moves, not for secrets. */
export function seeded(seed: number): Random {
  let state = seed >>> 0;
  const unit = (): number => {
    state = (state + 0x9e3779b9) >>> 0;
    let x = state;
    x = Math.imul(x ^ (x >>> 16), 0x21f0aaad);
    x = Math.imul(x ^ (x >>> 15), 0x735a2d97);
    return ((x ^ (x >>> 15)) >>> 0) / 2 ** 32;
  };
  return { unit, below: (limit) => Math.floor(unit() * limit) };
}
