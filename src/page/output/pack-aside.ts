/** The whole pack in one zip, the same files that the command writes into a folder: made by a helper beside the page. */
import { packVessel, type DrawOptions, type OutFile, type Spec } from '../../index.js';
import { zipOf } from '../file/zip.js';
import { vesselOf } from '../helper/vessel-of.js';
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
  reply(zipOf('patterns.zip', await packVessel(vesselOf(spec), { ...options, font })));
}
