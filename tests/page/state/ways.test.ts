/** Changing between a count and widths, and between a bung hole and none, keeps the vessel and the rest of the text. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { planVessel, type Vessel } from '../../../src/index.js';
import { boardsIn, bungIn, stavesIn } from '../../../src/page/state/ways.js';
import { root } from '../../cli/workshop.js';

const cask = `vessel: cask
units: mm
height: 945 # overall
bilge: 678
ends: 572
staves: { count: 28, thickness: 27 } # oak
`;
const tub = 'vessel: tub\nunits: mm\nheight: 400\ntop: 300\nbottom: 260\nstaves: { count: 16 }\n';
const keg = readFileSync(join(root, 'templates/keg-10-inches.yaml'), 'utf8');

function planned(text: string): Vessel {
  const { vessel, messages } = planVessel(text, 'test.yaml');
  expect(messages.filter(({ severity }) => severity === 'error')).toEqual([]);
  return vessel!;
}

describe.each([
  ['cask', cask, 678],
  ['tub', tub, 300],
  ['keg in inches', keg, planned(keg).ring.closesAt],
])('the staves of a %s', (_, text, across) => {
  const before = planned(text);
  const uneven = stavesIn(text, 'uneven', before)!;

  it('become widths that close where the even ones did', () => {
    const { spec, ring } = planned(uneven);
    expect(spec.staves.widths).toHaveLength(before.spec.staves.count);
    expect(Math.abs(ring.closesAt - across)).toBeLessThan(0.1);
  });

  it('become a count again', () => {
    const even = stavesIn(uneven, 'even', planned(uneven))!;
    expect(planned(even).spec).toEqual(before.spec);
    expect(even).not.toContain('widths');
  });

  it('the boards of the heads likewise: the head stays covered', () => {
    const boards = boardsIn(text, 'uneven', null, before)!;
    const { heads } = planned(boards);
    expect(heads.bottom.spec.widths).toHaveLength(before.heads.bottom.boards.length);
    heads.bottom.boards.forEach(({ width }, i) =>
      expect(Math.abs(width - before.heads.bottom.boards[i]!.width)).toBeLessThan(0.02),
    );
    const back = planned(boardsIn(boards, 'even', null, planned(boards))!);
    expect(back.spec.heads).toEqual(before.spec.heads);
  });
});

it('comments and other keys stay', () => {
  const uneven = stavesIn(cask, 'uneven', planned(cask))!;
  expect(uneven).toContain('height: 945 # overall');
  expect(uneven).toMatch(/thickness: 27.*# oak/);
});

it('boards of one head alone', () => {
  const text = boardsIn(cask, 'uneven', 'top', planned(cask))!;
  const { heads } = planned(text).spec;
  expect([heads.top!.widths?.length, heads.bottom.widths]).toEqual([6, null]);
  const shared = boardsIn(cask, 'uneven', null, planned(cask))!;
  const oneEven = planned(boardsIn(shared, 'even', 'top', planned(shared))!).spec.heads;
  expect([oneEven.top!.widths, oneEven.bottom.widths?.length]).toEqual([null, 6]);
});

it('boards of a tub with nothing said of a top stay as they are', () => {
  expect(boardsIn(tub, 'uneven', 'top', planned(tub))).toBe(tub);
});

describe('a bung hole', () => {
  it('of a cask is left out, and comes back as by default', () => {
    const without = bungIn(cask, false, 'cask')!;
    expect(without).toContain('bung: none');
    expect(planned(without).spec.bung).toBeNull();
    expect(planned(bungIn(without, true, 'cask')!).spec.bung).toEqual({ diameter: 50 });
    const own = `${cask}bung: { diameter: 44 }\n`;
    expect(planned(bungIn(own, false, 'cask')!).spec.bung).toBeNull();
  });

  it('of a tub is bored on request, and left out again', () => {
    expect(planned(tub).spec.bung).toBeNull();
    const bored = bungIn(tub, true, 'tub')!;
    expect(planned(bored).spec.bung!.diameter).toBeGreaterThan(10);
    expect(planned(bungIn(bored, false, 'tub')!).spec.bung).toBeNull();
  });
});

it('text that is no YAML is left alone', () => {
  const broken = 'staves: { count: 28';
  expect(stavesIn(broken, 'uneven', planned(cask))).toBeNull();
  expect(boardsIn(broken, 'even', null, planned(cask))).toBeNull();
  expect([bungIn(broken, true, 'tub'), bungIn(broken, false, 'cask')]).toEqual([null, null]);
});
