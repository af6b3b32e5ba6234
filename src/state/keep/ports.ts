import type { Later } from '../inTime';
import type { DesignLocks } from './locks';
import type { RecordStore } from './recordStore';
import type { RescueNotes } from './rescue';
import type { Freed } from './room';
import type { Trouble } from './trouble';

/** What is being worked on, as the keeper sees it. */
export interface WorkState {
  /** Another object for every change. */
  readonly design: { readonly name: string };
  /** Another number for every design that was opened; undo brings the old one back. */
  readonly opening: number;
}

export interface Work {
  state(): WorkState;
  /** Called after every change, with the state before it. */
  subscribe(listener: (now: WorkState, before: WorkState) => void): () => void;
  textOf(state: WorkState): string;
  /** Openings that undo and redo can bring back, with the present one. */
  openings(): ReadonlySet<number | undefined>;
  /** Opens the design in a text in place of the one that is open: one undo step. False where it cannot be read. */
  open(text: string): boolean;
}

/** One small text that is kept and written at once. */
export interface Slip {
  read(): string | null;
  write(text: string): void;
}

/** What the keeper has to say. */
export type Message =
  | { readonly kind: 'trouble'; readonly trouble: Trouble }
  | { readonly kind: 'slow' }
  | { readonly kind: 'recovered' }
  /** Was let go so that the work could be kept. */
  | { readonly kind: 'thinned'; readonly freed: Freed }
  | { readonly kind: 'otherTab' }
  | { readonly kind: 'copied'; readonly why: 'elsewhere' | 'conflict' | 'newer' }
  | { readonly kind: 'caughtUp' };

/** Everything outside the keeper, so that a test can break it. */
export interface KeepPorts {
  /** Opens the store; rejects where the browser does not give it. */
  readonly store: () => Promise<RecordStore>;
  readonly locks: DesignLocks;
  readonly notes: RescueNotes;
  /** Says, outside the store, that designs were kept in it. */
  readonly canary: Slip;
  /** Which design this tab had open, for its reload. */
  readonly lastOpen: Slip;
  readonly now: () => number;
  readonly newId: () => string;
  readonly later: Later;
  /** Whether nobody sees the page: timers are held back then. */
  readonly hidden: () => boolean;
  /** Asks the browser not to clear what the page keeps. */
  readonly askToStay: () => void;
  readonly tell: (message: Message) => void;
}
