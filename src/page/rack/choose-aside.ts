/** The search for sets, run by a helper beside the page. */
import {
  checkRequest,
  matchStaves,
  requestFor,
  type MatchProgress,
  type MatchResult,
  type RequestIssue,
  type Spec,
  type Stock,
  type Wishes,
} from '../../index.js';
import { vesselOf } from '../helper/vessel-of.js';

export interface ChooseQuestion {
  readonly task: 'choose';
  readonly spec: Spec;
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
  const request = requestFor(vesselOf(spec), wishes);
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
