import { askToPersist } from '../store/database.ts';
import { keepNight } from '../store/nights.ts';
import type { StoredNight } from '../store/nights.ts';
import { ask, readBundle } from '../sync/server.ts';

/** What the server says of whoever is let in at a table. */
export interface TableView {
  nightId: string;
  workerName: string;
  maySignOff: boolean;
}

/** A signed-in person takes a table link for the night, so that no idle timeout locks them out. @throws ServerSaysNo */
export async function openAsPerson(nightId: string): Promise<StoredNight> {
  return fetchNight(await ask<TableView>('/table/open', { nightId }));
}

/** @throws ServerSaysNo */
export async function openByLink(token: string, pin: string): Promise<StoredNight> {
  await ask('/link-visits', { token, pin });
  return fetchNight(await ask<TableView>('/table'));
}

async function fetchNight(table: TableView): Promise<StoredNight> {
  const bundle = await readBundle(table.nightId);
  void askToPersist();
  return keepNight({ bundle, workerName: table.workerName, maySignOff: table.maySignOff });
}
