import { expect, test } from 'vitest';
import { textsOf } from '../writers/dxf-drawings.js';
import { Workshop } from './workshop.js';

const draw = ['draw', 'bucket.yaml', '--out', 'out', '--pieces', 'stave,head'];

const lettersOf = (dxf: string): string[] => textsOf(dxf).map(({ text }) => text);

test('German and French are lettered in DXF, under the same layers and file names', async () => {
  const workshop = new Workshop();
  await workshop.run(draw);
  const english = workshop.files();
  const layers = (dxf: string): string[] => [...new Set(dxf.match(/^ *8\n.*$/gm))].sort();
  const before = layers(workshop.read('out/head.dxf'));
  for (const [language, title] of [
    ['de', 'Boden unten'],
    ['fr', 'Fond du bas'],
  ] as const) {
    const { code, err } = await workshop.run([...draw, '--language', language, '--replace']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(workshop.files()).toEqual(english);
    expect(lettersOf(workshop.read('out/head.dxf'))).toContain(title);
    expect(layers(workshop.read('out/head.dxf'))).toEqual(before);
    expect(workshop.read('out/index.html')).toContain(`<html lang="${language}">`);
  }
});

test('numbers on a drawing have the comma of their language', async () => {
  const workshop = new Workshop();
  await workshop.run(draw);
  const number = /^[-\d]+[.,]\d+$/;
  const english = lettersOf(workshop.read('out/stave.dxf')).filter((text) => number.test(text));
  await workshop.run([...draw, '--language', 'de', '--replace']);
  const german = lettersOf(workshop.read('out/stave.dxf')).filter((text) => number.test(text));
  expect(english.length).toBeGreaterThan(10);
  expect(german).toEqual(english.map((text) => text.replace('.', ',')));
});

test('a PDF is made in each language with the same font', async () => {
  const workshop = new Workshop();
  const { code } = await workshop.run([...draw, '--language', 'fr', '--formats', 'pdf']);
  expect(code).toBe(0);
  expect(workshop.read('out/stave.pdf')).toContain('(Douelle, 16 en rond - Bucket)');
});

test('another language is refused, and the environment has no say', async () => {
  const workshop = new Workshop();
  const { code, err } = await workshop.run([...draw, '--language', 'xx']);
  expect(code).toBe(2);
  expect(err).toContain('"xx" is none of en, de, fr');
  expect(workshop.files()).toEqual(['bucket.yaml']);
  await workshop.run(draw, { env: { LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' } });
  expect(workshop.read('out/index.html')).toContain('<html lang="en">');
});
