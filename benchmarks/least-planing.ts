/** The least planing that closes one set, by integer programming: a reference that shares nothing with ours. */
import highs from 'highs';

/** The package's types don't say that its default export is called. */
const createHighs = highs as unknown as () => Promise<{
  solve(model: string, options: object): { Status: string; ObjectiveValue: number };
}>;

export interface PlaningQuestion {
  readonly widths: readonly number[];
  readonly diameter: number;
  readonly tolerance: number;
  readonly count: number;
}

/**
 * In radians of half-angle above pi at the largest diameter allowed; null when no choice of staves is wide enough. The
 * fewer, the less is planed: one stave takes it all.
 */
export async function leastExcess(question: PlaningQuestion): Promise<number | null> {
  const { widths, diameter, tolerance, count } = question;
  const highs = await createHighs();
  const terms = (at: number): string =>
    widths.map((w, i) => `${Math.atan(w / at).toFixed(12)} x${i}`).join(' + ');
  const model = `Minimize
 excess: e
Subject To
 count: ${widths.map((_, i) => `x${i}`).join(' + ')} = ${count}
 wide: ${terms(diameter - tolerance)} >= ${Math.PI.toFixed(12)}
 over: ${terms(diameter + tolerance)} - e <= ${Math.PI.toFixed(12)}
Bounds
 e >= 0
Binary
 ${widths.map((_, i) => `x${i}`).join(' ')}
End`;
  const exactly = { mip_rel_gap: 0, mip_abs_gap: 1e-10, mip_feasibility_tolerance: 1e-10 };
  const { Status, ObjectiveValue } = highs.solve(model, exactly);
  return Status === 'Optimal' ? ObjectiveValue : null;
}
