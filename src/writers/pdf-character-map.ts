/** Which character each glyph of a font in a PDF shows, so that text can be searched and copied. */

/** A glyph's number as text is written in. */
export function hex(number: number): string {
  return number.toString(16).padStart(4, '0');
}

/** ISO 32000-1, 9.10.3: at most a hundred entries to a block. */
const longestBlock = 100;

/** The content of the object `ToUnicode`. */
export function characterMap(
  pairs: readonly (readonly [glyph: number, character: string])[],
): string {
  const blocks: string[] = [];
  for (let i = 0; i < pairs.length; i += longestBlock) {
    const block = pairs.slice(i, i + longestBlock);
    const lines = block.map(([glyph, character]) => `<${hex(glyph)}> <${utf16(character)}>`);
    blocks.push(`${block.length} beginbfchar`, ...lines, 'endbfchar');
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<0000> <ffff>',
    'endcodespacerange',
    ...blocks,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
}

function utf16(character: string): string {
  return Array.from({ length: character.length }, (_, i) => hex(character.charCodeAt(i))).join('');
}
