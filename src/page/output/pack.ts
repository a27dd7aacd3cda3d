/** The whole pack in one zip: the same files that the command writes into a folder. */
import { strToU8, zipSync, type Zippable } from 'fflate';
import { packVessel, type DrawOptions, type OutFile, type Vessel } from '../../index.js';

/** Zips have no date before 1980, and no clock belongs in them: the same pack gives the same bytes. */
const noDate = new Date(1980, 0, 1);

export async function packedZip(vessel: Vessel, options: DrawOptions): Promise<OutFile> {
  const files = await packVessel(vessel, options);
  const entries: Zippable = {};
  for (const { name, content } of files)
    entries[name] = typeof content === 'string' ? strToU8(content) : content;
  return { name: 'patterns.zip', content: zipSync(entries, { level: 6, mtime: noDate }) };
}
