/** Fingers, mouse, wheel and keys on a drawing, told as what they mean. */
import { useMemo } from 'preact/hooks';
import type { Point } from '../../index.js';

export interface Meaning {
  readonly pan: (dx: number, dy: number) => void;
  readonly zoom: (factor: number, at?: Point) => void;
  /** where the pointer is, or null when it has left */
  readonly point: (at: Point | null) => void;
  /** a touch without a move; null for one by key, which means the middle */
  readonly tap: (at: Point | null) => void;
  readonly fit: () => void;
}

type Handlers = Record<
  'onPointerDown' | 'onPointerMove' | 'onPointerUp' | 'onPointerCancel' | 'onPointerLeave',
  (event: PointerEvent) => void
> & {
  readonly onWheel: (event: WheelEvent) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
};

/** More pixels than this are a move, not a touch. */
const steadyHand = 6;
const keyStep = 40;

/** Moves, zooms and taps go to the latest `meaning`. */
export function useGestures(meaning: Meaning): Handlers {
  const latest = useMemo(() => ({ meaning }), []);
  latest.meaning = meaning;
  return useMemo(() => handlers(() => latest.meaning), [latest]);
}

function handlers(meaning: () => Meaning): Handlers {
  const down = new Map<number, Point>();
  let start: Point | null = null;
  const lift = (event: PointerEvent): void => {
    const at = placeOf(event);
    const isTap = start && down.size === 1 && apart(start, at) <= steadyHand;
    down.delete(event.pointerId);
    if (isTap && event.type === 'pointerup') meaning().tap(at);
    if (down.size === 0) start = null;
  };
  return {
    onPointerDown: (event) => {
      const at = placeOf(event);
      elementOf(event).setPointerCapture(event.pointerId);
      down.set(event.pointerId, at);
      start = down.size === 1 ? at : null;
      meaning().point(at);
    },
    onPointerMove: (event) => {
      const at = placeOf(event);
      const before = down.get(event.pointerId);
      meaning().point(at);
      if (!before) return;
      const other = [...down].find(([id]) => id !== event.pointerId)?.[1];
      if (other)
        meaning().zoom(apart(at, other) / Math.max(1, apart(before, other)), between(at, other));
      else meaning().pan(at.x - before.x, at.y - before.y);
      down.set(event.pointerId, at);
    },
    onPointerUp: lift,
    onPointerCancel: lift,
    onPointerLeave: () => meaning().point(null),
    onWheel: (event) => {
      event.preventDefault();
      meaning().zoom(Math.exp(-event.deltaY / 400), placeOf(event));
    },
    onKeyDown: (event) => {
      const act = byKey(meaning())[event.key];
      if (!act) return;
      event.preventDefault();
      meaning().point(null);
      act();
    },
  };
}

const byKey = ({ pan, zoom, tap, fit }: Meaning): Readonly<Record<string, () => void>> => ({
  ArrowLeft: () => pan(keyStep, 0),
  ArrowRight: () => pan(-keyStep, 0),
  ArrowUp: () => pan(0, keyStep),
  ArrowDown: () => pan(0, -keyStep),
  '+': () => zoom(1.25),
  '=': () => zoom(1.25),
  '-': () => zoom(1 / 1.25),
  '0': fit,
  Enter: () => tap(null),
  ' ': () => tap(null),
});

const elementOf = (event: Event): HTMLElement => event.currentTarget as HTMLElement;

function placeOf(event: MouseEvent): Point {
  const { left, top } = elementOf(event).getBoundingClientRect();
  return { x: event.clientX - left, y: event.clientY - top };
}

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
const between = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
