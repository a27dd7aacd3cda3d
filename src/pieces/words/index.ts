/** The languages that drawings are lettered in. */
import { en } from './en.js';

export type Words = typeof en;

export const languages = { en } as const;
export type Language = keyof typeof languages;
