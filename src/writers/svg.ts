/** A drawing as SVG: full size in mm, one group for each layer in use, lettering as outlines. */
import { drawingBounds } from '../drawing/bounds.js';
import type { Drawing, Lettering } from '../drawing/drawing.js';
import type { LayerName } from '../drawing/layers.js';
import { dashPattern, layerNames, layerStyles } from '../drawing/layers.js';
import { letteringPath } from '../drawing/lettering.js';
import type { Curve, Point } from '../geometry/curve.js';
import { formatNumber } from './number.js';
import { asciiXml } from './svg-escape.js';
import { curveData } from './svg-path.js';

/** White space round the drawing, mm. */
const margin = 5;

/** The whole document. Throws when the drawing is empty or has a coordinate that isn't finite. */
export function toSvg(drawing: Drawing): string {
  const bounds = drawingBounds(drawing);
  const { x: left, y: top } = svgOrigin(drawing);
  const width = formatNumber(Math.ceil(bounds.maxX + margin) - left);
  const height = formatNumber(top - Math.floor(bounds.minY - margin));
  // SVG's y runs downwards: turned here and nowhere else. Whole millimetres keep the drawing's own decimals.
  const place = (point: Point): Point => ({ x: point.x - left, y: top - point.y });
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${asciiXml(documentTitle(drawing))}</title>`,
    ...layerNames.flatMap((layer) => group(layer, elements(drawing, layer, place))),
    '</svg>',
    '',
  ].join('\n');
}

/** The point of the drawing that lies at the upper left corner of its file. */
export function svgOrigin(drawing: Drawing): Point {
  const { minX, maxY } = drawingBounds(drawing);
  return { x: Math.floor(minX - margin), y: Math.ceil(maxY + margin) };
}

function documentTitle({ title, subject }: Drawing): string {
  return [title, subject].filter((text) => text !== '').join(' – ');
}

function elements(drawing: Drawing, layer: LayerName, place: (point: Point) => Point): string[] {
  if (layer === 'lettering')
    return drawing.letterings.flatMap((lettering) => words(lettering, place));
  const strokes = drawing.strokes.filter((stroke) => stroke.layer === layer);
  const leaders = layer === 'dimension' ? leadersOf(drawing) : [];
  return [...strokes.map((stroke) => stroke.curve), ...leaders]
    .map((curve) => curveData(curve, place))
    .filter((data) => data !== '')
    .map((data) => `<path d="${data}"/>`);
}

function leadersOf(drawing: Drawing): Curve[] {
  return drawing.letterings.flatMap(({ leader }) => (leader ? [leader] : []));
}

/** One path, or none for text of nothing but spaces. */
function words(lettering: Lettering, place: (point: Point) => Point): string[] {
  const { path, scale, angle, origin } = letteringPath(lettering);
  if (path === '') return [];
  const { x, y } = place(origin);
  const [cos, sin] = [scale * Math.cos(angle), scale * Math.sin(angle)];
  // the font's y runs upwards and SVG's downwards: hence the signs
  const matrix = [cos, -sin, -sin, -cos].map((n) => `${factor(n)} `).join('');
  const transform = `matrix(${matrix}${formatNumber(x)} ${formatNumber(y)})`;
  return [`<path aria-label="${asciiXml(lettering.text)}" transform="${transform}" d="${path}"/>`];
}

/** Font units run into tens of thousands: nine decimals keep a long line true to the last decimal of its coordinates. */
function factor(n: number): string {
  const text = n.toFixed(9).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

function group(layer: LayerName, children: readonly string[]): string[] {
  if (children.length === 0) return [];
  const title = `<title>${layer}: ${layerStyles[layer].meaning}</title>`;
  return [`<g id="${layer}" ${paint(layer)}>`, title, ...children, '</g>'];
}

function paint(layer: LayerName): string {
  if (layer === 'lettering') return 'fill="black" fill-rule="nonzero" stroke="none"';
  const { width, lineType } = layerStyles[layer];
  const dashes = dashPattern[lineType].map((part) => formatNumber(part * width));
  const dashing = dashes.length > 0 ? ` stroke-dasharray="${dashes.join(' ')}"` : '';
  return `fill="none" stroke="black" stroke-width="${formatNumber(width)}" stroke-linejoin="round"${dashing}`;
}
