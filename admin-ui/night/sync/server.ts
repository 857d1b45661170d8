import type { NightBundle } from '../../../server/domain/night/desk/bundle.ts';
import type { NumberedEntry } from '../../../server/domain/night/desk/outbox/outbox.ts';
import { bodyOf } from '../../../server/domain/night/desk/outbox/outbox-sending.ts';
import type { Batch, BatchAnswer, EntryAnswer } from '../../../server/domain/night/desk/outbox/outbox-sending.ts';

/** The server said no; `status` 0 when it said nothing. */
export class ServerSaysNo extends Error {
  constructor(readonly status: number, sentence: string) {
    super(sentence);
  }
}

const NO_ANSWER = 'The server does not answer. Everything you log stays on this device and is sent when it is back.';
/** A request that hangs in a crowded gym's wireless is given up and tried again. */
const PATIENCE_MILLISECONDS = 20_000;

/**
 * Asks the server below `/api`. What the browser believes about the network is not asked.
 *
 * @param key of what happens once, however often it is sent
 * @throws ServerSaysNo
 */
export async function ask<T>(path: string, body?: unknown, key?: string): Promise<T> {
  const response = await fetch(`/api${path}`, {
    method: body === undefined ? 'GET' : 'POST',
    headers: { accept: 'application/json', 'x-rafterline': '1', ...(body === undefined ? {} : { 'content-type': 'application/json' }), ...(key === undefined ? {} : { 'idempotency-key': key }) },
    credentials: 'same-origin',
    cache: 'no-store',
    signal: AbortSignal.timeout(PATIENCE_MILLISECONDS),
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  }).catch(() => {
    throw new ServerSaysNo(0, NO_ANSWER);
  });
  const text = await response.text().catch(() => {
    throw new ServerSaysNo(0, NO_ANSWER);
  });
  const said = parsed(text);
  if (!response.ok) throw new ServerSaysNo(response.status, sentenceIn(said) ?? `The server said no (${response.status}).`);
  // A hotspot that shows its own page says yes to everything.
  if (said === undefined) throw new ServerSaysNo(0, NO_ANSWER);
  return said as T;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function sentenceIn(said: unknown): string | null {
  const { detail, sentence, title } = (said ?? {}) as Record<string, unknown>;
  return [detail, sentence, title].find((text): text is string => typeof text === 'string') ?? null;
}

export async function sendBatch(nightId: string, batch: Batch): Promise<BatchAnswer> {
  try {
    const { results } = await ask<{ results?: EntryAnswer[] }>(`/nights/${nightId}/log`, bodyOf(batch));
    return Array.isArray(results) ? { kind: 'results', results } : { kind: 'silence' };
  } catch (failure) {
    if (!(failure instanceof ServerSaysNo) || failure.status === 0) return { kind: 'silence' };
    return { kind: 'refused', status: failure.status, sentence: failure.message };
  }
}

export interface LogPart {
  entries: readonly NumberedEntry[];
  state?: 'open' | 'signedOff';
  /** of the whole log; above the last entry here there is more to ask for */
  lastNumber?: number;
}

/** The server says more of an entry than a device keeps. */
function kept(entry: NumberedEntry): NumberedEntry {
  const {
    id, deviceId, sequence, number, kind, outcome, reason, gameId, cueKey, placementId, commitmentId, windowKey, teamId, playerNumber, period, clock, detail,
    happeningEntryId, takesBackEntryId, occurredAt,
  } = entry;
  return {
    id, deviceId, sequence, number, kind, outcome, reason, gameId, cueKey, placementId, commitmentId, windowKey, teamId, playerNumber, period, clock, detail,
    happeningEntryId, takesBackEntryId, occurredAt,
  };
}

export async function readLog(nightId: string, after: number): Promise<LogPart> {
  const part = await ask<LogPart>(`/nights/${nightId}/log?after=${after}`);
  return { ...part, entries: part.entries.map(kept) };
}

export const readBundle = (nightId: string): Promise<NightBundle> => ask(`/nights/${nightId}/bundle`);
