/** A spec in the other units is the same vessel. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { capacityLitres, planVessel, writeSpec } from '../../../src/index.js';
import { inOtherUnits } from '../../../src/page/state/convert-units.js';

const templates = fileURLToPath(new URL('../../../templates', import.meta.url));

describe.each(readdirSync(templates).filter((name) => name.endsWith('.yaml')))('%s', (name) => {
  const written = writeSpec(
    planVessel(readFileSync(join(templates, name), 'utf8'), name).vessel!.spec,
  );
  const before = planVessel(written, name).vessel!;

  it('holds the same in the other units, and there and back', () => {
    const { units } = before.spec;
    const other = inOtherUnits(written, units)!;
    const there = planVessel(other, name);
    expect(there.messages.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(there.vessel!.spec.units).not.toBe(units);
    expect(capacityLitres(there.vessel!)).toBeCloseTo(capacityLitres(before), 3);
    const back = planVessel(inOtherUnits(other, there.vessel!.spec.units)!, name).vessel!;
    expect(back.spec.height).toBeCloseTo(before.spec.height, 2);
    expect(back.spec.staves.count).toBe(before.spec.staves.count);
    expect(back.spec.chime).toMatchObject({ bevel: before.spec.chime.bevel });
  });
});

it('leaves names, counts, shares and comments alone', () => {
  const text =
    'units: mm # 10\nheight: 254 # tall\ntitle: 100\nstaves: { count: 28, neutral: 0.5 }\n';
  expect(inOtherUnits(text, 'mm')).toBe(
    'units: in # 10\nheight: 10 # tall\ntitle: 100\nstaves: { count: 28, neutral: 0.5 }\n',
  );
});

it('writes inches as fractions where they are', () => {
  expect(inOtherUnits('units: mm\nheight: 949.325\n', 'mm')).toBe('units: in\nheight: 37 3/8\n');
  expect(inOtherUnits('units: in\nheight: 37 3/8\n', 'in')).toBe('units: mm\nheight: 949.325\n');
});
