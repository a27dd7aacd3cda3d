/** Writes a spec as YAML with every key in it. What is written reads back as the same spec. */
import { Document, isScalar, visit } from 'yaml';
import { degreesOf, writtenLength } from './length.js';
import type { HeadSpec, HoopSpec, Spec, StaveSpec } from './spec.js';

type Length = (mm: number) => number | string;

export function writeSpec(spec: Spec): string {
  const document = new Document(keysOf(spec));
  layOut(document);
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
}

/** Every key of a spec as the file has it: groups, lists, words, numbers, and lengths in the spec's own units. */
export function keysOf(spec: Spec): Record<string, unknown> {
  const { vessel, title, units, height, outside, chime, howel, heads, hoops, bung, sheet } = spec;
  const length: Length = (mm) => writtenLength(mm, units);
  const sizes =
    outside.kind === 'cask'
      ? { bilge: length(outside.bilge), ends: length(outside.ends), profile: outside.profile }
      : { top: length(outside.top), bottom: length(outside.bottom) };
  return {
    vessel,
    title,
    units,
    height: length(height),
    ...sizes,
    staves: stavesOf(spec.staves, length),
    chime: { bevelDegrees: degreesOf(chime.bevel), flat: length(chime.flat) },
    howel: { depth: length(howel.depth), beyondGroove: length(howel.beyondGroove) },
    heads: headsOf(heads, length),
    hoops: hoops.map((hoop) => hoopOf(hoop, length)),
    bung: bung ? { diameter: length(bung.diameter) } : 'none',
    sheet: { ...sheet },
  };
}

function stavesOf(staves: StaveSpec, length: Length) {
  const { count, widths, inside, outside, neutral, ends } = staves;
  return {
    ...(widths ? { widths: widths.map(length) } : { count }),
    thickness: length(staves.thickness),
    endThickness: length(staves.endThickness),
    inside,
    outside,
    neutral,
    ends,
    trim: length(staves.trim),
  };
}

/** Two heads alike are written once. */
function headsOf({ top, bottom }: Spec['heads'], length: Length): Record<string, unknown> {
  const low = headOf(bottom, length);
  const high = top && headOf(top, length);
  if (!high || JSON.stringify(high) === JSON.stringify(low)) return low;
  return { top: high, bottom: low };
}

function headOf(head: HeadSpec, length: Length): Record<string, unknown> {
  const { boards, widths } = head;
  return {
    thickness: length(head.thickness),
    ...(widths ? { widths: widths.map(length) } : { boards }),
    clearance: length(head.clearance),
    crossGrain: length(head.crossGrain),
    croze: lengths(head.croze, length),
    edge: lengths(head.edge, length),
    dowels: lengths(head.dowels, length),
  };
}

const hoopOf = ({ name, end, ...sizes }: HoopSpec, length: Length) => ({
  name,
  end,
  ...lengths(sizes, length),
});

const lengths = (sizes: Readonly<Record<string, number>>, length: Length) =>
  Object.fromEntries(Object.entries(sizes).map(([key, mm]) => [key, length(mm)]));

/** Groups and lists that hold nothing but plain values go on one line, as a cooper would write them. */
function layOut(document: Document): void {
  const plain = (value: unknown): boolean => isScalar(value);
  visit(document, {
    Map(_, map) {
      const short = map.items.length < 7 && map.items.every(({ value }) => plain(value));
      if (short && map !== document.contents) map.flow = true;
    },
    Seq(_, seq) {
      if (seq.items.length === 0 || seq.items.every(plain)) seq.flow = true;
    },
  });
}
