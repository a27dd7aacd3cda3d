/** The canvas of the view in space: fingers, mouse and keys on it. Without WebGL, the vessel's section. */
import { effect, useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { drawingsOf } from '../pieces/drawings.js';
import { sheetLines } from '../pieces/sheet-lines.js';
import { SmallLines } from '../pieces/small-lines.js';
import { look } from '../bar/look.js';
import { vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { graphics } from './graphics.js';
import { keys } from './keys.js';
import type { VesselScene } from './scene.js';
import { shadesOf } from './shades.js';
import { apart, choose, chosenKey } from './space-state.js';

/** More pixels than this turn the vessel; fewer choose a body. */
const steadyHand = 6;

export function SpaceCanvas(): JSX.Element {
  const canvas = useRef<HTMLCanvasElement>(null);
  const scene = useRef<VesselScene | null>(null);
  const state = useSignal<'loading' | 'ready' | 'without'>('loading');
  useEffect(() => {
    let left = false;
    const close = open(canvas.current!).then((opened) => {
      if (left) opened?.close();
      scene.current = opened?.scene ?? null;
      state.value = opened ? 'ready' : 'without';
      return opened?.close;
    });
    return () => {
      left = true;
      void close.then((stop) => stop?.());
    };
  }, [state]);
  const start = useRef<{ x: number; y: number } | null>(null);
  const up = ({ clientX, clientY, isPrimary }: PointerEvent): void => {
    const from = start.current;
    start.current = null;
    if (!from || !isPrimary || Math.hypot(clientX - from.x, clientY - from.y) > steadyHand) return;
    const { left, top, width, height } = canvas.current!.getBoundingClientRect();
    choose(scene.current?.bodyAt((clientX - left) / width, (clientY - top) / height) ?? null);
  };
  if (state.value === 'without') return <Section />;
  return (
    <div class="space" aria-busy={state.value === 'loading'} onWheelCapture={onlyWhenFocused}>
      <canvas
        ref={canvas}
        tabIndex={0}
        role="application"
        aria-label={words.value.space.canvas}
        onPointerDown={({ clientX: x, clientY: y }) => (start.current = { x, y })}
        onPointerUp={up}
        onKeyDown={(event) => {
          const act = scene.current && keys(scene.current)[event.key];
          if (!act) return;
          event.preventDefault();
          act();
        }}
      />
      <SpaceButtons act={(key) => scene.current && keys(scene.current)[key]?.()} />
    </div>
  );
}

/** For those who have neither a steady hand nor a keyboard. */
function SpaceButtons({ act }: { act: (key: string) => void }): JSX.Element {
  const { space, viewer } = words.value;
  const buttons = [
    ['ArrowLeft', '←', space.left],
    ['ArrowRight', '→', space.right],
    ['ArrowUp', '↑', space.up],
    ['ArrowDown', '↓', space.down],
    ['+', '+', viewer.larger],
    ['-', '−', viewer.smaller],
    ['0', '⟲', space.reset],
  ] as const;
  return (
    <div class="tools">
      {buttons.map(([key, sign, label]) => (
        <button type="button" key={key} aria-label={label} title={label} onClick={() => act(key)}>
          {sign}
        </button>
      ))}
    </div>
  );
}

function Section(): JSX.Element {
  const [section] = drawingsOf('section').value;
  return (
    <div class="space without">
      <p>{words.value.space.without}</p>
      {section && <SmallLines lines={sheetLines(section)} />}
    </div>
  );
}

/** The wheel scrolls the page until one is at work in the picture. */
function onlyWhenFocused(event: WheelEvent): void {
  if (document.activeElement !== event.target) event.stopPropagation();
}

/** Null without WebGL. */
async function open(
  canvas: HTMLCanvasElement,
): Promise<{ scene: VesselScene; close: () => void } | null> {
  if (!vessel.value) return null;
  const means = graphics();
  if (means === 'none') return null;
  const { VesselScene } = await import('./scene.js');
  const scene = new VesselScene(canvas, vessel.value, means === 'software');
  const observer = new ResizeObserver(() =>
    scene.resize(canvas.clientWidth, Math.max(1, canvas.clientHeight)),
  );
  observer.observe(canvas);
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const paint = (): void => {
    const style = getComputedStyle(document.documentElement);
    scene.paint(shadesOf(style.getPropertyValue('--paper'), style.getPropertyValue('--ink')));
  };
  dark.addEventListener('change', paint);
  const stops = [
    effect(() => void (vessel.value && scene.show(vessel.value))),
    effect(() => scene.place(apart.value, chosenKey.value)),
    effect(() => {
      void look.value;
      queueMicrotask(paint);
    }),
  ];
  const close = (): void => {
    stops.forEach((stop) => stop());
    dark.removeEventListener('change', paint);
    observer.disconnect();
    scene.dispose();
  };
  return { scene, close };
}
