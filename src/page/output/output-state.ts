/** How files are made: the paper, and how the printer draws. */
import { computed, effect, signal } from '@preact/signals';
import {
  jobSheetName,
  letteringWays,
  ordinaryRange,
  paperNames,
  renderVessel,
  shortLengthText,
  type DrawOptions,
  type LetteringWay,
  type OutFile,
  type PaperName,
  type Spec,
} from '../../index.js';
import { keep, kept } from '../state/kept.js';
import { readFan, readPlank, type SizeRead, type Typed } from './piece-sizes.js';
import { readLength } from '../state/read-length.js';
import { units, vessel } from '../state/store.js';
import { language } from '../words/index.js';
import { font } from './font.js';

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

const typedPair = (name: string) =>
  [signal(kept(`${name}-1`) ?? ''), signal(kept(`${name}-2`) ?? '')] as const;
/** The narrowest and the widest stave of the fan, as typed; empty for the usual ones. */
export const fanTyped = typedPair('fan');
/** Length and width of what the boards of a head are cut from, as typed; empty for the shortest plank that will do. */
export const plankTyped = typedPair('plank');

effect(() => {
  for (const [name, pair] of [
    ['fan', fanTyped],
    ['plank', plankTyped],
  ] as const)
    pair.forEach((typed, i) => keep(`${name}-${i + 1}`, typed.value));
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

function sizeRead<T>(
  typed: typeof fanTyped,
  read: (typed: Typed, spec: Spec) => SizeRead<T>,
): SizeRead<T> {
  const [first, second] = typed;
  return vessel.value ? read([first.value, second.value], vessel.value.spec) : { value: null };
}

export const fan = computed(() => sizeRead(fanTyped, readFan));
export const plank = computed(() => sizeRead(plankTyped, readPlank));
/** As it stands in a box. */
export const usualFan = computed<Typed>(() => {
  if (!vessel.value) return ['', ''];
  const { from, to } = ordinaryRange(vessel.value);
  return [shortLengthText(from, units.value), shortLengthText(to, units.value)];
});

/** Whether all that is typed here can be used. */
export const ready = computed(
  () => printed.value !== null && !('problem' in fan.value) && !('problem' in plank.value),
);

/** Everything that files hang on but formats and pieces. */
export function drawOptions(): Omit<DrawOptions, 'formats'> {
  return { ...plainOptions(), font };
}

/** The same as nothing but data, for a helper that has the font itself. */
export function plainOptions(): Omit<DrawOptions, 'formats' | 'font'> {
  return {
    paper: paper.value,
    language: language.value,
    letteringAs: letteringAs.value,
    ...(printed.value && { printed: printed.value }),
    ...('value' in fan.value && fan.value.value && { fan: fan.value.value }),
    ...('value' in plank.value && plank.value.value && { router: { sheet: plank.value.value } }),
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
