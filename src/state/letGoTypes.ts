import type { StoreApi } from 'zustand/vanilla';
import type { Hand } from '../design/release/hand';
import type { createHeadRun, HeadRun, RunFault } from '../design/release/headRun';
import type { ReleaseChoices } from '../design/release/releaseChoices';

export type LetGoStatus =
  /** A hand holds the pitch, as everywhere else on the page. */
  | 'held'
  /** What lets it go is on its way. */
  | 'starting'
  | 'running'
  | 'paused'
  /** Let go, and at rest: a push sets it going again. */
  | 'resting';

/** Settings of the room, kept in the browser. `slowness` null: chosen so that a swing can be followed. */
export interface LetGoChoices extends ReleaseChoices {
  readonly slowness: number | null;
}

export interface LetGoState {
  readonly status: LetGoStatus;
  readonly choices: LetGoChoices;
  /** Why it could not be let go; null where it could. */
  readonly fault: RunFault | { readonly kind: 'notFetched'; readonly reason: string } | null;
  /** How many times slower than it is. */
  readonly slowness: number;
  /** A hand pushes at present. */
  readonly pushing: boolean;
}

/** Lets the head on the page go, in slowed time; the pitch of the page follows. Never touches the design or its history. */
export interface LetGoDesk {
  readonly store: StoreApi<LetGoState>;
  /** The run under way or the last one of this head. Its numbers change with every frame. */
  readonly run: HeadRun | null;
  /** It moves by itself or is pushed, so that a drag of the dial pushes it and does not take hold. */
  readonly moving: boolean;
  /** A run is on its way, moves or is paused: there is something to take hold of. */
  readonly loose: boolean;
  /** Told after every frame of a run and every change of the state. */
  subscribe(listener: () => void): () => void;
  choose(change: Partial<LetGoChoices>): void;
  /** From the pitch of the page. */
  letGo(): void;
  /** The last run again, from where it began. */
  replay(): void;
  pause(): void;
  goOn(): void;
  /** While paused: a fortieth of a swing. */
  step(): void;
  /** To the end at once. */
  toEnd(): void;
  /** Takes hold where it is. */
  stop(): void;
  /** Only what has been let go can be pushed. */
  push(hand: Hand): void;
}

/** What the page gives the desk, and tests give it otherwise. */
export interface LetGoPorts {
  load(): Promise<typeof createHeadRun>;
  /** Calls before the next picture with the time, s; returns the way to call it off. */
  frame(callback: (now: number) => void): () => void;
  /** The person wants no moving pictures. */
  calm(): boolean;
}
