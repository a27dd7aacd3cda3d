/** Holds the folder against the vessel: files that are missing, and files that some other vessel has left there. */
import { stated, type Finding } from './finding.js';
import type { Part } from './parts.js';

/** A file of the folder. */
export interface PackFile {
  readonly name: string;
  /** of DXF files and of `index.html`; null when it was not read */
  readonly text: string | null;
  /** why a file that matters could not be read, one of the reasons in the words; empty otherwise */
  readonly refusal: string;
}

/** The page that `draw` puts beside the patterns: it links to all of them, and so says which were asked for. */
const page = 'index.html';
const ours = /^(stave-\d+|head(-top|-bottom)?(-board-\d+|-edge)?|hoops|hoop-sheet-\d+)\.dxf$/;

/**
 * The files that the folder must hold. Without its page that is every pattern that the vessel is judged by; with it, what
 * it shows, each as DXF too, and the rest of every family of which one member is there.
 */
export function wantedFiles(files: readonly PackFile[], parts: readonly Part[]): string[] {
  const names = (some: readonly Part[]): string[] => some.map(({ file }) => file);
  const there = new Set(files.map(({ name }) => name));
  const families = new Set(parts.filter(({ file }) => there.has(file)).map(({ kind }) => kind));
  const besides = names(parts.filter(({ kind }) => families.has(kind)));
  const links = linksOf(files.find(({ name }) => name === page)?.text ?? '');
  const stems = new Set(links.map(stemOf));
  const shown = names(parts.filter(({ file }) => stems.has(stemOf(file))));
  const due = shown.length > 0 ? shown : names(parts.filter(({ needed }) => needed));
  return [...new Set([page, ...due, ...besides, ...links])];
}

const stemOf = (file: string): string => file.replace(/\.[a-z]+$/, '');

function linksOf(html: string): string[] {
  const links = [...html.matchAll(/(?:href|src)="([a-z0-9.-]{1,100})"/g)].map((match) => match[1]!);
  return links.filter((name) => /\.(svg|dxf|pdf|html)$/.test(name));
}

export function checkFolder(
  files: readonly PackFile[],
  parts: readonly Part[],
  wanted: readonly string[],
): Finding[] {
  const there = new Set(files.map(({ name }) => name));
  const missing = wanted.filter((name) => !there.has(name));
  const known = new Set(parts.map(({ file }) => file));
  const strange = [...there].filter((name) => ours.test(name) && !known.has(name)).sort();
  return [
    ...(missing.length === 0 ? [stated('file-there', true, wanted)] : []),
    ...missing.map((name) => stated('file-there', false, name)),
    ...strange.map((name) => stated('file-belongs', false, name)),
  ];
}
