import type { LogEntry } from '../../log-entry.ts';
import { takenBackIds } from '../../take-back.ts';
import { formNamesPerson, readForm } from './request-form.ts';
import { REQUEST_KINDS } from './request.ts';
import type { KeptRequest, NightRequest, RequestAnswer, RequestAnswerKind, RequestKind, RequestSource } from './request.ts';
import { hasEnded, stateAfter } from './request-states.ts';

/** What is looked at of an entry; a line of the desk and a row of the log both are one. */
export type RequestEntry = Pick<LogEntry, 'id' | 'kind' | 'reason' | 'detail' | 'takesBackEntryId'> & { readonly occurredAt: string };

export interface RequestsOfNight {
  readonly waiting: readonly NightRequest[];
  /** to be read, the one approved first before the others */
  readonly approved: readonly NightRequest[];
  readonly ended: readonly NightRequest[];
}

const ANSWERS: readonly RequestAnswerKind[] = ['approved', 'declined', 'read', 'expired'];

/**
 * All requests of a night and where each stands, from the log and from what the server keeps. It works on the device with the
 * server gone: an answer is an entry of the log like any other, and one that is taken back never was.
 *
 * @param lines the log in its order, taken-back entries in it
 * @param kept requests of the public form and of the office, as far as the device knows them
 * @param isSignedOff what is still open then has expired
 */
export function approvedRequests(lines: readonly RequestEntry[], kept: readonly KeptRequest[], isSignedOff = false): RequestsOfNight {
  const gone = takenBackIds(lines);
  const standing = [...new Map(lines.map((line) => [line.id, line])).values()].filter((line) => !gone.has(line.id));
  const answers = answersByRequest(standing);
  const atTable = standing.flatMap((line) => askedAtTable(line) ?? []);
  const all = [...atTable, ...kept.map(({ answers: known, ...asked }) => ({ asked, known }))]
    .map(({ asked, known }) => requestAfter(asked, joined(known.filter(({ entryId }) => entryId === null || !gone.has(entryId)), answers.get(asked.id) ?? []), isSignedOff))
    .toSorted((a, b) => (a.askedAt < b.askedAt ? -1 : a.askedAt > b.askedAt ? 1 : 0));
  return {
    waiting: all.filter(({ state }) => state === 'waiting'),
    approved: all.filter(({ state }) => state === 'approved').toSorted((a, b) => (approvedAt(a) < approvedAt(b) ? -1 : 1)),
    ended: all.filter(({ state }) => hasEnded(state)),
  };
}

/** The request that an entry names with its answer; null where it is no such answer. */
export function answerOf(line: RequestEntry): { requestId: string; answer: RequestAnswer } | null {
  const { requestId, answer, nameAllowedBy, wordsChecked } = line.detail ?? {};
  if (line.kind !== 'requestAnswered' || typeof requestId !== 'string' || !ANSWERS.includes(answer as RequestAnswerKind)) return null;
  return {
    requestId: requestId.toLowerCase(),
    answer: {
      answer: answer as RequestAnswerKind, reason: line.reason, wordsChecked: wordsChecked === true, entryId: line.id, answeredAt: line.occurredAt, answeredByName: null,
      nameAllowedBy: typeof nameAllowedBy === 'string' ? nameAllowedBy.slice(0, 120) : null,
    },
  };
}

type Asked = { readonly id: string; readonly source: RequestSource; readonly kind: RequestKind; readonly fields: NightRequest['fields']; readonly askedAt: string };

function askedAtTable(line: RequestEntry): { asked: Asked; known: RequestAnswer[] } | null {
  const kind = line.detail?.['requestKind'];
  if (line.kind !== 'request' || !(REQUEST_KINDS as readonly unknown[]).includes(kind)) return null;
  const raw = line.detail?.['fields'];
  const { fields } = readForm(kind as RequestKind, typeof raw === 'object' && raw !== null ? (raw as Record<string, unknown>) : {});
  return { asked: { id: line.id, source: 'table', kind: kind as RequestKind, fields, askedAt: line.occurredAt }, known: [] };
}

function answersByRequest(standing: readonly RequestEntry[]): Map<string, RequestAnswer[]> {
  const byRequest = new Map<string, RequestAnswer[]>();
  for (const line of standing) {
    const one = answerOf(line);
    if (one) byRequest.set(one.requestId, [...(byRequest.get(one.requestId) ?? []), one.answer]);
  }
  return byRequest;
}

/** What the server has stored already is not answered a second time by the same entry. */
function joined(known: readonly RequestAnswer[], logged: readonly RequestAnswer[]): RequestAnswer[] {
  const there = new Set(known.map(({ entryId }) => entryId));
  return [...known, ...logged.filter(({ entryId }) => !there.has(entryId))];
}

function requestAfter(asked: Asked, answers: readonly RequestAnswer[], isSignedOff: boolean): NightRequest {
  const namesPerson = formNamesPerson(asked.kind, asked.fields);
  const state = stateAfter({ ...asked, namesPerson }, answers);
  return { ...asked, answers, namesPerson, state: isSignedOff && !hasEnded(state) ? 'expired' : state };
}

const approvedAt = ({ answers, askedAt }: NightRequest): string => answers.find(({ answer }) => answer === 'approved')?.answeredAt ?? askedAt;
