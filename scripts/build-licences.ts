/** The licences of the packages that are part of a bundle, in one text: most of them ask for that. */
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Metafile } from 'esbuild';

/** `root` is the folder that the bundles' inputs are relative to, unless they begin with it. */
export function licencesOf(root: string, inputs: readonly string[]): string {
  const packages = new Set(inputs.flatMap(packageFolder));
  // a package is the same by whichever path it was come upon
  return [...new Set([...packages].map((folder) => licenceText(resolve(root, folder))))]
    .sort()
    .join(`\n${'-'.repeat(80)}\n\n`);
}

/** The files that a bundle is made of. */
export const inputsOf = ({ outputs }: Metafile): string[] =>
  Object.values(outputs).flatMap((output) => usedInputs(output));

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
