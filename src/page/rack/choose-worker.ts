/** The search for sets, away from the page so that it stays at hand. */
import {
  checkRequest,
  matchStaves,
  planVessel,
  requestFor,
  type MatchProgress,
  type MatchResult,
  type RequestIssue,
  type Stock,
  type Wishes,
} from '../../index.js';

export interface Question {
  readonly spec: string;
  readonly stock: Stock;
  readonly wishes: Wishes;
}

export type Reply =
  | { readonly progress: MatchProgress }
  | { readonly wrong: readonly RequestIssue[] }
  | { readonly result: MatchResult };

let stopped = false;
const say = (reply: Reply): void => postMessage(reply);

/** A question begins the search, `'stop'` ends it with the best so far. */
addEventListener('message', ({ data }: MessageEvent<Question | 'stop'>) => {
  if (data === 'stop') stopped = true;
  else void answer(data);
});

async function answer({ spec, stock, wishes }: Question): Promise<void> {
  const { vessel } = planVessel(spec, '');
  if (!vessel) throw new Error('a spec that is no vessel was sent to the search');
  const request = requestFor(vessel, wishes);
  const wrong = checkRequest(stock, request);
  if (wrong.length > 0) return say({ wrong });
  const result = await matchStaves(stock, request, {
    now: () => performance.now() / 1000,
    shouldStop: () => stopped,
    onProgress: (progress) => say({ progress }),
    breathe: () => new Promise((go) => setTimeout(go)),
  });
  say({ result });
}
