/** What the command line says of itself, and what it answers to what it doesn't know. */
import { expect, test } from 'vitest';
import packageFile from '../../package.json' with { type: 'json' };
import { Workshop } from './workshop.js';

test('--version is the package’s', async () => {
  expect(await new Workshop().run(['--version'])).toEqual({
    code: 0,
    out: `${packageFile.version}\n`,
    err: '',
  });
});

test.each([['--help'], ['-h'], ['help']])(
  '%s names every command and shows examples',
  async (word) => {
    const { code, out, err } = await new Workshop().run([word]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const name of [
      'new',
      'size',
      'check',
      'figures',
      'draw',
      'prove',
      'page',
      'dip',
      'recut',
      'Examples:',
      'Exit codes',
    ])
      expect(out).toContain(name);
  },
);

test.each(['new', 'size', 'check', 'figures', 'draw', 'prove', 'page', 'dip', 'recut'])(
  'help of %s has examples and --quiet',
  async (name) => {
    const { code, out } = await new Workshop().run([name, '--help']);
    expect(code).toBe(0);
    expect(out).toContain('Examples:');
    expect(out).toContain(`staveloft ${name} `);
    expect(out).toContain('--quiet');
    expect((await new Workshop().run(['help', name])).out).toBe(out);
  },
);

test('without a command: the help, as an error', async () => {
  const { code, out, err } = await new Workshop().run([]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain('Usage: staveloft');
});

test.each([
  [['drwa', 'x.yaml'], 'draw'],
  [['fgures', 'x.yaml'], 'figures'],
  [['draw', 'bucket.yaml', '--out', 'o', '--formts', 'svg'], '--formats'],
  [['draw', 'bucket.yaml', '--out', 'o', '--formats', 'svg,dxg'], 'dxf'],
  [['draw', 'bucket.yaml', '--out', 'o', '--pieces', 'stave,haead'], 'head'],
  [['draw', 'bucket.yaml', '--out', 'o', '--paper', 'leter'], 'letter'],
  [['draw', 'bucket.yaml', '--out', 'o', '--lettering', 'outline'], 'outlines'],
  [['new', 'bukcet'], 'bucket'],
])('%j: exit 2, and what was meant is named', async (argv, meant) => {
  const workshop = new Workshop();
  const { code, out, err } = await workshop.run(argv);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err.toLowerCase()).toMatch(new RegExp(`did you mean ${meant}\\?`));
  expect(workshop.files()).toEqual(['bucket.yaml']);
});

test.each([
  [['draw', 'bucket.yaml'], '--out'],
  [['draw', '--out', 'o'], 'spec'],
  [['check'], 'spec'],
  [['figures'], 'spec'],
  [['figures', 'bucket.yaml', 'other.yaml'], 'too many arguments'],
  [['new'], 'which template'],
])('%j: exit 2, and what is missing or too much is said', async (argv, word) => {
  const { code, err } = await new Workshop().run(argv);
  expect(code).toBe(2);
  expect(err).toContain(word);
});

test('nothing is ever coloured', async () => {
  const workshop = new Workshop();
  for (const env of [{}, { NO_COLOR: '1' }, { FORCE_COLOR: '3' }] as Record<string, string>[])
    for (const argv of [['--help'], ['figures', 'bucket.yaml'], ['check', 'nothing.yaml']]) {
      const { out, err } = await workshop.run(argv, { env });
      expect(out + err).not.toContain('\u001b');
    }
});
