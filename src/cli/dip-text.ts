/** Dip tables as text, CSV and JSON. */
import { shortLengthText, type DipTable, type Spec } from '../index.js';
import { columns } from './columns.js';
import { settled } from './figures-json.js';
import { oneLine } from './say.js';
import type { CliWords } from './words.js';

const litresPerGallon = 3.785411784;

export function dipText(
  { posture, rows }: DipTable,
  { title, units }: Spec,
  { dip: say, typeset }: CliWords,
): string {
  const gallons = units === 'in';
  const number = (value: number, decimals: number): string => typeset(value.toFixed(decimals));
  const table = rows.map(({ dip, litres, oldRule, oldRuleError }) => [
    typeset(shortLengthText(dip, units)),
    number(litres, 1),
    ...(gallons ? [number(litres / litresPerGallon, 2)] : []),
    oldRule === null ? '-' : number(oldRule, 1),
    oldRuleError === null ? '-' : `${oldRuleError < 0 ? '' : '+'}${number(oldRuleError, 1)}`,
  ]);
  const headings = [...say.headings(units), ...(gallons ? [say.gallons] : []), ...say.oldRule];
  return [
    oneLine(title),
    `${say.postures[posture]}\n`,
    columns([headings, ...table], { indent: '  ' }),
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
