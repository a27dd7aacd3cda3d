/** Light or dark: as the device says, unless chosen here. */
import { effect, signal } from '@preact/signals';
import { keep, kept } from '../state/kept.js';

export const looks = ['device', 'light', 'dark'] as const;
export type Look = (typeof looks)[number];

export const look = signal<Look>(looks.find((each) => each === kept('look')) ?? 'device');

effect(() => {
  document.documentElement.dataset['look'] = look.value;
  keep('look', look.value);
});
