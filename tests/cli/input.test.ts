/** Everything that can be wrong with a file, for every command that reads one: exit 2, a reason, nothing written. */
import { chmodSync, mkdirSync, symlinkSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bucket, Workshop } from './workshop.js';

const commands = {
  check: (spec: string) => ['check', spec],
  figures: (spec: string) => ['figures', spec],
  draw: (spec: string) => ['draw', spec, '--out', 'out'],
};

const bytes = (text: string): Uint8Array => Buffer.from(text);

/** name of the file, its content, and a word of the answer */
const wrong: readonly (readonly [string, string | Uint8Array, RegExp])[] = [
  ['empty.yaml', '', /^empty\.yaml:1:1: /],
  ['list.yaml', '- 1\n- 2\n', /^list\.yaml:1:1: /],
  ['broken.yaml', 'vessel: [tub\n', /^broken\.yaml:\d+:\d+: /],
  ['large.yaml', `${bucket}# ${'x'.repeat(256 * 1024)}\n`, /too large: a spec has at most 256 kB/],
  ['binary.yaml', bytes('vessel: tub\0\u0001'), /not a text file/],
  ['latin.yaml', Buffer.from('title: F\xe4ssle\n', 'latin1'), /UTF-8/],
  ['wide.yaml', Buffer.from(`\ufeff${bucket}`, 'utf16le'), /UTF-16: save it as UTF-8/],
  ['unknown.yaml', `${bucket}hight: 3\n`, /^unknown\.yaml:8:1: hight: .*height/],
  ['wrong.yaml', bucket.replace('290', 'tall'), /^wrong\.yaml:4:9: height: /],
  ['twice.yaml', `${bucket}height: 3\n`, /^twice\.yaml:8:1: height: /],
  ['absurd.yaml', bucket.replace('290', '1e300'), /^absurd\.yaml:4:9: height: /],
  [
    'unbuildable.yaml',
    bucket.replace('thickness: 16', 'thickness: 140'),
    /^unbuildable\.yaml:7:\d+: /,
  ],
];

describe.each(Object.entries(commands))('%s', (_name, command) => {
  test.each(wrong)('%s', async (name, content, words) => {
    const workshop = new Workshop({ [name]: content });
    const { code, out, err } = await workshop.run(command(name));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(words);
    expect(err).not.toMatch(/^\s+at /m);
    expect(workshop.files()).toEqual([name]);
  });

  test('a file that is not there, a folder, a link in a circle', async () => {
    const workshop = new Workshop({});
    mkdirSync(workshop.path('folder.yaml'));
    symlinkSync('circle.yaml', workshop.path('circle.yaml'));
    const said = [];
    for (const name of ['none.yaml', 'folder.yaml', 'circle.yaml', 'a\0b']) {
      const { code, out, err } = await workshop.run(command(name));
      expect({ code, out }).toEqual({ code: 2, out: '' });
      said.push(err);
    }
    expect(said.slice(0, 3)).toEqual([
      'none.yaml: cannot be read: there is no such file\n',
      'folder.yaml: cannot be read: it is a folder, not a file\n',
      'circle.yaml: cannot be read: its links lead in a circle\n',
    ]);
    expect(workshop.files()).toEqual(['circle.yaml']);
  });

  test.skipIf(process.getuid?.() === 0)('a file without permission to read', async () => {
    const workshop = new Workshop();
    chmodSync(workshop.path('bucket.yaml'), 0);
    const { code, err } = await workshop.run(command('bucket.yaml'));
    expect({ code, err }).toEqual({
      code: 2,
      err: 'bucket.yaml: cannot be read: permission is denied\n',
    });
  });

  test('standard input is read like a file, and is named stdin', async () => {
    const workshop = new Workshop({});
    expect((await workshop.run(command('-'), { stdin: bucket })).code).toBe(0);
    const { code, err } = await workshop.run(command('-'), { stdin: `${bucket}hight: 3\n` });
    expect(code).toBe(2);
    expect(err).toMatch(/^stdin:8:1: hight: /);
    const large = await workshop.run(command('-'), { stdin: `#${'x'.repeat(300_000)}` });
    expect(large.err).toBe('stdin: is too large: a spec has at most 256 kB\n');
  });

  test('a file with a byte order mark is read', async () => {
    const workshop = new Workshop({ 'marked.yaml': `\ufeff${bucket}` });
    expect((await workshop.run(command('marked.yaml'))).code).toBe(0);
  });

  test('nothing that a terminal acts on comes out of a file or its name', async () => {
    const name = 'odd\u001b]0;x\u0007\u202e.yaml';
    const workshop = new Workshop({ [name]: `${bucket}"\\e[31mhight\\u202e": 3\n` });
    const { code, err } = await workshop.run(command(name));
    expect(code).toBe(2);
    expect(err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202e]/);
  });
});

test('all errors of all files are said at once', async () => {
  const workshop = new Workshop({
    'a.yaml': bucket.replace('290', 'tall').replace('16,', 'many,'),
    'b.yaml': `${bucket}hight: 3\n`,
    'c.yaml': bucket,
  });
  const { code, out, err } = await workshop.run([
    'check',
    'a.yaml',
    'none.yaml',
    'b.yaml',
    'c.yaml',
  ]);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  const places = err.split('\n').map((line) => line.split(': ')[0]);
  expect(places).toEqual(['a.yaml:4:9', 'a.yaml:7:18', 'none.yaml', 'b.yaml:8:1', '']);
});

test('standard input can be only one of the specs', async () => {
  const { code, err } = await new Workshop().run(['check', '-', '-'], { stdin: bucket });
  expect({ code, err }).toEqual({
    code: 2,
    err: 'standard input (-) can be only one of the specs\n',
  });
});
