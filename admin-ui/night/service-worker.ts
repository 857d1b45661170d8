/** What the browser gives a service worker, as far as this one uses it. */
interface Worker {
  __WB_MANIFEST: readonly { url: string; revision: string | null }[];
  clients: { claim(): Promise<void> };
  location: Location;
  skipWaiting(): Promise<void>;
  addEventListener(type: 'install' | 'activate', heard: (event: { waitUntil(done: Promise<unknown>): void }) => void): void;
  addEventListener(type: 'message', heard: (event: MessageEvent<{ type?: string } | null>) => void): void;
  addEventListener(type: 'fetch', heard: (event: { request: Request; respondWith(answer: Promise<Response>): void }) => void): void;
}

declare const self: Worker;

const files = self.__WB_MANIFEST;
const PAGE = '/night/index.html';
const PREFIX = 'table-page ';

/** Other files, another store: a page is whole or not there. */
const store = PREFIX + files.map(({ url, revision }) => `${url} ${revision ?? ''}`).join(' ').split('').reduce((sum, sign) => (sum * 31 + sign.charCodeAt(0)) >>> 0, 7);

async function keepAll(): Promise<void> {
  const cache = await caches.open(store);
  // An icon may be listed twice, and a store refuses that.
  const addresses = new Set(files.map(({ url }) => new URL(url, self.location.href).href));
  await cache.addAll([...addresses].map((address) => new Request(address, { cache: 'reload' })));
}

async function forgetFormer(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith(PREFIX) && name !== store).map((name) => caches.delete(name)));
  await self.clients.claim();
}

async function answer(request: Request): Promise<Response> {
  const kept = await caches.open(store).then((cache) => cache.match(request.mode === 'navigate' ? PAGE : request, { ignoreSearch: true, ignoreVary: true }));
  return kept ?? fetch(request);
}

self.addEventListener('install', (event) => event.waitUntil(keepAll()));
self.addEventListener('activate', (event) => event.waitUntil(forgetFormer()));
// A newer page waits here until somebody takes it.
self.addEventListener('message', (event) => {
  if (event.data?.type === 'SKIP_WAITING') void self.skipWaiting();
});
self.addEventListener('fetch', (event) => {
  const { origin, pathname } = new URL(event.request.url);
  if (event.request.method === 'GET' && origin === self.location.origin && pathname.startsWith('/night/')) event.respondWith(answer(event.request));
});

// A module, so that its `self` is its own.
export {};
