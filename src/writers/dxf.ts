/**
 * A drawing as a DXF file, R2000 (AC1015), 1 unit = 1 mm: its lines and lettering, nothing else.
 * Group codes after Autodesk's DXF reference; what a file must have after the notes of the ezdxf project
 * ("Minimal DXF content", R13 and later).
 */
import { drawingBounds } from '../drawing/bounds.js';
import type { Drawing } from '../drawing/drawing.js';
import type { Bounds } from '../geometry/measure.js';
import type { LetteringStyle } from './dxf-entities.js';
import { entities } from './dxf-entities.js';
import type { View } from './dxf-tables.js';
import { spaces, tableTags, textStyle, viewOf } from './dxf-tables.js';
import type { Tag } from './dxf-tags.js';
import { Handles, section, tagsToText } from './dxf-tags.js';
import { formatNumber } from './number.js';

export type { LetteringStyle } from './dxf-entities.js';

const millimetres = 4;
const metric = 1;

/**
 * The file's text, 7-bit, lines ended by LF. The same drawing gives the same text. Curves go out as
 * polylines with bulges, each as one entity; the legend does not go out. Throws for numbers that are not
 * finite.
 */
export function toDxf(drawing: Drawing, style: LetteringStyle = { letteringAs: 'text' }): string {
  const bounds = boundsOrNothing(drawing);
  const { text, space, handlesGiven } = (start ??= startOf());
  const handles = new Handles(handlesGiven);
  const body = [
    text(viewOf(bounds)),
    section('ENTITIES', entities(drawing, style, handles, space)),
    section('OBJECTS', tagsToText(objects(handles))),
    tagsToText([[0, 'EOF']]),
  ];
  // last, when it is known which handle is free
  const head = section('HEADER', tagsToText(header(bounds, handles.seed)));
  return [head, ...body].join('');
}

/** Classes, tables and blocks: the same in every file but for what is seen of it, and so written once. */
interface Start {
  readonly text: (view: View) => string;
  /** the handle of the space that entities stand in */
  readonly space: string;
  readonly handlesGiven: number;
}

let start: Start | undefined;

function startOf(): Start {
  const handles = new Handles();
  const gap: View = { x: '<x>', y: '<y>', height: '<height>' };
  const tables = tableTags(handles, gap);
  const written = [
    section('CLASSES', ''),
    section('TABLES', tagsToText(tables.tags)),
    section('BLOCKS', tagsToText(blocks(handles, tables.spaceHandles))),
  ].join('');
  const [before, betweenXAndY, betweenYAndHeight, after] = written.split(/<x>|<y>|<height>/);
  return {
    text: ({ x, y, height }) =>
      [before, x, betweenXAndY, y, betweenYAndHeight, height, after].join(''),
    space: tables.spaceHandles[0],
    handlesGiven: handles.count,
  };
}

function boundsOrNothing(drawing: Drawing): Bounds {
  const isEmpty =
    drawing.letterings.length === 0 &&
    drawing.strokes.every(({ curve }) => curve.vertices.length === 0);
  return isEmpty ? { minX: 0, minY: 0, maxX: 0, maxY: 0 } : drawingBounds(drawing);
}

function header({ minX, minY, maxX, maxY }: Bounds, handleSeed: string): Tag[] {
  const flat = (x: number, y: number): Tag[] => [
    [10, formatNumber(x)],
    [20, formatNumber(y)],
  ];
  const variables: Record<string, Tag[]> = {
    $ACADVER: [[1, 'AC1015']],
    $DWGCODEPAGE: [[3, 'ANSI_1252']],
    $INSBASE: [...flat(0, 0), [30, 0]],
    $EXTMIN: [...flat(minX, minY), [30, 0]],
    $EXTMAX: [...flat(maxX, maxY), [30, 0]],
    $LIMMIN: flat(minX, minY),
    $LIMMAX: flat(maxX, maxY),
    $LTSCALE: [[40, 1]],
    $TEXTSTYLE: [[7, textStyle]],
    $CLAYER: [[8, '0']],
    $LUNITS: [[70, 2]],
    $LUPREC: [[70, 4]],
    $HANDSEED: [[5, handleSeed]],
    $MEASUREMENT: [[70, metric]],
    $LWDISPLAY: [[290, 1]],
    $INSUNITS: [[70, millimetres]],
  };
  return Object.entries(variables).flatMap(([name, tags]): Tag[] => [[9, name], ...tags]);
}

/** The two spaces as blocks; what they hold stands in the entities. */
function blocks(handles: Handles, owners: readonly string[]): Tag[] {
  return spaces.flatMap((name, i): Tag[] => {
    const common: Tag[] = [
      [330, owners[i]!],
      [100, 'AcDbEntity'],
      ...(i === 1 ? ([[67, 1]] as const) : []),
      [8, '0'],
    ];
    return [
      [0, 'BLOCK'],
      [5, handles.next()],
      ...common,
      [100, 'AcDbBlockBegin'],
      [2, name],
      [70, 0],
      [10, 0],
      [20, 0],
      [30, 0],
      [3, name],
      [1, ''],
      [0, 'ENDBLK'],
      [5, handles.next()],
      ...common,
      [100, 'AcDbBlockEnd'],
    ];
  });
}

/** The root dictionary and the one dictionary that it must hold. */
function objects(handles: Handles): Tag[] {
  const [root, groups] = [handles.next(), handles.next()];
  const dictionary = (handle: string, owner: string, content: readonly Tag[]): Tag[] => [
    [0, 'DICTIONARY'],
    [5, handle],
    [330, owner],
    [100, 'AcDbDictionary'],
    [281, 1],
    ...content,
  ];
  return [
    ...dictionary(root, '0', [
      [3, 'ACAD_GROUP'],
      [350, groups],
    ]),
    ...dictionary(groups, root, []),
  ];
}
