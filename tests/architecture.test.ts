/** What may import what, no cycles, and files and functions of a readable size. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const source = fileURLToPath(new URL('../src/', import.meta.url));

/** Folders, and what each may import beside itself; files at the top stand for themselves. */
const mayImport: Readonly<Record<string, readonly string[]>> = {
  'language.ts': [],
  'hoop-names.ts': [],
  geometry: [],
  spec: [],
  drawing: ['geometry'],
  vessel: ['geometry'],
  capacity: ['vessel', 'geometry'],
  rack: ['vessel', 'geometry'],
  sets: ['vessel', 'capacity', 'rack', 'geometry'],
  proof: ['vessel', 'capacity', 'drawing', 'geometry'],
  figures: ['vessel', 'capacity', 'geometry'],
  job: ['vessel', 'capacity', 'drawing', 'geometry'],
  pieces: ['vessel', 'capacity', 'rack', 'sets', 'drawing', 'geometry'],
  sheets: ['drawing', 'geometry'],
  writers: ['sheets', 'drawing', 'geometry'],
  'plan.ts': ['spec', 'vessel'],
  'pipeline.ts': ['*'],
  'printing.ts': ['drawing', 'sheets', 'writers'],
  'set-files.ts': ['*'],
  'index.ts': ['*'],
  cli: ['index.ts'],
  page: ['index.ts'],
};

/** What everybody may import, words being everywhere. */
const openToAll = ['language.ts', 'hoop-names.ts'];

/** Of these, everybody may know the types. */
const knownToAll = ['spec/spec.ts', 'spec/issue.ts'];

interface Import {
  readonly to: string;
  readonly typeOnly: boolean;
}

interface Source {
  readonly name: string;
  readonly tree: ts.SourceFile;
  readonly imports: readonly Import[];
}

const sources = readdirSync(source, { recursive: true, encoding: 'utf8' })
  .filter((name) => /\.tsx?$/.test(name))
  .map((name) => name.split(sep).join('/'))
  .sort()
  .map(read);

function read(name: string): Source {
  const text = readFileSync(join(source, name), 'utf8');
  const tree = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
  return { name, tree, imports: importsOf(name, tree) };
}

function importsOf(name: string, tree: ts.SourceFile): Import[] {
  const found: Import[] = [];
  const add = (specifier: string, typeOnly: boolean): void => {
    if (!specifier.startsWith('.')) return;
    const path = relative(source, join(source, dirname(name), specifier));
    found.push({ to: fileOf(path.split(sep).join('/')), typeOnly });
  };
  const visit = (node: ts.Node): void => {
    if (
      (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) &&
      node.moduleSpecifier &&
      ts.isStringLiteral(node.moduleSpecifier)
    )
      add(node.moduleSpecifier.text, isTypeOnly(node));
    else if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
      add((node.arguments[0] as ts.StringLiteral).text, false);
    else if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
      add((node.argument.literal as ts.StringLiteral).text, true);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** The source that a specifier ending in `.js` means. */
function fileOf(path: string): string {
  const stem = path.replace(/\.js$/, '');
  return existsSync(join(source, `${stem}.tsx`)) ? `${stem}.tsx` : path.replace(/\.js$/, '.ts');
}

function isTypeOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  const clause = node.importClause;
  if (!clause) return false;
  if (clause.isTypeOnly) return true;
  const names = clause.namedBindings;
  const all = names && ts.isNamedImports(names) ? names.elements : undefined;
  return !clause.name && (all?.every((each) => each.isTypeOnly) ?? false);
}

const folderOf = (name: string): string => name.split('/')[0]!;

test('every folder has its line in the table', () => {
  expect(
    [...new Set(sources.map(({ name }) => folderOf(name)))].filter((f) => !(f in mayImport)),
  ).toEqual([]);
});

test('folders import only what the table allows', () => {
  const wrong = sources.flatMap(({ name, imports }) =>
    imports
      .filter(({ to }) =>
        to.startsWith('..') ? folderOf(name) !== 'cli' : !allowed(name, to, imports),
      )
      .map(({ to }) => `${name} imports ${to}`),
  );
  expect(wrong).toEqual([]);
});

function allowed(from: string, to: string, imports: readonly Import[]): boolean {
  const [here, there] = [folderOf(from), folderOf(to)];
  const may = mayImport[here] ?? [];
  if (openToAll.includes(to)) return true;
  if (here === there || may.includes(there) || may.includes('*')) return true;
  return knownToAll.includes(to) && imports.every((each) => each.to !== to || each.typeOnly);
}

test('no file imports itself by way of others', () => {
  const values = new Map(
    sources.map(({ name, imports }) => [
      name,
      imports.filter((each) => !each.typeOnly).map(({ to }) => to),
    ]),
  );
  const done = new Set<string>();
  const cycles: string[] = [];
  const walk = (name: string, path: readonly string[]): void => {
    if (path.includes(name)) cycles.push([...path.slice(path.indexOf(name)), name].join(' > '));
    if (path.includes(name) || done.has(name)) return;
    for (const next of values.get(name) ?? []) walk(next, [...path, name]);
    done.add(name);
  };
  for (const { name } of sources) walk(name, []);
  expect(cycles).toEqual([]);
});

test('the table refuses what it should', () => {
  const spec = { to: 'spec/spec.ts', typeOnly: true };
  expect(allowed('writers/svg.ts', 'vessel/stave.ts', [])).toBe(false);
  expect(allowed('vessel/stave.ts', 'drawing/drawing.ts', [])).toBe(false);
  expect(allowed('cli/draw.ts', 'pipeline.ts', [])).toBe(false);
  expect(allowed('vessel/solve.ts', spec.to, [spec])).toBe(true);
  expect(allowed('vessel/solve.ts', spec.to, [spec, { ...spec, typeOnly: false }])).toBe(false);
  expect(sources.flatMap(({ imports }) => imports).length).toBeGreaterThan(200);
});

describe('sizes', () => {
  /** Longer than 300 lines, each with its reason. */
  const longFiles: Readonly<Record<string, string>> = {
    'drawing/glyphs.generated.ts': 'made by a script',
    'spec/wording.en.ts': 'all wording of one language in one place',
    'spec/wording.de.ts': 'the same',
    'spec/wording.fr.ts': 'the same',
  };
  const written = sources.filter(({ name }) => !name.includes('.generated.'));
  const lines = ({ tree }: Source): number =>
    tree.getLineAndCharacterOfPosition(tree.getEnd()).line;

  test('half of the files have at most 120 lines', () => {
    expect(quantile(written.map(lines), 0.5)).toBeLessThanOrEqual(120);
  });

  test('a file of more than 300 lines has a reason', () => {
    const long = sources.filter((file) => lines(file) > 300 && !(file.name in longFiles));
    expect(long.map((file) => `${file.name}: ${lines(file)} lines`)).toEqual([]);
  });

  const functions = written.flatMap(({ name, tree }) => functionsOf(name, tree));

  test('half of the functions have at most 10 lines, nine tenths at most 35', () => {
    const lengths = functions.map(({ length }) => length);
    expect(quantile(lengths, 0.5)).toBeLessThanOrEqual(10);
    expect(quantile(lengths, 0.9)).toBeLessThanOrEqual(35);
  });

  test('no function has more than 60 lines', () => {
    const long = functions.filter(({ length }) => length > 60);
    expect(long.map(({ place, length }) => `${place}: ${length} lines`)).toEqual([]);
  });
});

/** Functions that have a name of their own: declarations, methods, and arrows that a name is given to. */
function functionsOf(name: string, tree: ts.SourceFile): { place: string; length: number }[] {
  const found: { place: string; length: number }[] = [];
  const line = (position: number): number => tree.getLineAndCharacterOfPosition(position).line + 1;
  const visit = (node: ts.Node): void => {
    const arrow =
      ts.isVariableDeclaration(node) && node.initializer && ts.isArrowFunction(node.initializer);
    if (arrow || ts.isFunctionDeclaration(node) || ts.isMethodDeclaration(node)) {
      const start = line(node.getStart(tree));
      found.push({ place: `${name}:${start}`, length: line(node.getEnd()) - start + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

function quantile(values: readonly number[], share: number): number {
  return [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? 0;
}
