import { expect, test } from 'vitest';
import { bucket, Workshop } from './workshop.js';

const draw = ['draw', 'bucket.yaml', '--out', 'out'];
const written = (workshop: Workshop): string[] =>
  workshop
    .files()
    .filter((name) => name.startsWith('out/'))
    .map((name) => name.slice(4));

test('a job sheet to print and to read, which the page links', async () => {
  const workshop = new Workshop();
  expect((await workshop.run([...draw, '--formats', 'pdf'])).code).toBe(0);
  const files = written(workshop).filter((name) => name.startsWith('job-sheet'));
  expect(files).toEqual(['job-sheet.html', 'job-sheet.pdf']);
  expect(workshop.read('out/job-sheet.pdf')).toMatch(/^%PDF-[^]*%%EOF\n?$/);
  const page = workshop.read('out/index.html');
  for (const name of files) expect(page).toContain(`href="${name}"`);
});

test('alone, when it is asked for', async () => {
  const workshop = new Workshop();
  const { code } = await workshop.run([...draw, '--pieces', 'job-sheet']);
  expect(code).toBe(0);
  expect(written(workshop)).toEqual(['index.html', 'job-sheet.html', 'job-sheet.pdf', 'spec.yaml']);
});

test('only to read where PDF is not asked for, and not with other pieces', async () => {
  const workshop = new Workshop();
  await workshop.run([...draw, '--pieces', 'head,job-sheet', '--formats', 'dxf']);
  expect(written(workshop)).toEqual(['head.dxf', 'index.html', 'job-sheet.html', 'spec.yaml']);
  await workshop.run(['draw', 'bucket.yaml', '--out', 'other', '--pieces', 'head']);
  expect(workshop.files().filter((name) => name.includes('other/job'))).toEqual([]);
});

test('the help names it', async () => {
  expect((await new Workshop().run(['draw', '--help'])).out).toMatch(/job-sheet +numbers/);
});

test('the title of the spec is text, never markup', async () => {
  const hostile = bucket.replace('title: Bucket', `title: '<script>x("&")</script>'`);
  const workshop = new Workshop({ 'bucket.yaml': hostile });
  expect((await workshop.run([...draw, '--pieces', 'job-sheet'])).code).toBe(0);
  for (const name of ['job-sheet.html', 'index.html']) {
    expect(workshop.read('out', name)).not.toContain('<script');
    expect(workshop.read('out', name)).toContain('&lt;script&gt;');
  }
});

test('the same spec gives the same bytes', async () => {
  const workshop = new Workshop();
  await workshop.run([...draw, '--pieces', 'job-sheet']);
  await workshop.run(['draw', 'bucket.yaml', '--out', 'again', '--pieces', 'job-sheet']);
  for (const name of ['job-sheet.html', 'job-sheet.pdf'])
    expect(workshop.read('again', name)).toBe(workshop.read('out', name));
});

test('in the language that is asked for', async () => {
  const workshop = new Workshop();
  const { code } = await workshop.run([...draw, '--pieces', 'job-sheet', '--language', 'de']);
  expect(code).toBe(0);
  const sheet = workshop.read('out/job-sheet.html');
  expect(sheet).toContain('<html lang="de">');
  expect(sheet).toContain('Breite, auf der Bank ausgelegt 954,8');
  expect(workshop.read('out/index.html')).toContain('Werkzettel');
});
