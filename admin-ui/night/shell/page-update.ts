import { useSyncExternalStore } from 'react';
import { registerSW } from 'virtual:pwa-register';

let update: (() => void) | null = null;
const watchers = new Set<() => void>();
const HOUR_MILLISECONDS = 60 * 60_000;

/** Stores the page on this device. A newer one waits until somebody takes it. */
export function keepPageOffline(): void {
  const take = registerSW({
    onNeedRefresh() {
      update = () => void take(true);
      for (const watcher of watchers) watcher();
    },
    onRegisteredSW(_address, registration) {
      if (registration) setInterval(() => void registration.update().catch(() => {}), HOUR_MILLISECONDS);
    },
  });
}

const watch = (watcher: () => void) => {
  watchers.add(watcher);
  return () => void watchers.delete(watcher);
};

/** Loads the newer page, or null while there is none. */
export function usePageUpdate(): (() => void) | null {
  return useSyncExternalStore(watch, () => update);
}
