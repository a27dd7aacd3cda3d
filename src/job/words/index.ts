/** The words of the job sheet, by language. */
import { en } from './en.js';

export const jobWords = { en } as const;
