/** What is said of one head goes before what is said of both, in boxes, values and messages alike. */
import { describe, expect, it } from 'vitest';
import { keysOf as keysOfSpec, planVessel, writeSpec } from '../../../src/index.js';
import { parseSpec, removeFromSpec, setInSpec } from '../../../src/page/state/edit-spec.js';
import {
  fieldOfHead,
  grooveInset,
  groupsOf,
  keyOf,
  nameOf,
} from '../../../src/page/state/fields.js';
import {
  endOf,
  findText,
  forHead,
  sameNumber,
  saysOfOneHead,
} from '../../../src/page/state/head-keys.js';
import { fields } from '../../../src/page/words/fields.en.js';

const cask = 'vessel: cask\nunits: mm\nheight: 945\nbilge: 678\nends: 572\nstaves: { count: 28 }\n';
const planned = (text: string) => planVessel(text, 'test.yaml').vessel!;
const found = (text: string, ...path: string[]) =>
  findText(parseSpec(text), keysOfSpec(planned(text).spec), ['heads', ...path]);

describe('the key of a number', () => {
  it('is about one head, about both, or about something else', () => {
    expect(endOf(['heads', 'top', 'croze', 'inset'])).toBe('top');
    expect(endOf(['heads', 'croze', 'inset'])).toBeNull();
    expect(endOf(['top'])).toBeNull();
  });

  it('is changed into that of another head and back', () => {
    const both = ['heads', 'croze', 'inset'];
    expect(forHead(both, 'bottom')).toEqual(['heads', 'bottom', 'croze', 'inset']);
    expect(forHead(forHead(both, 'top'), 'bottom')).toEqual(['heads', 'bottom', 'croze', 'inset']);
    expect(forHead(forHead(both, 'top'), null)).toEqual(both);
    expect(forHead(['bilge'], 'top')).toEqual(['bilge']);
  });

  it('gives a message a place at every box that the number has', () => {
    const keys = (...path: string[]) => sameNumber(path).map((each) => each.join('.'));
    expect(keys('heads', 'thickness')).toEqual([
      'heads.thickness',
      'heads.top.thickness',
      'heads.bottom.thickness',
    ]);
    expect(keys('heads', 'top', 'thickness')).toEqual(['heads.top.thickness', 'heads.thickness']);
    expect(keys('bilge')).toEqual(['bilge']);
  });
});

describe('what stands in a box', () => {
  it('is what is said of its head, then of both, then what follows from the rest', () => {
    const text = `${cask}heads: { thickness: 25, top: { thickness: 30 } }\n`;
    expect(found(text, 'top', 'thickness')).toEqual({ text: '30', byDefault: false, isOwn: true });
    expect(found(text, 'bottom', 'thickness')).toEqual({
      text: '25',
      byDefault: true,
      isOwn: true,
    });
    expect(found(text, 'thickness').text).toBe('25');
    expect(found(text, 'bottom', 'croze', 'inset')).toMatchObject({ text: '60', byDefault: true });
  });

  it('is the same for both while the heads are alike', () => {
    for (const end of ['top', 'bottom'])
      expect(found(cask, end, 'croze', 'depth')).toEqual(found(cask, 'croze', 'depth'));
  });

  it('of a default that hangs on a number of its head follows that head', () => {
    const text = `${cask}heads: { top: { thickness: 54 } }\n`;
    const [top, bottom] = ['top', 'bottom'].map((end) =>
      Number(found(text, end, 'edge', 'outerBevel').text),
    );
    expect(top).toBe(2 * bottom!);
  });
});

describe('typing into the box of one head', () => {
  it('changes that head alone, and taking it out makes both alike again', () => {
    const { path } = fieldOfHead('top')(grooveInset);
    const text = setInSpec(cask, path, '72')!;
    const { heads } = planned(text);
    expect([heads.top!.spec.croze.inset, heads.bottom.spec.croze.inset]).toEqual([72, 60]);
    expect(saysOfOneHead(parseSpec(text))).toBe(true);
    const back = removeFromSpec(text, ['heads', 'top'])!;
    expect(saysOfOneHead(parseSpec(back))).toBe(false);
    expect(planned(back).heads.top!.spec.croze.inset).toBe(60);
  });

  it('leaves the other keys of the heads as they were typed', () => {
    const text = `${cask}heads:\n  thickness: 25 # what the merchant has\n`;
    const changed = setInSpec(text, ['heads', 'bottom', 'boards'], '7')!;
    expect(changed).toContain('thickness: 25 # what the merchant has');
    expect(planned(changed).heads.bottom.boards).toHaveLength(7);
    expect(planned(changed).heads.top!.boards).toHaveLength(6);
  });
});

describe('the groups of boxes', () => {
  const kind = { vessel: 'cask', mixedStaves: false, mixedBoards: [], headsApart: false } as const;
  const keysOf = (given: Parameters<typeof groupsOf>[0]) =>
    groupsOf(given).flatMap(({ sections }) =>
      sections.flatMap((section) => section.fields.map(keyOf)),
    );
  const ofHeads = (keys: string[]) => keys.filter((key) => key.startsWith('heads.'));

  it('have every key of the heads, once for both or once for each', () => {
    const alike = ofHeads(keysOf(kind));
    const apart = ofHeads(keysOf({ ...kind, headsApart: true }));
    expect(alike).toHaveLength(15);
    expect(apart).toHaveLength(30);
    expect(new Set(apart)).toEqual(
      new Set(alike.flatMap((key) => ['top', 'bottom'].map((end) => key.replace('.', `.${end}.`)))),
    );
  });

  it('give a tub a bottom only', () => {
    const keys = ofHeads(keysOf({ ...kind, vessel: 'tub', headsApart: true }));
    expect(keys).toHaveLength(15);
    expect(keys.every((key) => key.startsWith('heads.bottom.'))).toBe(true);
  });

  it('ask for the widths of boards where one head alone has its own', () => {
    const keys = keysOf({ ...kind, headsApart: true, mixedBoards: ['top'] });
    expect(keys).toContain('heads.top.widths');
    expect(keys).toContain('heads.bottom.boards');
    expect(keys).not.toContain('heads.top.boards');
  });

  it('cover every key that a whole spec has of differing heads, and have a name for it', () => {
    const whole = parseSpec(writeSpec(planned(`${cask}heads: { top: { thickness: 30 } }\n`).spec))!;
    const boxes = groupsOf({ ...kind, headsApart: true });
    for (const { sections } of boxes)
      for (const field of sections.flatMap((section) => section.fields)) {
        expect(fields.fields[nameOf(field)], keyOf(field)).toBeDefined();
        if (field.path[0] === 'heads') whole.deleteIn(field.path);
      }
    const left = JSON.stringify(whole.toJS().heads).match(/:(?!\{)/g);
    expect(left).toBeNull();
  });
});
