/** What holds of every piece of every vessel. */
import { describe, expect, it } from 'vitest';
import { overlaps } from '../../src/drawing/overlap.js';
import { withLegend } from '../../src/drawing/legend.js';
import type { Drawing, Stroke } from '../../src/drawing/drawing.js';
import { segmentsOf } from '../../src/geometry/segment.js';
import { drawPieces, pieces } from '../../src/pieces/index.js';
import { en } from '../../src/pieces/words/en.js';
import { de } from '../../src/pieces/words/de.js';
import { fr } from '../../src/pieces/words/fr.js';
import { everyVessel, vesselOf } from './vessels.js';

const everyName = pieces.map(({ name }) => name);

describe.each(everyVessel)('%s', (_name, text) => {
  const drawings = drawPieces(vesselOf(text), { words: en }, everyName);

  it('has lettering that touches neither lines nor other lettering, with its legend and without', () => {
    for (const drawing of drawings) {
      expect(overlaps(drawing).map(touching), drawing.name).toEqual([]);
      expect(overlaps(withLegend(drawing)).map(touching), drawing.name).toEqual([]);
    }
  });

  it('has only closed curves on outline, hidden and bore, each with an area', () => {
    for (const drawing of drawings) {
      const cut = drawing.strokes.filter(({ layer }) =>
        ['outline', 'hidden', 'bore'].includes(layer),
      );
      expect(
        cut.filter(({ curve }) => !curve.closed),
        drawing.name,
      ).toEqual([]);
      expect(cut.every(({ curve }) => curve.vertices.length >= 2)).toBe(true);
    }
  });

  it('has no line twice and no segment without length', () => {
    for (const drawing of drawings) {
      const keys = drawing.strokes.flatMap(segmentKeys);
      expect(new Set(keys).size, drawing.name).toBe(keys.length);
      expect(drawing.strokes.every(hasLength), drawing.name).toBe(true);
    }
  });

  it('has finite coordinates and file names that are safe everywhere', () => {
    for (const drawing of drawings) {
      expect(drawing.name).toMatch(/^[a-z0-9-]+$/);
      const numbers = drawing.strokes.flatMap(({ curve }) =>
        curve.vertices.flatMap(({ x, y, bulge }) => [x, y, bulge]),
      );
      expect(numbers.every(Number.isFinite), drawing.name).toBe(true);
    }
    const names = drawings.map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('has tables with as many cells as headings', () => {
    for (const { legend, name } of drawings) {
      for (const { headings, rows } of legend.tables) {
        expect(
          rows.every((row) => row.length === headings.length),
          name,
        ).toBe(true);
      }
    }
  });
});

/** The longest words meet the largest and the smallest vessel; between them there is more room. */
const inOtherLanguages = ['wine-cask-225.yaml', 'keg-10-inches.yaml'].flatMap((name) =>
  Object.entries({ de, fr }).map(([language, words]) => ({ name, language, words })),
);

it.each(inOtherLanguages)(
  '$name in $language: lettering touches neither lines nor other lettering',
  ({ name, words }) => {
    const [, text] = everyVessel.find(([each]) => each === name)!;
    const drawings = drawPieces(vesselOf(text), { words }, everyName);
    expect(drawings.length).toBeGreaterThan(20);
    for (const drawing of drawings) {
      expect(overlaps(drawing).map(touching), drawing.name).toEqual([]);
      expect(overlaps(withLegend(drawing)).map(touching), drawing.name).toEqual([]);
    }
  },
);

function touching({ lettering, other }: ReturnType<typeof overlaps>[number]): string {
  return `${lettering.text} | ${'text' in other ? other.text : other.layer}`;
}

/** A segment by its layer, its ends whichever way it runs, and its bulge. */
function segmentKeys({ layer, curve }: Stroke): string[] {
  const { vertices, closed } = curve;
  const last = closed ? vertices.length : vertices.length - 1;
  return vertices.slice(0, last).map((from, i) => {
    const to = vertices[(i + 1) % vertices.length]!;
    const ends = [from, to].map(({ x, y }) => `${x.toFixed(3)},${y.toFixed(3)}`);
    const forwards = ends[0]! <= ends[1]!;
    return `${layer} ${[...ends].sort().join(' ')} ${(forwards ? from.bulge : -from.bulge).toFixed(5)}`;
  });
}

const hasLength = ({ curve }: Drawing['strokes'][number]): boolean =>
  segmentsOf(curve).every(({ length }) => length > 1e-3);
