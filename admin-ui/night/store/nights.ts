import type { NightBundle } from '../../../server/domain/night/desk/bundle.ts';
import { database } from './database.ts';
import type { StoredNight } from './database.ts';

export type { StoredNight } from './database.ts';

/** Nights on this device, the one opened last first. */
export async function storedNights(): Promise<StoredNight[]> {
  const nights = await (await database()).getAll('nights');
  return nights.sort((a, b) => (a.openedAt < b.openedAt ? 1 : -1));
}

export async function storedNight(nightId: string): Promise<StoredNight | null> {
  return (await (await database()).get('nights', nightId)) ?? null;
}

/** Keeps a night with its bundle. Where one is there already, a changed bundle is laid beside it to be offered. */
export async function keepNight(opened: Pick<StoredNight, 'bundle' | 'workerName' | 'maySignOff'>): Promise<StoredNight> {
  const transaction = (await database()).transaction('nights', 'readwrite');
  const known = await transaction.store.get(opened.bundle.nightId);
  const night: StoredNight = {
    nightId: opened.bundle.nightId,
    bundle: known?.bundle ?? opened.bundle,
    offeredBundle: known && known.bundle.contentDigest !== opened.bundle.contentDigest ? opened.bundle : null,
    workerName: opened.workerName,
    maySignOff: opened.maySignOff,
    isSignedOff: known?.isSignedOff ?? false,
    way: known?.way ?? 'full',
    openedAt: new Date().toISOString(),
  };
  await transaction.store.put(night);
  await transaction.done;
  return night;
}

/** Changes what is said of a night, in one transaction. */
export async function changeNight(nightId: string, change: (night: StoredNight) => StoredNight): Promise<StoredNight | null> {
  const transaction = (await database()).transaction('nights', 'readwrite');
  const night = await transaction.store.get(nightId);
  const changed = night ? change(night) : null;
  if (changed) await transaction.store.put(changed);
  await transaction.done;
  return changed;
}

export const withOffered = (offered: NightBundle) => (night: StoredNight): StoredNight =>
  ({ ...night, offeredBundle: offered.contentDigest === night.bundle.contentDigest ? null : offered });

export const withOfferedTaken = (night: StoredNight): StoredNight => ({ ...night, bundle: night.offeredBundle ?? night.bundle, offeredBundle: null });
