import { temporal } from 'zundo';
import { createStore } from 'zustand/vanilla';
import type { Design } from '../design/design';
import type { Picking } from './picking';
import { DEFAULT_SETTINGS, type DisplayUnits, type Settings } from './settings';

/**
 * Everything a person can change. `design` is the only part that files know, and undo besides the display units; it is
 * immutable, and a new object for every change. Written only through `actions`.
 */
export interface AppState {
  readonly design: Design;
  /** Which opening of a design this one came from: another number for each. Undo of an opening brings the old one back. */
  readonly opening: number;
  /** Id of the selected part, or null for the rotor itself. */
  readonly selection: string | null;
  /** Where the pitch pointer stands, degrees. */
  readonly pitchDeg: number;
  readonly settings: Settings;
  /** Ids of the try-outs whose curves and columns are laid beside those of the one on the stage. */
  readonly compared: readonly string[];
  /** A part being placed by picking holes on it, or null. */
  readonly picking: Picking | null;
  /** Last thing the page has to say: a refused value, a saved file. Cleared by the next action. */
  readonly notice: Notice | null;
  /** True while a drag is under way: one gesture is one undo step. */
  readonly gesture: boolean;
}

export interface Notice {
  readonly tone: 'plain' | 'warning';
  readonly text: string;
}

export const EMPTY_DESIGN: Design = {
  format: 'stillgrip-design',
  version: 1,
  name: 'Untitled',
  rotor: { speedRpm: 10000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
  parts: [],
};

/** Undo steps kept. */
export const HISTORY_LIMIT = 200;

/** What undo brings back. */
export interface UndoStep extends Pick<AppState, 'design' | 'opening'> {
  /** Only in a step that changed the display units and nothing else (`unitSteps`). */
  readonly units?: DisplayUnits;
}

export function createAppStore(design: Design = EMPTY_DESIGN) {
  return createStore<AppState>()(
    temporal(
      (): AppState => ({
        design,
        opening: 0,
        selection: null,
        pitchDeg: 0,
        picking: null,
        settings: DEFAULT_SETTINGS,
        compared: [],
        notice: null,
        gesture: false,
      }),
      {
        partialize: (state): UndoStep => ({ design: state.design, opening: state.opening }),
        equality: (past, current) => past.design === current.design,
        limit: HISTORY_LIMIT,
      },
    ),
  );
}

export type AppStore = ReturnType<typeof createAppStore>;
