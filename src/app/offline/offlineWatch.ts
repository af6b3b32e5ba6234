import { createStore, type StoreApi } from 'zustand/vanilla';
import type { OfflineRequest } from '../../offline/release';
import { scriptAddress } from '../../worker/workerAt';

/**
 * How far the page is kept for use without a network. `unable`: the browser offers nothing for it here (a private
 * window, or an address that is neither https nor this machine), or refused.
 */
export type Kept = 'no' | 'fetching' | 'yes' | 'unable';

export interface OfflineState {
  readonly kept: Kept;
  /** A newer version lies ready; `taken`: another tab has put it in place. */
  readonly update: 'none' | 'ready' | 'taken';
}

export interface OfflineWatch {
  readonly state: StoreApi<OfflineState>;
  /** Puts the newer version in place and reloads; `flush` keeps the work before. */
  takeUpdate(flush: () => Promise<void>): Promise<void>;
}

/** Looks for a newer version when the page is looked at again, at most this often, ms. */
const LOOK_EVERY = 3_600_000;

/**
 * Has the page kept by its service worker, once it has opened and has nothing better to do. Nothing is ever reloaded
 * unasked: a newer version waits until a person takes it or all pages are closed.
 */
export function watchOffline(): OfflineWatch {
  const state = createStore<OfflineState>(() => ({ kept: 'no', update: 'none' }));
  const container = 'serviceWorker' in navigator ? navigator.serviceWorker : undefined;
  let waiting: ServiceWorker | null = null;
  let asked = false;

  function follow(registration: ServiceWorkerRegistration): void {
    const offer = () => {
      waiting = registration.waiting;
      if (waiting && container?.controller) state.setState({ update: 'ready' });
    };
    registration.addEventListener('updatefound', () => {
      const worker = registration.installing;
      if (!worker) return;
      if (!registration.active) state.setState({ kept: 'fetching' });
      worker.addEventListener('statechange', () => {
        if (worker.state === 'installed') offer();
        if (worker.state === 'activated') state.setState({ kept: 'yes' });
        if (worker.state === 'redundant' && !registration.active) {
          state.setState({ kept: 'unable' });
        }
      });
    });
    if (registration.active) state.setState({ kept: 'yes' });
    offer();
    lookAgain(registration);
  }

  async function start(): Promise<void> {
    if (!container) return state.setState({ kept: 'unable' });
    const ran = container.controller !== null;
    container.addEventListener('controllerchange', () => {
      if (asked) window.location.reload();
      else if (ran) state.setState({ update: 'taken' });
    });
    tell(container.controller, 'opened');
    try {
      const address = new URL('./service.js', document.baseURI).href;
      follow(
        await container.register(scriptAddress('offline', address), { updateViaCache: 'none' }),
      );
    } catch {
      state.setState({ kept: 'unable' });
    }
  }

  if (import.meta.env.PROD) whenIdle(() => void start());
  return {
    state,
    async takeUpdate(flush) {
      await flush();
      if (state.getState().update === 'taken' || !waiting) return window.location.reload();
      asked = true;
      tell(waiting, 'take over');
    },
  };
}

function tell(worker: ServiceWorker | null, request: OfflineRequest): void {
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a worker has no origin to name
  worker?.postMessage(request);
}

function lookAgain(registration: ServiceWorkerRegistration): void {
  let last = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.hidden || Date.now() - last < LOOK_EVERY) return;
    last = Date.now();
    // Without a network there is nothing newer to be had.
    registration.update().catch(() => undefined);
  });
}

/** After the first load: what the page shows first is not to wait for what it may want later. */
function whenIdle(work: () => void): void {
  const idle = () => {
    if ('requestIdleCallback' in window) window.requestIdleCallback(work, { timeout: 5000 });
    else setTimeout(work, 1000);
  };
  if (document.readyState === 'complete') idle();
  else window.addEventListener('load', idle, { once: true });
}
