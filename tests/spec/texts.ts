/** Spec texts that the tests start from, and short ways to read them. */
import { putIntoWords, readSpec } from '../../src/spec/read.js';
import type { Message } from '../../src/spec/issue.js';
import type { Spec } from '../../src/spec/spec.js';

export const wineCask = `vessel: cask
title: Wine cask
units: mm
height: 945
bilge: 678
ends: 572
staves: { count: 28 }
`;

export const bucket = `vessel: tub
units: mm
height: 280
top: 300
bottom: 260
staves: { count: 16 }
`;

export const inchKeg = `vessel: cask
units: in
height: 13 1/2
bilge: 10 1/8
ends: 8.625
staves: { count: 16 }
`;

/** A text with the line of a root key put in place of the one it has, or added. */
export function withLine(text: string, line: string): string {
  const key = line.slice(0, line.indexOf(':') + 1);
  const lines = text.split('\n').filter((old) => old !== '' && !old.startsWith(key));
  return [...lines, line, ''].join('\n');
}

export const messagesOf = (text: string): Message[] => {
  const read = readSpec(text);
  return putIntoWords(read.issues, read, 'a.yaml');
};

export const codesOf = (text: string): string[] => readSpec(text).issues.map(({ code }) => code);

/** The spec, or a failure that shows why there is none. */
export function specOf(text: string): Spec {
  const { spec, issues } = readSpec(text);
  if (!spec) throw new Error(JSON.stringify(issues));
  return spec;
}
