/** One sheet as a page of a PDF, in millimetres with y upwards. */
import { capHeight } from '../drawing/glyphs.js';
import { dashPattern } from '../drawing/layers.js';
import { printable, textWidth } from '../drawing/lettering.js';
import type { Ink, Placed, Sheet, SheetLettering, SheetStroke } from '../sheets/sheet.js';
import { drawPath } from './pdf-curve.js';

const pointsPerMillimetre = 72 / 25.4;
/** ISO 32000-1, annex C.2: a page is at most 14,400 units long; beyond that its unit has to be larger. */
const longestPage = 14_400;
/** The font's units to the em, as `capHeight` counts them. */
const unitsPerEm = 2048;

/** Adds the page. */
export function drawSheet(document: PDFKit.PDFDocument, sheet: Sheet): void {
  const { width, height } = sheet;
  const longest = Math.max(width, height) * pointsPerMillimetre;
  const userUnit = Math.max(1, Math.ceil(longest / longestPage));
  const scale = pointsPerMillimetre / userUnit;
  const page = { size: [width * scale, height * scale], margin: 0, userUnit };
  document.addPage(page as PDFKit.PDFDocumentOptions);
  document.transform(...toPage(sheet, scale));
  for (const placed of sheet.content) drawPlaced(document, placed);
  drawInk(document, sheet.furniture);
}

/** From the sheet to pdfkit's page, whose y runs downwards; stretched about the middle. */
function toPage(
  { width, height, correction: { x, y } }: Sheet,
  scale: number,
): [number, number, number, number, number, number] {
  const left = (width / 2) * (1 - x);
  const below = (height / 2) * (1 - y);
  return [scale * x, 0, 0, -scale * y, scale * left, scale * (height - below)];
}

/** The lines end at the window; lettering lies within it. */
function drawPlaced(document: PDFKit.PDFDocument, placed: Placed): void {
  const { minX, minY, maxX, maxY } = placed.window;
  document.save();
  document.rect(minX, minY, maxX - minX, maxY - minY).clip();
  drawInk(document, placed);
  document.restore();
}

function drawInk(document: PDFKit.PDFDocument, { strokes, letterings }: Ink): void {
  let style = '';
  for (const stroke of strokes) {
    const { lineType, width } = stroke;
    if (style !== `${lineType} ${width}`) setStyle(document, stroke);
    style = `${lineType} ${width}`;
    drawPath(document, stroke.curve);
    document.stroke();
  }
  for (const lettering of letterings) drawLettering(document, lettering);
}

function setStyle(document: PDFKit.PDFDocument, { lineType, width }: SheetStroke): void {
  document.lineWidth(width);
  const dashes = dashPattern[lineType].map((part) => part * width);
  if (dashes.length === 0) document.undash();
  // pdfkit takes a whole pattern, but its types know only one length
  else document.dash(dashes as unknown as number, {});
}

/** Turned about its place on the baseline; inside, y runs downwards again, as pdfkit's text wants it. */
function drawLettering(document: PDFKit.PDFDocument, lettering: SheetLettering): void {
  const { at, height, align, angle } = lettering;
  const text = printable(lettering.text);
  const share = { left: 0, centre: 0.5, right: 1 }[align];
  const start = share === 0 ? 0 : -share * textWidth(text, height);
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  document.save();
  document.transform(cos, sin, sin, -cos, at.x, at.y);
  document.fontSize((height * unitsPerEm) / capHeight);
  // with a list of features, even an empty one, pdfkit sets the line in one piece
  document.text(text, start, 0, { lineBreak: false, baseline: 'alphabetic', features: [] });
  document.restore();
}
