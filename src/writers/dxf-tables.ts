/** The tables of a DXF: line types, layers, and what every R2000 file must have beside them. */
import type { LayerName } from '../drawing/layers.js';
import { dashPattern, layerNames, layerStyles } from '../drawing/layers.js';
import type { Bounds } from '../geometry/measure.js';
import type { Handles, Tag } from './dxf-tags.js';
import { formatNumber } from './number.js';

/** The colour that every program shows black on white and white on black. */
const blackOrWhite = 7;
const defaultLineWeight = -3;

export const textStyle = 'Standard';
export const spaces = ['*Model_Space', '*Paper_Space'] as const;

/** A table's entry: its name, its own subclass marker and what follows. */
interface Entry {
  readonly marker: string;
  readonly name: string;
  readonly tags: readonly Tag[];
}

/** What stands in their section, and the handles of the two spaces in which entities and blocks live. */
export function tableTags(handles: Handles, view: View) {
  const spaceHandles = spaces.map(() => handles.next()) as [string, string];
  const tables = [
    table(handles, 'VPORT', [viewport(view)]),
    table(handles, 'LTYPE', lineTypes()),
    table(handles, 'LAYER', layers()),
    table(handles, 'STYLE', [style()]),
    table(handles, 'VIEW', []),
    table(handles, 'UCS', []),
    table(handles, 'APPID', [entry('AcDbRegAppTableRecord', 'ACAD', [[70, 0]])]),
    table(handles, 'DIMSTYLE', [entry('AcDbDimStyleTableRecord', 'Standard', [[70, 0]])]),
    table(
      handles,
      'BLOCK_RECORD',
      spaces.map((name) => entry('AcDbBlockTableRecord', name, [])),
      spaceHandles,
    ),
  ];
  return { tags: tables.flat(), spaceHandles };
}

function entry(marker: string, name: string, tags: readonly Tag[]): Entry {
  return { marker, name, tags };
}

function table(
  handles: Handles,
  name: string,
  entries: readonly Entry[],
  given: readonly string[] = [],
): Tag[] {
  const owner = handles.next();
  const isDimensionStyle = name === 'DIMSTYLE';
  const records = entries.flatMap((record, i): Tag[] => [
    [0, name],
    [isDimensionStyle ? 105 : 5, given[i] ?? handles.next()],
    [330, owner],
    [100, 'AcDbSymbolTableRecord'],
    [100, record.marker],
    [2, record.name],
    ...record.tags,
  ]);
  return [
    [0, 'TABLE'],
    [2, name],
    [5, owner],
    [330, 0],
    [100, 'AcDbSymbolTable'],
    [70, entries.length],
    ...(isDimensionStyle ? ([[100, 'AcDbDimStyleTable']] as const) : []),
    ...records,
    [0, 'ENDTAB'],
  ];
}

/** What of a file is seen when it is opened: the middle and the height, as they are written. */
export interface View {
  readonly x: string;
  readonly y: string;
  readonly height: string;
}

const aspect = 1.5;

/** Shows the whole drawing, with a little air round it. */
export function viewOf({ minX, minY, maxX, maxY }: Bounds): View {
  const height = 1.1 * Math.max(maxY - minY, (maxX - minX) / aspect, 1);
  return {
    x: formatNumber((minX + maxX) / 2),
    y: formatNumber((minY + maxY) / 2),
    height: formatNumber(height),
  };
}

function viewport({ x, y, height }: View): Entry {
  return entry('AcDbViewportTableRecord', '*Active', [
    [70, 0],
    ...pair(10, 0, 0),
    ...pair(11, 1, 1),
    [12, x],
    [22, y],
    ...pair(13, 0, 0),
    ...pair(14, 10, 10),
    ...pair(15, 10, 10),
    ...pair(16, 0, 0),
    [36, 1],
    ...pair(17, 0, 0),
    [37, 0],
    [40, height],
    [41, aspect],
    [42, 50],
    [43, 0],
    [44, 0],
    [50, 0],
    [51, 0],
    [71, 0],
    [72, 1000],
    [73, 1],
    [74, 3],
    [75, 0],
    [76, 0],
    [77, 0],
    [78, 0],
  ]);
}

function pair(code: number, x: number, y: number): Tag[] {
  return [
    [code, formatNumber(x)],
    [code + 10, formatNumber(y)],
  ];
}

function lineTypes(): Entry[] {
  const dashed = layerNames.filter((layer) => dashesOf(layer).length > 0);
  const unique = new Map(dashed.map((layer) => [lineTypeOf(layer), layer]));
  return [
    ...['ByBlock', 'ByLayer', 'Continuous'].map((name) => lineType(name, '', [])),
    ...[...unique].map(([name, layer]) =>
      lineType(name, layerStyles[layer].lineType, dashesOf(layer)),
    ),
  ];
}

function lineType(name: string, description: string, dashes: readonly number[]): Entry {
  const period = dashes.reduce((sum, dash) => sum + dash, 0);
  return entry('AcDbLinetypeTableRecord', name, [
    [70, 0],
    [3, description],
    [72, 65],
    [73, dashes.length],
    [40, formatNumber(period)],
    ...dashes.flatMap((dash, i): Tag[] => [
      [49, formatNumber(i % 2 === 0 ? dash : -dash)],
      [74, 0],
    ]),
  ]);
}

/** Marks and gaps by turns, mm: the pattern is in widths of the layer's line. */
function dashesOf(layer: LayerName): number[] {
  const { lineType: type, width } = layerStyles[layer];
  return dashPattern[type].map((dash) => dash * width);
}

/** One for each pattern and width: `dashed-025` has the dashes of a line of 0.25 mm. */
export function lineTypeOf(layer: LayerName): string {
  const { lineType: type, width } = layerStyles[layer];
  return type === 'continuous' ? 'Continuous' : `${type}-${hundredths(width).padStart(3, '0')}`;
}

function hundredths(width: number): string {
  return String(Math.round(width * 100));
}

function layers(): Entry[] {
  return [
    layerEntry('0', 'Continuous', defaultLineWeight),
    ...layerNames.map((name) =>
      layerEntry(name, lineTypeOf(name), hundredths(layerStyles[name].width)),
    ),
  ];
}

function layerEntry(name: string, type: string, lineWeight: string | number): Entry {
  return entry('AcDbLayerTableRecord', name, [
    [70, 0],
    [62, blackOrWhite],
    [6, type],
    [370, lineWeight],
  ]);
}

/** The font our lettering was measured with; a program without it takes another of its own. */
function style(): Entry {
  return entry('AcDbTextStyleTableRecord', textStyle, [
    [70, 0],
    [40, 0],
    [41, 1],
    [50, 0],
    [71, 0],
    [42, 2.5],
    [3, 'DejaVuSans.ttf'],
    [4, ''],
  ]);
}
