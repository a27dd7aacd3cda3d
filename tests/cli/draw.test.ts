import { mkdirSync, readdirSync, readFileSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { pieces, planVessel } from '../../src/index.js';
import { bucket, root, Workshop } from './workshop.js';

const draw = ['draw', 'bucket.yaml', '--out', 'out'];
const stave = ['--pieces', 'stave'];

test('all pieces in all formats, the spec and a page; and it says what it wrote', async () => {
  const workshop = new Workshop();
  const { code, out, err } = await workshop.run(draw);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const written = workshop.files().filter((name) => name.startsWith('out/'));
  for (const piece of ['stave', 'stave-fan', 'head', 'head-board-1', 'head-edge', 'end-gauge'])
    for (const format of ['svg', 'dxf', 'pdf']) expect(written).toContain(`out/${piece}.${format}`);
  expect(written).toContain('out/spec.yaml');
  expect(written).toContain('out/index.html');
  expect(out).toContain(`wrote ${written.length} files`);
  for (const name of written) expect(out).toContain(name);
  expect(workshop.files()).toEqual(['bucket.yaml', ...written]);
});

test('each file is of its kind', async () => {
  const workshop = new Workshop();
  await workshop.run([...draw, ...stave]);
  expect(workshop.read('out/stave.svg')).toMatch(/^<\?xml [^]*<\/svg>\n$/);
  expect(workshop.read('out/stave.dxf')).toMatch(/^ *0\nSECTION\n[^]*EOF\n$/);
  expect(workshop.read('out/stave.pdf')).toMatch(/^%PDF-[^]*%%EOF\n?$/);
});

test('the spec that it writes draws the same again', async () => {
  const workshop = new Workshop();
  await workshop.run([...draw, ...stave]);
  const { code } = await workshop.run(['draw', 'out/spec.yaml', '--out', 'again', ...stave]);
  expect(code).toBe(0);
  for (const name of ['spec.yaml', 'index.html', 'stave.svg', 'stave.dxf', 'stave.pdf'])
    expect(workshop.read('again', name)).toBe(workshop.read('out', name));
});

test('only the formats and pieces that are asked for, each once', async () => {
  const workshop = new Workshop();
  await workshop.run([...draw, '--formats', 'dxf, SVG,dxf', '--pieces', 'end-gauge,head']);
  expect(readdirSync(workshop.path('out')).sort()).toEqual([
    'end-gauge.dxf',
    'end-gauge.svg',
    'head.dxf',
    'head.svg',
    'index.html',
    'spec.yaml',
  ]);
});

test('every piece of the list can be asked for by name', async () => {
  const widths = `widths: [${Array.from({ length: 16 }, (_, i) => 55 + (i % 5)).join(', ')}]`;
  for (const { name } of pieces) {
    const workshop = new Workshop({ 'bucket.yaml': bucket.replace('count: 16', widths) });
    const { code } = await workshop.run([...draw, '--pieces', name, '--formats', 'dxf']);
    expect([name, code]).toEqual([name, 0]);
    expect(readdirSync(workshop.path('out')).length).toBeGreaterThan(2);
  }
});

test('a piece that the vessel has not is said, and nothing written', async () => {
  const workshop = new Workshop();
  const { code, err } = await workshop.run([...draw, '--pieces', 'stave-each']);
  expect({ code, err }).toEqual({
    code: 2,
    err: 'bucket.yaml: this vessel has none of these pieces\n',
  });
  expect(workshop.files()).toEqual(['bucket.yaml']);
});

test('paper and printer reach the PDF', async () => {
  const workshop = new Workshop();
  const pdf = async (...more: string[]): Promise<string> => {
    const argv = [...draw, ...stave, '--formats', 'pdf', '--replace', ...more];
    expect((await workshop.run(argv)).code).toBe(0);
    return readFileSync(workshop.path('out/stave.pdf'), 'latin1');
  };
  const plain = await pdf();
  expect(await pdf('--paper', 'a4')).toBe(plain);
  expect(await pdf('--paper', 'letter')).not.toBe(plain);
  expect(await pdf('--printed', '99.6x99.8')).not.toBe(plain);
  expect(await pdf('--printed', '100x100')).toBe(plain);
});

test('lettering as outlines leaves no text in the DXF', async () => {
  const workshop = new Workshop();
  await workshop.run([...draw, ...stave, '--formats', 'dxf']);
  expect(workshop.read('out/stave.dxf')).toMatch(/\nTEXT\n/);
  const argv = [...draw, ...stave, '--formats', 'dxf', '--lettering', 'outlines', '--replace'];
  await workshop.run(argv);
  expect(workshop.read('out/stave.dxf')).not.toMatch(/\nTEXT\n/);
});

test('boards of a head are nested on the plank that is given, in the units of the spec', async () => {
  const workshop = new Workshop();
  workshop.write('cask.yaml', (await workshop.run(['new', 'wine-cask-225'])).out);
  workshop.write('in.yaml', (await workshop.run(['new', 'keg-10-inches'])).out);
  const nested = ['--pieces', 'head-router', '--formats', 'dxf', '--plank'];
  const drawn = async (spec: string, out: string, size: string) =>
    (await workshop.run(['draw', spec, '--out', out, ...nested, size])).code;
  // a sheet that holds all six boards of the cask, and the same for the keg: 40 x 30 in
  expect(await drawn('cask.yaml', 'a', '1250x1250')).toBe(0);
  expect(workshop.read('a/head-router-1.dxf')).toContain('1250');
  expect(await drawn('in.yaml', 'b', '40x30')).toBe(0);
  expect(workshop.read('b/head-router-1.dxf')).toContain('1016');
  // a plank as wide as one board takes several
  expect(await drawn('cask.yaml', 'c', '620x150')).toBe(0);
  expect(
    workshop.files().filter((name) => name.startsWith('c/head-router')).length,
  ).toBeGreaterThan(2);
  expect(await drawn('cask.yaml', 'd', '30000x500')).toBe(2);
});

test('the fan takes its widths in the units of the spec', async () => {
  const inches = 'vessel: tub\nunits: in\nheight: 12\ntop: 12\nbottom: 10\nstaves: { count: 16 }\n';
  const workshop = new Workshop({ 'bucket.yaml': bucket, 'in.yaml': inches });
  const fan = ['--pieces', 'stave-fan', '--formats', 'dxf', '--fan'];
  expect((await workshop.run(['draw', 'bucket.yaml', '--out', 'a', ...fan, '40-60'])).code).toBe(0);
  expect((await workshop.run(['draw', 'in.yaml', '--out', 'b', ...fan, '1.5-2.5'])).code).toBe(0);
  expect(workshop.read('a/stave-fan.dxf')).toMatch(/60\.0? wide/);
  expect(workshop.read('b/stave-fan.dxf')).toMatch(/2\.500 wide/);
  const { code, err } = await workshop.run(['draw', 'in.yaml', '--out', 'c', ...fan, '60-110']);
  expect(code).toBe(2);
  expect(err).toMatch(/110 in wide/);
});

describe('values of options', () => {
  test.each([
    ['--printed', '99.6', '99.6x99.8'],
    ['--printed', '9.96x9.98', 'actual size'],
    ['--printed', '99,6x99,8', '99.6x99.8'],
    ['--printed', 'NaNx1', '99.6x99.8'],
    ['--printed', '1e2x100', '99.6x99.8'],
    ['--plank', '0x200', '2000x250'],
    ['--plank', '2000', '2000x250'],
    ['--fan', '60', '60-110'],
    ['--fan', '110-60', 'not above the second'],
    ['--fan', '0-60', 'above 0'],
    ['--fan', '60-1100', 'half of the vessel'],
    ['--fan', '-5-60', '60-110'],
    ['--formats', '', 'svg, dxf, pdf'],
    ['--formats', 'svg,,dxf', 'svg, dxf, pdf'],
    ['--pieces', '../stave', 'none of'],
    ['--paper', 'A5', 'none of'],
  ])('%s %j is refused', async (option, value, words) => {
    const workshop = new Workshop();
    const { code, out, err } = await workshop.run([...draw, `${option}=${value}`]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(words);
    expect(workshop.files()).toEqual(['bucket.yaml']);
  });

  test.each([
    [['--formats', 'svg', '--paper', 'a3'], '--paper is for PDF'],
    [['--formats', 'dxf', '--printed', '99x99'], '--printed is for PDF'],
    [['--formats', 'svg', '--lettering', 'text'], '--lettering is for DXF'],
    [['--pieces', 'head', '--fan', '60-110'], '--fan is for the piece stave-fan'],
  ])('%j has nothing to act on', async (more, words) => {
    const { code, err } = await new Workshop().run([...draw, ...more]);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });

  test('a fan of too many widths is refused', async () => {
    const vat = bucket.replace('300', '2000').replace('260', '1990').replace('290', '2000');
    const { code, err } = await new Workshop({ 'bucket.yaml': vat }).run([
      ...draw,
      '--fan',
      '10-900',
    ]);
    expect(code).toBe(2);
    expect(err).toContain('more than 60 widths');
  });
});

describe('what is there already', () => {
  test('is not overwritten, and nothing else is written either', async () => {
    const workshop = new Workshop();
    mkdirSync(workshop.path('out'));
    workshop.write('out/stave.dxf', 'mine');
    const { code, out, err } = await workshop.run([...draw, ...stave]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(
      /^nothing was written: .*stave\.dxf is there already; --replace writes over\n$/,
    );
    expect(workshop.files()).toEqual(['bucket.yaml', 'out/stave.dxf']);
    expect(workshop.read('out/stave.dxf')).toBe('mine');
  });

  test('is replaced on request, and what is none of ours is left alone', async () => {
    const workshop = new Workshop();
    mkdirSync(workshop.path('out'));
    workshop.write('out/stave.dxf', 'old');
    workshop.write('out/notes.txt', 'mine');
    expect((await workshop.run([...draw, ...stave, '--replace'])).code).toBe(0);
    expect(workshop.read('out/stave.dxf')).toContain('SECTION');
    expect(workshop.read('out/notes.txt')).toBe('mine');
    expect(workshop.files().filter((name) => name.includes('.tmp'))).toEqual([]);
  });

  test('drawn twice, the bytes are the same', async () => {
    const workshop = new Workshop();
    await workshop.run(draw);
    const before = workshop.files().map((name) => readFileSync(workshop.path(name), 'latin1'));
    await workshop.run([...draw, '--replace']);
    const after = workshop.files().map((name) => readFileSync(workshop.path(name), 'latin1'));
    expect(after).toEqual(before);
  });

  test('a link is replaced, and what it points to is left alone', async () => {
    const workshop = new Workshop();
    mkdirSync(workshop.path('out'));
    workshop.write('precious.txt', 'mine');
    symlinkSync('../precious.txt', workshop.path('out/stave.dxf'));
    expect((await workshop.run([...draw, ...stave])).code).toBe(2);
    expect((await workshop.run([...draw, ...stave, '--replace'])).code).toBe(0);
    expect(workshop.read('precious.txt')).toBe('mine');
    expect(workshop.read('out/stave.dxf')).toContain('SECTION');
  });

  test('a file where the folder should be', async () => {
    const workshop = new Workshop();
    for (const out of ['bucket.yaml', 'bucket.yaml/deeper']) {
      const { code, err } = await workshop.run(['draw', 'bucket.yaml', '--out', out, ...stave]);
      expect(code).toBe(2);
      expect(err).toMatch(/^nothing was written: /);
    }
    expect(workshop.files()).toEqual(['bucket.yaml']);
  });
});

describe('several specs', () => {
  const both = ['draw', 'bucket.yaml', 'tall.yaml', '--out', 'out', ...stave, '--formats', 'svg'];
  const specs = { 'bucket.yaml': bucket, 'tall.yaml': bucket.replace('290', '400') };

  test('a folder for each, named for its file', async () => {
    const workshop = new Workshop(specs);
    const { code, out } = await workshop.run(both);
    expect(code).toBe(0);
    expect(out).toContain(join('out', 'tall', 'index.html'));
    expect(workshop.files()).toEqual(
      expect.arrayContaining(['out/bucket/stave.svg', 'out/tall/stave.svg']),
    );
    expect(workshop.read('out/tall/spec.yaml')).toContain('height: 400');
  });

  test('all or none: one that is wrong stops all', async () => {
    const workshop = new Workshop({ ...specs, 'tall.yaml': `${bucket}hight: 3\n` });
    expect((await workshop.run(both)).code).toBe(2);
    expect(workshop.files()).toEqual(['bucket.yaml', 'tall.yaml']);
  });

  test('all or none: one that is in the way stops all', async () => {
    const workshop = new Workshop(specs);
    mkdirSync(workshop.path('out/tall'), { recursive: true });
    workshop.write('out/tall/stave.svg', 'mine');
    expect((await workshop.run(both)).code).toBe(2);
    expect(workshop.files()).toEqual(['bucket.yaml', 'out/tall/stave.svg', 'tall.yaml']);
  });

  test('two of one name, or of one but for capitals, are refused', async () => {
    const workshop = new Workshop({ 'keg.yaml': bucket, 'KEG.yml': bucket });
    const { code, err } = await workshop.run(['draw', 'keg.yaml', 'KEG.yml', '--out', 'out']);
    expect({ code, err }).toEqual({
      code: 2,
      err: 'keg.yaml and KEG.yml would go to the same folder, KEG\n',
    });
  });

  test('a name of dots leads nowhere else', async () => {
    const workshop = new Workshop({ '...yaml': bucket, '.yaml': bucket, 'a.b.yaml': bucket });
    const argv = [
      'draw',
      '...yaml',
      '.yaml',
      'a.b.yaml',
      '--out',
      'out',
      ...stave,
      '--formats',
      'svg',
    ];
    expect((await workshop.run(argv)).code).toBe(0);
    expect(readdirSync(workshop.path('out')).sort()).toEqual(['...yaml', '.yaml', 'a.b']);
    expect(readdirSync(workshop.folder).sort()).toEqual(['...yaml', '.yaml', 'a.b.yaml', 'out']);
  });

  test('drawn at once by several commands, each is whole', async () => {
    const workshop = new Workshop(specs);
    const argv = (out: string): string[] => ['draw', 'bucket.yaml', '--out', out, ...stave];
    const answers = await Promise.all(['a', 'b', 'a'].map((out) => workshop.run(argv(out))));
    const codes = answers.map(({ code }) => code);
    expect(codes[1]).toBe(0);
    expect([codes[0], codes[2]].sort()).toEqual([0, 2]);
    expect(workshop.files().filter((name) => name.includes('.tmp'))).toEqual([]);
    expect(workshop.read('a/stave.svg')).toBe(workshop.read('b/stave.svg'));
  });
});

describe('hostile text', () => {
  const titles = [
    '../../etc/x',
    '/tmp/x',
    'a/b\\\\c',
    '</title><script>x()</script>',
    'CON',
    '$(reboot)',
  ];

  test.each(titles)('a title such as %j names no file and is no markup', async (title) => {
    const workshop = new Workshop({
      'bucket.yaml': bucket.replace('title: Bucket', `title: "${title}"`),
    });
    const { code } = await workshop.run([...draw, ...stave]);
    expect(code).toBe(0);
    expect(readdirSync(workshop.path('out')).sort()).toEqual([
      'index.html',
      'spec.yaml',
      'stave.dxf',
      'stave.pdf',
      'stave.svg',
    ]);
    expect(readdirSync(workshop.folder).sort()).toEqual(['bucket.yaml', 'out']);
    expect(workshop.read('out/index.html')).not.toContain('<script');
  });

  test('--out may lead anywhere: that is the user’s choice', async () => {
    const workshop = new Workshop();
    mkdirSync(workshop.path('deep'));
    const out = join('deep', '..', 'beside');
    expect((await workshop.run(['draw', 'bucket.yaml', '--out', out, ...stave])).code).toBe(0);
    expect(workshop.files()).toContain('beside/stave.svg');
  });
});

test('--quiet says nothing', async () => {
  const answer = await new Workshop().run([...draw, ...stave, '--quiet']);
  expect(answer).toEqual({ code: 0, out: '', err: '' });
});

test('every template can be drawn', async () => {
  const names = readdirSync(join(root, 'templates')).filter((name) => name.endsWith('.yaml'));
  for (const name of names) {
    const text = readFileSync(join(root, 'templates', name), 'utf8');
    expect(planVessel(text, name).vessel, name).not.toBeNull();
  }
});
