import { expect, test } from 'vitest';
import { decoded } from '../writers/decoded.js';
import { textsOf } from '../writers/dxf-drawings.js';
import { bucket, Workshop } from './workshop.js';

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

const cask = `vessel: cask
title: Cask 2.5
units: mm
height: 945
bilge: 678
ends: 572
staves: { count: 28 }
`;

/** What only one language says of a command, and the number that it must write with a comma. */
const answers: readonly (readonly [string, string, string, string, ...string[]])[] = [
  ['figures', 'de', 'zwischen den Böden', 'Kopfreif'],
  ['figures', 'fr', 'entre les fonds', 'cercle de tête'],
  ['dip', 'de', 'liegend, Spund oben', 'alte Regel'],
  ['dip', 'fr', 'couché, bonde en haut', 'ancienne règle'],
  ['size', 'de', 'geändert', 'runde Maße', '--litres', '225', '--out', 'new.yaml'],
  ['size', 'fr', 'changé', 'dimensions rondes', '--litres', '225', '--out', 'new.yaml'],
  ['recut', 'de', 'alte Gargel, oben', 'höchstens', '--shorten', '70', '--out', 'new.yaml'],
  ['recut', 'fr', 'ancien jable, haut', 'au plus', '--shorten', '70', '--out', 'new.yaml'],
];

test.each(answers)('%s answers in %s', async (command, language, first, second, ...options) => {
  const workshop = new Workshop({ 'cask.yaml': cask });
  const argv: string[] = [command, 'cask.yaml', ...options, '--language', language];
  const { code, out } = await workshop.run(argv);
  expect(code).toBe(0);
  expect(out).toContain(first);
  expect(out).toContain(second);
  expect(out).toMatch(/\d,\d/);
  const points = out.replace(/Cask 2\.5/g, '').match(/\d\.\d/g);
  expect(points).toBeNull();
});

test('check words errors and warnings, with the place and the key as ever', async () => {
  const thin = cask.replace('count: 28', 'count: 28, thickness: 45');
  const workshop = new Workshop({ 'bad.yaml': cask.replace('945', '1,5'), 'thin.yaml': thin });
  const wrong = await workshop.run(['check', 'bad.yaml', '--language', 'de']);
  expect(wrong).toMatchObject({ code: 2, out: '' });
  expect(wrong.err).toMatch(/^bad\.yaml:4:9: height: `height` ist eine Länge.*nach einem Punkt/m);
  const doubtful = await workshop.run(['check', 'thin.yaml', '--language', 'fr']);
  expect(doubtful.code).toBe(0);
  expect(doubtful.err).toMatch(/^thin\.yaml:\d+:\d+: avertissement: heads\.dowels: Aucun goujon/m);
  expect(doubtful.out).toMatch(/^thin\.yaml: peut se construire, avec \d+ avertissements?$/m);
});

test('programs read the same whatever people read, but for the words of warnings', async () => {
  const workshop = new Workshop({ 'cask.yaml': cask });
  for (const argv of [
    ['figures', 'cask.yaml', '--json'],
    ['dip', 'cask.yaml', '--csv'],
  ]) {
    const english = await workshop.run(argv);
    expect(await workshop.run([...argv, '--language', 'fr'])).toEqual(english);
  }
});

test('prove says in German what is and what is not as it should be, and draws it so', async () => {
  const workshop = new Workshop();
  await workshop.run(['draw', 'bucket.yaml', '--out', 'out', '--formats', 'dxf']);
  const prove = ['prove', 'out', '--language', 'de'];
  const good = await workshop.run([...prove, '--picture', 'gap.svg']);
  expect(good.code).toBe(0);
  expect(good.out).toMatch(/^Bewiesen: alle \d+ beurteilten Dinge/m);
  expect(good.out).toMatch(/±0,\d+ mm/);
  expect(decoded(workshop.read('gap.svg'))).toContain('Spalt längs der Fuge');
  workshop.write('out/head.dxf', '');
  const bad = await workshop.run(prove);
  expect(bad.code).toBe(1);
  expect(bad.out).toContain('head.dxf: Datei lesbar: die Datei ist leer');
});

test('what cannot be read or written is said in the language too', async () => {
  const workshop = new Workshop({
    'bucket.yaml': bucket,
    'binary.yaml': new Uint8Array([0, 1, 2]),
  });
  const missing = await workshop.run(['check', 'missing.yaml', 'binary.yaml', '--language', 'fr']);
  expect(missing.code).toBe(2);
  expect(missing.err).toContain('missing.yaml: ne peut pas être lu : il n’y a pas de tel fichier');
  expect(missing.err).toContain('binary.yaml: n’est pas un fichier de texte');
  await workshop.run(draw);
  const twice = await workshop.run([...draw, '--language', 'de']);
  expect(twice.code).toBe(2);
  expect(twice.err).toMatch(/^nichts wurde geschrieben: .* und \d+ weitere sind schon da/);
  const nowhere = await workshop.run(['prove', 'nowhere', '--language', 'de']);
  expect(nowhere).toMatchObject({ code: 2, err: 'nowhere: einen solchen Ordner gibt es nicht\n' });
});
