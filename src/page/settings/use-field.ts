/** A box that is being typed into: what was typed stays, whether it can be used or not. */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { valueOf, writeField } from '../state/field-values.js';
import { keyOf, type Field } from '../state/fields.js';
import { readField, type FieldProblem } from '../state/read-field.js';
import { useSteady } from '../state/steady.js';
import { clearKey, endStep, units } from '../state/store.js';

export interface FieldState {
  readonly shown: string;
  readonly byDefault: boolean;
  readonly problem: FieldProblem | 'broken-text' | null;
  readonly type: (typed: string) => void;
  readonly leave: () => void;
}

export function useField(field: Field): FieldState {
  const draft = useSignal<string | null>(null);
  const problem = useSignal<FieldState['problem']>(null);
  const value = useSteady(() => valueOf(field), keyOf(field));
  const base = useRef(value.text);
  // somebody else, such as undo, has changed what stands here
  if (draft.peek() !== null && value.text !== base.current) {
    draft.value = null;
    problem.value = null;
  }
  base.current = value.text;
  const type = (typed: string): void => {
    draft.value = typed;
    problem.value = write(field, typed);
    base.current = valueOf(field).text;
  };
  const leave = (): void => {
    endStep();
    if (problem.value === null) draft.value = null;
  };
  return {
    shown: draft.value ?? value.text,
    byDefault: value.byDefault && draft.value === null,
    problem: problem.value,
    type,
    leave,
  };
}

function write(field: Field, typed: string): FieldState['problem'] {
  const group = keyOf(field);
  const read = readField(field, typed, units.value);
  if ('value' in read) return writeField(field, read.value, group) ? null : 'broken-text';
  if (read.problem !== 'empty') return read.problem;
  return clearKey(field.path, group) ? null : 'broken-text';
}
