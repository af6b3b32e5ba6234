/**
 * What the room "Pulls" shows on stage and dial: how many of the pulls stand, at which speed, and from where they are
 * looked at. It changes nothing of the design. Written with every picture of an animation, so its listeners write to the
 * DOM and to three.js directly.
 */
export interface PullsShown {
  /** The room is open: stage and dial draw it. */
  readonly open: boolean;
  /** What one step adds: a part, or one of the lumps that stand for it. */
  readonly grain: PullGrain;
  /** Steps that are done, the last one perhaps only in part: 2.4 is two arrows and the third grown to 0.4. */
  readonly progress: number;
  /** The speed tried, rpm; null: the design's own. */
  readonly speedRpm: number | null;
  /** Who looks: one who turns with the rotor, or one who stands outside and sees it go round. */
  readonly eye: PullEye;
  /** Seen from outside: it goes round now. */
  readonly turning: boolean;
}

export type PullGrain = 'parts' | 'lumps';
export type PullEye = 'within' | 'outside';

export interface PullsShow {
  readonly shown: PullsShown;
  set(change: Partial<PullsShown>): void;
  /** Returns a function that stops listening. */
  subscribe(listener: () => void): () => void;
}

const START: PullsShown = {
  open: false,
  grain: 'parts',
  progress: 0,
  speedRpm: null,
  eye: 'within',
  turning: false,
};

export function createPullsShow(): PullsShow {
  const listeners = new Set<() => void>();
  let shown = START;
  return {
    get shown() {
      return shown;
    },
    set(change) {
      shown = { ...shown, ...change };
      for (const listener of listeners) listener();
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
