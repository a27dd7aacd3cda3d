/** Undo and redo. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  begin,
  record,
  redo,
  settle,
  undo,
  type History,
} from '../../../src/page/state/history.js';

const typed = (texts: readonly string[], group: string | null = null): History =>
  texts.reduce((history, text) => record(history, text, group), begin('start'));

describe('the history of a text', () => {
  it('goes back and forth step by step', () => {
    const history = typed(['a', 'b']);
    const back = undo(history);
    expect(back.present.text).toBe('a');
    expect(undo(back).present.text).toBe('start');
    expect(redo(undo(back)).present.text).toBe('a');
    expect(redo(redo(undo(back))).present.text).toBe('b');
  });

  it('takes the digits of one number as one step', () => {
    const history = typed(['6', '69', '695'], 'bilge');
    expect(undo(history).present.text).toBe('start');
  });

  it('takes two visits to one box as two steps', () => {
    const history = record(settle(typed(['695'], 'bilge')), '700', 'bilge');
    expect(undo(history).present.text).toBe('695');
  });

  it('stays as it is at either end', () => {
    expect(undo(begin('a')).present.text).toBe('a');
    expect(redo(begin('a')).present.text).toBe('a');
  });

  it('forgets what was undone once something else is typed', () => {
    const history = record(undo(typed(['a', 'b'])), 'c');
    expect(redo(history).present.text).toBe('c');
    expect(undo(history).present.text).toBe('a');
  });

  it('counts no step where nothing changes', () => {
    expect(record(begin('a'), 'a').past).toEqual([]);
  });

  it('comes back to where it was, after as many steps forth as back', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { maxLength: 30 }), fc.nat(30), (texts, steps) => {
        const history = typed(texts);
        let there = history;
        let taken = 0;
        for (; taken < steps && there.past.length > 0; taken++) there = undo(there);
        for (let i = 0; i < taken; i++) there = redo(there);
        expect(there.present.text).toBe(history.present.text);
        expect(there.past.map(({ text }) => text)).toEqual(history.past.map(({ text }) => text));
      }),
    );
  });
});
