/** What one opened drawing is doing: which part of it is in view, where the pointer is, what has been measured. */
import { useComputed, useSignal, type ReadonlySignal, type Signal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { drawingBounds, type Drawing, type Point } from '../../index.js';
import type { Meaning } from './gestures.js';
import { snapped } from './measuring.js';
import { fitted, panned, toDrawing, zoomed, type Size, type View } from './pan-zoom.js';

/** Pixels within which a corner is meant. */
const snapReach = 14;
/** What browsers take for a millimetre. */
export const trueScale = 96 / 25.4;

export interface SheetState extends Meaning {
  readonly element: RefObject<HTMLDivElement | null>;
  readonly screen: Signal<Size>;
  readonly view: Signal<View>;
  readonly measuring: Signal<boolean>;
  readonly marks: Signal<readonly Point[]>;
  /** of the drawing: under the pointer, or in the middle */
  readonly place: ReadonlySignal<Point>;
}

export function useSheet(drawing: Drawing): SheetState {
  const element = useRef<HTMLDivElement>(null);
  const screen = useSignal<Size>({ width: 1, height: 1 });
  const view = useSignal<View>({ centre: { x: 0, y: 0 }, scale: 1 });
  const pointer = useSignal<Point | null>(null);
  const marks = useSignal<readonly Point[]>([]);
  const measuring = useSignal(false);
  const bounds = useMemo(() => drawingBounds(drawing), [drawing]);
  const fit = (): void => void (view.value = fitted(bounds, screen.value));
  useLayoutEffect(() => {
    // it has no size before its dialog is shown, and another one when a tablet is turned
    const observer = new ResizeObserver(() => {
      const { clientWidth: width, clientHeight: height } = element.current!;
      screen.value = { width, height };
      fit();
    });
    observer.observe(element.current!);
    return () => observer.disconnect();
  }, [drawing.name]);
  const middle = (): Point => ({ x: screen.value.width / 2, y: screen.value.height / 2 });
  const place = useComputed(() => toDrawing(view.value, screen.value, pointer.value ?? middle()));
  const tap = (at: Point | null): void => {
    if (!measuring.value) return;
    const point = toDrawing(view.value, screen.value, at ?? middle());
    const corner = snapped(drawing, point, snapReach / view.value.scale);
    marks.value = marks.value.length === 1 ? [...marks.value, corner] : [corner];
  };
  return {
    element,
    screen,
    view,
    measuring,
    marks,
    place,
    fit,
    tap,
    pan: (dx, dy) => void (view.value = panned(view.value, dx, dy)),
    zoom: (factor, at = middle()) =>
      void (view.value = zoomed(view.value, screen.value, at, factor)),
    point: (at) => void (pointer.value = at),
  };
}
