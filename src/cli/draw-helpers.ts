/** Threads that draw: each is told one spec after the other, and answers in that order. */
import { availableParallelism } from 'node:os';
import type { DrawnFile } from './draw-files.js';
import type { Job, Take } from './draw-many.js';
import { Thread } from './thread.js';

/** One more would wait for memory rather than for a processor. */
const most = 8;

/** `script` is what a thread starts. Null when all files are taken; otherwise why not. */
export async function drawByHelpers(
  jobs: readonly Job[],
  script: string,
  take: Take,
): Promise<string | null> {
  const count = Math.min(most, availableParallelism(), jobs.length);
  const helpers = Array.from(
    { length: count },
    () => new Thread<Job, DrawnFile[]>(script, 'draw-thread'),
  );
  let next = 0;
  let refusal: string | null = null;
  const keepBusy = async (helper: Thread<Job, DrawnFile[]>): Promise<void> => {
    const begin = (): (() => Promise<void>) | null => {
      const index = next++;
      const job = refusal === null ? jobs[index] : undefined;
      if (!job) return null;
      const files = helper.ask(job);
      return async () => {
        const drawn = await files;
        refusal ??= take.files(drawn) ?? take.spec(drawn, index);
      };
    };
    // the next spec is being drawn while the files of one are written
    for (let now = begin(); now !== null;) {
      const then = begin();
      await now();
      now = then;
    }
  };
  try {
    await Promise.all(helpers.map(keepBusy));
    return refusal;
  } finally {
    await Promise.all(helpers.map((helper) => helper.end()));
  }
}
