/** A form as a page that needs no other file: no scripts, no network. Its boxes are filled in by hand once it is printed. */
import type { Form, FormEntry, FormStep } from '../drawing/form.js';
import type { Table } from '../drawing/drawing.js';
import { formStyle } from './form-style.js';
import { escapeXml } from './svg-escape.js';

export function formToHtml(form: Form): string {
  const { numbers, list, steps, labels } = form;
  const title = escapeXml(`${form.title}. ${form.subject}`);
  return [
    '<!doctype html>',
    `<html lang="${escapeXml(form.language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${title}</title>`,
    `<style>\n${formStyle}</style>`,
    '</head>',
    '<body>',
    `<h1>${title}</h1>`,
    section(numbers.heading, `<dl>\n${lines(numbers.entries.map(entry))}\n</dl>`),
    section(list.title, table(list)),
    section(steps.heading, `<ol>\n${lines(steps.steps.map(step))}\n</ol>`),
    section(labels.heading, `<div class="labels">\n${lines(labels.texts.map(span))}\n</div>`),
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

const lines = (parts: readonly string[]): string => parts.join('\n');

const span = (text: string): string => `<span>${escapeXml(text)}</span>`;

function section(heading: string, content: string): string {
  return `<section>\n<h2>${escapeXml(heading)}</h2>\n${content}\n</section>`;
}

function entry({ name, value }: FormEntry): string {
  return `<div><dt>${escapeXml(name)}</dt><dd>${escapeXml(value)}</dd></div>`;
}

function table({ headings, rows }: Table): string {
  const row = (cells: readonly string[], tag: 'th' | 'td'): string =>
    `<tr>${cells.map((cell) => `<${tag}>${escapeXml(cell)}</${tag}>`).join('')}</tr>`;
  return `<table>\n<thead>${row(headings, 'th')}</thead>\n<tbody>\n${lines(rows.map((cells) => row(cells, 'td')))}\n</tbody>\n</table>`;
}

function step({ title, text, measures, caution }: FormStep, index: number): string {
  return lines([
    `<li><span class="tick"></span>`,
    `<div class="measures"><b>${index + 1} ${escapeXml(title)}</b>${measures.map(measure).join('')}</div>`,
    `<p>${escapeXml(text)}</p>`,
    ...(caution === '' ? [] : [`<p class="caution">${escapeXml(caution)}</p>`]),
    '</li>',
  ]);
}

/** What to measure, what it should be, and an empty box. */
function measure({ name, value }: FormEntry): string {
  return `<span>${escapeXml(`${name} ${value}`.trim())}<i></i></span>`;
}
