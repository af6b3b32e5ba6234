import type { Changes } from '../../state/changes';
import type { HeadReading } from '../../state/reading';
import type { AppState } from '../../state/store';
import type { Palette } from '../drawing/palette';

/** What a layer may look at when it is brought up to date. */
export interface StageNow {
  readonly reading: HeadReading;
  readonly state: AppState;
}

/**
 * One thing drawn over the parts: arrows, ellipse, fan. Made once, hung into a frame of the kit by its maker, and
 * brought up to date outside React, at most once a frame.
 */
export interface StageLayer {
  update(now: StageNow, changes: Changes): void;
  paint(palette: Palette): void;
  /** Gives back everything it made, labels too. */
  dispose(): void;
}
