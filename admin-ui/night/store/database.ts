import { openDB } from 'idb';
import type { DBSchema, IDBPDatabase } from 'idb';
import type { NightBundle } from '../../../server/domain/night/desk/bundle.ts';
import type { NumberedEntry, KeptEntry } from '../../../server/domain/night/desk/outbox/outbox.ts';
import type { Way } from '../desk.ts';
import { newId } from './ids.ts';

/** A night as this device has it, without its log. */
export interface StoredNight {
  nightId: string;
  bundle: NightBundle;
  /** a newer one from the office that nobody has taken yet */
  offeredBundle: NightBundle | null;
  workerName: string;
  maySignOff: boolean;
  isSignedOff: boolean;
  way: Way;
  openedAt: string;
}

export interface StoredEntry extends KeptEntry {
  id: string;
  nightId: string;
}

interface TableSchema extends DBSchema {
  device: { key: string; value: { name: string; value: string } };
  nights: { key: string; value: StoredNight };
  /** the last place taken on this device, by night */
  sequences: { key: string; value: { nightId: string; last: number } };
  entries: { key: string; value: StoredEntry; indexes: { night: string } };
  others: { key: [string, number]; value: { nightId: string; number: number; entry: NumberedEntry }; indexes: { night: string } };
}

export type TableDatabase = IDBPDatabase<TableSchema>;

let opened: Promise<TableDatabase> | null = null;

/** This device's store. The device's id lies in it too: if the browser clears it, both are gone and no place is taken twice. */
export function database(): Promise<TableDatabase> {
  opened ??= openDB<TableSchema>('rafterline-table', 1, {
    upgrade(db) {
      db.createObjectStore('device', { keyPath: 'name' });
      db.createObjectStore('nights', { keyPath: 'nightId' });
      db.createObjectStore('sequences', { keyPath: 'nightId' });
      db.createObjectStore('entries', { keyPath: 'id' }).createIndex('night', 'nightId');
      db.createObjectStore('others', { keyPath: ['nightId', 'number'] }).createIndex('night', 'nightId');
    },
    terminated() {
      opened = null;
    },
  }).catch((failure: unknown) => {
    opened = null;
    throw failure;
  });
  return opened;
}

/** Made once for a browser; two tabs that start at the same moment agree on one. */
export async function deviceId(): Promise<string> {
  const transaction = (await database()).transaction('device', 'readwrite');
  const known = await transaction.store.get('deviceId');
  const value = known?.value ?? newId();
  if (!known) await transaction.store.put({ name: 'deviceId', value });
  await transaction.done;
  return value;
}

/** Asks the browser not to clear the store when space runs short. It may say no; nothing depends on the answer. */
export async function askToPersist(): Promise<boolean> {
  return (await navigator.storage?.persist?.().catch(() => false)) ?? false;
}
