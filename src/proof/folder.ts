/** Holds the folder against the vessel: files that are missing, and files that some other vessel has left there. */
import { stated, type Finding } from './finding.js';
import type { Part } from './parts.js';

/** A file of the folder. */
export interface PackFile {
  readonly name: string;
  /** of DXF files and of `index.html`; null when it was not read */
  readonly text: string | null;
  /** why a file that matters could not be read; empty otherwise */
  readonly refusal: string;
}

const ours = /^(stave-\d+|head(-top|-bottom)?(-board-\d+|-edge)?|hoops|hoop-sheet-\d+)\.dxf$/;

export function checkFolder(files: readonly PackFile[], parts: readonly Part[]): Finding[] {
  const there = new Set(files.map(({ name }) => name));
  const wanted = [...new Set([...neededFiles(there, parts), ...linkedFiles(files)])];
  const missing = wanted.filter((name) => !there.has(name));
  const known = new Set(parts.map(({ file }) => file));
  const strange = [...there].filter((name) => ours.test(name) && !known.has(name)).sort();
  return [
    ...(missing.length === 0 ? [stated('file-there', true, wanted)] : []),
    ...missing.map((name) => stated('file-there', false, name)),
    ...strange.map((name) => stated('file-belongs', false, name)),
  ];
}

/** What must be there in any case, and the rest of every family of which one member is there. */
function neededFiles(there: ReadonlySet<string>, parts: readonly Part[]): string[] {
  const families = new Set(parts.filter(({ file }) => there.has(file)).map(({ kind }) => kind));
  return parts.filter(({ needed, kind }) => needed || families.has(kind)).map(({ file }) => file);
}

/** The page that `draw` puts beside the patterns links to all of them. */
function linkedFiles(files: readonly PackFile[]): string[] {
  const page = files.find(({ name }) => name === 'index.html')?.text ?? '';
  const links = [...page.matchAll(/(?:href|src)="([a-z0-9.-]{1,100})"/g)].map((match) => match[1]!);
  return links.filter((name) => /\.(svg|dxf|pdf|html)$/.test(name));
}
