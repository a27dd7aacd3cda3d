/**
 * Adds up what the test runs and the mutations reported, and prints `N passed, N failed` as the last line.
 * Exits with 1 when anything failed, or when a report is missing or counts no test.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const folder = process.argv[2];
const sum = { passed: 0, failed: 0 };

for (const name of ['tests.json', 'outside.json'])
  add(name, () => JSON.parse(read(name)), fromVitest);
add('mutate.txt', () => read('mutate.txt'), fromMutations);

console.log(`${sum.passed} passed, ${sum.failed} failed`);
process.exitCode = sum.failed > 0 ? 1 : 0;

function read(name) {
  return readFileSync(join(folder, name), 'utf8');
}

function add(name, report, count) {
  try {
    const { passed, failed } = count(report());
    if (!(passed + failed > 0)) throw new Error('it counts nothing');
    sum.passed += passed;
    sum.failed += failed;
  } catch (error) {
    console.error(`${name}: no result to count (${error.message})`);
    sum.failed += 1;
  }
}

function fromVitest({ numPassedTests, numFailedTests, success }) {
  // a file that could not be loaded has no failed test of its own
  return { passed: numPassedTests, failed: success ? 0 : Math.max(1, numFailedTests) };
}

function fromMutations(text) {
  const [, killed, survived] = /mutations: (\d+) killed, (\d+) survived/.exec(text) ?? [];
  return { passed: Number(killed), failed: Number(survived) };
}
