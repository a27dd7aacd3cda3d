/** The search for sets, run by a helper beside the page. */
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

export interface ChooseQuestion {
  readonly task: 'choose';
  readonly spec: string;
  readonly stock: Stock;
  readonly wishes: Wishes;
}

export type ChooseAnswer =
  | { readonly progress: MatchProgress }
  | { readonly wrong: readonly RequestIssue[] }
  | { readonly result: MatchResult };

let stopped = false;

/** Ends the search with the best so far. */
export const stopChoosing = (): void => void (stopped = true);

export async function choose(
  { spec, stock, wishes }: ChooseQuestion,
  reply: (answer: ChooseAnswer) => void,
): Promise<void> {
  const { vessel } = planVessel(spec, '');
  if (!vessel) throw new Error('a spec that is no vessel was sent to the search');
  const request = requestFor(vessel, wishes);
  const wrong = checkRequest(stock, request);
  if (wrong.length > 0) return reply({ wrong });
  const result = await matchStaves(stock, request, {
    now: () => performance.now() / 1000,
    shouldStop: () => stopped,
    onProgress: (progress) => reply({ progress }),
    breathe: () => new Promise((go) => setTimeout(go)),
  });
  reply({ result });
}
