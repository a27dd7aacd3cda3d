/** The page hands out for a set, byte for byte, what the command writes of it. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import {
  languages,
  matchStaves,
  planVessel,
  readStock,
  requestFor,
  writeSpec,
  type Wishes,
} from '../../../src/index.js';
import { zipOf } from '../../../src/page/file/zip.js';
import { filesOfSet, type Chosen } from '../../../src/page/rack/chosen.js';
import { setFilesAside, type SetFilesAnswer } from '../../../src/page/rack/set-files-aside.js';
import { stockOf } from '../../../src/page/rack/rack-text.js';
import { fontFile, root, Workshop } from '../../cli/workshop.js';

const rack = readFileSync(join(root, 'templates/rack-invented.csv'), 'utf8');
const font = () => Promise.resolve(new Uint8Array(readFileSync(fontFile)));

/** As the page does it: the spec in full, the rack by way of what the browser keeps. */
async function chosenOnPage(text: string, list: string, wishes: Wishes): Promise<Chosen> {
  const { spec } = planVessel(text, '').vessel!;
  const own = writeSpec(spec);
  const read = readStock(list, spec.units).stock!.staves;
  const { stock } = stockOf(JSON.parse(JSON.stringify(read)) as typeof read);
  const result = await matchStaves(stock!, requestFor(planVessel(own, '').vessel!, wishes));
  const measured = wishes.measured ?? 'blank';
  return { spec: own, title: spec.title, measured, wanted: 2, result, setUp: [] };
}

const inchRack = ['mark,width'];
for (let i = 0; i < 40; i++) inchRack.push(`K${i},${1 + (i % 2)} ${1 + 2 * (i % 7)}/16`);

describe.each([
  {
    template: 'bucket',
    list: rack,
    options: ['--vessels', '2', '--count', '12-18'],
    wishes: { vessels: 2, count: { min: 12, max: 18 } },
    spoken: languages,
  },
  {
    template: 'keg-10-inches',
    list: inchRack.join('\n'),
    options: ['--vessels', '2', '--bung', '2'],
    wishes: { vessels: 2, bung: 50.8 },
    spoken: ['en'] as const,
  },
])('the files of the sets of $template', ({ template, list, options, wishes, spoken }) => {
  const spec = readFileSync(join(root, `templates/${template}.yaml`), 'utf8');

  it.each(spoken)('are those of the command, in %s', async (language) => {
    const shop = new Workshop({ 'vessel.yaml': spec, 'rack.csv': list });
    const argv = ['match', 'vessel.yaml', '--stock', 'rack.csv', ...options, '--out', 'sets'];
    const { code, err } = await shop.run([...argv, '--language', language], { font });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const written = shop.files().filter((name) => name.startsWith('sets/'));

    const chosen = await chosenOnPage(spec, list, wishes);
    const given = new Map<string, Uint8Array>();
    for (const [i] of chosen.result.sets.entries()) {
      const files = await filesOfSet(chosen, i + 1, { font, language });
      if ('refused' in files) throw new Error('refused');
      const zip = unzipSync(zipOf('set.zip', files).content as Uint8Array);
      for (const [name, bytes] of Object.entries(zip)) given.set(`sets/${name}`, bytes);
    }
    expect([...given.keys()].sort()).toEqual(written);
    expect(written.length).toBeGreaterThan(2 * 12);
    for (const [name, bytes] of given)
      expect(Buffer.from(bytes).equals(readFileSync(shop.path(name))), name).toBe(true);
    expect(strFromU8(given.get('sets/set-2/spec.yaml')!)).toContain('widths:');
  });
});

it.each(languages)(
  'a helper that is sent a set gives its files, and says in %s why not',
  async (language) => {
    const spec = readFileSync(join(root, 'templates/bucket.yaml'), 'utf8');
    const chosen = await chosenOnPage(spec, rack, { count: { min: 12, max: 18 } });
    const answerTo = async (own: Chosen): Promise<SetFilesAnswer> => {
      const options = { paper: 'a4', language } as const;
      // as the browser sends it
      const sent = structuredClone({ task: 'set files', chosen: own, number: 1, options } as const);
      return new Promise((answer) => void setFilesAside(sent, answer));
    };
    const given = await answerTo(chosen);
    const due = await filesOfSet(chosen, 1, { font, language });
    if ('refused' in given || 'refused' in due) throw new Error('refused');
    const made = given.zip.content as Uint8Array;
    expect(Buffer.from(made).equals(zipOf('set-1.zip', due).content as Uint8Array)).toBe(true);
    const [first] = chosen.result.sets;
    const narrow = first!.staves.map((stave) => ({ ...stave, width: stave.width / 2 }));
    const result = { ...chosen.result, sets: [{ ...first!, staves: narrow }] };
    const refused = await answerTo({ ...chosen, result });
    const [said] = 'refused' in refused ? refused.refused : [];
    expect(said).toMatch({ en: /staves/, de: /Dauben/, fr: /douelles/ }[language]);
  },
);

it('a set that makes no vessel gives no files, and says why', async () => {
  const spec = readFileSync(join(root, 'templates/bucket.yaml'), 'utf8');
  const chosen = await chosenOnPage(spec, rack, { count: { min: 12, max: 18 } });
  const thin = { ...chosen, spec: chosen.spec.replace(/thickness: \d+/, 'thickness: 900') };
  const files = await filesOfSet(thin, 1, { font });
  expect('refused' in files).toBe(true);
  expect(await filesOfSet(chosen, 9, { font })).toEqual({ refused: [] });
});
