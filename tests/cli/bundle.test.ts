/** The built program as a process of its own, as it is installed: in a folder far from the sources. */
import { execFile, execFileSync, spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildBundles } from '../../scripts/build.js';
import packageFile from '../../package.json' with { type: 'json' };
import { bucket, root, Workshop } from './workshop.js';

const home = mkdtempSync(join(tmpdir(), 'staveloft-bundle-'));
const program = join(home, 'dist/staveloft.cjs');

beforeAll(async () => {
  await buildBundles(join(home, 'dist'));
  cpSync(join(root, 'templates'), join(home, 'templates'), { recursive: true });
  writeFileSync(join(home, 'package.json'), '{ "type": "module" }');
}, 120_000);
afterAll(() => rmSync(home, { recursive: true }));

interface Answer {
  code: number | null;
  out: string;
  err: string;
}

function run(argv: readonly string[], workshop = new Workshop(), stdin = ''): Promise<Answer> {
  return new Promise((resolve) => {
    const child = execFile(
      process.execPath,
      [program, ...argv],
      { cwd: workshop.folder },
      (_error, out, err) => resolve({ code: child.exitCode, out, err }),
    );
    child.stdin?.on('error', () => {});
    child.stdin?.end(stdin);
  });
}

test('says its version', async () => {
  expect(await run(['--version'])).toEqual({ code: 0, out: `${packageFile.version}\n`, err: '' });
});

test('draws what the sources draw, byte for byte, in all formats', async () => {
  const workshop = new Workshop();
  const argv = (out: string): string[] => ['draw', 'bucket.yaml', '--out', out];
  expect((await run(argv('built'), workshop)).code).toBe(0);
  expect((await workshop.run(argv('sources'))).code).toBe(0);
  const names = readdirSync(workshop.path('sources'));
  expect(readdirSync(workshop.path('built'))).toEqual(names);
  for (const name of names) {
    const [built, sources] = ['built', 'sources'].map((out) =>
      readFileSync(workshop.path(out, name)),
    );
    expect(built!.equals(sources!), name).toBe(true);
  }
});

test('finds its templates, reads standard input', async () => {
  const { code, out } = await run(['new', 'bucket']);
  expect(code).toBe(0);
  expect(await run(['check', '-'], new Workshop(), out)).toMatchObject({ code: 0, err: '' });
});

test('exit codes reach the shell', async () => {
  expect((await run(['check', 'none.yaml'])).code).toBe(2);
  expect((await run(['chekc'])).code).toBe(2);
  expect((await run([])).code).toBe(2);
});

test('carries the licences of what is bundled', () => {
  const licences = readFileSync(join(home, 'dist/LICENCES.txt'), 'utf8');
  for (const name of ['pdfkit', 'yaml', 'zod', 'commander'])
    expect(licences).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+, (MIT|ISC)$`, 'm'));
  expect(licences).toContain('Permission is hereby granted');
});

const isCache = (name: string): boolean => name.endsWith('.cache');

test('keeps compiled code, and runs without it too', async () => {
  const names = readdirSync(join(home, 'dist/program'));
  expect(names.filter(isCache)).toContain('main.cjs.cache');
  expect(names.filter(isCache).some((name) => name.startsWith('pdf-'))).toBe(true);
  const bare = join(home, 'bare');
  cpSync(join(home, 'dist'), bare, { recursive: true, filter: (path) => !isCache(path) });
  const workshop = new Workshop();
  const argv = [join(bare, 'staveloft.cjs'), 'draw', 'bucket.yaml', '--out', 'out'];
  execFileSync(process.execPath, argv, { cwd: workshop.folder });
  expect(readdirSync(workshop.path('out'))).toContain('stave.pdf');
});

test('loads no more than a command needs', () => {
  const loadedBy = (...argv: string[]): string[] => {
    const script = `const { Script } = require('node:vm'); const vm = require('node:vm');
      vm.Script = class extends Script { constructor(source, options) { super(source, options);
        console.log('loads', require('node:path').basename(options.filename)); } };
      process.argv.splice(1, 1, ${JSON.stringify(program)}); require(${JSON.stringify(program)});`;
    const out = execFileSync(process.execPath, ['-e', script, 'x', ...argv], {
      input: bucket,
      encoding: 'utf8',
    });
    return [...out.matchAll(/^loads (\w+)/gm)].map((match) => match[1]!);
  };
  expect(loadedBy('figures', '-')).toContain('figures');
  expect(loadedBy('figures', '-')).not.toContain('draw');
  const out = join(home, 'out');
  expect(loadedBy('draw', '-', '--out', out, '--formats', 'svg,dxf')).not.toContain('pdf');
  const one = ['--replace', '--pieces', 'stave'];
  expect(loadedBy('draw', '-', '--out', out, ...one)).toContain('pdf');
  // a whole pack is printed by a thread, where there is a processor for it
  const whole = loadedBy('draw', '-', '--out', out, '--replace');
  if (availableParallelism() > 1) expect(whole).not.toContain('pdf');
  else expect(whole).toContain('pdf');
});

test('where printing fails, that is told and nothing is written', async () => {
  const broken = join(home, 'broken');
  cpSync(join(home, 'dist'), broken, { recursive: true });
  rmSync(join(broken, 'DejaVuSans.ttf'));
  const workshop = new Workshop();
  const argv = [join(broken, 'staveloft.cjs'), 'draw', 'bucket.yaml', '--out', 'out'];
  const { status, stderr } = spawnSync(process.execPath, argv, {
    cwd: workshop.folder,
    encoding: 'utf8',
  });
  expect(status).toBe(3);
  expect(stderr).toMatch(/^staveloft: this is a failure of ours, not of your spec: .*DejaVuSans/);
  expect(workshop.files()).toEqual(['bucket.yaml']);
});

test('a reader that closes the pipe early is no failure', async () => {
  const workshop = new Workshop();
  const child = spawn(process.execPath, [program, 'figures', 'bucket.yaml', '--json'], {
    cwd: workshop.folder,
  });
  let err = '';
  child.stderr.on('data', (chunk: Buffer) => (err += chunk.toString()));
  child.stdout.destroy();
  const code = await new Promise((resolve) => child.on('close', resolve));
  expect({ code, err }).toEqual({ code: 0, err: '' });
});

test('stopped at any time, it leaves all files or none', async () => {
  for (const wait of [100, 200, 300, 400, 600]) {
    const workshop = new Workshop();
    const child = spawn(process.execPath, [program, 'draw', 'bucket.yaml', '--out', 'out'], {
      cwd: workshop.folder,
      stdio: 'ignore',
    });
    const ended = new Promise((resolve) => child.on('close', resolve));
    setTimeout(() => child.kill('SIGINT'), wait);
    await ended;
    const files = workshop.files();
    expect(files.some((name) => name.includes('.tmp'))).toBe(false);
    const whole = files.includes('out/index.html') && files.includes('out/end-gauge.pdf');
    expect(whole || files.length === 1).toBe(true);
  }
});

test('the library can be imported, and draws a PDF with a font that is handed to it', async () => {
  const library = (await import(
    /* @vite-ignore */ pathToFileURL(join(home, 'dist/index.js')).href
  )) as typeof import('../../src/index.js');
  const { vessel } = library.planVessel(bucket, 'bucket.yaml');
  const font = readFileSync(join(home, 'dist/DejaVuSans.ttf'));
  const files = await library.renderVessel(vessel!, {
    formats: ['svg', 'pdf'],
    pieces: ['stave'],
    font: () => Promise.resolve(font),
  });
  expect(files.map(({ name }) => name)).toEqual(['stave.svg', 'stave.pdf']);
});

describe('many specs, drawn by several threads', () => {
  const names = Array.from({ length: 8 }, (_, i) => `b${i}`);
  const bench = (): Workshop =>
    new Workshop(
      Object.fromEntries(
        names.map((name, i) => [`${name}.yaml`, bucket.replace('290', String(290 + i))]),
      ),
    );
  const specs = names.map((name) => `${name}.yaml`);
  const pieces = ['--pieces', 'stave,head'];

  test('each is what it is when drawn alone, and told in order', async () => {
    const workshop = bench();
    const many = await run(['draw', ...specs, '--out', 'many', ...pieces], workshop);
    expect(many).toMatchObject({ code: 0, err: '' });
    const told = [...many.out.matchAll(/^to look at them, open many.(b\d)/gm)];
    expect(told.map((match) => match[1])).toEqual(names);
    for (const [i, name] of names.entries()) {
      const alone = ['draw', specs[i]!, '--out', `alone/${name}`, ...pieces];
      expect((await workshop.run(alone)).code).toBe(0);
      for (const each of readdirSync(workshop.path('alone', name))) {
        const [one, other] = ['alone', 'many'].map((folder) =>
          readFileSync(workshop.path(folder, name, each)),
        );
        expect(other!.equals(one!), `${name}/${each}`).toBe(true);
      }
    }
  }, 60_000);

  test('a file in the way of the last: nothing is written', async () => {
    const workshop = bench();
    await workshop.run(['draw', 'b7.yaml', '--out', 'many/b7', '--pieces', 'stave', '--quiet']);
    const before = workshop.files();
    const { code, err } = await run(['draw', ...specs, '--out', 'many', ...pieces], workshop);
    expect(code).toBe(2);
    expect(err).toMatch(/^nothing was written: .*are there already/);
    expect(workshop.files()).toEqual(before);
  });

  test('a piece that none of them has', async () => {
    const workshop = bench();
    const argv = ['draw', ...specs, '--out', 'many', '--pieces', 'stave-each'];
    const { code, err } = await run(argv, workshop);
    expect(code).toBe(2);
    expect(err).toMatch(/b\d\.yaml: this vessel has none of these pieces/);
    expect(workshop.files()).toEqual(specs);
  });

  test('stopped at any time, nothing is left', async () => {
    for (const wait of [300, 600, 900]) {
      const workshop = bench();
      const argv = [program, 'draw', ...specs, '--out', 'many', ...pieces];
      const child = spawn(process.execPath, argv, { cwd: workshop.folder, stdio: 'ignore' });
      const ended = new Promise((resolve) => child.on('close', resolve));
      setTimeout(() => child.kill('SIGINT'), wait);
      await ended;
      const files = workshop.files();
      expect(files.some((name) => name.includes('.tmp'))).toBe(false);
      const whole = names.every((name) => files.includes(join('many', name, 'index.html')));
      expect(whole || files.length === specs.length).toBe(true);
    }
  }, 60_000);
});
