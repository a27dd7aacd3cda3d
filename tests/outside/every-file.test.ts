/** Every file that every template makes, judged by the programs that people would open them with. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { signedArea } from '../../src/geometry/measure.js';
import { drawVessel, figuresOf, packVessel, planVessel } from '../../src/index.js';
import type { Vessel } from '../../src/index.js';
import { run } from './pdf-programs.js';

const here = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
const templates = readdirSync(here('../../templates')).filter((name) => name.endsWith('.yaml'));
const font = readFileSync(here('../../fonts/DejaVuSans.ttf'));
/** The system's own, where Debian's packages put their modules. */
const python = '/usr/bin/python3';

interface Report {
  readonly name: string;
  readonly units: number;
  readonly found: readonly string[];
  readonly outlines: readonly { area: number; valid: boolean; closed: boolean }[];
}

describe.each(templates)('%s', (template) => {
  const folder = mkdtempSync(join(tmpdir(), 'every-file-'));
  let vessel: Vessel;
  afterAll(() => rmSync(folder, { recursive: true }));

  beforeAll(async () => {
    const text = readFileSync(here(`../../templates/${template}`), 'utf8');
    vessel = planVessel(text, template).vessel!;
    const formats = ['svg', 'dxf', 'pdf'] as const;
    const files = await packVessel(vessel, { formats, font: () => Promise.resolve(font) });
    for (const { name, content } of files) writeFileSync(join(folder, name), content);
  }, 120_000);

  const named = (ending: string): string[] =>
    readdirSync(folder)
      .filter((name) => name.endsWith(ending))
      .map((name) => join(folder, name));

  it('has DXF files in which ezdxf finds nothing wrong, and outlines of the areas that shapely measures', () => {
    const printed = execFileSync(python, [here('every-file.py'), folder], { encoding: 'utf8' });
    const reports = JSON.parse(printed) as Report[];
    const drawings = drawVessel(vessel);
    expect(reports).toHaveLength(drawings.length);
    for (const { name, units, found, outlines } of reports) {
      expect(found, name).toEqual([]);
      expect(units, name).toBe(4);
      expect(
        outlines.every(({ valid, closed }) => valid && closed),
        name,
      ).toBe(true);
      const ours = drawings
        .find((drawing) => `${drawing.name}.dxf` === name)!
        .strokes.filter(({ layer }) => layer === 'outline')
        .map(({ curve }) => Math.abs(signedArea(curve)));
      const sum = (areas: readonly number[]): number => areas.reduce((a, b) => a + b, 0);
      expect(outlines, name).toHaveLength(ours.length);
      // shapely measures chords within 0.0005 mm of the arcs; a picture to a scale may have no outline at all
      const [theirs, own] = [sum(outlines.map(({ area }) => area)), sum(ours)];
      expect(Math.abs(theirs - own), name).toBeLessThanOrEqual(1e-4 * own);
    }
  });

  it('has PDF files that are sound to qpdf', () => {
    const files = named('.pdf');
    expect(files.length).toBeGreaterThan(5);
    for (const file of files)
      expect(run('qpdf', '--check', file)).toContain('No syntax or stream encoding errors');
  });

  it('has SVG files that are well formed to xmllint', () => {
    const files = named('.svg');
    expect(files.length).toBeGreaterThan(5);
    // throws with what it complains of
    run('xmllint', '--noout', '--huge', ...files);
  });

  it('holds what scipy integrates from the spec’s own formulas, within 0.1 %', () => {
    const figures = figuresOf(vessel);
    const { spec, ring, heads } = vessel;
    const scale = ring.closesAt / greatest(vessel);
    const outside = Object.fromEntries(
      Object.entries(spec.outside).map(([key, value]) => [
        key,
        typeof value === 'number' ? value * scale : value,
      ]),
    );
    const input = {
      ...outside,
      vessel: spec.vessel,
      height: spec.height,
      thickness: spec.staves.thickness,
      endThickness: spec.staves.endThickness,
      sectionFactor: spec.staves.inside === 'flat' ? ring.sumOfTangents : Math.PI,
      from: heads.bottom.insideFace,
      to: heads.top?.insideFace ?? spec.height / 2,
    };
    const printed = execFileSync(python, [here('capacity.py')], {
      input: JSON.stringify(input),
      encoding: 'utf8',
    });
    expect(Math.abs(Number(printed) / figures.capacityLitres - 1)).toBeLessThan(1e-3);
  });
});

function greatest({ spec }: Vessel): number {
  const { outside } = spec;
  return outside.kind === 'cask' ? outside.bilge : Math.max(outside.top, outside.bottom);
}
