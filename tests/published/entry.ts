/** What an entry of `sources/` must say, and reading it. */
import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'yaml';
import * as z from 'zod';

const obtained = z.enum(['seen', 'memory', 'derived', 'common practice']);

const entrySchema = z.strictObject({
  id: z.string().min(1),
  /** title, edition or year, section; 'no source' for common practice */
  citation: z.string().min(5),
  obtained,
  /** `between` takes two values; `differs` demands that we do NOT agree */
  relation: z.enum(['equals', 'between', 'differs']).default('equals'),
  value: z.union([z.number(), z.tuple([z.number(), z.number()])]),
  unit: z.string().min(1),
  /** of the value; `absolute` is in the entry's unit */
  tolerance: z.union([
    z.strictObject({ relative: z.number().positive() }),
    z.strictObject({ absolute: z.number().nonnegative() }),
  ]),
  /** why that tolerance */
  because: z.string().min(5),
  measure: z.string(),
  inputs: z.record(z.string(), z.union([z.number(), z.string()])),
});

const fileSchema = z.strictObject({ theme: z.string(), entries: z.array(entrySchema).min(1) });

export type Entry = z.infer<typeof entrySchema>;

export interface Theme {
  file: string;
  theme: string;
  entries: Entry[];
}

export function readThemes(folder: URL): Theme[] {
  const files = readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .sort();
  return files.map((file) => ({
    file,
    ...fileSchema.parse(parse(readFileSync(new URL(file, folder), 'utf8'))),
  }));
}
