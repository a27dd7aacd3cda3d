/** The files that `draw` makes of one vessel, each with its place on the disk. */
import { join, resolve } from 'node:path';
import { packVessel, type OutFile, type Vessel } from '../index.js';
import { inMillimetres, type DrawingOptions } from './draw-options.js';
import type { Io } from './io.js';
import { pack } from './pack.js';
import type { Plank } from './option-values.js';
import type { FileToWrite } from './write-whole.js';

/** A file with its path as people are told it. */
export type DrawnFile = FileToWrite & { readonly shown: string };

/** `taken` is told of each file as soon as it is made. Empty where the vessel has none of the pieces that are asked for, such as `stave-each` of equal staves. */
export async function drawnFiles(
  vessel: Vessel,
  folder: string,
  { formats, pieces, paper, printed, fan, plank, lettering, language }: DrawingOptions,
  io: Pick<Io, 'folder' | 'font'> & Partial<Pick<Io, 'printAside'>>,
  taken: (file: DrawnFile) => void = () => {},
): Promise<DrawnFile[]> {
  const placed = ({ name, content }: OutFile): DrawnFile => {
    const shown = join(folder, safe(name));
    return { path: resolve(io.folder, shown), content, shown };
  };
  const { printAside } = io;
  const files = await packVessel(vessel, {
    formats,
    font: io.font,
    pack,
    ...(printAside && { print: (printing) => printAside.ask(printing) }),
    taken: (file) => taken(placed(file)),
    language,
    ...(pieces && { pieces }),
    ...(paper && { paper }),
    ...(printed && { printed }),
    ...(fan && { fan: inMillimetres(fan, vessel.spec.units) }),
    ...(plank && { router: { sheet: sheetOf(plank, vessel.spec.units) } }),
    ...(lettering && { letteringAs: lettering }),
  });
  return files.map(placed);
}

/** Boards lie with their grain along the plank, which is `x` in the drawing. */
function sheetOf({ length, width }: Plank, units: 'mm' | 'in'): { width: number; height: number } {
  const { from, to } = inMillimetres({ from: length, to: width }, units);
  return { width: from, height: to };
}

/** Names come from the pieces, never from a title; this is the lock on that door. */
function safe(name: string): string {
  if (/^[a-z0-9]+(-[a-z0-9]+)*\.(svg|dxf|pdf|yaml|html)$/.test(name)) return name;
  throw new Error(`a file was to be named ${JSON.stringify(name)}`);
}
