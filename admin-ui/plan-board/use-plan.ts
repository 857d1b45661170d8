import { useQueryClient } from '@tanstack/react-query';
import { useCallback, useMemo, useRef, useState } from 'react';
import { HttpError } from 'react-admin';
import { ask } from '../api/http.ts';
import { useServer } from '../api/use-server.ts';
import { expected, inverse, withReads } from './changed-view.ts';
import type { BoardChangesView, BoardView, Change } from './types.ts';

/** One step that can be taken back. */
type Undo = { said: string } & ({ changes: Change[] } | { nightId: string; verb: 'lock' | 'unlock' });

export interface Plan {
  /** Makes the changes, all or none; what is said is heard when they are made. Answers whether they were. */
  change: (changes: Change[], said: string, reason?: string) => Promise<boolean>;
  lock: (nightId: string, verb: 'lock' | 'unlock', said: string) => Promise<boolean>;
  undo: () => Promise<void>;
  undoable: number;
}

/** The board of a season: what is done shows at once, goes to the server in its order, and is put back where it is refused. */
export function usePlan(seasonId: string | null, say: (words: string, isRefusal?: boolean) => void) {
  const queries = useQueryClient();
  const path = seasonId === null ? null : `/seasons/${seasonId}/board`;
  const read = useServer<BoardView>(path);
  const steps = useRef<Undo[]>([]);
  const newIds = useRef(new Map<string, string>());
  const queue = useRef<Promise<unknown>>(Promise.resolve());
  const [undoable, setUndoable] = useState(0);
  const key = useMemo(() => ['server', path], [path]);

  const inTurn = useCallback(<T,>(work: () => Promise<T>): Promise<T> => {
    const next = queue.current.then(work, work);
    queue.current = next.catch(() => undefined);
    return next;
  }, []);
  const push = useCallback((step: Undo) => {
    steps.current.push(step);
    setUndoable(steps.current.length);
  }, []);
  const refused = useCallback((error: unknown, before: BoardView | undefined) => {
    if (before) queries.setQueryData(key, before);
    say(sentenceOf(error), true);
    if (error instanceof HttpError && (error.status === 412 || error.body?.code === 'unknown-board-read')) void queries.invalidateQueries({ queryKey: key });
  }, [queries, key, say]);

  const send = useCallback((asked: Change[], reason: string | undefined, told: (view: BoardView, answer: BoardChangesView, changes: Change[]) => void) => inTurn(async () => {
    const before = queries.getQueryData<BoardView>(key);
    if (!before) return false;
    const changes = asked.map((change) => (change.kind === 'add' ? change : { ...change, placementId: presentId(newIds.current, change.placementId) }));
    await queries.cancelQueries({ queryKey: key });
    try {
      queries.setQueryData(key, expected(before, changes));
      const body = { changes: changes.map((change) => versioned(change, before)), ...(reason ? { overrideReason: reason } : {}) };
      const answer = await ask<BoardChangesView>(`/seasons/${seasonId}/board-changes`, { method: 'POST', body });
      const gone = changes.flatMap((change) => (change.kind === 'remove' ? [change.placementId] : []));
      queries.setQueryData(key, { ...withReads(before, answer.reads.filter((one) => one !== null), gone), planVersion: answer.planVersion });
      told(before, answer, changes);
      return true;
    } catch (error) {
      refused(error, before);
      return false;
    }
  }), [inTurn, queries, key, seasonId, refused]);

  const change = useCallback((changes: Change[], said: string, reason?: string) => send(changes, reason, (before, answer, made) => {
    push({ said, changes: inverse(before, made, answer.reads) });
    say(said);
  }), [send, push, say]);

  const sendLock = useCallback((nightId: string, verb: 'lock' | 'unlock', told: () => void) => inTurn(async () => {
    try {
      await ask(`/nights/${nightId}/${verb}`, { method: 'POST', body: {} });
      await queries.invalidateQueries({ queryKey: key });
      told();
      return true;
    } catch (error) {
      refused(error, undefined);
      return false;
    }
  }), [inTurn, queries, key, refused]);

  const lock = useCallback((nightId: string, verb: 'lock' | 'unlock', said: string) => sendLock(nightId, verb, () => {
    push({ said, nightId, verb: verb === 'lock' ? 'unlock' : 'lock' });
    say(said);
  }), [sendLock, push, say]);

  const undo = useCallback(async () => {
    // What is still on its way to the server is the step to be undone.
    await inTurn(() => Promise.resolve());
    const step = steps.current.pop();
    setUndoable(steps.current.length);
    if (step === undefined) return say('There is nothing to undo.');
    const words = `Undone: ${step.said}`;
    if ('nightId' in step) return void (await sendLock(step.nightId, step.verb, () => say(words)));
    const isBack = await send(step.changes, 'Put back where it stood before', (_, answer, made) => {
      made.forEach((one, index) => {
        const now = answer.reads[index];
        if (one.kind === 'add' && one.was && now) newIds.current.set(one.was, now.id);
      });
      say(words);
    });
    if (!isBack) {
      steps.current.push(step);
      setUndoable(steps.current.length);
    }
  }, [inTurn, send, sendLock, say]);

  return { read, plan: useMemo((): Plan => ({ change, lock, undo, undoable }), [change, lock, undo, undoable]) };
}

/** A read that was taken out and put back has a new id; earlier steps still name the old one. */
function presentId(newIds: ReadonlyMap<string, string>, id: string): string {
  let now = id;
  while (newIds.has(now)) now = newIds.get(now)!;
  return now;
}

function versioned(change: Change, view: BoardView): Change & { version?: number } {
  if (change.kind === 'add') {
    const { was: _, ...addition } = change;
    return addition;
  }
  const version = view.reads.find((read) => read.id === change.placementId)?.version;
  return { ...change, ...(version === undefined ? {} : { version }) };
}

/** The sentences of the changes that were refused, else the sentence of the whole. */
function sentenceOf(error: unknown): string {
  const changes = error instanceof HttpError ? (error.body?.errors?.changes as Record<string, unknown> | undefined) : undefined;
  const each = [...new Set(Object.values(changes ?? {}).filter((one): one is string => typeof one === 'string'))];
  const whole = error instanceof Error ? error.message : String(error);
  return each.length > 1 ? `${whole} ${each.join(' ')}` : (each[0] ?? whole);
}
