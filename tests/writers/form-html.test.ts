import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import type { Form } from '../../src/drawing/form.js';
import { formToHtml } from '../../src/writers/form-html.js';

const formOf = (text: string): Form => ({
  name: 'form',
  language: 'en',
  title: text,
  subject: text,
  numbers: { heading: text, entries: [{ name: text, value: text }] },
  list: { title: text, headings: [text, text], rows: [[text, text]] },
  steps: {
    heading: text,
    steps: [
      { title: text, text, measures: [{ name: text, value: text }], caution: text },
      { title: 'second', text: 'no boxes', measures: [], caution: '' },
    ],
  },
  labels: { heading: text, texts: [text, text] },
});

test('every text is text, never markup, wherever it stands', () => {
  const html = formToHtml(
    formOf(`</title><script>x('"&")</script>\u0000\u202e<img src=x onerror=y>`),
  );
  expect(html).not.toContain('<script');
  expect(html).not.toContain('<img');
  expect(html).not.toContain('\u0000');
  expect(html).toContain('&lt;script&gt;');
});

test('no quote leaves the attribute of the language', () => {
  const html = formToHtml({ ...formOf('a'), language: 'en" onload="x' });
  expect(html).toMatch(/<html lang="en&quot; onload=&quot;x">/);
});

test('needs neither network nor scripts', () => {
  expect(formToHtml(formOf('a'))).not.toMatch(/<script|<link|https?:|@import|url\(|\son\w+=/i);
});

test('a box to tick for each step, a box to write in for each measure, a caution only where there is one', () => {
  const html = formToHtml(formOf('a'));
  expect(html.match(/class="tick"/g)).toHaveLength(2);
  expect(html.match(/<i><\/i>/g)).toHaveLength(1);
  expect(html.match(/class="caution"/g)).toHaveLength(1);
  expect(html).toContain('<b>2 second</b>');
});

test('is well formed', () => {
  const open: string[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name }) => open.push(name));
  parser.on('error', (error) => {
    throw error;
  });
  const xml = formToHtml(formOf('a < b & c'))
    .replace('<!doctype html>\n', '')
    .replace(/<meta([^>]*)>/g, '<meta$1/>');
  parser.write(xml).close();
  for (const name of ['h1', 'h2', 'dl', 'table', 'thead', 'ol', 'li']) expect(open).toContain(name);
});
