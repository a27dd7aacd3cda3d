/** Faults between one key and another. */
import { describe, expect, it } from 'vitest';
import { bucket, codesOf, messagesOf, specOf, wineCask, withLine } from './texts.js';

describe('the outside of a cask', () => {
  it('may be all but straight: a rise of a hundredth of a millimetre', () => {
    expect(codesOf(withLine(wineCask, 'ends: 677.98'))).toEqual([]);
    expect(codesOf(withLine(wineCask, 'ends: 677.998'))).toEqual([]);
  });
  it('cannot be straight: that is a tub', () => {
    for (const ends of [678, 677.9999, 678.0001]) {
      const [message] = messagesOf(withLine(wineCask, `ends: ${ends}`));
      expect(message!.code).toBe('bilge-equals-ends');
      expect(message!.text).toContain('vessel: tub');
    }
  });
  it('cannot be narrower at the bilge', () => {
    expect(messagesOf(withLine(wineCask, 'ends: 700'))).toMatchObject([
      {
        code: 'bilge-below-ends',
        key: 'bilge',
        line: 5,
        found: '678 mm',
        allowed: 'more than the ends, 700 mm',
      },
    ]);
  });
  it('of a tub may be straight, or lean either way', () => {
    for (const top of [260, 300, 200])
      expect(specOf(withLine(bucket, `top: ${top}`)).outside.kind).toBe('tub');
  });
});

describe('keys that contradict each other', () => {
  it.each([
    ['staves: { count: 28, widths: [70, 70, 70, 70, 70, 70] }', 'count-and-widths', 'staves.count'],
    ['staves: { count: 28, endThickness: 55 }', 'end-thickness-far-off', 'staves.endThickness'],
    ['staves: { count: 28, endThickness: 10 }', 'end-thickness-far-off', 'staves.endThickness'],
    ['chime: { flat: 28 }', 'chime-flat-too-wide', 'chime.flat'],
    ['heads: { edge: { thickness: 6.1 } }', 'land-thicker-than-groove', 'heads.edge.thickness'],
    ['heads: { edge: { fromInside: 2 } }', 'land-outside-head', 'heads.edge.fromInside'],
    ['heads: { edge: { fromInside: 26 } }', 'land-outside-head', 'heads.edge.fromInside'],
    ['heads: { dowels: { diameter: 27 } }', 'dowel-thicker-than-head', 'heads.dowels.diameter'],
    ['heads: { croze: { inset: 3 } }', 'groove-at-the-end', 'heads.croze.inset'],
    ['heads: { croze: { inset: 500 } }', 'no-room-between-heads', 'heads.croze.inset'],
    ['hoops: [{ name: a, offset: 945, width: 30 }]', 'hoop-beyond-vessel', 'hoops[0].offset'],
    [
      'hoops: [{ name: a, offset: 3, width: 30 }, { name: A, end: top, offset: 90, width: 30 }]',
      'hoop-name-doubled',
      'hoops[1].name',
    ],
  ])('%s', (line, code, key) => {
    expect(messagesOf(withLine(wineCask, line))).toMatchObject([{ code, key }]);
  });

  it('leave room inside', () => {
    const narrow =
      'vessel: tub\nunits: mm\nheight: 200\ntop: 60\nbottom: 55\nstaves: { count: 8, thickness: 28 }\n';
    expect(codesOf(narrow)).toContain('no-room-inside');
  });

  it('may name a hoop at each end alike', () => {
    const hoops =
      'hoops: [{ name: a, end: top, offset: 3, width: 30 }, { name: a, end: bottom, offset: 9, width: 30 }]';
    expect(codesOf(withLine(wineCask, hoops))).toEqual([]);
  });

  it('may have a land just as thick as the groove is wide', () => {
    expect(
      codesOf(withLine(wineCask, 'heads: { croze: { width: 7 }, edge: { thickness: 7 } }')),
    ).toEqual([]);
  });
});

describe('a key that is wrong in itself', () => {
  it('is not held against others', () => {
    expect(
      codesOf(withLine(wineCask, 'heads: { croze: { width: wide }, edge: { thickness: 9 } }')),
    ).toEqual(['not-a-length']);
    expect(codesOf(withLine(wineCask, 'height: high'))).toEqual(['not-a-length']);
    expect(codesOf(withLine(withLine(wineCask, 'bilge: 5'), 'ends: 572'))).toEqual([
      'length-too-small',
    ]);
  });
  it('does not hide what is wrong with others', () => {
    const text = withLine(withLine(wineCask, 'howel: { depth: deep }'), 'chime: { flat: 28 }');
    expect(codesOf(text)).toEqual(['not-a-length', 'chime-flat-too-wide']);
  });
});
