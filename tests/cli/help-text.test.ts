/** Help below the options: set to the width of the terminal, names in a column, examples as they are. */
import { Command } from 'commander';
import { expect, test } from 'vitest';
import { examples, helpText } from '../../src/cli/help-text.js';
import { Workshop } from './workshop.js';

const example = `staveloft ${'draw '.repeat(20)}--out folder`;
const help = helpText(
  'Prose that is longer than forty-five columns is set in several lines.',
  {
    heading: 'Names:',
    names: [
      ['a', 'short'],
      ['longest-name', 'with words that go on below its own column'],
    ],
  },
  examples(example),
);

/** The help of a command with it, on a terminal of that many columns; none tells no width. */
function shown(columns: number | undefined): string {
  let out = '';
  new Command('tool')
    .addHelpText('after', help)
    .configureOutput({
      writeOut: (text) => (out += text),
      // as commander's own answers where it is no terminal
      getOutHelpWidth: () => columns as number,
    })
    .outputHelp();
  return out.slice(out.indexOf('\nProse'));
}

test('at 45 columns', () => {
  expect(shown(45)).toBe(`
Prose that is longer than forty-five columns
is set in several lines.

Names:
  a             short
  longest-name  with words that go on below its own column

Examples:
  ${example}
`);
});

test('at 60 columns, where there is room beside the names', () => {
  expect(shown(60)).toContain(`
  a             short
  longest-name  with words that go on below its own column
`);
});

test('where no width is known, 80 columns', () => {
  expect(shown(undefined)).toBe(shown(80));
});

test.each([
  '',
  'new',
  'size',
  'check',
  'figures',
  'draw',
  'match',
  'prove',
  'page',
  'dip',
  'recut',
])('help of "%s" keeps to 80 columns but for its examples', async (name) => {
  const { out } = await new Workshop().run([name, '--help'].filter((word) => word !== ''));
  const long = out.split('\n').filter((line) => line.length > 80);
  expect(long.filter((line) => !line.startsWith('  staveloft '))).toEqual([]);
});

test('names of pieces stand apart from what they mean', async () => {
  const { out } = await new Workshop().run(['draw', '--help']);
  expect(out).toMatch(/^ {2}hollowing-gauge {2}templates/m);
  expect(out).toMatch(/^ {2}head {13}the head/m);
});
