import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HeadSpec } from '../../src/spec/spec.js';
import {
  boardLengthAllowance,
  boardsOf,
  dowelsOf,
  halfChord,
  jointsOf,
  type Dowel,
  type Rim,
} from '../../src/vessel/boards.js';
import { spread } from './numeric.js';
import { between, wineCask } from './specs.js';

const wine = wineCask.heads.bottom;
const round = (radius: number): Rim => ({ along: radius, across: radius });

function laidOut(changes: Partial<HeadSpec>, rim: Rim) {
  const head = { ...wine, ...changes };
  const joints = jointsOf(head, rim);
  const boards = boardsOf(head, rim, joints);
  return { head, joints, boards, dowels: dowelsOf(head, rim, joints, boards) };
}

const anyHead = fc
  .record({
    radius: between(60, 700),
    boards: fc.integer({ min: 1, max: 12 }),
    crossGrain: fc.constantFrom(0, -3, 2),
    uneven: fc.option(fc.array(between(0.6, 1.5), { minLength: 12, maxLength: 12 })),
    dowels: fc.record({
      diameter: between(4, 12),
      length: between(15, 90),
      spacing: between(40, 250),
      margin: between(0, 40),
    }),
    bevels: fc.tuple(between(5, 50), between(5, 50)),
  })
  .map(({ radius, boards, crossGrain, uneven, dowels, bevels }) => {
    const rim = { along: radius, across: radius + crossGrain / 2 };
    const shares = uneven?.slice(0, boards);
    const sum = shares?.reduce((a, b) => a + b, 0) ?? 1;
    // laid a little over the diameter: what stands over comes off the cants
    const widths = shares?.map((share) => (share / sum) * 2 * rim.across * 1.01) ?? null;
    const edge = { ...wine.edge, outerBevel: bevels[0], innerBevel: bevels[1] };
    return { rim, changes: { boards, widths, crossGrain, dowels, edge } };
  });

describe('joints', () => {
  it('are none in a head of one board', () => {
    const { joints, boards, dowels } = laidOut({ boards: 1 }, round(278));
    expect(joints).toEqual([]);
    expect(boards).toHaveLength(1);
    expect(boards[0]!.width).toBeCloseTo(556, 12);
    expect(boards[0]!.length).toBeCloseTo(556 + boardLengthAllowance, 12);
    expect(dowels).toEqual([]);
  });

  it('of two boards is the one through the middle', () => {
    const { joints, boards } = laidOut({ boards: 2 }, round(278));
    expect(joints).toHaveLength(1);
    expect(joints[0]).toBeCloseTo(0, 12);
    for (const board of boards) {
      expect(board.width).toBeCloseTo(278, 12);
      expect(board.chord).toBeCloseTo(556, 12);
    }
  });

  it('leave a middle board of odd counts and a middle joint of even ones', () => {
    expect(laidOut({ boards: 5 }, round(250)).joints).toEqual(
      [-150, -50, 50, 150].map((y) => expect.closeTo(y, 10) as number),
    );
    expect(laidOut({ boards: 4 }, round(250)).joints).toEqual(
      [-125, 0, 125].map((y) => expect.closeTo(y, 10) as number),
    );
  });

  it('of given widths are centred, and what stands over comes off the cants', () => {
    const widths = [120, 100, 90, 110, 150];
    const { joints, boards } = laidOut({ widths, boards: 5 }, round(278));
    expect(joints).toEqual([-165, -65, 25, 135]);
    expect(boards.map(({ width }) => width)).toEqual(widths);
    expect(boards[0]!.from).toBe(-278);
    expect(boards[4]!.to).toBe(278);
  });
});

describe('boards', () => {
  it('have the longest chord inside their strip (closed form)', () => {
    const { boards } = laidOut({ boards: 6 }, round(278.2));
    const edge = 278.2 / 3;
    expect(boards[2]!.chord).toBeCloseTo(2 * 278.2, 10);
    expect(boards[1]!.chord).toBeCloseTo(2 * Math.sqrt(278.2 ** 2 - edge ** 2), 10);
    expect(boards[0]!.chord).toBeCloseTo(2 * Math.sqrt(278.2 ** 2 - (2 * edge) ** 2), 10);
    expect(boards[5]!.chord).toBeCloseTo(boards[0]!.chord, 10);
  });

  it('cover the head, side by side, and no chord within a board is longer than its blank', () => {
    fc.assert(
      fc.property(anyHead, ({ rim, changes }) => {
        const { boards } = laidOut(changes, rim);
        expect(boards[0]!.from).toBeCloseTo(-rim.across, 9);
        expect(boards.at(-1)!.to).toBeCloseTo(rim.across, 9);
        boards.slice(1).forEach((board, i) => expect(board.from).toBe(boards[i]!.to));
        for (const board of boards) {
          expect(board.width).toBeGreaterThanOrEqual(board.to - board.from - 1e-9);
          for (const y of spread(board.from, board.to, 40)) {
            const chord = 2 * rim.along * Math.sqrt(Math.max(0, 1 - (y / rim.across) ** 2));
            expect(chord).toBeLessThanOrEqual(board.chord + 1e-9);
          }
        }
      }),
    );
  });

  it('of a head that is wider across the grain are wider, and their chords as long', () => {
    const plain = laidOut({ boards: 1 }, round(278)).boards[0]!;
    const wide = laidOut({ boards: 1 }, { along: 278, across: 279 }).boards[0]!;
    expect(wide.width - plain.width).toBeCloseTo(2, 10);
    expect(wide.chord).toBeCloseTo(plain.chord, 10);
    expect(halfChord({ along: 278, across: 279 }, 279)).toBe(0);
    expect(halfChord({ along: 278, across: 279 }, 300)).toBe(0);
  });
});

describe('dowels', () => {
  const corners = ({ x, y }: Dowel, { dowels }: HeadSpec): [number, number][] =>
    [-1, 1].flatMap((i) =>
      [-1, 1].map((j): [number, number] => [
        x + (i * dowels.diameter) / 2,
        y + (j * dowels.length) / 2,
      ]),
    );

  it('keep every corner of every bore within the full thickness of the head', () => {
    fc.assert(
      fc.property(anyHead, ({ rim, changes }) => {
        const { head, dowels } = laidOut(changes, rim);
        const bevel = Math.max(head.edge.outerBevel, head.edge.innerBevel);
        for (const dowel of dowels) {
          for (const [x, y] of corners(dowel, head)) {
            const inside = (x / (rim.along - bevel)) ** 2 + (y / (rim.across - bevel)) ** 2;
            expect(inside).toBeLessThanOrEqual(1 + 1e-9);
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  it('stand on their joints, the margin and the bevel from the rim, no wider apart than asked', () => {
    fc.assert(
      fc.property(anyHead, ({ rim, changes }) => {
        const { head, joints, dowels } = laidOut(changes, rim);
        const away = Math.max(head.edge.outerBevel, head.edge.innerBevel) + head.dowels.margin;
        joints.forEach((y, i) => {
          const xs = dowels.filter(({ joint }) => joint === i + 1).map(({ x }) => x);
          xs.forEach((x, k) => {
            const inside = (x / (rim.along - away)) ** 2 + (y / (rim.across - away)) ** 2;
            expect(inside).toBeLessThanOrEqual(1 + 1e-9);
            expect(x).toBeCloseTo(-xs[xs.length - 1 - k]!, 9);
            if (k > 0) {
              expect(x - xs[k - 1]!).toBeLessThanOrEqual(head.dowels.spacing + 1e-9);
              expect(x - xs[k - 1]!).toBeGreaterThan(head.dowels.diameter);
            }
          });
        });
        dowels.forEach((dowel) => expect(dowel.y).toBe(joints[dowel.joint - 1]));
      }),
      { numRuns: 150 },
    );
  });

  it('do not meet inside a board, nor come out of a cant', () => {
    fc.assert(
      fc.property(anyHead, ({ rim, changes }) => {
        const { head, boards, dowels } = laidOut(changes, rim);
        const ends = dowels.flatMap((dowel) => [
          {
            board: dowel.joint - 1,
            x: dowel.x,
            from: dowel.y - head.dowels.length / 2,
            to: dowel.y,
          },
          { board: dowel.joint, x: dowel.x, from: dowel.y, to: dowel.y + head.dowels.length / 2 },
        ]);
        for (const end of ends) {
          expect(end.from).toBeGreaterThan(boards[end.board]!.from - 1e-9);
          expect(end.to).toBeLessThan(boards[end.board]!.to + 1e-9);
        }
        for (const a of ends) {
          for (const b of ends) {
            if (a === b || a.board !== b.board || a.from === b.from) continue;
            const beside = Math.abs(a.x - b.x) >= head.dowels.diameter;
            expect(beside || a.to <= b.from + 1e-9 || b.to <= a.from + 1e-9).toBe(true);
          }
        }
      }),
    );
  });

  it('of the wine head stand at even steps about the middle of each joint', () => {
    const { dowels } = laidOut({}, round(278.2));
    expect(dowels.map(({ joint }) => joint)).toEqual([1, 1, 2, 2, 2, 3, 3, 3, 4, 4, 4, 5, 5]);
    expect(dowels.filter(({ joint }) => joint === 3).map(({ x }) => x)).toEqual([-150, 0, 150]);
  });

  it('are left out where a bore would break out, and of a joint too short for two there is one', () => {
    expect(laidOut({ boards: 12 }, round(278)).dowels.some(({ joint }) => joint === 1)).toBe(false);
    const dowels = { ...wine.dowels, spacing: 150, length: 20, margin: 5 };
    const edge = { ...wine.edge, outerBevel: 12, innerBevel: 12 };
    const small = laidOut({ boards: 2, dowels, edge }, round(31));
    expect(small.dowels.map(({ x }) => x)).toEqual([0]);
    expect(laidOut({ boards: 2, dowels, edge }, round(20)).dowels).toEqual([]);
  });
});
