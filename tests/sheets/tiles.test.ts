import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { flatten } from '../../src/drawing/flatten.js';
import { drawingOf, strokes } from '../../src/drawing/build.js';
import type { Point } from '../../src/geometry/curve.js';
import { circle, line, polygon } from '../../src/geometry/curve.js';
import type { Bounds } from '../../src/geometry/measure.js';
import { boundsOf } from '../../src/geometry/measure.js';
import { compose, isRoomFor } from '../../src/sheets/compose.js';
import { inkOnSheet } from '../../src/sheets/ink.js';
import { framedPage, trulyPrinted } from '../../src/sheets/page.js';
import { paperSizes } from '../../src/sheets/paper.js';
import { cellOf, gridOver, markOf, overlap, windowOf } from '../../src/sheets/grid.js';
import type { Grid } from '../../src/sheets/grid.js';
import type { Laid } from '../../src/sheets/lay.js';
import { neededPlaces } from '../../src/sheets/needed.js';
import { heightOf, holds, widthOf } from '../../src/sheets/rectangle.js';
import type { Tiling } from '../../src/sheets/tile.js';
import { tileSetter, tilesOf } from '../../src/sheets/tile.js';
import { fewestTiles, placementsOf } from '../../src/sheets/tiling.js';
import { tracesOf, visitPoints } from '../../src/sheets/traces.js';
import { english } from '../../src/sheets/words.en.js';
import { big, drawings, longAndThin, round } from './synthetic.js';

const isIn = ({ minX, maxX, minY, maxY }: Bounds, { x, y }: Point) =>
  x >= minX && x <= maxX && y >= minY && y <= maxY;

const officePapers = ['a4', 'a3', 'letter', 'legal', 'tabloid'] as const;

function tilingOf(
  drawing: Drawing,
  paper: (typeof officePapers)[number],
  printed = trulyPrinted,
): Tiling {
  return fewestTiles(placementsOf(drawing), paperSizes[paper], printed, 'mm');
}

/** Points of every stroke, no more than a millimetre apart. */
function pointsOf({ laid }: Pick<Tiling, 'laid'>): Point[] {
  return laid.strokes.flatMap(({ curve }) => {
    const chain = flatten(curve, 0.001);
    return chain.slice(1).flatMap((to, i) => {
      const from = chain[i]!;
      const count = Math.ceil(Math.hypot(to.x - from.x, to.y - from.y));
      return Array.from({ length: count + 1 }, (_, k) => ({
        x: from.x + ((to.x - from.x) * k) / count,
        y: from.y + ((to.y - from.y) * k) / count,
      }));
    });
  });
}

const entry = {
  owner: '',
  number: '',
  date: '',
  title: '',
  subtitle: '',
  creator: '',
  approved: '',
  units: 'mm' as const,
  sheet: 1,
  sheets: 1,
};

describe('a grid', () => {
  const sizes = fc.record({
    width: fc.double({ min: 1, max: 3000, noNaN: true }),
    height: fc.double({ min: 1, max: 3000, noNaN: true }),
    windowWidth: fc.double({ min: 100, max: 400, noNaN: true }),
    windowHeight: fc.double({ min: 100, max: 400, noNaN: true }),
    left: fc.double({ min: 0, max: 1, noNaN: true }),
    above: fc.double({ min: 0, max: 1, noNaN: true }),
  });

  it('covers everything with windows that overlap by 10 mm, and no column or row too many', () => {
    fc.assert(
      fc.property(sizes, ({ width, height, windowWidth, windowHeight, left, above }) => {
        const bounds = { minX: -7, minY: 11, maxX: width - 7, maxY: height + 11 };
        const window = { width: windowWidth, height: windowHeight };
        const grid = gridOver(bounds, window, left, above);
        const first = windowOf(grid, { column: 0, row: 0 });
        const last = windowOf(grid, { column: grid.columns - 1, row: grid.rows - 1 });
        expect(first.minX).toBeLessThanOrEqual(bounds.minX + 1e-9);
        expect(first.maxY).toBeGreaterThanOrEqual(bounds.maxY - 1e-9);
        expect(last.maxX).toBeGreaterThanOrEqual(bounds.maxX - 1e-9);
        expect(last.minY).toBeLessThanOrEqual(bounds.minY + 1e-9);
        const span = (count: number, size: number) => count * size - (count - 1) * 10;
        expect(last.maxX - first.minX).toBeCloseTo(span(grid.columns, windowWidth), 6);
        expect(first.maxY - last.minY).toBeCloseTo(span(grid.rows, windowHeight), 6);
        if (grid.columns > 1) expect(span(grid.columns - 1, windowWidth)).toBeLessThan(width);
        if (grid.rows > 1) expect(span(grid.rows - 1, windowHeight)).toBeLessThan(height);
      }),
      { seed: 1 },
    );
  });

  it('has cells that meet edge to edge, 5 mm inside their windows', () => {
    const grid = gridOver({ minX: 0, minY: 0, maxX: 500, maxY: 300 }, { width: 190, height: 266 });
    const [a, b] = [cellOf(grid, { column: 0, row: 0 }), cellOf(grid, { column: 1, row: 0 })];
    const below = cellOf(grid, { column: 0, row: 1 });
    expect(a.maxX).toBe(b.minX);
    expect(a.minY).toBe(below.maxY);
    const window = windowOf(grid, { column: 1, row: 0 });
    expect([b.minX - window.minX, window.maxX - b.maxX]).toEqual([5, 5]);
    expect(b.maxY).toBe(window.maxY);
  });

  it('marks rows by letters and columns by numbers', () => {
    const marks = [
      [0, 0],
      [2, 1],
      [9, 25],
      [0, 26],
      [0, 27 * 26],
    ].map(([column, row]) => markOf({ column: column!, row: row! }));
    expect(marks).toEqual(['A1', 'B3', 'Z10', 'AA1', 'AAA1']);
  });
});

describe.each(Object.entries(drawings))('the tiles of %s', (name, make) => {
  it.each(officePapers)('show every point of every line on %s', (paper) => {
    for (const printed of [trulyPrinted, { across: 97, along: 103 }]) {
      const tiling = tilingOf(make(), paper, printed);
      const windows = tiling.places.map((place) => windowOf(tiling.grid, place));
      const missing = pointsOf(tiling).filter(
        (point) => !windows.some((each) => isIn(each, point)),
      );
      expect(missing).toEqual([]);
    }
  });

  it.each(['a4', 'letter', 'a3'] as const)(
    'are as few as any way of laying it needs on %s',
    (paper) => {
      const { places } = tilingOf(make(), paper);
      expect(places).toHaveLength(fewestByTrial(make(), paper));
      if (name === 'big' && paper === 'a4') expect(places.length).toBeGreaterThan(40);
    },
  );
});

/** Turned or not, paper upright or sideways, spare room shared in three ways: cells counted that hold a point. */
function fewestByTrial(drawing: Drawing, paper: (typeof officePapers)[number]): number {
  const { width, height } = paperSizes[paper];
  const windows = [
    { width: width - 20, height: height - 20 - 11 },
    { width: height - 20, height: width - 20 - 11 },
  ];
  const counts = [0, 2].flatMap((i) => {
    const { laid } = placementsOf(drawing)[i]!;
    const points = [...pointsOf({ laid }), ...tracedPoints(laid)];
    return windows.flatMap((window) =>
      [0.25, 0.5, 0.75].flatMap((left) =>
        [0.25, 0.5, 0.75].map((above) =>
          countCells(points, gridOver(laid.bounds, window, left, above)),
        ),
      ),
    );
  });
  return Math.min(...counts);
}

/** All points that count, none passed over. */
function tracedPoints(laid: Laid): Point[] {
  const traces = tracesOf(laid);
  const points: Point[] = [];
  for (let i = 0; i < traces.traced.length; i++) {
    visitPoints(traces, i, (x, y) => {
      points.push({ x, y });
      return 0;
    });
  }
  return points;
}

function countCells(points: readonly Point[], { window, corner, columns, rows }: Grid): number {
  const index = (distance: number, step: number, count: number) =>
    Math.min(count - 1, Math.max(0, Math.floor((distance - 5) / step)));
  const seen = points.map(({ x, y }) => {
    const column = index(x - corner.x, window.width - 10, columns);
    return `${column} ${index(corner.y - y, window.height - 10, rows)}`;
  });
  return new Set(seen).size;
}

describe('tiles', () => {
  it('leave out what shows nothing: the middle of a frame, the corners round a ring', () => {
    const ring = drawingOf('ring', 'Ring', strokes('outline', circle({ x: 0, y: 0 }, 900)));
    const { grid, places } = tilingOf(ring, 'a4');
    expect(places.length).toBeLessThan(grid.columns * grid.rows - 20);
    expect(places).not.toContainEqual({ column: 0, row: 0 });
  });

  it('keep a tile that only a lettering needs', () => {
    const grid = gridOver({ minX: 0, minY: 0, maxX: 400, maxY: 100 }, { width: 190, height: 266 });
    const words = { boxes: [390, 50, 390, 50], traced: [{ x: 390, y: 50 }], quarter: 0 } as const;
    const needed = neededPlaces(words, grid);
    expect(needed).toEqual([{ column: 2, row: 0 }]);
  });

  it('put the crosses of neighbours on the same points of the drawing', () => {
    const tiling = tilingOf(big(), 'a4');
    const crosses = tilesOf(tiling).map((tile) => {
      const sheet = tileSetter(tiling, entry, english)(tile, entry);
      const [dx, dy] = [
        tile.window.minX - sheet.content[0]!.window.minX,
        tile.window.minY - sheet.content[0]!.window.minY,
      ];
      const arms = sheet.furniture.strokes.filter(({ width, curve }) => {
        const size = boundsOf(curve)!;
        return width === 0.35 && size.maxX - size.minX === 0;
      });
      return arms.map(({ curve }) => {
        const { minX, minY, maxY } = boundsOf(curve)!;
        return `${(minX + dx).toFixed(6)} ${((minY + maxY) / 2 + dy).toFixed(6)}`;
      });
    });
    const places = new Map<string, number>();
    for (const place of crosses.flat()) places.set(place, (places.get(place) ?? 0) + 1);
    expect(crosses.flat().length).toBeGreaterThan(100);
    // a joint of four sheets, or of two at the rim of the grid: never a cross on one sheet alone
    const alone = [...places.values()].filter((count) => count < 2);
    expect(alone).toEqual([]);
  });

  it('name the neighbours that there are, and only those', () => {
    const tiling = tilingOf(longAndThin(), 'a4');
    const tiles = tilesOf(tiling);
    const marks = tiles.map(({ mark }) => mark);
    for (const { neighbours } of tiles) {
      for (const mark of Object.values(neighbours)) {
        if (mark !== null) expect(marks).toContain(mark);
      }
    }
    const named = tiles.flatMap(({ neighbours }) => Object.values(neighbours).filter(Boolean));
    expect(named).toHaveLength(2 * (tiles.length - 1));
  });

  it('show their window of the drawing full size, not turned, in the room above the foot', () => {
    const tiling = tilingOf(round(), 'a4');
    for (const tile of tilesOf(tiling)) {
      const { content, height } = tileSetter(tiling, entry, english)(tile, entry);
      const [placed] = content;
      const { window } = placed!;
      const { strokes: lines } = inkOnSheet(placed!);
      expect([window.minX, window.minY, height - window.maxY]).toEqual([10, 21, 10]);
      const shift = { x: window.minX - tile.window.minX, y: window.minY - tile.window.minY };
      lines.forEach(({ curve }, i) => {
        const own = tile.content.strokes[i]!.curve;
        curve.vertices.forEach((vertex, k) => {
          expect(vertex.x - own.vertices[k]!.x).toBeCloseTo(shift.x, 9);
          expect(vertex.y - own.vertices[k]!.y).toBeCloseTo(shift.y, 9);
        });
      });
    }
  });

  it('of a single straight line are one row', () => {
    const path = strokes('outline', line({ x: 0, y: 0 }, { x: 1000, y: 0 }));
    const { grid } = tilingOf(drawingOf('line', 'Line', path), 'a4');
    expect(Math.min(grid.columns, grid.rows)).toBe(1);
    expect(Math.max(grid.columns, grid.rows)).toBe(4);
  });

  it('are joined where no gauge is cut, if there is such a place', () => {
    // 80 high and 40 apart, three of them: a join in the middle would cut the second
    const square = (y: number) => {
      const corner = (x: number, up: number) => ({ x, y: y + up });
      return polygon([corner(0, 0), corner(90, 0), corner(90, 80), corner(0, 80)]);
    };
    const gauges = [0, 120, 240].map(square);
    const drawing = drawingOf('gauges', 'gauges', strokes('outline', ...gauges));
    const { grid, places } = tilingOf(drawing, 'a4');
    expect(places).toHaveLength(2);
    const cells = places.map((place) => cellOf(grid, place));
    for (const box of gauges.map((gauge) => boundsOf(gauge)!)) {
      expect(cells.filter((cell) => holds(cell, box))).toHaveLength(1);
    }
    // open lines may be cut: then the room lies on both sides alike
    const open = gauges.map(({ vertices }) => ({ vertices, closed: false }));
    const loose = tilingOf(drawingOf('lines', 'lines', strokes('outline', ...open)), 'a4');
    const middle = loose.grid.corner.y - (loose.laid.bounds.maxY + loose.laid.bounds.minY) / 2;
    const spanned = 2 * loose.grid.window.height - overlap;
    expect(middle).toBeCloseTo(spanned / 2, 6);
  });
});

describe.each(Object.entries(drawings))('placements of %s', (_name, make) => {
  it('know how large they are before they are laid', () => {
    for (const { size, laid } of placementsOf(make())) {
      expect(size.width).toBeCloseTo(widthOf(laid.bounds), 9);
      expect(size.height).toBeCloseTo(heightOf(laid.bounds), 9);
    }
  });
});

it('only what is larger than its page is passed over: whatever can be composed has room', () => {
  const page = framedPage(paperSizes.a4, 'upright', trulyPrinted);
  const seen = new Set<boolean>();
  for (let width = 100; width <= 180; width += 0.25) {
    const square = polygon([
      { x: 0, y: 0 },
      { x: width, y: 0 },
      { x: width, y: 100 },
      { x: 0, y: 100 },
    ]);
    const [placement] = placementsOf(drawingOf('s', 's', strokes('outline', square)));
    const fits = compose(page, placement!.laid, null, null) !== null;
    expect(isRoomFor(page, placement!.size)).toBe(fits);
    seen.add(fits);
  }
  expect(seen.size).toBe(2);
});
