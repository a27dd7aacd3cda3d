/** Other programs' view of a PDF: qpdf and poppler's tools. */
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

/** What a program prints; throws with what it complains of. */
export function run(program: string, ...options: string[]): string {
  return execFileSync(program, options, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
}

const folders: string[] = [];
afterAll(() => folders.forEach((folder) => rmSync(folder, { recursive: true, force: true })));

/** Writes the bytes to a file of their own, which is there until the tests of a file are over, and gives its path. */
export function saved(bytes: Uint8Array): string {
  const folder = mkdtempSync(join(tmpdir(), 'pdf-'));
  folders.push(folder);
  const path = join(folder, 'sheets.pdf');
  writeFileSync(path, bytes);
  return path;
}

/** A PDF with its streams unpacked: deflate differs between Node and a browser, what it packs may not. */
export function unpacked(bytes: Uint8Array): Buffer {
  const path = saved(bytes);
  const plain = `${path}.plain`;
  run('qpdf', '--qdf', '--object-streams=disable', '--static-id', path, plain);
  return readFileSync(plain);
}

export interface Raster {
  readonly width: number;
  readonly height: number;
  /** 0 is black, from the upper left */
  at(x: number, y: number): number;
}

/** One page in grey, by pdftoppm. */
export function rasterOf(path: string, page: number, dpi: number): Raster {
  const stem = `${path}-${page}-${dpi}`;
  const place = [String(page), '-l', String(page)];
  run('pdftoppm', '-gray', '-r', String(dpi), '-singlefile', '-f', ...place, path, stem);
  const bytes = readFileSync(`${stem}.pgm`);
  const [header, width, height] = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(
    bytes.subarray(0, 40).toString('latin1'),
  )!;
  const start = header.length;
  return {
    width: Number(width),
    height: Number(height),
    at: (x, y) => bytes[start + y * Number(width) + x]!,
  };
}

/** Middles of the dark runs along a row or a column, in pixels. */
export function darkRuns(
  values: readonly number[],
  threshold = 160,
): { middle: number; length: number }[] {
  const runs: { middle: number; length: number }[] = [];
  let start = -1;
  [...values, 255].forEach((value, i) => {
    if (value < threshold && start < 0) start = i;
    if (value >= threshold && start >= 0) {
      runs.push({ middle: (start + i) / 2, length: i - start });
      start = -1;
    }
  });
  return runs;
}
