import { expect, test } from 'vitest';
import { foldersFor } from '../../src/cli/folders.js';

test('one spec goes straight into the folder', () => {
  expect(foldersFor(['any/keg.yaml'])).toEqual({ names: [''] });
});

test('several go to folders named for their files, without folders and endings', () => {
  expect(foldersFor(['a/keg.yaml', 'b/tub.v2.yml', '-'])).toEqual({
    names: ['keg', 'tub.v2', 'stdin'],
  });
});

test('the same name in two folders is a clash', () => {
  expect(foldersFor(['a/keg.yaml', 'b/keg.yaml'])).toEqual({
    clash: 'a/keg.yaml and b/keg.yaml would go to the same folder, keg',
  });
});
