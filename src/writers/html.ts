/** A page that shows a vessel's patterns from the folder they lie in: no scripts, no network. Not to scale itself. */
import { indexPageStyle } from './html-style.js';
import { indexPageWords, type IndexPageWords } from './index-page.words.js';
import { escapeXml } from './svg-escape.js';

export interface IndexPage {
  readonly title: string;
  readonly pieces: readonly {
    readonly title: string;
    /** stem of its files */
    readonly name: string;
    readonly formats: readonly ('svg' | 'dxf' | 'pdf')[];
  }[];
  /** the name of the file with the spec */
  readonly spec: string;
  /** the files of the job sheet; none where it wasn't made */
  readonly jobSheet: readonly string[];
}

export function toHtml(page: IndexPage, words: IndexPageWords = indexPageWords.en): string {
  const title = escapeXml(page.title);
  return [
    '<!doctype html>',
    `<html lang="${words.language}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${title}</title>`,
    `<style>\n${indexPageStyle}</style>`,
    '</head>',
    '<body>',
    `<header>\n<h1>${title}</h1>`,
    `<p>${escapeXml(words.intro)} ${escapeXml(words.spec)} ${link(page.spec, page.spec)}</p>`,
    ...jobSheetLine(page, words),
    '</header>',
    '<main>',
    ...page.pieces.map((piece) => figure(piece, words)),
    '</main>',
    '<footer>',
    ...words.sections.map(section),
    '</footer>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

function jobSheetLine({ jobSheet }: IndexPage, words: IndexPageWords): string[] {
  if (jobSheet.length === 0) return [];
  const links = jobSheet.map((file) => link(file, file));
  return [`<p>${escapeXml(words.jobSheet)} ${links.join(' · ')}</p>`];
}

function figure(
  { title, name, formats }: IndexPage['pieces'][number],
  words: IndexPageWords,
): string {
  const src = escapeXml(`${name}.svg`);
  const picture = formats.includes('svg')
    ? `<a href="${src}"><img src="${src}" alt="${escapeXml(title)}" loading="lazy"></a>`
    : `<p>${escapeXml(words.noPicture)}</p>`;
  const links = formats.map((format) => link(`${name}.${format}`, words.formats[format]));
  return [
    '<figure>',
    picture,
    `<figcaption><b>${escapeXml(title)}</b> ${links.join(' · ')}</figcaption>`,
    '</figure>',
  ].join('\n');
}

function section({ heading, lines }: IndexPageWords['sections'][number]): string {
  const items = lines.map((line) => `<li>${escapeXml(line)}</li>`);
  return `<section>\n<h2>${escapeXml(heading)}</h2>\n<ul>\n${items.join('\n')}\n</ul>\n</section>`;
}

function link(file: string, text: string): string {
  return `<a href="${escapeXml(file)}">${escapeXml(text)}</a>`;
}
