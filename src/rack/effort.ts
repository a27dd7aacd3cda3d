/** A limit on work, counted in steps and not in seconds, so that the same request gives the same answer anywhere. */

const STEPS_BETWEEN_QUESTIONS = 4096;

export class Effort {
  private untilQuestion = STEPS_BETWEEN_QUESTIONS;
  private ended = false;

  constructor(
    private steps: number,
    private readonly shouldStop: () => boolean = () => false,
    private readonly whole: Effort | null = null,
  ) {}

  /** Takes a step, or several; false once the limit is reached or a stop was asked for. */
  step(size = 1): boolean {
    if (this.ended) return false;
    if ((this.untilQuestion -= size) <= 0) {
      this.untilQuestion = STEPS_BETWEEN_QUESTIONS;
      if (this.shouldStop()) this.ended = true;
    }
    if ((this.steps -= size) < 0 || this.whole?.step(size) === false) this.ended = true;
    return !this.ended;
  }

  /** An effort of so many steps, which are steps of this one too. */
  portion(steps: number): Effort {
    return new Effort(steps, () => false, this);
  }

  /** Steps that are left. */
  get left(): number {
    return this.ended ? 0 : Math.min(this.steps, this.whole?.left ?? Infinity);
  }

  /** No more steps. */
  end(): void {
    this.ended = true;
  }

  /** Whether work was cut short. */
  get exhausted(): boolean {
    return this.ended;
  }
}
