/**
 * Writes fonts/DejaVuSans.ttf: DejaVu Sans cut down to the letters that drawings can show, for PDF. A font of a tenth of the
 * size is read ten times as fast, and start-up is mostly reading it. Run `npx tsx scripts/make-font.ts`.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';
import { drawableCharacters, readFont } from './make-glyphs.js';

const source = createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
const target = fileURLToPath(new URL('../fonts/DejaVuSans.ttf', import.meta.url));

const text = drawableCharacters(readFont()).join('');
// drawings place letters by their own table, at any size: what helps programs to set text or to hint it isn't read
const unread = ['GDEF', 'GPOS', 'GSUB', 'MATH', 'OS/2', 'gasp', 'name', 'post'];
// the package's types lag behind what it takes
const options = { noHinting: true, noLayoutClosure: true, dropTables: unread };
const font = await subsetFont(readFileSync(source), text, { targetFormat: 'truetype', ...options });
writeFileSync(target, font);
console.log(`${target}: ${font.length} bytes`);
