/** A thread that works for the program: it is asked one thing after the other, and answers in that order. */
import { Worker } from 'node:worker_threads';

interface Waiting<Answer> {
  readonly done: (answer: Answer) => void;
  readonly failed: (error: Error) => void;
}

export class Thread<Question, Answer> {
  private readonly worker: Worker;
  private readonly waiting: Waiting<Answer>[] = [];
  private failure: Error | null = null;

  /** Begins at once with `bundle`, one of the program's. By itself it doesn't keep the program running, only while it is asked. */
  constructor(script: string, bundle: string) {
    this.worker = new Worker(script, { workerData: bundle });
    this.worker.on('message', (answer: Answer) => {
      this.waiting.shift()?.done(answer);
      if (this.waiting.length === 0) this.worker.unref();
    });
    this.worker.on('error', (error) => this.fail(error));
    this.worker.on('exit', () => this.fail(new Error('a thread has ended')));
    // after the above: who listens for messages waits for them
    this.worker.unref();
  }

  ask(question: Question): Promise<Answer> {
    const answer = new Promise<Answer>((done, failed) => {
      if (this.failure) failed(this.failure);
      else this.waiting.push({ done, failed });
    });
    // it is awaited later, perhaps after another has failed
    answer.catch(() => {});
    this.worker.ref();
    this.worker.postMessage(question);
    return answer;
  }

  async end(): Promise<void> {
    await this.worker.terminate();
  }

  private fail(error: Error): void {
    this.failure ??= error;
    for (const { failed } of this.waiting.splice(0)) failed(this.failure);
  }
}
