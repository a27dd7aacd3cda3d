/** Several files whole or none, whatever goes wrong in between. */
import { chmodSync, existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { putInPlace } from '../../src/cli/put-in-place.js';
import { writeAsTheyCome, writeWhole, type FileToWrite } from '../../src/cli/write-whole.js';
import { Workshop } from './workshop.js';

const file = (
  workshop: Workshop,
  name: string,
  content: string | Uint8Array = name,
): FileToWrite => ({
  path: workshop.path(...name.split('/')),
  content,
});

test('makes the folders that are missing', () => {
  const workshop = new Workshop({});
  const names = ['a/b/c.txt', 'a/d.txt', 'e/f.txt', 'e/g/h/i.txt'];
  const files = names.map((name) => file(workshop, name));
  expect(writeWhole(files, false)).toBeNull();
  expect(workshop.files()).toEqual(names);
  expect(workshop.read('a/b/c.txt')).toBe('a/b/c.txt');
});

test('bytes are written as they are', () => {
  const workshop = new Workshop({});
  writeWhole([file(workshop, 'x', Uint8Array.of(0, 255, 10, 13))], false);
  expect([...Buffer.from(workshop.read('x'), 'utf8')].length).toBeGreaterThan(3);
});

test('a folder in the way of the last file: none is written, no folder is left', () => {
  const workshop = new Workshop({ blocked: 'mine' });
  const files = [file(workshop, 'new/a.txt'), file(workshop, 'blocked/b.txt')];
  expect(writeWhole(files, false)).toMatch(/^nothing was written: /);
  expect(readdirSync(workshop.folder)).toEqual(['blocked']);
});

test('a name too long for the disk: what was replaced before is put back', () => {
  const workshop = new Workshop({ 'a.txt': 'old', 'b.txt': 'old' });
  const files = [
    file(workshop, 'a.txt', 'new'),
    file(workshop, 'fresh.txt', 'new'),
    file(workshop, 'b.txt', 'new'),
    file(workshop, 'x'.repeat(300), 'new'),
  ];
  expect(writeWhole(files, true)).toMatch(/the name is too long$/);
  expect(workshop.files()).toEqual(['a.txt', 'b.txt']);
  expect(workshop.read('a.txt')).toBe('old');
});

test('an exchange can be taken back, or kept', () => {
  const workshop = new Workshop({ 'a.txt': 'old', one: 'new', two: 'newer' });
  const undo = putInPlace(workshop.path('one'), workshop.path('a.txt'), true);
  expect(workshop.read('a.txt')).toBe('new');
  undo.takeBack();
  expect(workshop.read('a.txt')).toBe('old');
  putInPlace(workshop.path('two'), workshop.path('a.txt'), true).keep();
  expect(workshop.files()).toEqual(['a.txt']);
  expect(workshop.read('a.txt')).toBe('newer');
});

test('a new file can be taken back', () => {
  const workshop = new Workshop({ scrap: 'new' });
  putInPlace(workshop.path('scrap'), workshop.path('a.txt'), false).takeBack();
  expect(workshop.files()).toEqual([]);
});

test('a file that somebody else put there meanwhile is not overwritten', () => {
  const workshop = new Workshop({ scrap: 'ours', 'a.txt': 'theirs' });
  expect(() => putInPlace(workshop.path('scrap'), workshop.path('a.txt'), false)).toThrow(/EEXIST/);
  expect(workshop.read('a.txt')).toBe('theirs');
});

test('signals are waited out, and the handlers are gone afterwards', () => {
  const workshop = new Workshop({});
  const before = process.listenerCount('SIGINT');
  writeWhole([file(workshop, 'x')], false);
  expect(process.listenerCount('SIGINT')).toBe(before);
});

test('files that come bit by bit are shown all at once, at the end', async () => {
  const workshop = new Workshop({});
  const refusal = await writeAsTheyCome(false, async (writing) => {
    for (const name of ['a/x', 'b/y']) {
      expect(writing.add([file(workshop, name)])).toBeNull();
      await Promise.resolve();
      expect(workshop.files().every((each) => /\.tmp(\/|$)/.test(each))).toBe(true);
    }
    return null;
  });
  expect(refusal).toBeNull();
  expect(workshop.files()).toEqual(['a/x', 'b/y']);
});

test.each([
  ['a refusal', () => Promise.resolve('enough')],
  ['a failure', () => Promise.reject(new Error('enough'))],
])('%s in between takes back what has come, and gives signals free', async (_name, end) => {
  const workshop = new Workshop({ 'a.txt': 'old' });
  const before = process.listenerCount('SIGINT');
  const written = writeAsTheyCome(true, (writing) => {
    writing.add([file(workshop, 'a.txt', 'new'), file(workshop, 'c/d.txt')]);
    return end();
  }).catch(({ message }: Error) => message);
  expect(await written).toBe('enough');
  expect(readdirSync(workshop.folder)).toEqual(['a.txt']);
  expect(workshop.read('a.txt')).toBe('old');
  expect(process.listenerCount('SIGINT')).toBe(before);
});

test('what comes later may be in the way as well', async () => {
  const workshop = new Workshop({ 'b.txt': 'mine' });
  const refusal = await writeAsTheyCome(false, (writing) =>
    Promise.resolve(
      writing.add([file(workshop, 'a.txt')]) ?? writing.add([file(workshop, 'b.txt')]),
    ),
  );
  expect(refusal).toMatch(/^nothing was written: .*b\.txt is there already/);
  expect(workshop.files()).toEqual(['b.txt']);
});

test('a folder that somebody else has filled meanwhile is left as it is', async () => {
  const workshop = new Workshop({});
  const refusal = await writeAsTheyCome(false, (writing) => {
    writing.add([file(workshop, 'new/a.txt')]);
    mkdirSync(workshop.path('new'));
    writeFileSync(workshop.path('new', 'b.txt'), 'theirs');
    return Promise.resolve(null);
  });
  expect(refusal).toMatch(/^nothing was written: .*new: /);
  expect(workshop.files()).toEqual(['new/b.txt']);
});

test('a folder that has its name already is taken back where a later one cannot have its own', async () => {
  const workshop = new Workshop({});
  const refusal = await writeAsTheyCome(false, (writing) => {
    writing.add([file(workshop, 'one/a.txt'), file(workshop, 'two/a.txt')]);
    writeFileSync(workshop.path('two'), 'theirs');
    return Promise.resolve(null);
  });
  expect(refusal).toMatch(/^nothing was written: .*two: /);
  expect(workshop.files()).toEqual(['two']);
});

test.skipIf(process.getuid?.() === 0)('a folder without permission to write', () => {
  const workshop = new Workshop({});
  mkdirSync(workshop.path('locked'));
  chmodSync(workshop.path('locked'), 0o500);
  expect(writeWhole([file(workshop, 'locked/x')], false)).toMatch(/permission is denied$/);
  expect(existsSync(workshop.path('locked/x'))).toBe(false);
});
