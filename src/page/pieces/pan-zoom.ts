/** What part of a drawing is on the screen. Millimetres of the drawing, `y` upwards; pixels of the screen, `y` downwards. */
import type { Point } from '../../index.js';

export interface View {
  /** the point of the drawing in the middle of the screen */
  readonly centre: Point;
  /** pixels per millimetre */
  readonly scale: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

const smallest = 0.02;
const largest = 200;
/** Pixels left free all round. */
const rim = 24;

export function fitted(box: Box, screen: Size): View {
  const across = (screen.width - 2 * rim) / Math.max(box.maxX - box.minX, 1);
  const along = (screen.height - 2 * rim) / Math.max(box.maxY - box.minY, 1);
  return {
    centre: { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 },
    scale: within(Math.min(across, along)),
  };
}

const within = (scale: number): number => Math.min(largest, Math.max(smallest, scale));

export function toDrawing({ centre, scale }: View, screen: Size, at: Point): Point {
  return {
    x: centre.x + (at.x - screen.width / 2) / scale,
    y: centre.y - (at.y - screen.height / 2) / scale,
  };
}

export function toScreen({ centre, scale }: View, screen: Size, point: Point): Point {
  return {
    x: (point.x - centre.x) * scale + screen.width / 2,
    y: (centre.y - point.y) * scale + screen.height / 2,
  };
}

/** What is under `at` stays there. */
export function zoomed(view: View, screen: Size, at: Point, factor: number): View {
  const scale = within(view.scale * factor);
  const fixed = toDrawing(view, screen, at);
  return {
    centre: {
      x: fixed.x - (at.x - screen.width / 2) / scale,
      y: fixed.y + (at.y - screen.height / 2) / scale,
    },
    scale,
  };
}

/** The drawing follows the finger by so many pixels. */
export function panned({ centre, scale }: View, dx: number, dy: number): View {
  return { centre: { x: centre.x - dx / scale, y: centre.y + dy / scale }, scale };
}

/** As an SVG's view box, whose `y` runs downwards. */
export function viewBoxOf({ centre, scale }: View, { width, height }: Size): string {
  const [w, h] = [width / scale, height / scale];
  return [centre.x - w / 2, -centre.y - h / 2, w, h].map((n) => n.toFixed(4)).join(' ');
}
