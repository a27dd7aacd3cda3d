/** What the sheet of hoops says in words and in its tables. */
import type { Legend, Table } from '../drawing/drawing.js';
import { angleText, lengthText, shortLengthText } from '../drawing/length-text.js';
import { drivingShare, drivingTravel, splayPer100 } from '../vessel/hoop.js';
import { holePlay, rivetsOf } from '../vessel/rivets.js';
import { hoopMass, strapsOf, strapsToBuy, strapWaste, type Strap } from '../vessel/strap.js';
import type { Vessel } from '../vessel/vessel.js';
import { workingHoopsOf } from '../vessel/working-hoops.js';
import { massText, massUnits } from './mass-text.js';
import type { Words } from './words/index.js';

export function hoopsLegend(vessel: Vessel, words: Words): Legend {
  const straps = strapsOf(vessel.hoops);
  return {
    notes: notesOf(vessel, words),
    tables: [
      girthTable(straps, vessel, words),
      strapTable(straps, vessel, words),
      buyTable(vessel, words),
      workingTable(vessel, words),
    ],
  };
}

function notesOf({ hoops, spec }: Vessel, words: Words): string[] {
  const { notes } = words.hoops;
  const small = (mm: number): string =>
    `${shortLengthText(mm, spec.units)} ${words.unitNames[spec.units]}`;
  const percent = (share: number): string => String(Number((100 * share).toFixed(1)));
  const sloped = hoops.some(({ splay }) => splay > 0);
  const level = hoops.some(({ splay }) => splay === 0);
  return [
    notes.measured,
    ...(sloped ? [notes.splay, notes.driving(percent(drivingShare), small(drivingTravel))] : []),
    ...(level ? [notes.plain] : []),
    notes.pairs,
    notes.rivets(small(holePlay)),
    notes.waste(percent(strapWaste)),
    notes.working,
    notes.steel,
  ];
}

function girthTable(straps: readonly Strap[], { spec }: Vessel, words: Words): Table {
  const { title, headings } = words.hoops.tables.girths;
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  const rows = straps.flatMap(({ number, hoops }) =>
    hoops.map((hoop) => [
      String(number),
      words.hoopName(hoop.spec.name),
      words.ends[hoop.end],
      text(hoop.nearGirth),
      text(hoop.farGirth),
      angleText(Math.abs(hoop.slope)),
      text(hoop.splay),
      splayPer100(hoop).toFixed(2),
    ]),
  );
  return { title, headings: headings(words.unitNames[spec.units]), rows };
}

function strapTable(straps: readonly Strap[], { spec }: Vessel, words: Words): Table {
  const { straps: table, rivets, noRivets } = words.hoops.tables;
  const text = (mm: number): string => shortLengthText(mm, spec.units);
  const rows = straps.map(({ number, hoop, hoops }) => {
    const { width, thickness, lap } = hoop.spec;
    const { count, diameter, places } = rivetsOf(hoop.spec, spec.units);
    return [
      String(number),
      String(hoops.length),
      lengthText(hoop.cutLength, spec.units),
      `${text(width)} × ${text(thickness)}`,
      text(lap),
      text(hoop.driving),
      count > 0 ? rivets(count, text(diameter)) : noRivets,
      places.map(text).join(', '),
      massText(hoopMass(hoop), spec.units),
    ];
  });
  const headings = table.headings(words.unitNames[spec.units], massUnits[spec.units]);
  return { title: table.title, headings, rows };
}

function buyTable({ hoops, spec }: Vessel, words: Words): Table {
  const { title, headings } = words.hoops.tables.buy;
  const text = (mm: number): string => shortLengthText(mm, spec.units, 0);
  const exact = (mm: number): string => shortLengthText(mm, spec.units);
  const rows = strapsToBuy(hoops).map(({ width, thickness, pieces, cutLength, length, mass }) => [
    `${exact(width)} × ${exact(thickness)}`,
    String(pieces),
    text(cutLength),
    text(length),
    massText(mass, spec.units),
  ]);
  return { title, headings: headings(words.unitNames[spec.units], massUnits[spec.units]), rows };
}

function workingTable(vessel: Vessel, words: Words): Table {
  const { units } = vessel.spec;
  const { kinds, tables } = words.hoops;
  const text = (mm: number): string => shortLengthText(mm, units);
  const rows = workingHoopsOf(vessel).map(({ place, offset, girth, flatGirth, insideDiameter }) => [
    kinds[place],
    text(offset),
    lengthText(girth, units),
    text(flatGirth),
    text(insideDiameter),
  ]);
  const { title, headings } = tables.working;
  return { title, headings: headings(words.unitNames[units]), rows };
}
