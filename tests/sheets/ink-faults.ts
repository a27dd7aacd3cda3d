/** What is wrong with the ink on a sheet: lettering that meets lettering or a line, or lies off the paper. */
import { flatten } from '../../src/drawing/flatten.js';
import { letteringBox } from '../../src/drawing/lettering.js';
import { boxesMeet, chainMeets, turnedBox } from '../../src/drawing/turned-box.js';
import type { Bounds } from '../../src/geometry/measure.js';
import { boundsOfPoints } from '../../src/geometry/measure.js';
import { inkOnSheet } from '../../src/sheets/ink.js';
import { holds } from '../../src/sheets/rectangle.js';
import type { Ink, Sheet, SheetLettering } from '../../src/sheets/sheet.js';

export const boxOf = (lettering: SheetLettering): Bounds =>
  boundsOfPoints(letteringBox(lettering))!;

/** In the coordinates of the printout: with a correction the file's own come nearer to the middle or farther from it. */
export function faultsOn(sheet: Sheet, margin = 9.9): string[] {
  const paper = {
    minX: margin,
    minY: margin,
    maxX: sheet.width - margin,
    maxY: sheet.height - margin,
  };
  const inks = [...sheet.content.map(inkOnSheet), sheet.furniture];
  const letterings = inks.flatMap((ink) => ink.letterings);
  const off = letterings
    .filter((lettering) => !holds(paper, boxOf(lettering)))
    .map(({ text }) => `off the paper: ${text}`);
  const escaped = sheet.content.flatMap((placed) =>
    inkOnSheet(placed)
      .letterings.filter((each) => !holds(placed.window, boxOf(each)))
      .map(({ text }) => `out of its window: ${text}`),
  );
  return [...off, ...escaped, ...overlapsIn(letterings), ...lineFaults(sheet, letterings)];
}

function overlapsIn(letterings: readonly SheetLettering[]): string[] {
  const boxes = letterings.map((each) => turnedBox(letteringBox(each), each.angle));
  return letterings.flatMap(({ text }, i) =>
    letterings
      .slice(i + 1)
      .filter((_, j) => boxesMeet(boxes[i]!, boxes[i + 1 + j]!))
      .map((other) => `"${text}" meets "${other.text}"`),
  );
}

function lineFaults(sheet: Sheet, letterings: readonly SheetLettering[]): string[] {
  const clipped = sheet.content.flatMap((placed) =>
    meetings(
      inkOnSheet(placed),
      letterings.filter((each) => {
        const { minX, maxX, minY, maxY } = boxOf(each);
        const { window } = placed;
        return minX < window.maxX && maxX > window.minX && minY < window.maxY && maxY > window.minY;
      }),
    ),
  );
  return [...clipped, ...meetings(sheet.furniture, letterings)];
}

function meetings(
  { strokes }: Pick<Ink, 'strokes'>,
  letterings: readonly SheetLettering[],
): string[] {
  return strokes.flatMap(({ curve, width }) => {
    const points = flatten(curve, 0.01);
    const bounds = boundsOfPoints(points)!;
    return letterings
      .filter((each) =>
        chainMeets(points, bounds, turnedBox(letteringBox(each), each.angle), width / 2),
      )
      .map(({ text }) => `a line of ${width} meets "${text}"`);
  });
}
