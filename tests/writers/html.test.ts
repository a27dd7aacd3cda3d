import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import { toHtml, type IndexPage } from '../../src/writers/html.js';

const page: IndexPage = {
  title: 'Wine cask',
  spec: 'spec.yaml',
  jobSheet: [],
  pieces: [
    { title: 'Stave', name: 'stave', formats: ['svg', 'dxf', 'pdf'] },
    { title: 'Head', name: 'head', formats: ['dxf'] },
  ],
};

/** The values of an attribute, in order. */
const values = (html: string, attribute: string): string[] =>
  [...html.matchAll(new RegExp(` ${attribute}="([^"]*)"`, 'g'))].map((match) => match[1]!);

test('a picture and links for each piece, in the formats that were made', () => {
  const html = toHtml(page);
  expect(values(html, 'src')).toEqual(['stave.svg']);
  expect(values(html, 'href')).toEqual([
    'spec.yaml',
    'stave.svg',
    'stave.svg',
    'stave.dxf',
    'stave.pdf',
    'head.dxf',
  ]);
});

test('needs neither network nor scripts', () => {
  const html = toHtml(page);
  expect(html).not.toMatch(/<script|<link|https?:|@import|url\(|\son\w+=/i);
});

test('titles are text, never markup', () => {
  const hostile = `</title><script>x('"&")</script>\u0000\u202e<img src=x onerror=y>`;
  const html = toHtml({
    ...page,
    title: hostile,
    pieces: [{ ...page.pieces[0]!, title: hostile }],
  });
  expect(html).not.toContain('<script');
  expect(html).not.toContain('<img src=x');
  expect(html).not.toContain('\u0000');
  expect(html).toContain('&lt;script&gt;');
});

test('is well formed', () => {
  const open: string[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name }) => open.push(name));
  parser.on('error', (error) => {
    throw error;
  });
  // HTML's empty elements and its doctype are not XML's
  const xml = toHtml(page)
    .replace('<!doctype html>\n', '')
    .replace(/<(meta|img)([^>]*)>/g, '<$1$2/>')
    .replace(' loading="lazy"', '');
  parser.write(xml).close();
  expect(open.filter((name) => name === 'figure')).toHaveLength(2);
  expect(open.filter((name) => name === 'section').length).toBeGreaterThan(2);
});

test('says how to print, and the cautions of the work', () => {
  const html = toHtml(page);
  for (const word of [
    'actual size, 100 %',
    'measure',
    'Firing',
    'Hoops',
    '250 kg',
    'with water',
    'food',
  ])
    expect(html).toContain(word);
});
