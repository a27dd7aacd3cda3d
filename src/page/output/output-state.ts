/** How files are made: the paper, and how the printer draws. */
import { computed, effect, signal } from '@preact/signals';
import {
  jobSheetName,
  letteringWays,
  paperNames,
  renderVessel,
  type DrawOptions,
  type LetteringWay,
  type OutFile,
  type PaperName,
} from '../../index.js';
import { keep, kept } from '../state/kept.js';
import { readLength } from '../state/read-length.js';
import { units, vessel } from '../state/store.js';
import { language } from '../words/index.js';

const chosen = signal<PaperName | null>(paperNames.find((name) => name === kept('paper')) ?? null);

export const paper = computed<PaperName>(
  () => chosen.value ?? (units.value === 'in' ? 'letter' : 'a4'),
);
export const choosePaper = (name: string): void =>
  void (chosen.value = paperNames.find((each) => each === name) ?? null);

/** What the printed square of 100 mm measured, as typed; empty for a printer that draws true. */
export const acrossTyped = signal(kept('across') ?? '');
export const alongTyped = signal(kept('along') ?? '');

const letteringNamed = (name: string | null): LetteringWay =>
  letteringWays.find((each) => each === name) ?? 'text';

/** Of DXF files: most programs set text their own way, and routers engrave outlines. */
export const letteringAs = signal<LetteringWay>(letteringNamed(kept('lettering')));
export const chooseLettering = (name: string): void =>
  void (letteringAs.value = letteringNamed(name));

effect(() => {
  keep('lettering', letteringAs.value);
  keep('across', acrossTyped.value);
  keep('along', alongTyped.value);
  if (chosen.value) keep('paper', chosen.value);
});

/** What a printer may be off, mm in 100: more is a slip, or another scale. */
const [least, most] = [90, 110];

/** Measures of 100 mm as printed; null where one cannot be used. */
export function readSide(typed: string): number | null {
  if (typed.trim() === '') return 100;
  const read = readLength(typed, 'mm');
  return 'mm' in read && read.mm >= least && read.mm <= most ? read.mm : null;
}

export const printed = computed<DrawOptions['printed'] | null>(() => {
  const [across, along] = [readSide(acrossTyped.value), readSide(alongTyped.value)];
  if (across === null || along === null) return null;
  return across === 100 && along === 100 ? undefined : { across, along };
});

/** Everything that files hang on but formats and pieces. */
export function drawOptions(): Omit<DrawOptions, 'formats'> {
  return {
    paper: paper.value,
    language: language.value,
    letteringAs: letteringAs.value,
    font,
    ...(printed.value && { printed: printed.value }),
  };
}

/** One piece, or one drawing of it, in one format. */
export async function pieceFile(
  piece: string,
  name: string,
  format: DrawOptions['formats'][number],
): Promise<OutFile | null> {
  if (!vessel.value) return null;
  const options = { ...drawOptions(), formats: [format], pieces: [piece] };
  const files = await renderVessel(vessel.value, options);
  return files.find((file) => file.name === `${name}.${format}`) ?? null;
}

/** The job sheet, to print or to fill in on a screen. As HTML it comes with any format. */
export async function jobSheetFile(format: 'pdf' | 'html'): Promise<OutFile | null> {
  if (!vessel.value) return null;
  const formats = [format === 'pdf' ? ('pdf' as const) : ('svg' as const)];
  const options = { ...drawOptions(), formats, pieces: [jobSheetName] };
  const files = await renderVessel(vessel.value, options);
  return files.find(({ name }) => name.endsWith(`.${format}`)) ?? null;
}

const fonts = import.meta.glob<string>('../../../fonts/DejaVuSans.ttf', {
  query: '?inline',
  import: 'default',
});

let fetched: Promise<Uint8Array> | null = null;

/** The lettering's font, fetched when the first PDF is made; the same bytes every time. */
function font(): Promise<Uint8Array> {
  return (fetched ??= fetchFont());
}

async function fetchFont(): Promise<Uint8Array> {
  const address = (await Object.values(fonts)[0]?.()) ?? '';
  return Uint8Array.from(atob(address.split(',')[1] ?? ''), (c) => c.charCodeAt(0));
}
