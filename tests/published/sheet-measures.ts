/** Measures taken from the bytes of a PDF: page size and the print-scaling preference stand there in plain text. */
import type { Inputs, Measure } from './inputs.js';
import { dejaVu, invented, renderedPdf } from './product.js';

const rendered = new Map<string, Promise<string>>();

function pdfText({ paper }: Inputs): Promise<string> {
  const name = String(paper);
  const text =
    rendered.get(name) ??
    renderedPdf(invented, 'head', name, dejaVu).then((bytes) =>
      Buffer.from(bytes).toString('latin1'),
    );
  rendered.set(name, text);
  return text;
}

/** Smaller and larger side of every page, mm; all pages must be alike. */
async function pageSides(inputs: Inputs): Promise<[number, number]> {
  const boxes = [...(await pdfText(inputs)).matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)];
  const sizes = boxes.map(([, width, height]) =>
    [Number(width), Number(height)].map((points) => (points * 25.4) / 72).sort((a, b) => a - b),
  );
  const [first] = sizes;
  const alike = sizes.every(([a, b]) => a === first?.[0] && b === first?.[1]);
  return alike ? [first?.[0] ?? NaN, first?.[1] ?? NaN] : [NaN, NaN];
}

export const sheetMeasures: Record<string, Measure> = {
  paperShortSide: async (inputs) => (await pageSides(inputs))[0],
  paperLongSide: async (inputs) => (await pageSides(inputs))[1],
  printScalingOff: async (inputs) =>
    /\/PrintScaling\s*\/None/.test(await pdfText(inputs)) ? 1 : 0,
};
