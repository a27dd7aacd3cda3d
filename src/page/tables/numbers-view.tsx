/** The numbers that a cooper works by: staves, heads, hoops, masses. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { figuresOf, type Figures } from '../../index.js';
import { vessel } from '../state/store.js';
import { lengthWords, numberText, words } from '../words/index.js';
import { PlainTable } from './plain-table.js';

export const figures = computed<Figures | null>(() => vessel.value && figuresOf(vessel.value));

export function NumbersView(): JSX.Element {
  if (!figures.value) return <p>{words.value.vessel.outOfDate}</p>;
  return (
    <>
      <StaveTable {...figures.value} />
      <StationTable {...figures.value} />
      <HeadTable {...figures.value} />
      <HoopTable {...figures.value} />
    </>
  );
}

const degrees = (value: number): string => `${numberText(value, 2)}°`;

function StaveTable({ stave, capacityLitres, recessLitres, masses, laidWidth }: Figures) {
  const { numbers } = words.value;
  const rows: [string, string][] = [
    [numbers.capacity, `${numberText(capacityLitres, 2)} l`],
    [numbers.recess, `${numberText(recessLitres, 2)} l`],
    [numbers.empty, `${numberText(masses.empty, 1)} kg`],
    [numbers.full, `${numberText(masses.fullWithWater, 0)} kg`],
    [numbers.count, String(stave.count)],
    [numbers.blank, lengthWords(stave.blankThickness)],
    [numbers.outerLength, lengthWords(stave.outerLength)],
    [numbers.innerLength, lengthWords(stave.innerLength)],
    [numbers.bilgeWidth, lengthWords(stave.bilgeWidth)],
    [numbers.laidWidth, lengthWords(laidWidth)],
    [numbers.endCut, `${degrees(stave.endCutDegrees.top)}, ${degrees(stave.endCutDegrees.bottom)}`],
    [numbers.gap, lengthWords(stave.fixedBevelGap, 2)],
    [numbers.stretch, `${numberText(stave.outerStretchPercent, 2)} %`],
  ];
  return <PlainTable title={numbers.whole} rows={rows} />;
}

function StationTable({ stave }: Figures): JSX.Element {
  const { numbers } = words.value;
  const rows = stave.stations.map(({ s, width, bevelDegrees, thickness }) => [
    lengthWords(s),
    lengthWords(width),
    degrees(bevelDegrees),
    lengthWords(thickness),
  ]);
  return <PlainTable title={numbers.stations} headings={numbers.stationHeadings} rows={rows} />;
}

function HeadTable({ heads }: Figures): JSX.Element {
  const { numbers } = words.value;
  const rows = (['top', 'bottom'] as const).flatMap((end) => {
    const head = heads[end];
    if (!head) return [];
    const { diameter, crozeRadius, chimeOpening } = head;
    return [
      [numbers.ends[end], ...[diameter, crozeRadius, chimeOpening].map((mm) => lengthWords(mm))],
    ];
  });
  return <PlainTable title={numbers.heads} headings={numbers.headHeadings} rows={rows} />;
}

function HoopTable({ hoops }: Figures): JSX.Element {
  const { numbers } = words.value;
  const rows = hoops.map(({ name, end, cutLength, nearGirth, farGirth, splay }) => [
    `${words.value.hoops.name(name)}, ${numbers.ends[end]}`,
    ...[cutLength, nearGirth, farGirth, splay].map((mm) => lengthWords(mm)),
  ]);
  return <PlainTable title={numbers.hoops} headings={numbers.hoopHeadings} rows={rows} />;
}
