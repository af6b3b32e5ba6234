import type { OfflineRequest, Release } from './release';
import { ReleaseCache } from './releaseCache';

/** Put in by the build (src/tools/build/offline.ts). */
declare const STILLGRIP_RELEASE: Release;

/** The parts of a service worker's own scope that are used here; the types of the page know none of them. */
interface WaitingEvent extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface AskedEvent extends WaitingEvent {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface ServiceScope {
  readonly registration: {
    readonly scope: string;
    readonly installing: unknown;
    readonly waiting: unknown;
  };
  readonly clients: {
    claim(): Promise<void>;
    matchAll(choice: { type: 'window'; includeUncontrolled: true }): Promise<readonly unknown[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(kind: 'install' | 'activate', hear: (event: WaitingEvent) => void): void;
  addEventListener(kind: 'fetch', hear: (event: AskedEvent) => void): void;
  addEventListener(
    kind: 'message',
    hear: (event: WaitingEvent & { readonly data: unknown }) => void,
  ): void;
}

const scope = globalThis as unknown as ServiceScope;
const kept = new ReleaseCache(STILLGRIP_RELEASE, {
  caches,
  fetch: (address, options) => fetch(address, options),
  scope: scope.registration.scope,
});

scope.addEventListener('install', (event) => event.waitUntil(kept.install()));
// The page of the first visit is taken on at once; a newer version gets here only when it is asked for.
scope.addEventListener('activate', (event) => event.waitUntil(scope.clients.claim()));
scope.addEventListener('fetch', (event) => {
  const answer = kept.answer(event.request);
  if (answer) event.respondWith(answer);
});
scope.addEventListener('message', (event) => {
  const asked = event.data as OfflineRequest;
  if (asked === 'take over') event.waitUntil(scope.skipWaiting());
  if (asked === 'opened') event.waitUntil(tidyWhenAlone());
});

/** A page of an older version that is still open needs its files, and a newer version that waits needs its own. */
async function tidyWhenAlone(): Promise<void> {
  if (scope.registration.installing ?? scope.registration.waiting) return;
  const open = await scope.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (open.length <= 1) await kept.tidy();
}
