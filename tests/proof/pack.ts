/** Folders of drawings as values, to be proved whole or spoilt. */
import {
  packVessel,
  planVessel,
  provePack,
  type DrawOptions,
  type Finding,
} from '../../src/index.js';
import type { PackFile, Vessel, WholeProof } from '../../src/index.js';

export const vesselOf = (text: string): Vessel => {
  const { vessel, messages } = planVessel(text, 'spec.yaml');
  if (!vessel) throw new Error(JSON.stringify(messages));
  return vessel;
};

/** What `draw --formats dxf` writes, name by name. */
export class Pack {
  private constructor(readonly files: Map<string, string>) {}

  static async of(text: string, options: Partial<DrawOptions> = {}): Promise<Pack> {
    const files = await packVessel(vesselOf(text), { formats: ['dxf'], ...options });
    return new Pack(new Map(files.map(({ name, content }) => [name, String(content)])));
  }

  /** The same folder with one file changed. */
  with(name: string, change: (text: string) => string): Pack {
    const before = this.files.get(name);
    if (before === undefined) throw new Error(`the pack has no ${name}`);
    const after = change(before);
    if (after === before) throw new Error(`${name} is as it was`);
    return new Pack(new Map(this.files).set(name, after));
  }

  without(...names: string[]): Pack {
    const left = [...this.files].filter(([name]) => !names.includes(name));
    if (left.length !== this.files.size - names.length) throw new Error('no such file');
    return new Pack(new Map(left));
  }

  and(name: string, text: string): Pack {
    return new Pack(new Map(this.files).set(name, text));
  }

  prove(): WholeProof {
    const vessel = vesselOf(this.files.get('spec.yaml')!);
    const files: PackFile[] = [...this.files].map(([name, text]) => ({ name, text, refusal: '' }));
    return provePack(vessel, files);
  }

  /** What has not passed. */
  wrong(): readonly Finding[] {
    const { findings, passed } = this.prove();
    const wrong = findings.filter((each) => !each.passed);
    if (passed !== (wrong.length === 0)) throw new Error('passed and findings disagree');
    return wrong;
  }
}

export const checksOf = (findings: readonly Finding[]): string[] => [
  ...new Set(findings.map(({ check }) => check)),
];
