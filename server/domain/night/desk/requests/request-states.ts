import type { RequestAnswer, RequestAnswerKind, RequestKind, RequestState } from './request.ts';

export interface RequestMove {
  readonly from: RequestState;
  readonly to: RequestAnswerKind;
  /** whoever works the table, or the end of the night */
  readonly by: 'table' | 'signOff';
}

/** All moves there are. What has ended stays so; an answer that was a slip is taken back, and the request stands where it stood. */
export const REQUEST_MOVES: readonly RequestMove[] = [
  { from: 'waiting', to: 'approved', by: 'table' },
  { from: 'waiting', to: 'declined', by: 'table' },
  { from: 'waiting', to: 'expired', by: 'signOff' },
  { from: 'approved', to: 'read', by: 'table' },
  { from: 'approved', to: 'expired', by: 'signOff' },
];

export type RequestRefusal = 'request-answered-already' | 'request-names-person' | 'request-words-unchecked' | 'request-declined-without-reason';

/** Why a request cannot be answered so, or null. */
export function whyNotAnswer(
  request: { readonly state: RequestState; readonly kind: RequestKind; readonly namesPerson: boolean },
  { answer, reason, nameAllowedBy, wordsChecked }: Pick<RequestAnswer, 'answer' | 'reason' | 'nameAllowedBy' | 'wordsChecked'>,
): RequestRefusal | null {
  if (!REQUEST_MOVES.some((move) => move.from === request.state && move.to === answer)) return 'request-answered-already';
  if (answer === 'declined' && (reason ?? '').trim() === '') return 'request-declined-without-reason';
  if (answer !== 'approved') return null;
  if (request.namesPerson && (nameAllowedBy ?? '').trim() === '') return 'request-names-person';
  return request.kind === 'music' && !wordsChecked ? 'request-words-unchecked' : null;
}

/**
 * Where a request stands after its answers, in their order; one that is not allowed changes nothing. What expired by no entry,
 * at sign-off, gives way to what a device wrote before and sent later.
 */
export function stateAfter(request: { readonly kind: RequestKind; readonly namesPerson: boolean }, answers: readonly RequestAnswer[]): RequestState {
  let state: RequestState = 'waiting';
  let beforeExpiry: RequestState | null = null;
  for (const answer of answers) {
    const from: RequestState = beforeExpiry ?? state;
    if (whyNotAnswer({ ...request, state: from }, answer) !== null) continue;
    beforeExpiry = answer.answer === 'expired' && answer.entryId === null ? from : null;
    state = answer.answer;
  }
  return state;
}

export function hasEnded(state: RequestState): boolean {
  return state !== 'waiting' && state !== 'approved';
}
