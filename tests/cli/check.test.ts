import { expect, test } from 'vitest';
import { bucket, Workshop } from './workshop.js';

test('a spec that can be built', async () => {
  expect(await new Workshop().run(['check', 'bucket.yaml'])).toEqual({
    code: 0,
    out: 'bucket.yaml: can be built\n',
    err: '',
  });
});

/** Ten flat staves that are rounded outside keep too little wood at their joints. */
const doubtful = bucket.replace(
  '{ count: 16, thickness: 16 }',
  '{ count: 10, thickness: 16, inside: flat }',
);

test('warnings go to standard error and leave the exit code 0', async () => {
  const { code, out, err } = await new Workshop({ 'ten.yaml': doubtful }).run([
    'check',
    'ten.yaml',
  ]);
  expect({ code, out }).toEqual({
    code: 0,
    out: expect.stringMatching(/^ten\.yaml: can be built, with \d+ warnings?\n$/) as string,
  });
  expect(err).toMatch(/^ten\.yaml:\d+:\d+: warning: \S+: .+\n/);
});

test('--quiet, before or after the command, keeps warnings and praise back', async () => {
  for (const argv of [
    ['--quiet', 'check', 'ten.yaml'],
    ['check', 'ten.yaml', '--quiet'],
  ])
    expect(await new Workshop({ 'ten.yaml': doubtful }).run(argv)).toEqual({
      code: 0,
      out: '',
      err: '',
    });
});
