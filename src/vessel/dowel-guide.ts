/** One drilling guide for all joints of a head: which holes it needs, and which joints each serves. Lengths in mm. */
import type { Head } from './head.js';

export interface GuideHole {
  /** from the middle of the joint */
  readonly x: number;
  /** numbers of the joints that are drilled through it, ascending */
  readonly joints: readonly number[];
}

/** A row of holes. Where holes of two joints would run into each other, the joints have rows of their own. */
export interface GuideRow {
  readonly holes: readonly GuideHole[];
  readonly joints: readonly number[];
}

/** Wood or steel between two holes of a guide (mm; our judgement). */
export const leastWeb = 3;
/** Holes nearer than this are one. */
const sameHole = 0.01;

/** Rows in the order of their first joint; none for a head without dowels. */
export function dowelGuide({ dowels, spec }: Pick<Head, 'dowels' | 'spec'>): GuideRow[] {
  const joints = [...new Set(dowels.map(({ joint }) => joint))];
  const rows: { x: number; joint: number }[][] = [];
  for (const joint of joints) {
    const own = dowels.filter((dowel) => dowel.joint === joint);
    const row = rows.find((placed) =>
      own.every(({ x }) => placed.every((hole) => fits(hole.x - x, spec.dowels.diameter))),
    );
    if (row) row.push(...own);
    else rows.push([...own]);
  }
  return rows.map(rowOf);
}

function fits(apart: number, diameter: number): boolean {
  const distance = Math.abs(apart);
  return distance < sameHole || distance >= diameter + leastWeb;
}

function rowOf(places: readonly { x: number; joint: number }[]): GuideRow {
  const holes: { x: number; joints: number[] }[] = [];
  for (const { x, joint } of [...places].sort((a, b) => a.x - b.x || a.joint - b.joint)) {
    const hole = holes.find((each) => Math.abs(each.x - x) < sameHole);
    if (hole) hole.joints.push(joint);
    else holes.push({ x, joints: [joint] });
  }
  for (const hole of holes) hole.joints.sort((a, b) => a - b);
  return { holes, joints: [...new Set(places.map(({ joint }) => joint))] };
}
