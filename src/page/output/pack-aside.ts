/** The whole pack in one zip, the same files that the command writes into a folder: made by a helper beside the page. */
import { packVessel, solveVessel, type DrawOptions, type OutFile, type Spec } from '../../index.js';
import { zipOf } from '../file/zip.js';
import { font } from './font.js';

export interface PackQuestion {
  readonly task: 'pack';
  readonly spec: Spec;
  readonly options: Omit<DrawOptions, 'font'>;
}

export async function pack(
  { spec, options }: PackQuestion,
  reply: (zip: OutFile) => void,
): Promise<void> {
  const solved = solveVessel(spec);
  if (!('vessel' in solved)) throw new Error('a spec that is no vessel was sent to be packed');
  reply(zipOf('patterns.zip', await packVessel(solved.vessel, { ...options, font })));
}
