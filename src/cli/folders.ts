/** Where the patterns of each spec go: straight into the folder for one spec, a folder each for several. */
import { parse } from 'node:path';

export type Folders = { readonly names: readonly string[] } | { readonly clash: string };

export function foldersFor(specs: readonly string[]): Folders {
  if (specs.length === 1) return { names: [''] };
  const names = specs.map(folderOf);
  const taken = new Map<string, string>();
  for (const [i, spec] of specs.entries()) {
    // some disks take capitals and small letters for the same
    const key = names[i]!.toLowerCase();
    const other = taken.get(key);
    if (other !== undefined)
      return { clash: `${other} and ${spec} would go to the same folder, ${names[i]}` };
    taken.set(key, spec);
  }
  return { names };
}

/** The name of the file without its ending; never one that leads elsewhere, as `...yaml` would. */
function folderOf(spec: string): string {
  if (spec === '-') return 'stdin';
  const { name, base } = parse(spec);
  return /^\.*$/.test(name) ? base : name;
}
