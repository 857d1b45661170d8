import { useMemo, useRef } from 'react';
import { isBounce } from '../../../server/domain/night/desk/one-tap.ts';
import type { NightRequest, RequestAnswer, RequestAnswerKind, RequestFields, RequestKind } from '../../../server/domain/night/desk/requests/request.ts';
import { approvedRequests } from '../../../server/domain/night/desk/requests/requests-of-night.ts';
import type { RequestsOfNight } from '../../../server/domain/night/desk/requests/requests-of-night.ts';
import { useDesk } from '../desk.ts';
import { useKeptRequests } from './kept-requests.ts';

/** What is said with an approval: who allowed a name, and that a song's words were read. */
export type Approval = Partial<Pick<RequestAnswer, 'nameAllowedBy' | 'wordsChecked'>>;

export interface Requests extends RequestsOfNight {
  ask(kind: RequestKind, fields: RequestFields, approval: Approval | null): Promise<void>;
  approve(request: NightRequest, approval: Approval): Promise<void>;
  decline(request: NightRequest, reason: string): Promise<void>;
  markRead(request: NightRequest): Promise<void>;
  /** Takes the last answer back; the request stands where it stood before. Null where the office gave that answer. */
  undo(request: NightRequest): (() => Promise<void>) | null;
}

/** The place at which each request was first seen on this device: a list never changes its order under the thumb. */
const firstSeen = new Map<string, number>();
const inPlace = (requests: readonly NightRequest[]): NightRequest[] => {
  for (const { id } of requests) if (!firstSeen.has(id)) firstSeen.set(id, firstSeen.size);
  return requests.toSorted((a, b) => firstSeen.get(a.id)! - firstSeen.get(b.id)!);
};

/** All requests of the night and what the table does with them; each answer is an entry of the log. */
export function useRequests(): Requests {
  const { bundle, lines, isSignedOff, write, takeBack } = useDesk();
  const kept = useKeptRequests(bundle.nightId);
  const night = useMemo(() => {
    const { waiting, approved, ended } = approvedRequests(lines, kept, isSignedOff);
    return { waiting: inPlace(waiting), approved: inPlace(approved), ended };
  }, [lines, kept, isSignedOff]);
  const lastAnswered = useRef<number | null>(null);
  const store = async (requestId: string, said: RequestAnswerKind, { reason, ...more }: Approval & { reason?: string } = {}): Promise<void> => {
    await write({ kind: 'requestAnswered', reason: reason ?? null, detail: { requestId, answer: said, ...more } });
  };
  /** An answered request leaves its list and the next one comes under the thumb: a tap that bounces answers nothing. */
  const answer: typeof store = async (...given) => {
    if (isBounce(lastAnswered.current, performance.now())) return;
    lastAnswered.current = performance.now();
    // What cannot be stored stays on the screen in the status line.
    await store(...given).catch(() => {});
    lastAnswered.current = performance.now();
  };
  return {
    ...night,
    ask: async (requestKind, fields, approval) => {
      const { id } = await write({ kind: 'request', detail: { requestKind, fields } });
      if (approval) await store(id, 'approved', approval);
    },
    approve: (request, approval) => answer(request.id, 'approved', approval),
    decline: (request, reason) => answer(request.id, 'declined', { reason }),
    markRead: (request) => answer(request.id, 'read'),
    undo: (request) => {
      const entryId = request.answers.findLast((one) => one.answer === request.state)?.entryId;
      return entryId ? () => takeBack(entryId).catch(() => {}) : null;
    },
  };
}
