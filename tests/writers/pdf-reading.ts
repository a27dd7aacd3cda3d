/** Reads a PDF of ours back, by nothing but its own text: enough to test what was written. */
import { inflateSync } from 'node:zlib';

export const latin = (bytes: Uint8Array) => Buffer.from(bytes).toString('latin1');

/** Every stream of the file that is text, unpacked: the pages' contents and the font's table of characters. */
export function streamsOf(bytes: Uint8Array): string[] {
  const text = latin(bytes);
  return [...text.matchAll(/<<([^]*?)>>\nstream\n/g)].map((found) => {
    const start = found.index + found[0].length;
    const length = Number(/\/Length (\d+)/.exec(found[1]!)![1]);
    const packed = Buffer.from(text.slice(start, start + length), 'latin1');
    return latin(found[1]!.includes('FlateDecode') ? inflateSync(packed) : packed);
  });
}

/** The contents of the pages, in order. */
export function pagesOf(bytes: Uint8Array): string[] {
  return streamsOf(bytes).filter((stream) => /^1 0 0 -1 0 /.test(stream));
}

/** Width and height of each page in mm. */
export function pageSizes(bytes: Uint8Array): [number, number][] {
  return [...latin(bytes).matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(
    ([, width, height]) => [(Number(width) / 72) * 25.4, (Number(height) / 72) * 25.4],
  );
}

/** The text of each TJ of a page, by the file's own table from glyph numbers to characters. */
export function textsOf(bytes: Uint8Array): string[] {
  const table = charactersOf(bytes);
  return pagesOf(bytes).flatMap((page) =>
    [...page.matchAll(/\[([^\]]*)\] TJ/g)].map(([, operand]) =>
      [...operand!.matchAll(/<([0-9a-f]*)>/g)]
        .flatMap(([, codes]) => codes!.match(/.{4}/g) ?? [])
        .map((code) => table[parseInt(code, 16)])
        .join(''),
    ),
  );
}

function charactersOf(bytes: Uint8Array): string[] {
  const map = streamsOf(bytes).find((stream) => stream.includes('beginbfchar'))!;
  const table: string[] = [];
  for (const [, glyph, units] of map.matchAll(/^<([0-9a-f]{4})> <((?:[0-9a-f]{4})+)>$/gm))
    table[parseInt(glyph!, 16)] = String.fromCharCode(
      ...units!.match(/.{4}/g)!.map((unit) => parseInt(unit, 16)),
    );
  return table;
}

/** Widths of glyphs in thousandths of the size, from the font's table. */
export function widthsOf(bytes: Uint8Array): Map<number, number> {
  const [, table] = /\/W \[((?:\d+ \[[\d. ]+\] ?)+)\]/.exec(latin(bytes))!;
  return new Map(
    [...table!.matchAll(/(\d+) \[([\d. ]+)\]/g)].flatMap(([, first, widths]) =>
      widths!.split(' ').map((width, i) => [Number(first) + i, Number(width)] as const),
    ),
  );
}
