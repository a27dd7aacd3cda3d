/** What an exact method had to pass over: the best that may have been among it. */

import { compareAims, type Aims } from './aims.js';

export class Doubt {
  private best: Aims | null = null;

  get isNone(): boolean {
    return this.best === null;
  }

  /** Something that promises so much was passed over. */
  passOver(promised: Aims): void {
    if (!this.best || compareAims(promised, this.best) < 0) this.best = promised;
  }

  /** Whether nothing that was passed over can be better than this. */
  spares(aims: Aims): boolean {
    return !this.best || compareAims(aims, this.best) <= 0;
  }
}
