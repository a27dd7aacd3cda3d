import { describe, expect, it } from 'vitest';
import { bucket, codesOf, messagesOf, specOf, wineCask, withLine } from './texts.js';

const headsOf = (line: string) => specOf(withLine(wineCask, line)).heads;

describe('heads.top and heads.bottom', () => {
  it('override the common keys, key by key', () => {
    const { top, bottom } = headsOf(
      'heads: { thickness: 25, croze: { inset: 55, depth: 4 }, top: { croze: { depth: 6 } }, bottom: { thickness: 30 } }',
    );
    expect(top).toMatchObject({ thickness: 25, croze: { inset: 55, depth: 6, width: 6 } });
    expect(bottom).toMatchObject({ thickness: 30, croze: { inset: 55, depth: 4, width: 6 } });
  });

  it('have defaults that follow their own thickness', () => {
    const { top, bottom } = headsOf('heads: { bottom: { thickness: 13.5 } }');
    expect(top!.edge.fromInside).toBe(12);
    expect(bottom.edge.fromInside).toBe(6);
  });

  it('may have widths where the common key is boards, and the other way round', () => {
    const wide = headsOf('heads: { boards: 5, top: { widths: [150, 150, 150, 150] } }');
    expect([wide.top!.boards, wide.top!.widths, wide.bottom.boards, wide.bottom.widths]).toEqual([
      4,
      [150, 150, 150, 150],
      5,
      null,
    ]);
    const few = headsOf('heads: { widths: [150, 150, 150, 150], top: { boards: 7 } }');
    expect([few.top!.boards, few.top!.widths, few.bottom.boards]).toEqual([7, null, 4]);
  });

  it('cannot have both in one place', () => {
    expect(codesOf(withLine(wineCask, 'heads: { boards: 1, widths: [600] }'))).toEqual([
      'boards-and-widths',
    ]);
    const [message] = messagesOf(
      withLine(wineCask, 'heads: { top: { boards: 1, widths: [600] } }'),
    );
    expect(message!.key).toBe('heads.top.boards');
  });

  it('are blamed for their own faults, once', () => {
    const own = messagesOf(withLine(wineCask, 'heads: { top: { edge: { thickness: 7 } } }'));
    expect(own.map(({ code, key }) => [code, key])).toEqual([
      ['land-thicker-than-groove', 'heads.top.edge.thickness'],
    ]);
    const common = messagesOf(withLine(wineCask, 'heads: { edge: { thickness: 7 } }'));
    expect(common.map(({ code, key }) => [code, key])).toEqual([
      ['land-thicker-than-groove', 'heads.edge.thickness'],
    ]);
  });
});

describe('a tub', () => {
  it('has a bottom only, which the common keys describe', () => {
    const { heads } = specOf(withLine(bucket, 'heads: { thickness: 18, bottom: { boards: 4 } }'));
    expect(heads.top).toBeNull();
    expect(heads.bottom).toMatchObject({ thickness: 18, boards: 4 });
  });
});
