/** One sheet as a page of a PDF, in millimetres with y upwards. */
import { dashPattern } from '../drawing/layers.js';
import { printable, textWidth } from '../drawing/lettering.js';
import type { Curve } from '../geometry/curve.js';
import type { Bounds } from '../geometry/measure.js';
import type { Ink, Placed, Sheet, SheetLettering, SheetStroke } from '../sheets/sheet.js';
import { formatNumber } from './number.js';
import { pathOperators } from './pdf-curve.js';
import { sizeForCapitals, type PdfFont } from './pdf-font.js';

const pointsPerMillimetre = 72 / 25.4;
/** ISO 32000-1, annex C.2: a page is at most 14,400 units long; beyond that its unit has to be larger. */
const longestPage = 14_400;

/** Adds the page. */
export function drawSheet(
  document: PDFKit.PDFDocument,
  resources: PdfResources,
  sheet: Sheet,
): void {
  const { width, height } = sheet;
  const longest = Math.max(width, height) * pointsPerMillimetre;
  const userUnit = Math.max(1, Math.ceil(longest / longestPage));
  const scale = pointsPerMillimetre / userUnit;
  const page = { size: [width * scale, height * scale], margin: 0, userUnit };
  document.addPage(page as PDFKit.PDFDocumentOptions);
  const content = [
    toPage(sheet, scale),
    ...sheet.content.flatMap((placed) => placedOperators(resources, placed)),
    ...inkOperators(resources, sheet.furniture),
  ];
  // as bytes: pdfkit would turn it into those itself, letter by letter
  document.addContent(ascii.encode(`${content.join('\n')}\n`));
}

/** Operators, numbers and glyphs in hexadecimal: nothing in a page's content is beyond ASCII. */
const ascii = new TextEncoder();

/** From the sheet to pdfkit's page, whose y it has turned downwards; stretched about the middle. */
function toPage({ width, height, correction: { x, y } }: Sheet, scale: number): string {
  const left = (width / 2) * (1 - x);
  const below = (height / 2) * (1 - y);
  const matrix = [scale * x, 0, 0, -scale * y, scale * left, scale * (height - below)];
  return `${matrix.map(factor).join(' ')} cm`;
}

/** The lines end at the window; lettering lies within it. */
function placedOperators(resources: PdfResources, placed: Placed): string[] {
  const { at, window } = placed;
  const move = `1 0 0 1 ${formatNumber(at.x)} ${formatNumber(at.y)} cm`;
  return ['q', clip(window), move, ...inkOperators(resources, placed), 'Q'];
}

/** The lines of a document, since the tiles of a piece share them. */
export class PdfPaths {
  private readonly known = new Map<Curve, string>();

  of(curve: Curve): string {
    const known = this.known.get(curve);
    if (known !== undefined) return known;
    const path = pathOperators(curve);
    this.known.set(curve, path);
    return path;
  }
}

/** What the pages of one document have in common. */
export interface PdfResources {
  readonly font: PdfFont;
  readonly paths: PdfPaths;
}

function clip({ minX, minY, maxX, maxY }: Bounds): string {
  return `${[minX, minY, maxX - minX, maxY - minY].map(formatNumber).join(' ')} re W n`;
}

function inkOperators({ font, paths }: PdfResources, { strokes, letterings }: Ink): string[] {
  const operators: string[] = [];
  let current: SheetStroke | null = null;
  for (const stroke of strokes) {
    const path = paths.of(stroke.curve);
    if (path === '') continue;
    if (!current || !sameStyle(stroke, current)) operators.push(styleOperators(stroke));
    current = stroke;
    operators.push(path, 'S');
  }
  for (const lettering of letterings) operators.push(textOperators(font, lettering));
  return operators;
}

function sameStyle(a: SheetStroke, b: SheetStroke): boolean {
  return a.width === b.width && a.lineType === b.lineType;
}

function styleOperators({ lineType, width }: SheetStroke): string {
  const dashes = dashPattern[lineType].map((part) => formatNumber(part * width));
  return `${formatNumber(width)} w [${dashes.join(' ')}] 0 d`;
}

function textOperators(font: PdfFont, lettering: SheetLettering): string {
  const { at, height, align, angle } = lettering;
  const text = printable(lettering.text);
  const share = { left: 0, centre: 0.5, right: 1 }[align];
  const before = share === 0 ? 0 : share * textWidth(text, height);
  const x = formatNumber(at.x - before * Math.cos(angle));
  const y = formatNumber(at.y - before * Math.sin(angle));
  const size = formatNumber(height * sizeForCapitals);
  return `BT ${font.name()} ${size} Tf ${turnOperands(angle)} ${x} ${y} Tm ${font.encode(text)} TJ ET`;
}

/** Nearly all text is level. */
function turnOperands(angle: number): string {
  if (angle === 0) return '1 0 0 1';
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [cos, sin, -sin, cos].map(factor).join(' ');
}

/** Nine decimals keep a page of metres true to the last decimal of its coordinates. */
function factor(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`not a number to write: ${value}`);
  const text = value.toFixed(9).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
