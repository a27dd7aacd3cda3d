import { describe, expect, it } from 'vitest';
import { readSpec } from '../../src/spec/read.js';

const text = `vessel: cask
heads:
  croze: { inset: 60,
    depth: 5 }
hoops:
  - { name: chime }
  - name: bilge
    offset: 255
bung:
`;

describe('the place of a key', () => {
  const { locate } = readSpec(text);
  it.each([
    ['the file', [], 1, 1],
    ['a value', ['vessel'], 1, 9],
    ['a section', ['heads'], 2, 1],
    ['a value in a section', ['heads', 'croze', 'depth'], 4, 12],
    ['a default in a section', ['heads', 'croze', 'width'], 3, 3],
    ['a default of a head', ['heads', 'edge', 'thickness'], 2, 1],
    ['a section that is not there', ['howel', 'depth'], 1, 1],
    ['an entry of a list', ['hoops', 1], 7, 5],
    ['a value in an entry', ['hoops', 1, 'offset'], 8, 13],
    ['an entry that is not there', ['hoops', 9, 'offset'], 5, 1],
    ['a key without a value', ['bung', 'diameter'], 9, 1],
  ])('%s', (_, path, line, column) => {
    expect(locate(path)).toEqual({ line, column });
  });

  it('is the start for a text that cannot be read', () => {
    expect(readSpec('').locate(['height'])).toEqual({ line: 1, column: 1 });
    expect(readSpec('a: "').locate(['a'])).toEqual({ line: 1, column: 1 });
  });
});
