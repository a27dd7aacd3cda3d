/** The licences of the packages that are part of a bundle, in one text: most of them ask for that. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Metafile } from 'esbuild';

/** `root` is the folder that the bundle's inputs are relative to. */
export function licencesOf(root: string, metafiles: readonly Metafile[]): string {
  const inputs = metafiles.flatMap(({ outputs }) =>
    Object.values(outputs).flatMap((output) => usedInputs(output)),
  );
  const packages = new Set(inputs.flatMap(packageFolder));
  return [...packages]
    .sort()
    .map((folder) => licenceText(join(root, folder)))
    .join(`\n${'-'.repeat(80)}\n\n`);
}

function usedInputs({ inputs }: Metafile['outputs'][string]): string[] {
  return Object.keys(inputs).filter((name) => inputs[name]!.bytesInOutput > 0);
}

/**
 * `node_modules/pdfkit`, also where a package has its own copy of another or the folder is a link to one elsewhere;
 * nothing for our own files.
 */
function packageFolder(input: string): string[] {
  const match = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input);
  return match ? [match[0]] : [];
}

function licenceText(folder: string): string {
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as {
    name: string;
    version: string;
    license?: string;
  };
  const file = readdirSync(folder).find((name) => /^licen[cs]e/i.test(name));
  const text = file ? readFileSync(join(folder, file), 'utf8').trim() : '';
  return `${about.name} ${about.version}, ${about.license ?? 'licence: see below'}\n\n${text}\n`;
}
