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
  const elements = elementsOf(drawing, place);
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${asciiXml(documentTitle(drawing))}</title>`,
    ...layerNames.flatMap((layer) => group(layer, elements.get(layer)!)),
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

/** On each layer its lines in the drawing's own order, then leaders. */
function elementsOf(
  drawing: Drawing,
  place: (point: Point) => Point,
): ReadonlyMap<LayerName, string[]> {
  const elements = new Map<LayerName, string[]>(layerNames.map((layer) => [layer, []]));
  const draw = (layer: LayerName, curve: Curve): void => {
    const data = curveData(curve, place);
    if (data !== '') elements.get(layer)!.push(`<path d="${data}"/>`);
  };
  for (const { layer, curve } of drawing.strokes) draw(layer, curve);
  for (const lettering of drawing.letterings) {
    if (lettering.leader) draw('dimension', lettering.leader);
    const element = words(lettering, place);
    if (element !== '') elements.get('lettering')!.push(element);
  }
  return elements;
}

/** One path; nothing for text of nothing but spaces. */
function words(lettering: Lettering, place: (point: Point) => Point): string {
  const { path, scale, angle, origin } = letteringPath(lettering);
  if (path === '') return '';
  const { x, y } = place(origin);
  const transform = `matrix(${matrix(scale, angle)} ${formatNumber(x)} ${formatNumber(y)})`;
  return `<path aria-label="${asciiXml(lettering.text)}" transform="${transform}" d="${path}"/>`;
}

/** Level lettering comes in a few heights, so in a few scales. */
const levelMatrices = new Map<number, string>();

function matrix(scale: number, angle: number): string {
  if (angle !== 0) return matrixAnew(scale, angle);
  let known = levelMatrices.get(scale);
  if (known === undefined) levelMatrices.set(scale, (known = matrixAnew(scale, angle)));
  return known;
}

/** The font's y runs upwards and SVG's downwards: hence the signs. */
function matrixAnew(scale: number, angle: number): string {
  const cos = scale * Math.cos(angle);
  const sin = factor(-scale * Math.sin(angle));
  return `${factor(cos)} ${sin} ${sin} ${factor(-cos)}`;
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
