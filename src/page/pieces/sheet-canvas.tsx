/** A drawing that can be moved, enlarged and measured in, by hand or by keyboard. */
import type { JSX } from 'preact';
import type { Drawing } from '../../index.js';
import { words } from '../words/index.js';
import { useGestures } from './gestures.js';
import { measured } from './measuring.js';
import { toScreen, viewBoxOf } from './pan-zoom.js';
import { ReadOut } from './read-out.js';
import { Lines, Marks } from './sheet-picture.js';
import { trueScale, useSheet, type SheetState } from './use-sheet.js';

export function SheetCanvas({ piece, drawing }: { piece: string; drawing: Drawing }): JSX.Element {
  const sheet = useSheet(drawing);
  const gestures = useGestures(sheet);
  const { view, screen, marks } = sheet;
  const [from, to] = marks.value;
  return (
    <>
      <SheetTools sheet={sheet} />
      <div
        class="canvas"
        ref={sheet.element}
        tabIndex={0}
        role="application"
        aria-label={words.value.viewer.canvas}
        {...gestures}
      >
        <Lines drawing={drawing} viewBox={viewBoxOf(view.value, screen.value)} />
        <Marks points={marks.value.map((point) => toScreen(view.value, screen.value, point))} />
        <span class="cross" aria-hidden="true" />
      </div>
      <ReadOut
        piece={piece}
        drawing={drawing}
        at={sheet.place.value}
        measuring={sheet.measuring.value}
        measured={from && to ? measured(from, to) : null}
      />
    </>
  );
}

function SheetTools({ sheet }: { sheet: SheetState }): JSX.Element {
  const { viewer } = words.value;
  const { zoom, fit, view, measuring, marks } = sheet;
  const measure = (): void => {
    measuring.value = !measuring.value;
    marks.value = [];
  };
  return (
    <div class="tools">
      <button type="button" onClick={() => zoom(1.5)}>
        {viewer.larger}
      </button>
      <button type="button" onClick={() => zoom(1 / 1.5)}>
        {viewer.smaller}
      </button>
      <button type="button" onClick={fit}>
        {viewer.whole}
      </button>
      <button type="button" onClick={() => zoom(trueScale / view.value.scale)}>
        {viewer.trueSize}
      </button>
      <button type="button" aria-pressed={measuring.value} onClick={measure}>
        {viewer.measure}
      </button>
    </div>
  );
}
