/** Figures as a file for programs, with the warnings in words. */
import type { Figures, Message } from '../index.js';

export interface FiguresFile extends Omit<Figures, 'warnings'> {
  readonly warnings: readonly Pick<Message, 'code' | 'key' | 'text'>[];
}

export function figuresJson(figures: Figures, warnings: readonly Message[]): string {
  const file: FiguresFile = {
    ...figures,
    warnings: warnings.map(({ code, key, text }) => ({ code, key, text })),
  };
  return `${JSON.stringify(file, settled, 2)}\n`;
}

/** To a nanometre: digits beyond that are noise and differ from machine to machine. */
export function settled(_key: string, value: unknown): unknown {
  if (typeof value !== 'number') return value;
  if (!Number.isFinite(value)) throw new Error('a figure came out as no number');
  return Math.round(value * 1e6) / 1e6 + 0;
}
