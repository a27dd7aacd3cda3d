/** One sheet as a page of a PDF, in millimetres with y upwards. */
import { dashPattern } from '../drawing/layers.js';
import { printable, textWidth } from '../drawing/lettering.js';
import type { Bounds } from '../geometry/measure.js';
import type { Ink, Placed, Sheet, SheetLettering, SheetStroke } from '../sheets/sheet.js';
import { formatNumber } from './number.js';
import { pathOperators } from './pdf-curve.js';
import { sizeForCapitals, type PdfFont } from './pdf-font.js';

const pointsPerMillimetre = 72 / 25.4;
/** ISO 32000-1, annex C.2: a page is at most 14,400 units long; beyond that its unit has to be larger. */
const longestPage = 14_400;

/** Adds the page. */
export function drawSheet(document: PDFKit.PDFDocument, font: PdfFont, sheet: Sheet): void {
  const { width, height } = sheet;
  const longest = Math.max(width, height) * pointsPerMillimetre;
  const userUnit = Math.max(1, Math.ceil(longest / longestPage));
  const scale = pointsPerMillimetre / userUnit;
  const page = { size: [width * scale, height * scale], margin: 0, userUnit };
  document.addPage(page as PDFKit.PDFDocumentOptions);
  const content = [
    toPage(sheet, scale),
    ...sheet.content.flatMap((placed) => placedOperators(font, placed)),
    ...inkOperators(font, sheet.furniture),
  ];
  document.addContent(content.join('\n'));
}

/** From the sheet to pdfkit's page, whose y it has turned downwards; stretched about the middle. */
function toPage({ width, height, correction: { x, y } }: Sheet, scale: number): string {
  const left = (width / 2) * (1 - x);
  const below = (height / 2) * (1 - y);
  const matrix = [scale * x, 0, 0, -scale * y, scale * left, scale * (height - below)];
  return `${matrix.map(factor).join(' ')} cm`;
}

/** The lines end at the window; lettering lies within it. */
function placedOperators(font: PdfFont, placed: Placed): string[] {
  return ['q', clip(placed.window), ...inkOperators(font, placed), 'Q'];
}

function clip({ minX, minY, maxX, maxY }: Bounds): string {
  return `${[minX, minY, maxX - minX, maxY - minY].map(formatNumber).join(' ')} re W n`;
}

function inkOperators(font: PdfFont, { strokes, letterings }: Ink): string[] {
  const operators: string[] = [];
  let current = '';
  for (const stroke of strokes) {
    const path = pathOperators(stroke.curve);
    if (path === '') continue;
    const style = styleOperators(stroke);
    if (style !== current) operators.push(style);
    current = style;
    operators.push(path, 'S');
  }
  return [...operators, ...letterings.map((lettering) => textOperators(font, lettering))];
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
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const place = [at.x - before * cos, at.y - before * sin].map(formatNumber).join(' ');
  const turn = [cos, sin, -sin, cos].map(factor).join(' ');
  const size = formatNumber(height * sizeForCapitals);
  return `BT ${font.name()} ${size} Tf ${turn} ${place} Tm ${font.encode(text)} TJ ET`;
}

/** Nine decimals keep a page of metres true to the last decimal of its coordinates. */
function factor(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`not a number to write: ${value}`);
  const text = value.toFixed(9).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}
