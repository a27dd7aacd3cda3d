/** Choosing sets: the helper that searches, how far it is, and what it found, which the browser keeps. */
import { effect, signal } from '@preact/signals';
import { writeSpec, type MatchProgress, type Replacement, type RequestIssue } from '../../index.js';
import { startHelper, type Helper } from '../helper/start-helper.js';
import { keep, kept } from '../state/kept.js';
import { vessel } from '../state/store.js';
import type { ChooseAnswer } from './choose-aside.js';
import { keptChosen, type Chosen } from './chosen.js';
import { stock, takeAway } from './rack-state.js';
import { replaced, type Place } from './replacing.js';
import { changeStanding, wished } from './wishes-state.js';

export const found = signal<Chosen | null>(keptChosen(kept('sets')));
export const running = signal(false);
export const progress = signal<MatchProgress | null>(null);
export const wrong = signal<readonly RequestIssue[]>([]);
export const failed = signal(false);

effect(() => keep('sets', JSON.stringify(found.value)));

let helper: Helper | null = null;

export function startChoosing(): void {
  const wishes = 'wishes' in wished.value ? wished.value.wishes : null;
  if (!vessel.value || !stock.value || !wishes || running.value) return;
  const { spec } = vessel.value;
  const { title } = spec;
  const asked = {
    spec: writeSpec(spec),
    title,
    measured: wishes.measured ?? 'blank',
    wishes,
  } as const;
  const wanted = typeof wishes.vessels === 'number' ? wishes.vessels : null;
  begin();
  const hear = (answer: ChooseAnswer): void => {
    if ('progress' in answer) return void (progress.value = answer.progress);
    if ('wrong' in answer) wrong.value = answer.wrong;
    else found.value = { ...asked, wanted, result: answer.result, setUp: wishes.standing ?? [] };
    end();
  };
  helper = startHelper(hear, () => {
    failed.value = true;
    end();
  });
  helper.ask({ task: 'choose', spec, stock: stock.value, wishes });
}

/** It answers with the best so far. */
export const stopChoosing = (): void => helper?.ask({ task: 'stop choosing' });

function begin(): void {
  [running.value, progress.value, wrong.value, failed.value] = [true, null, [], false];
}

function end(): void {
  helper?.stop();
  helper = null;
  running.value = false;
}

export function markSetUp(mark: string, stands: boolean): void {
  if (!found.value) return;
  const others = found.value.setUp.filter((each) => each !== mark);
  found.value = { ...found.value, setUp: stands ? [...others, mark] : others };
}

/** The broken stave leaves the rack. */
export function putInPlace(at: Place, replacement: Replacement): void {
  const gone = found.value?.result.sets[at.number - 1]?.staves[at.place - 1]?.mark;
  if (!found.value || gone === undefined) return;
  found.value = replaced(found.value, at, replacement);
  takeAway([gone]);
  changeStanding(gone, replacement.mark);
}

export const forgetSets = (): void => void (found.value = null);
