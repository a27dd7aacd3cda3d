/** Every way that an entry can ask for our number: inputs in, a number in the entry's unit out. All through the product. */
import { yamlOf } from '../bench-test/bench-spec.js';
import { caskWithInside, tubWithInside } from './inside-spec.js';
import { dipMeasures } from './dip-measures.js';
import { fileMeasures } from './file-measures.js';
import { numberIn, type Inputs, type Measure } from './inputs.js';
import { figuresFor, plainSpec } from './product.js';
import type { PublishedFigures } from './product.js';
import { sheetMeasures } from './sheet-measures.js';

const degrees = (radians: number): number => (radians * 180) / Math.PI;
const inch = 25.4;

/** Cubic inches in the units that old books count in. */
const cubicInches: Record<string, number> = {
  'cubic inch': 1,
  'wine gallon': 231,
  'ale gallon': 282,
  'old imperial gallon': 277.274,
};

/**
 * Volume over `L D^2` of a gauger's solid. Scaling a solid along its axis or across it scales its volume alike, so
 * the cask is made long and slender (4800 by 800 mm), where a stave's thickness hardly tells: the inside is parallel
 * to the outside and not itself the solid. What remains is taken out by extrapolating from staves of 8, 16 and
 * 24 mm to none at all.
 */
function solidFactor(solid: string, headOverBilge: number): number {
  const [along, across] = [4800, 800];
  if (solid === 'two cones') {
    const half = { top: headOverBilge * across, bottom: across, depth: along / 2 };
    return (2 * litresOfTub(half, 10) * 1e6) / (along * across * across);
  }
  const profile = solid === 'spheroid' ? 'ellipse' : 'parabola';
  const litres = (thickness: number): number => {
    const inside = {
      profile,
      bilge: across,
      head: headOverBilge * across,
      between: along,
    } as const;
    const spec = caskWithInside({ ...inside, thickness, endToHead: 72 });
    return figuresFor(yamlOf(spec)).capacityLitres;
  };
  const [thin, middle, thick] = [litres(8), litres(16), litres(24)];
  return ((3 * thin - 3 * middle + thick) * 1e6) / (along * across * across);
}

function litresOfTub(
  inside: { top: number; bottom: number; depth: number },
  thickness: number,
): number {
  const endToHead = 2.5 * thickness;
  return figuresFor(yamlOf(tubWithInside({ ...inside, thickness, endToHead }))).capacityLitres;
}

/** A gauger's cask of inside measures in inches. */
function gaugedCask(inputs: Inputs): number {
  const [D, d, L] = ['D', 'd', 'L'].map((key) => numberIn(inputs, key)) as [number, number, number];
  const unit = cubicInches[String(inputs.in)] ?? NaN;
  return (solidFactor(String(inputs.solid), d / D) * L * D * D) / unit;
}

/** A barrel from its legal or trade dimensions in inches: outside girth, and what the heads leave inside. */
function barrel(inputs: Inputs): PublishedFigures {
  const bilge = (numberIn(inputs, 'girth') / Math.PI) * inch;
  const thickness = numberIn(inputs, 'stave') * inch;
  const spec = caskWithInside({
    profile: 'parabola',
    bilge: bilge - 2 * thickness,
    head: numberIn(inputs, 'effectiveHead') * inch,
    between: numberIn(inputs, 'betweenHeads') * inch,
    thickness,
    endToHead: numberIn(inputs, 'endToHead') * inch,
  });
  return figuresFor(yamlOf(spec));
}

const litresPerCubicInch = inch ** 3 / 1e6;

/** A leaning tub 600 wide at the bottom, of `staves`, lean in degrees from the vertical. */
function leaningTub(inputs: Inputs): PublishedFigures {
  const lean = (numberIn(inputs, 'lean') * Math.PI) / 180;
  const spec = tubWithInside({
    bottom: 600,
    top: 600 - 2 * 300 * Math.tan(lean),
    depth: 300,
    thickness: 18,
    endToHead: 50,
  });
  const staves = { ...spec.staves, count: numberIn(inputs, 'staves') };
  return figuresFor(yamlOf({ ...spec, staves }));
}

function taper({ stave }: PublishedFigures): number {
  const across = (stave.endWidth.bottom - stave.endWidth.top) / 2;
  return degrees(Math.atan(across / stave.outerLength));
}

/**
 * A cask by the curve of its staves' faces, a hundredfold in millimetres. The book measures along that curve and knows no
 * neutral line, so the unstretched line is put on the outer face.
 */
function thinCask(inputs: Inputs): PublishedFigures {
  const thickness = 5;
  const spec = caskWithInside({
    profile: 'arc',
    bilge: 1000,
    head: 900,
    between: 1000,
    thickness,
    endToHead: 50,
  });
  return figuresFor(
    yamlOf({
      ...spec,
      height: 100 * numberIn(inputs, 'L'),
      bilge: 100 * numberIn(inputs, 'D'),
      ends: 100 * numberIn(inputs, 'd'),
      staves: { ...spec.staves, count: numberIn(inputs, 'staves'), neutral: 0 },
    }),
  );
}

/** Old books lay staves off along the circle, `pi D / n`; ours are straight across: `D tan(pi / n)`. */
function alongTheCircle(width: number, staves: number): number {
  const alpha = Math.PI / staves;
  return (width * alpha) / Math.tan(alpha);
}

/** A cask of eight lines, everything else left to the product. */
function plainCask(inputs: Inputs): PublishedFigures {
  return figuresFor(plainSpec(inputs));
}

export const measures: Record<string, Measure> = {
  ...fileMeasures,
  ...sheetMeasures,
  ...dipMeasures,
  solidFactor: (inputs) =>
    solidFactor(String(inputs.solid), numberIn(inputs, 'H')) /
    (cubicInches[String(inputs.in)] ?? NaN),
  gaugedCask,
  tubLitres: (inputs) => {
    const [top, bottom, depth] = ['top', 'bottom', 'depth'].map((key) => numberIn(inputs, key));
    return litresOfTub({ top: top ?? NaN, bottom: bottom ?? NaN, depth: depth ?? NaN }, 15);
  },
  arcCaskLitres: (inputs) => plainCask(inputs).capacityLitres,
  barrelCubicInches: (inputs) => barrel(inputs).capacityLitres / litresPerCubicInch,
  barrelWineGallons: (inputs) => barrel(inputs).capacityLitres / litresPerCubicInch / 231,
  edgeBevel: (inputs) => leaningTub(inputs).stave.bladeTiltDegrees ?? NaN,
  faceBevel: (inputs) => leaningTub(inputs).stave.bevelDegrees.bilge,
  endTaper: (inputs) => taper(leaningTub(inputs)),
  staveLength: (inputs) => thinCask(inputs).stave.outerLength / 100,
  staveMiddle: (inputs) =>
    alongTheCircle(thinCask(inputs).stave.bilgeWidth / 100, numberIn(inputs, 'staves')),
  staveEnd: (inputs) =>
    alongTheCircle(thinCask(inputs).stave.endWidth.top / 100, numberIn(inputs, 'staves')),
  headDiameter: (inputs) => plainCask(inputs).heads.bottom.diameter,
  blankThickness: (inputs) => plainCask(inputs).stave.blankThickness,
  staveWidth: (inputs) => plainCask(inputs).stave.bilgeWidth,
  compassSteps: (inputs) => compassTurn(plainCask(inputs), numberIn(inputs, 'opened')),
  laidWidthOverGirth: (inputs) =>
    plainCask(inputs).laidWidth / (Math.PI * numberIn(inputs, 'bilge')),
  stretchWarnings: (inputs) => plainCask(inputs).warnings.length,
};

/** Degrees that six steps of a compass cover, opened to the croze radius times `opened`, on the groove's ground. */
function compassTurn({ heads: { bottom } }: PublishedFigures, opened: number): number {
  return 6 * 2 * degrees(Math.asin((opened * bottom.crozeRadius) / bottom.diameter));
}
