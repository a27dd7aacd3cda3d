import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root, Workshop } from './workshop.js';

const names = readdirSync(join(root, 'templates'))
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => name.replace('.yaml', ''));
const text = readFileSync(join(root, 'templates/keg-30.yaml'), 'utf8');

test('--list names every template with its title', async () => {
  const { code, out, err } = await new Workshop().run(['new', '--list']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const lines = out.trimEnd().split('\n');
  expect(lines.map((line) => line.split(' ')[0])).toEqual([...names].sort());
  for (const line of lines) expect(line).toMatch(/^\S+ {2,}\S/);
});

test('to standard output, ready for a file', async () => {
  expect(await new Workshop().run(['new', 'keg-30'])).toEqual({ code: 0, out: text, err: '' });
});

test('to a file, never over one that is there unless told to', async () => {
  const workshop = new Workshop({});
  const first = await workshop.run(['new', 'keg-30', '--out', 'my.yaml']);
  expect(first).toEqual({
    code: 0,
    out: 'wrote my.yaml; next: staveloft check my.yaml\n',
    err: '',
  });
  expect(workshop.read('my.yaml')).toBe(text);
  workshop.write('my.yaml', 'mine');
  const second = await workshop.run(['new', 'keg-30', '--out', 'my.yaml']);
  expect(second.code).toBe(2);
  expect(second.err).toContain('--replace');
  expect(workshop.read('my.yaml')).toBe('mine');
  const third = await workshop.run(['new', 'keg-30', '--out', 'my.yaml', '--replace', '--quiet']);
  expect(third).toEqual({ code: 0, out: '', err: '' });
  expect(workshop.read('my.yaml')).toBe(text);
});

test.each(['../package', '..', 'keg-30.yaml', '', 'x'.repeat(1000)])(
  'a template is a name of the list, not a path: %j',
  async (name) => {
    const { code, out, err } = await new Workshop().run(['new', name]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('The templates: ');
  },
);

test('a folder in the way is refused, even with --replace', async () => {
  const workshop = new Workshop({});
  mkdirSync(workshop.path('my.yaml'));
  const { code, err } = await workshop.run(['new', 'keg-30', '--out', 'my.yaml', '--replace']);
  expect(code).toBe(2);
  expect(err).toContain('is a folder');
});
