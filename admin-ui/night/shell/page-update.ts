import { useSyncExternalStore } from 'react';

let waiting: ServiceWorker | null = null;
const watchers = new Set<() => void>();
const HOUR_MILLISECONDS = 60 * 60_000;

function offer(worker: ServiceWorker | null): void {
  // Without a page before it there is nothing to be newer than.
  if (!worker || !navigator.serviceWorker.controller) return;
  waiting = worker;
  for (const watcher of watchers) watcher();
}

/** Stores the page on this device. A newer one waits until somebody takes it. */
export function keepPageOffline(): void {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  void navigator.serviceWorker.register('/night/service-worker.js', { scope: '/night/' }).then((registration) => {
    offer(registration.waiting);
    registration.addEventListener('updatefound', () => {
      const worker = registration.installing;
      worker?.addEventListener('statechange', () => worker.state === 'installed' && offer(worker));
    });
    setInterval(() => void registration.update().catch(() => {}), HOUR_MILLISECONDS);
  }, () => {
    // A browser in private mode may refuse; the desk then works as long as it stays open.
  });
}

const watch = (watcher: () => void) => {
  watchers.add(watcher);
  return () => void watchers.delete(watcher);
};

function take(): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => window.location.reload(), { once: true });
  waiting?.postMessage({ type: 'SKIP_WAITING' });
}

/** Loads the newer page, or null while there is none. */
export function usePageUpdate(): (() => void) | null {
  return useSyncExternalStore(watch, () => (waiting ? take : null));
}
