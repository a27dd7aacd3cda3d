/** Against integer programming software, which solves linear programmes too. */
import highs from 'highs';
import { expect, it } from 'vitest';
import { seeded } from '../../src/rack/random.js';
import { mostGain, type LinearProgramme } from '../../src/rack/simplex.js';
import { sum } from '../../src/rack/sum.js';

/** The package's types don't say that its default export is called. */
const createHighs = highs as unknown as () => Promise<{
  solve(model: string): { Status: string; ObjectiveValue: number };
}>;

/** Every thing takes some of the last limit, so that the gain is limited. */
function programme(seed: number): LinearProgramme {
  const random = seeded(seed);
  const [things, limits] = [3 + random.below(6), 2 + random.below(5)];
  const some = (): number => random.below(9) - 3;
  return {
    gain: Array.from({ length: things }, some),
    takes: [
      ...Array.from({ length: limits }, () => Array.from({ length: things }, some)),
      new Array<number>(things).fill(1),
    ],
    limits: [...Array.from({ length: limits }, () => random.below(3) * 5), 20],
  };
}

function modelOf({ gain, takes, limits }: LinearProgramme): string {
  const terms = (row: readonly number[]): string =>
    row.map((by, k) => `${by < 0 ? '-' : '+'} ${Math.abs(by)} x${k}`).join(' ');
  const rows = takes.map((row, i) => ` r${i}: ${terms(row)} <= ${limits[i]}`);
  return `Maximize\n gain: ${terms(gain)}\nSubject To\n${rows.join('\n')}\nEnd`;
}

it('gains what a solver gains, within the limits, and its prices say that no more can be gained', async () => {
  const solver = await createHighs();
  for (let seed = 1; seed <= 60; seed++) {
    const asked = programme(seed);
    const { amounts, prices } = mostGain(asked);
    const gained = sum(amounts.map((amount, k) => amount * asked.gain[k]!));
    expect(gained).toBeCloseTo(solver.solve(modelOf(asked)).ObjectiveValue, 6);
    for (const [i, row] of asked.takes.entries())
      expect(sum(row.map((by, k) => by * amounts[k]!))).toBeLessThan(asked.limits[i]! + 1e-7);
    expect(Math.min(...amounts)).toBeGreaterThan(-1e-7);
    expect(sum(prices.map((price, i) => price * asked.limits[i]!))).toBeCloseTo(gained, 6);
  }
});
