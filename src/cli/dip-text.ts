/** Dip tables as text, CSV and JSON. */
import { shortLengthText, type DipTable, type Spec } from '../index.js';
import { columns } from './columns.js';
import { settled } from './figures-json.js';
import { oneLine } from './say.js';

const litresPerGallon = 3.785411784;

const heads: Record<DipTable['posture'], string> = {
  lying: 'lying, bung up; depth at the bilge, on a rod through the bung',
  standing: 'standing; depth above the inside face of the bottom',
};

export function dipText({ posture, rows }: DipTable, { title, units }: Spec): string {
  const gallons = units === 'in';
  const table = rows.map(({ dip, litres, oldRule, oldRuleError }) => [
    shortLengthText(dip, units),
    litres.toFixed(1),
    ...(gallons ? [(litres / litresPerGallon).toFixed(2)] : []),
    oldRule === null ? '-' : oldRule.toFixed(1),
    oldRuleError === null ? '-' : `${oldRuleError < 0 ? '' : '+'}${oldRuleError.toFixed(1)}`,
  ]);
  const headings = [`dip ${units}`, 'litres', ...(gallons ? ['US gallons'] : [])];
  return [
    oneLine(title),
    `${heads[posture]}\n`,
    columns([[...headings, 'old rule, l', 'its error, l'], ...table], { indent: '  ' }),
  ].join('');
}

export function dipCsv({ rows }: DipTable, { units }: Spec): string {
  const cell = (value: number | null): string => (value === null ? '' : value.toFixed(3));
  const lines = rows.map(({ dip, litres, oldRule, oldRuleError }) =>
    [
      units === 'mm' ? String(settled('', dip)) : (dip / 25.4).toFixed(4),
      cell(litres),
      cell(oldRule),
      cell(oldRuleError),
    ].join(','),
  );
  const headings = `dip_${units},litres,old_rule_litres,old_rule_error_litres`;
  return [headings, ...lines].map((line) => `${line}\r\n`).join('');
}

/** Depths in mm. */
export function dipJson({ posture, rows }: DipTable): string {
  return `${JSON.stringify({ posture, rows }, settled, 2)}\n`;
}
