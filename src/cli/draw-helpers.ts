/** Threads that draw: each is told one spec after the other, and answers in that order. */
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { DrawnFile } from './draw-files.js';
import type { Job, Take } from './draw-many.js';

/** One more would wait for memory rather than for a processor. */
const most = 8;

/** `script` is what a thread starts. Null when all files are taken; otherwise why not. */
export async function drawByHelpers(
  jobs: readonly Job[],
  script: string,
  take: Take,
): Promise<string | null> {
  const count = Math.min(most, availableParallelism(), jobs.length);
  const helpers = Array.from({ length: count }, () => new Helper(script));
  let next = 0;
  let refusal: string | null = null;
  const keepBusy = async (helper: Helper): Promise<void> => {
    const begin = (): (() => Promise<void>) | null => {
      const index = next++;
      const job = refusal === null ? jobs[index] : undefined;
      if (!job) return null;
      const files = helper.draw(job);
      return async () => {
        const drawn = await files;
        refusal ??= take(drawn, index);
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

interface Waiting {
  readonly done: (files: DrawnFile[]) => void;
  readonly failed: (error: Error) => void;
}

class Helper {
  private readonly worker: Worker;
  private readonly waiting: Waiting[] = [];
  private failure: Error | null = null;

  constructor(script: string) {
    this.worker = new Worker(script);
    this.worker.on('message', (files: DrawnFile[]) => this.waiting.shift()?.done(files));
    this.worker.on('error', (error) => this.fail(error));
    this.worker.on('exit', () => this.fail(new Error('a drawing thread has ended')));
  }

  draw(job: Job): Promise<DrawnFile[]> {
    const files = new Promise<DrawnFile[]>((done, failed) => {
      if (this.failure) failed(this.failure);
      else this.waiting.push({ done, failed });
    });
    // it is awaited later, perhaps after another has failed
    files.catch(() => {});
    this.worker.postMessage(job);
    return files;
  }

  end(): Promise<number> {
    return this.worker.terminate();
  }

  private fail(error: Error): void {
    this.failure ??= error;
    for (const { failed } of this.waiting.splice(0)) failed(this.failure);
  }
}
