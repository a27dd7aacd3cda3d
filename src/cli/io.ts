/** What the commands need of the world around them. `main.ts` gives them the real one, tests their own. */

import type { PrintAside } from './print-aside.js';

export interface Io {
  /** what was asked for */
  readonly out: (text: string) => void;
  /** what is to be said about it: errors, warnings, progress */
  readonly err: (text: string) => void;
  /** standard input, cut off after `most` bytes */
  readonly stdin: (most: number) => Promise<Uint8Array>;
  /** the folder that paths on the command line are relative to */
  readonly folder: string;
  /** the folder of the package, which holds `templates/` */
  readonly packageFolder: string;
  /** the TrueType font that PDF files embed */
  readonly font: () => Promise<Uint8Array>;
  /** the script of a thread that draws; null where there is none */
  readonly helper: string | null;
  /** prints while the rest is drawn; null where it isn't worth while */
  readonly printAside: PrintAside | null;
  /** on a terminal only: how far something long has got, in place of what was said so before; '' takes it away */
  readonly progress?: (text: string) => void;
  /** calls back at Ctrl-C instead of ending; what it answers with stops that */
  readonly onInterrupt?: (callback: () => void) => () => void;
  /** seconds from some fixed moment */
  readonly now?: () => number;
  /** opens an address in the browser of this machine, where there is one */
  readonly show: (address: string) => void;
  /** until somebody stops the program */
  readonly untilStopped: () => Promise<void>;
  readonly env: Readonly<Record<string, string | undefined>>;
}
