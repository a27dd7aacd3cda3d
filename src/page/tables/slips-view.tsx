/** What small errors of the bench do to the vessel. */
import type { JSX } from 'preact';
import { lengthText } from '../../index.js';
import { units } from '../state/store.js';
import { lengthWords, numberText, words } from '../words/index.js';
import { figures } from './numbers-view.js';
import { PlainTable } from './plain-table.js';

export function SlipsView(): JSX.Element {
  const { slips, vessel } = words.value;
  if (!figures.value) return <p>{vessel.outOfDate}</p>;
  const rows = figures.value.sensitivity.map((slip) => {
    const size = slip.slip.startsWith('bevels')
      ? `${numberText(slip.amount, 1)}°`
      : lengthWords(slip.amount, 1);
    const opens =
      slip.opensAt === null ? '0' : slips.opens(lengthWords(slip.jointGap, 2), slip.opensAt);
    const changes = [slip.diameter, slip.girth, slip.headClearance].map(signed);
    return [slips.names[slip.slip](size), opens, ...changes, signedNumber(slip.litres)];
  });
  return (
    <>
      <p>{slips.about}</p>
      <PlainTable title={slips.title} headings={slips.headings} rows={rows} />
    </>
  );
}

function signed(mm: number): string {
  const text = lengthWords(mm, 2);
  return Number(lengthText(mm, units.value, 2).split(' ')[0]) > 0 ? `+${text}` : text;
}

function signedNumber(value: number): string {
  const text = numberText(value, 2);
  return value >= 0.005 ? `+${text}` : text;
}
