/** What the page says when there are fewer sets than wanted. */
import { expect, it } from 'vitest';
import { matchStaves, planVessel, readStock, requestFor, writeSpec } from '../../../src/index.js';
import type { Chosen } from '../../../src/page/rack/chosen.js';
import { shortfallText } from '../../../src/page/rack/shortfall-text.js';
import { rack as rackWords } from '../../../src/page/words/rack.en.js';
import { bucket } from '../../cli/workshop.js';

async function choose(widths: readonly number[], wishes: Chosen['wishes']): Promise<Chosen> {
  const list = ['mark,width', ...widths.map((width, i) => `B${i + 1},${width}`)].join('\n');
  const { vessel } = planVessel(bucket, '');
  const result = await matchStaves(readStock(list, 'mm').stock!, requestFor(vessel!, wishes!));
  const { spec } = vessel!;
  return {
    spec: writeSpec(spec),
    title: spec.title,
    measured: 'blank',
    wanted: 1,
    result,
    wishes,
    setUp: [],
  };
}

const inMm = (mm: number): string => `${mm.toFixed(1)} mm`;
const widths = Array.from({ length: 20 }, (_, i) => 52 + ((i * 7) % 15));

it('names the width that none has where the rack has no stave for the bung', async () => {
  const chosen = await choose(widths, { vessels: 1, bung: 90 });
  expect(chosen.result.shortfall?.reason).toBe('noBung');
  expect(shortfallText(chosen, rackWords, inMm)).toContain(
    'none that may be the bung stave is at least 90.0 mm wide.',
  );
});

it('names the girth that is missing, and what would help', async () => {
  const chosen = await choose(widths.slice(0, 8), { vessels: 1 });
  const { shortfall, help } = chosen.result;
  expect(shortfall?.reason).toBe('wood');
  const text = shortfallText(chosen, rackWords, inMm);
  expect(text).toContain(`${shortfall!.girthMissing.toFixed(1)} mm`);
  expect(help).not.toBeNull();
  expect(text).toContain(`${help!.fromWidth.toFixed(1)} mm`);
});
