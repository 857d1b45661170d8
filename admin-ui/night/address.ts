import { useSyncExternalStore } from 'react';

/** Where the page is: behind the `#`, so that no token is ever sent to a server's log. */
export type Place =
  | { readonly at: 'list' }
  | { readonly at: 'open' | 'night'; readonly nightId: string }
  | { readonly at: 'link' | 'ask'; readonly token: string };

export function placeOf(hash: string): Place {
  const [, at, rest] = /^#(open|night|link|ask)\/([\w-]+)$/.exec(hash) ?? [];
  if (at === 'link' || at === 'ask') return { at, token: rest! };
  return at === 'open' || at === 'night' ? { at, nightId: rest! } : { at: 'list' };
}

const watch = (watcher: () => void) => {
  window.addEventListener('hashchange', watcher);
  return () => window.removeEventListener('hashchange', watcher);
};

export function usePlace(): Place {
  const hash = useSyncExternalStore(watch, () => window.location.hash);
  return placeOf(hash);
}

/** Goes there without leaving the former address in the history: a link's token is not to be found there. */
export function goTo(hash: string): void {
  window.history.replaceState(null, '', hash === '' ? window.location.pathname : hash);
  window.dispatchEvent(new HashChangeEvent('hashchange'));
}
