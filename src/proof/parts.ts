/** Which files the patterns of a vessel lie in, which of them must be there, and how long each piece is. */
import type { End } from '../spec/spec.js';
import { strapsOf } from '../vessel/strap.js';
import { sheetHoopOf } from '../vessel/hoop-sheet.js';
import type { Vessel } from '../vessel/vessel.js';

export type PartKind = 'stave' | 'stave-each' | 'head' | 'board' | 'edge' | 'hoops' | 'sheet';

export interface Part {
  readonly file: string;
  readonly kind: PartKind;
  /** from 1: of a stave in the ring, a board, a strap; 0 where there is but one */
  readonly number: number;
  /** of a head, its boards and its edge: the ends that it serves */
  readonly ends: readonly End[];
  /** without it nothing can be said of the vessel */
  readonly needed: boolean;
  /** greatest extent of its outline, to tell a wrong scale; null where it is not known beforehand */
  readonly extent: number | null;
}

const part = (file: string, kind: PartKind, more: Partial<Part> = {}): Part => ({
  file: `${file}.dxf`,
  kind,
  number: 0,
  ends: [],
  needed: false,
  extent: null,
  ...more,
});

export function partsOf(vessel: Vessel): Part[] {
  const extent = vessel.spec.height;
  const mixed = vessel.spec.staves.widths !== null;
  const each = mixed ? vessel.staves : [];
  return [
    part('stave', 'stave', { needed: !mixed, extent }),
    ...each.map((_, i) =>
      part(`stave-${String(i + 1).padStart(2, '0')}`, 'stave-each', {
        number: i + 1,
        needed: true,
        extent,
      }),
    ),
    ...headParts(vessel),
    ...hoopParts(vessel),
  ];
}

function headParts(vessel: Vessel): Part[] {
  return headStems(vessel).flatMap(({ stem, ends }) => {
    const head = vessel.heads[ends[0]!]!;
    const boards = head.boards.map(({ chord }, i) =>
      part(`${stem}-board-${i + 1}`, 'board', { number: i + 1, ends, extent: chord }),
    );
    return [
      part(stem, 'head', { ends, needed: true, extent: head.diameter }),
      ...boards,
      // the section shows one end
      part(`${stem}-edge`, 'edge', { ends: ends.slice(0, 1) }),
    ];
  });
}

/** One pattern serves two heads alike. */
function headStems({ heads, spec }: Vessel): { stem: string; ends: readonly End[] }[] {
  if (!heads.top) return [{ stem: 'head', ends: ['bottom'] }];
  const alike =
    JSON.stringify(spec.heads.top) === JSON.stringify(spec.heads.bottom) &&
    Math.abs(heads.top.diameter - heads.bottom.diameter) < 1e-9;
  if (alike) return [{ stem: 'head', ends: ['top', 'bottom'] }];
  return [
    { stem: 'head-top', ends: ['top'] },
    { stem: 'head-bottom', ends: ['bottom'] },
  ];
}

function hoopParts({ hoops }: Vessel): Part[] {
  if (hoops.length === 0) return [];
  const straps = strapsOf(hoops);
  const longest = Math.max(...straps.map(({ hoop }) => hoop.cutLength));
  return [
    part('hoops', 'hoops', { extent: longest }),
    ...straps
      .filter(({ hoop }) => sheetHoopOf(hoop) !== null)
      .map(({ number }) => part(`hoop-sheet-${number}`, 'sheet', { number })),
  ];
}
