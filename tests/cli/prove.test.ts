import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { edgeMoved } from '../bench-test/mutate-dxf.js';
import { decoded } from '../writers/decoded.js';
import { bucket, root, Workshop } from './workshop.js';

interface Finding {
  check: string;
  passed: boolean;
  files: string[];
  measured: number | null;
}
interface File {
  passed: boolean;
  findings: Finding[];
  notDrawn: string[];
}

const keg = readFileSync(join(root, 'templates/keg-30.yaml'), 'utf8');

async function drawn(...more: string[]): Promise<Workshop> {
  const workshop = new Workshop({ 'keg.yaml': keg, 'bucket.yaml': bucket });
  const argv = ['draw', 'keg.yaml', '--out', 'keg', '--formats', 'dxf', '--quiet', ...more];
  expect(await workshop.run(argv)).toEqual({ code: 0, out: '', err: '' });
  return workshop;
}

function spoil(workshop: Workshop, name: string, change: (text: string) => string): void {
  workshop.write(join('keg', name), change(workshop.read('keg', name)));
}

test('a folder as draw wrote it: exit 0, and every number with its file, limit and worst place', async () => {
  const workshop = await drawn();
  const before = workshop.files();
  const { code, out, err } = await workshop.run(['prove', 'keg']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(/^keg: \d+ DXF files against its spec.yaml, /);
  expect(out).toMatch(/^stave\.dxf$/m);
  expect(out).toMatch(/^ +joint gap +.*\(worst of \d+\) +-?0\.00\d+ mm +0 mm +±0\.02 mm$/m);
  expect(out).toMatch(/^ +head in its groove, diameter .* mm +±0\.01 mm$/m);
  expect(out).toMatch(/^ +capacity .* litres .* litres/m);
  expect(out).toMatch(/^Proved: all \d+ things judged are within tolerance\.$/m);
  expect(out).toContain('not the wood');
  expect(workshop.files()).toEqual(before);
});

test('--json: passed, and what was found with the files that carry it', async () => {
  const workshop = await drawn();
  const { code, out } = await workshop.run(['prove', 'keg', '--json']);
  const { passed, findings, notDrawn } = JSON.parse(out) as File;
  expect({ code, passed, notDrawn }).toEqual({ code: 0, passed: true, notDrawn: [] });
  expect(findings.every((each) => each.passed && each.files.length > 0)).toBe(true);
});

test('a joint edge moved by 0.1 mm: exit 1, and the sentences say so', async () => {
  const workshop = await drawn();
  spoil(workshop, 'stave.dxf', (text) => edgeMoved(text, 'outline', 0.1));
  const { code, out, err } = await workshop.run(['prove', 'keg']);
  expect({ code, err }).toEqual({ code: 1, err: '' });
  expect(out).toMatch(
    /^ +stave\.dxf: edge of the blank.*, outer face, upper edge.*: 0\.1\d* mm, should be 0 mm, ±0\.01 mm allowed$/m,
  );
  expect(out).toMatch(/^ +stave\.dxf: joint gap, at station .*: -0\.\d+ mm, should be 0 mm/m);
  expect(out).toMatch(/^Not proved: \d+ of \d+ things judged are not as they should be\.$/m);
  const json = await workshop.run(['prove', 'keg', '--json']);
  expect(json.code).toBe(1);
  expect((JSON.parse(json.out) as File).passed).toBe(false);
});

test('--quiet: what is wrong on standard error, nothing else', async () => {
  const workshop = await drawn();
  expect(await workshop.run(['prove', 'keg', '--quiet'])).toEqual({ code: 0, out: '', err: '' });
  spoil(workshop, 'head-top.dxf', () => '');
  const { code, out, err } = await workshop.run(['prove', 'keg', '--quiet']);
  expect({ code, out }).toEqual({ code: 1, out: '' });
  expect(err).toMatch(/^head-top\.dxf: file can be read: the file is empty$/m);
});

describe('pieces that were chosen', () => {
  test('staves alone: what they show is judged, and what is not is said', async () => {
    const workshop = await drawn('--pieces', 'stave');
    const { code, out } = await workshop.run(['prove', 'keg']);
    expect(code).toBe(0);
    expect(out).toMatch(/^ +joint gap/m);
    expect(out).toMatch(
      /^Not judged, since the folder was drawn without: head-top\.dxf, .*hoops\.dxf/m,
    );
  });

  test('a head alone: no joints, no capacity, no picture of them', async () => {
    const workshop = await drawn('--pieces', 'head');
    const { code, out } = await workshop.run(['prove', 'keg']);
    expect(code).toBe(0);
    expect(out).not.toMatch(/^ +joint gap/m);
    expect(out).toMatch(/^Not judged, .*: stave\.dxf/m);
    const pictured = await workshop.run(['prove', 'keg', '--picture', 'gap.svg']);
    expect(pictured).toMatchObject({ code: 2, out: '' });
    expect(pictured.err).toMatch(/drawn without staves/);
  });

  test('gauges alone prove nothing of a vessel', async () => {
    const workshop = await drawn('--pieces', 'end-gauge');
    const { code, out } = await workshop.run(['prove', 'keg']);
    expect(code).toBe(1);
    expect(out).toMatch(/stave\.dxf: file there: the file is missing/);
  });

  test('pictures alone cannot be measured', async () => {
    const workshop = new Workshop({ 'keg.yaml': keg });
    await workshop.run([
      'draw',
      'keg.yaml',
      '--out',
      'keg',
      '--formats',
      'svg',
      '--pieces',
      'stave',
    ]);
    const { code, out } = await workshop.run(['prove', 'keg']);
    expect(code).toBe(1);
    expect(out).toMatch(/stave\.dxf: file there: the file is missing/);
  });
});

describe('the picture', () => {
  test('an SVG of the gap, written whole and never over another file', async () => {
    const workshop = await drawn('--pieces', 'stave');
    const argv = ['prove', 'keg', '--picture', 'gap.svg'];
    expect((await workshop.run(argv)).code).toBe(0);
    const svg = decoded(workshop.read('gap.svg'));
    expect(svg).toMatch(/^<\?xml/);
    expect(svg).toContain('<title>Gap along the joint – ');
    for (const words of ['allowed ±0.02 mm', 'outer face', 'inner face', 'station, mm'])
      expect(svg).toContain(words);
    const again = await workshop.run(argv);
    expect(again).toMatchObject({ code: 2, out: '' });
    expect(again.err).toMatch(/gap\.svg is there already; --replace writes over/);
    expect((await workshop.run([...argv, '--replace'])).code).toBe(0);
    expect(decoded(workshop.read('gap.svg'))).toBe(svg);
  });

  test('without a ring there is none, and the proof still says why', async () => {
    const workshop = await drawn('--pieces', 'stave');
    spoil(workshop, 'stave.dxf', () => 'nothing');
    const { code, out, err } = await workshop.run(['prove', 'keg', '--picture', 'gap.svg']);
    expect(code).toBe(1);
    expect(err).toMatch(/gap\.svg was not drawn/);
    expect(out).toMatch(/stave\.dxf: file can be read: this is no DXF/);
    expect(workshop.files()).not.toContain('gap.svg');
  });
});

describe('bad input: exit 2, nothing on standard output', () => {
  test.each([
    [['prove', 'nowhere'], /nowhere: there is no such folder/],
    [['prove', 'keg.yaml'], /it is a file: give the folder/],
    [['prove', 'keg', '--jsno'], /--json/],
    [['prove'], /folder/],
  ])('%j', async (argv, reason) => {
    const { code, out, err } = await (await drawn('--pieces', 'stave')).run(argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(reason);
  });

  test('a folder without a spec', async () => {
    const { code, err } = await new Workshop().run(['prove', '.']);
    expect(code).toBe(2);
    expect(err).toMatch(/no spec\.yaml/);
  });

  test('a broken spec: file, line and column', async () => {
    const workshop = await drawn('--pieces', 'stave');
    spoil(workshop, 'spec.yaml', (text) => text.replace(/^height:.*$/m, 'heigth: 300'));
    const { code, out, err } = await workshop.run(['prove', 'keg']);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^keg\/spec\.yaml:\d+:\d+: .*heigth/m);
  });
});

test('files that are none, or too many bytes: said, not followed', async () => {
  const { mkdirSync, symlinkSync } = await import('node:fs');
  const workshop = await drawn();
  mkdirSync(workshop.path('keg/folder.dxf'));
  symlinkSync('nowhere.dxf', workshop.path('keg/link.dxf'));
  workshop.write('keg/large.dxf', Buffer.alloc(9 * 1024 * 1024, '0\n'));
  const { code, out } = await workshop.run(['prove', 'keg']);
  expect(code).toBe(1);
  expect(out).toMatch(/folder\.dxf: file can be read: the file cannot be read/);
  expect(out).toMatch(/link\.dxf: file can be read: the file cannot be read/);
  expect(out).toMatch(/large\.dxf: file can be read: the file is too large/);
});
