import type { Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import { tryOutsOf } from '../design/tryOuts';
import { knownOutlook, type VariantOutlook, variantOutlook } from '../design/variantOutlook';
import type { Result } from '../engine/result';
import type { Schedule } from './live';
import type { AppStore } from './store';

/**
 * What the try-outs that are not on the stage would do. An outlook costs a few milliseconds, near a tenth of a second with
 * air counted: what is asked for and not known is worked out one a frame, never while something is dragged, and listeners
 * are told of each.
 */
export interface TryOutOutlooks {
  /** Null: not known yet; it is on its way, and listeners will be told. */
  of(parts: readonly Part[]): Result<VariantOutlook, DesignFault> | null;
  subscribe(listener: () => void): () => void;
}

/** `pitchDeg`: the pitches of the chart's curves; always the same array. */
export function createTryOutOutlooks(
  store: AppStore,
  pitchDeg: Float64Array,
  schedule: Schedule,
): TryOutOutlooks {
  const wanted = new Set<readonly Part[]>();
  const listeners = new Set<() => void>();
  let scheduled = false;

  function wake(): void {
    if (scheduled || wanted.size === 0 || store.getState().gesture) return;
    scheduled = true;
    schedule(workOut);
  }

  function workOut(): void {
    scheduled = false;
    const { design, gesture } = store.getState();
    if (gesture) return;
    const [parts] = wanted;
    if (!parts) return;
    wanted.delete(parts);
    // It may have gone, or on the stage, meanwhile.
    if (tryOutsOf(design).some((one) => one.parts === parts)) {
      variantOutlook(design, parts, pitchDeg);
      for (const listener of listeners) listener();
    }
    wake();
  }

  store.subscribe((state, before) => {
    if (before.gesture && !state.gesture) wake();
  });

  return {
    of(parts) {
      const known = knownOutlook(store.getState().design, parts, pitchDeg);
      if (known) return known;
      wanted.add(parts);
      wake();
      return knownOutlook(store.getState().design, parts, pitchDeg);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
