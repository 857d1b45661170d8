import { openDB } from 'idb';
import { useEffect, useSyncExternalStore } from 'react';
import type { KeptRequest, NightRequest } from '../../../server/domain/night/desk/requests/request.ts';
import { ask } from '../sync/server.ts';

const ASK_EVERY_MILLISECONDS = 20_000;
/** The server's stream tells of requests; without one they are asked for at intervals. */
const LOOK_WHEN = ['table-requests', 'online'] as const;
const NONE: readonly KeptRequest[] = [];

interface Watched {
  kept: readonly KeptRequest[];
  readonly watchers: Set<() => void>;
  /** parts of the page that show them; the last one that goes stops the asking */
  users: number;
  timer: ReturnType<typeof setInterval> | null;
}

const nights = new Map<string, Watched>();

const store = () => openDB('rafterline-requests', 1, { upgrade: (database) => void database.createObjectStore('kept') });

function watched(nightId: string): Watched {
  const one = nights.get(nightId) ?? { kept: NONE, watchers: new Set(), users: 0, timer: null };
  nights.set(nightId, one);
  return one;
}

function show(nightId: string, kept: readonly KeptRequest[]): void {
  const one = watched(nightId);
  if (JSON.stringify(kept) === JSON.stringify(one.kept)) return;
  one.kept = kept;
  for (const watcher of one.watchers) watcher();
}

/** What came by the public form and from the office, stored on the device so that it is answered with the server gone. */
async function fetchKeptRequests(nightId: string): Promise<void> {
  const { data } = await ask<{ data: NightRequest[] }>(`/nights/${nightId}/requests`);
  const kept = data.flatMap(({ id, source, kind, fields, askedAt, answers }) => (source === 'table' ? [] : [{ id, source, kind, fields, askedAt, answers }]));
  show(nightId, kept);
  await (await store()).put('kept', kept, nightId);
}

/** A store that is closed to the page costs the requests of the form, never an entry of the log. */
async function begin(nightId: string): Promise<void> {
  const stored = await store().then((database) => database.get('kept', nightId)).catch(() => null);
  if (Array.isArray(stored) && watched(nightId).kept === NONE) show(nightId, stored as KeptRequest[]);
  await fetchKeptRequests(nightId).catch(() => {});
}

export function useKeptRequests(nightId: string): readonly KeptRequest[] {
  useEffect(() => {
    const one = watched(nightId);
    const look = () => void fetchKeptRequests(nightId).catch(() => {});
    one.users += 1;
    if (one.timer === null) {
      void begin(nightId);
      one.timer = setInterval(look, ASK_EVERY_MILLISECONDS);
    }
    for (const told of LOOK_WHEN) window.addEventListener(told, look);
    return () => {
      for (const told of LOOK_WHEN) window.removeEventListener(told, look);
      one.users -= 1;
      if (one.users > 0 || one.timer === null) return;
      clearInterval(one.timer);
      one.timer = null;
    };
  }, [nightId]);
  return useSyncExternalStore(
    (watcher) => {
      watched(nightId).watchers.add(watcher);
      return () => void watched(nightId).watchers.delete(watcher);
    },
    () => watched(nightId).kept,
  );
}
