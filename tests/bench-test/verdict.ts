/** What the bench found: the worst value of every check, and those that are out of tolerance. */

export interface Finding {
  check: string;
  value: number;
  allowed: number;
}

export interface Verdict {
  findings: Finding[];
  complaints: Finding[];
}

/** Collects measured errors; NaN counts as out of tolerance. */
export class Notebook {
  readonly #worst = new Map<string, Finding>();

  note(check: string, value: number, allowed: number): void {
    const size = Number.isNaN(value) ? Infinity : Math.abs(value);
    const known = this.#worst.get(check);
    if (known === undefined || size / allowed > known.value / known.allowed)
      this.#worst.set(check, { check, value: size, allowed });
  }

  fail(check: string): void {
    this.note(check, Infinity, 0);
  }

  verdict(): Verdict {
    const findings = [...this.#worst.values()];
    return { findings, complaints: findings.filter((f) => f.value > f.allowed) };
  }
}

export function describe(finding: Finding): string {
  return `${finding.check}: ${finding.value.toPrecision(3)} (allowed ${finding.allowed})`;
}
