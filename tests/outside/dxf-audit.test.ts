import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.js';
import { letteringCurves } from '../../src/drawing/lettering.js';
import { layerNames, layerStyles } from '../../src/drawing/layers.js';
import { signedArea } from '../../src/geometry/measure.js';
import type { LetteringStyle } from '../../src/writers/dxf.js';
import { toDxf } from '../../src/writers/dxf.js';
import { drawingOf, fullDrawing, lettered } from '../writers/dxf-drawings.js';

interface Report {
  version: string;
  units: number;
  measurement: number;
  errors: string[];
  fixes: string[];
  layers: Record<string, [string, number, number]>;
  linetypes: string[];
  polylines: { layer: string; closed: boolean; vertices: [number, number, number][] }[];
  texts: { text: string; height: number; rotation: number }[];
  entities: number;
}

/** A Python that has ezdxf: the one on the path, or the system's own, where Debian's package puts it. */
const python = ['python3', '/usr/bin/python3'].find((program) => {
  try {
    execFileSync(program, ['-c', 'import ezdxf'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
});

const script = fileURLToPath(new URL('dxf-audit.py', import.meta.url));

function audited(drawing: Drawing, style?: LetteringStyle): Report {
  const folder = mkdtempSync(join(tmpdir(), 'dxf-audit-'));
  try {
    const path = join(folder, 'drawing.dxf');
    writeFileSync(path, toDxf(drawing, style));
    const printed = execFileSync(python!, [script, path], { encoding: 'utf8', stdio: 'pipe' });
    return (JSON.parse(printed) as Report[])[0]!;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

test('ezdxf is installed (Debian: python3-ezdxf)', () => {
  expect(python).toBeDefined();
});

describe.skipIf(python === undefined)('ezdxf', () => {
  const report = python === undefined ? null! : audited(fullDrawing());

  test('finds nothing wrong and nothing to mend, and reads R2000 in millimetres', () => {
    expect(report.errors).toEqual([]);
    expect(report.fixes).toEqual([]);
    expect(report).toMatchObject({ version: 'AC1015', units: 4, measurement: 1 });
  });

  test('knows every layer with its line type and weight', () => {
    for (const name of layerNames) {
      const [lineType, weight, colour] = report.layers[name]!;
      expect(report.linetypes).toContain(lineType);
      expect(weight).toBe(Math.round(layerStyles[name].width * 100));
      expect(colour).toBe(7);
    }
  });

  test('reads the outlines as closed polylines of the right size', () => {
    const outlines = report.polylines.filter(({ layer }) => layer === 'outline');
    expect(outlines.map(({ closed }) => closed)).toEqual([true, true]);
    const [round, oval] = outlines.map(({ vertices }) =>
      signedArea({ closed: true, vertices: vertices.map(([x, y, bulge]) => ({ x, y, bulge })) }),
    );
    expect(round).toBeCloseTo(Math.PI * 100 ** 2, 1);
    expect(oval! / (Math.PI * 300 * 200)).toBeCloseTo(1, 4);
  });

  test('reads the lettering as it was meant', () => {
    expect(report.texts.map(({ text }) => text)).toEqual([
      '⌀ 556,4 → 12,9°',
      'größte Breite',
      'bilge',
    ]);
    expect(report.texts[0]!.rotation).toBeCloseTo((0.5 * 180) / Math.PI, 3);
    expect(report.texts[1]!.height).toBe(5);
  });

  test('finds nothing wrong with outlines for lettering, or with an empty drawing', () => {
    const outlines: LetteringStyle = { letteringAs: 'outlines', outlinesOf: letteringCurves };
    expect(audited(fullDrawing(), outlines)).toMatchObject({ errors: [], fixes: [], texts: [] });
    expect(audited(drawingOf([]))).toMatchObject({ errors: [], fixes: [], entities: 0 });
  });

  test('sees one line of text where hostile text was given', () => {
    const hostile = 'a\n0\nLINE\r\n8\n0 %%c %%%%d \\U+000A\\P ^J^M \u2028 😀 {\\H99;x} EOF';
    const { errors, fixes, entities, texts } = audited(drawingOf([], [lettered(hostile)]));
    expect({ errors, fixes, entities }).toEqual({ errors: [], fixes: [], entities: 1 });
    expect(texts[0]!.text).toBe('a0LINE80 % %c % % % %d /U+000A/P ^J^M  ? {/H99;x} EOF');
  });
});
