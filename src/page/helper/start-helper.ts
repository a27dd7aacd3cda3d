/** Starts a helper beside the page, from the script that the page itself began with. */
import type { Question } from './helper.js';

export interface Helper {
  ask(question: Question): void;
  stop(): void;
}

/** `hear` gets its answers; `fail` is called, later than this, when it cannot be started or breaks down. */
export function startHelper<Answer>(hear: (answer: Answer) => void, fail: () => void): Helper {
  try {
    const worker = newWorker();
    worker.onmessage = ({ data }: MessageEvent<Answer>) => hear(data);
    worker.onerror = fail;
    return { ask: (question) => worker.postMessage(question), stop: () => worker.terminate() };
  } catch {
    setTimeout(fail);
    return { ask: () => {}, stop: () => {} };
  }
}

/** What a helper of its own answers to one question; where there are no helpers, the page works it out with `alone`. */
export function answerTo<Answer, Asked extends Question>(
  question: Asked,
  alone: (question: Asked, reply: (answer: Answer) => void) => Promise<void>,
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const hear = (answer: Answer): void => {
      helper.stop();
      resolve(answer);
    };
    const helper = startHelper(hear, () => {
      helper.stop();
      alone(question, resolve).catch(reject);
    });
    helper.ask(question);
  });
}

/** Of the script of the single file, made once for all helpers. */
let address: string | null = null;

function newWorker(): Worker {
  const script = document.querySelector<HTMLScriptElement>('script[type=module]')!;
  if (script.src !== '') return new Worker(script.src, { type: 'module' });
  address ??= URL.createObjectURL(new Blob([script.textContent], { type: 'text/javascript' }));
  // the single file's script has no imports, so that any kind of worker can run it
  return new Worker(address);
}
