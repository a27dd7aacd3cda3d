/** Running a search under the caller's hooks. */
import { describe, expect, it } from 'vitest';
import { Driver } from '../../src/rack/drive.js';
import type { MatchHooks, MatchProgress } from '../../src/rack/request.js';

function* counting(to: number): Generator<number, string> {
  for (let n = 1; n <= to; n++) yield n;
  return 'done';
}

const shown = (done: number): MatchProgress => ({ stage: 'choosing', done, of: 1000 });

function driverWith(hooks: MatchHooks) {
  const told: number[] = [];
  const driver = new Driver({ ...hooks, onProgress: ({ done }) => told.push(done) });
  return { driver, told };
}

describe('the driver', () => {
  it('runs to the end and gives the result, and where the search stood last', async () => {
    const { driver } = driverWith({});
    expect(await driver.run(counting(5), shown)).toEqual({ result: 'done', state: 5 });
    expect(await driver.run(counting(0), shown)).toEqual({ result: 'done', state: null });
    expect(driver.stopped).toBe(false);
  });

  it('breathes every so many steps when there is no clock', async () => {
    const { driver, told } = driverWith({});
    await driver.run(counting(1000), shown);
    expect(told).toEqual([256, 512, 768]);
  });

  it('breathes by the clock when there is one, first of all at once', async () => {
    let time = 0;
    // a hundredth of a second a step: a breath every fifth
    const { driver, told } = driverWith({ now: () => (time += 0.010_001) });
    await driver.run(counting(16), shown);
    expect(told).toEqual([1, 6, 11, 16]);
  });

  it('asks whether to stop only after it has breathed, so that a signal can come in', async () => {
    const order: string[] = [];
    const driver = new Driver({
      breathe: async () => {
        await Promise.resolve();
        order.push('breathe');
      },
      shouldStop: () => {
        order.push('stop?');
        return order.length >= 4;
      },
    });
    const { result, state } = await driver.run(counting(10_000), shown);
    expect({ result, state }).toEqual({ result: null, state: 512 });
    expect(order).toEqual(['breathe', 'stop?', 'breathe', 'stop?']);
  });

  it('stays stopped: what runs later ends at its first breath', async () => {
    let asked = 0;
    const { driver } = driverWith({ shouldStop: () => ++asked === 1 });
    await driver.run(counting(300), shown);
    expect(driver.stopped).toBe(true);
    // 256 steps were counted when it stopped: the next breath is due after 256 more
    expect(await driver.run(counting(1000), shown)).toEqual({ result: null, state: 256 });
    expect(driver.stopped).toBe(true);
  });
});
