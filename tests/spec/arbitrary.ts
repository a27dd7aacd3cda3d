/** Random spec texts, most of them sound, and random damage to them. */
import fc from 'fast-check';
import { stringify } from 'yaml';

const length = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((x) => Number(x.toFixed(2)));

interface Sizes {
  readonly units: 'mm' | 'in';
  readonly scale: number;
}

const sizes: fc.Arbitrary<Sizes> = fc.record({
  units: fc.constantFrom('mm' as const, 'in' as const),
  scale: fc.double({ min: 0.3, max: 2, noNaN: true }),
});

/** Lengths of a wine cask times a factor, in either units, inches now and then as fractions. */
function written({ units, scale }: Sizes, mm: number, stretch: number): number | string {
  const length = mm * scale * stretch;
  if (units === 'mm') return Number(length.toFixed(2));
  const parts = Math.max(1, Math.round((length / 25.4) * 16));
  const whole = Math.floor(parts / 16);
  return parts % 16 === 0 ? whole : `${whole > 0 ? `${whole} ` : ''}${parts % 16}/16`;
}

const stretch = fc.double({ min: 0.9, max: 1.1, noNaN: true });

export const anySpecText: fc.Arbitrary<string> = fc
  .tuple(
    sizes,
    fc.boolean(),
    stretch,
    stretch,
    fc.integer({ min: 6, max: 80 }),
    fc.string({ unit: 'grapheme', maxLength: 30 }),
  )
  .chain(([size, isTub, tall, wide, count, title]) => {
    const at = (mm: number, by = 1): number | string => written(size, mm, by);
    const required = {
      vessel: isTub ? 'tub' : 'cask',
      title,
      units: size.units,
      height: at(945, tall),
      ...(isTub
        ? { top: at(678, wide), bottom: at(600) }
        : { bilge: at(678, wide), ends: at(560) }),
    };
    return optional(at, count).map((rest) =>
      stringify({ ...required, ...rest }, { aliasDuplicateObjects: false }),
    );
  });

function optional(at: (mm: number) => number | string, count: number) {
  const maybe = { requiredKeys: [] };
  const head = fc.record(
    {
      thickness: fc.constant(at(25)),
      boards: fc.integer({ min: 1, max: 12 }),
      clearance: length(-1, 1),
      croze: fc.record({ inset: fc.constant(at(57)), depth: fc.constant(at(4.5)) }, maybe),
      dowels: fc.record({ spacing: fc.constant(at(120)), margin: fc.constant(at(20)) }, maybe),
    },
    maybe,
  );
  const hoop = fc.record(
    {
      name: fc.constantFrom('chime', 'quarter', 'bilge', 'Nr. 4', 'é'),
      end: fc.constantFrom('both', 'top', 'bottom'),
      offset: fc.constantFrom(at(3), at(105), at(255)),
      width: fc.constantFrom(at(32), at(40)),
      lap: fc.constant(at(66)),
    },
    { requiredKeys: ['name', 'offset', 'width'] },
  );
  const staves = fc.record(
    {
      count: fc.constant(count),
      thickness: fc.constant(at(26)),
      inside: fc.constantFrom('hollowed', 'flat'),
      outside: fc.constantFrom('rounded', 'flat'),
      neutral: length(0.3, 1),
      ends: fc.constantFrom('overlong', 'cut'),
    },
    { requiredKeys: ['count'] },
  );
  return fc.record(
    {
      staves,
      chime: fc.record({ bevelDegrees: length(20, 60), flat: fc.constant(at(9)) }, maybe),
      heads: fc.oneof(head, fc.record({ bottom: head })),
      hoops: fc.uniqueArray(hoop, { maxLength: 4, selector: ({ name }) => name }),
      bung: fc.oneof(fc.constant('none'), fc.record({ diameter: fc.constant(at(45)) })),
      sheet: fc.record(
        { owner: fc.string({ maxLength: 20 }), date: fc.constant('2026-01-05') },
        maybe,
      ),
    },
    { requiredKeys: ['staves'] },
  );
}

const shards = [
  '\t',
  '\n',
  '  ',
  ': ',
  '- ',
  '{',
  '}',
  '[',
  ']',
  '"',
  "'",
  '#',
  '&a ',
  '*a',
  '!x ',
  '<<: ',
  '? ',
  '|\n',
  '>',
  '%',
  '---\n',
  '...\n',
  '\0',
  '\u202e',
  '\ufffd',
  '\ufeff',
  '\r',
  '.nan',
  '.inf',
  '1e999',
  '-1',
  'null',
  'true',
  '37 3/8',
  '__proto__: 1\n',
  'top: 3\n',
  'é',
  '\ud800',
];

/** Cuts, doubles, swaps and shards put in, some tens at most. */
export function damaged(text: string, hits: readonly [number, number, string][]): string {
  return hits.reduce((old, [where, kind, shard]) => {
    const at = Math.floor(where * (old.length + 1));
    const end = Math.min(old.length, at + (kind % 12));
    if (kind < 12) return old.slice(0, at) + old.slice(end);
    if (kind < 24) return old.slice(0, end) + old.slice(at);
    return old.slice(0, at) + shard + old.slice(kind < 36 ? end : at);
  }, text);
}

export const anyHits: fc.Arbitrary<[number, number, string][]> = fc.array(
  fc.tuple(
    fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }),
    fc.integer({ min: 0, max: 47 }),
    fc.oneof(fc.constantFrom(...shards), fc.string({ unit: 'binary', maxLength: 6 })),
  ),
  { minLength: 1, maxLength: 12 },
);

/** Values that no key expects. */
export const anyValue: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(
    null,
    true,
    '',
    ' ',
    'x',
    '1/0',
    '37 3/8',
    0,
    -1,
    1e308,
    NaN,
    Infinity,
    [],
    {},
    [[]],
    { a: 1 },
    '2026-01-05',
  ),
  fc.double(),
  fc.string({ unit: 'binary', maxLength: 20 }),
  fc.anything({
    maxDepth: 2,
    withNullPrototype: false,
    values: [fc.double(), fc.string(), fc.boolean()],
  }),
);
