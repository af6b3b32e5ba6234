import { length } from '../../engine/math/vector';
import { t } from '../../messages';
import type { LumpSide, PullEntry } from '../pullTally';
import { displayForce, displayMoment, show, signedQuantity, significant } from '../quantities';
import type { DisplayUnits } from '../settings';

/** Which way a moment turns the grip: toward flat or away from it; at flat pitch up or down. */
export type TurnWay = 'toFlat' | 'fromFlat' | 'up' | 'down' | 'none' | 'unknown';

/** A pitch nearer to flat than this has no side, degrees. */
const FLAT_DEG = 0.05;

export function turnWay(moment: number, pitchDeg: number): TurnWay {
  if (Number.isNaN(moment)) return 'unknown';
  // What is shown as zero turns nothing.
  if (Math.abs(moment) < 1e-9) return 'none';
  if (Math.abs(pitchDeg) < FLAT_DEG) return moment > 0 ? 'up' : 'down';
  return moment > 0 === pitchDeg > 0 ? 'fromFlat' : 'toFlat';
}

/** "turns it to flat". */
export function turnWords(moment: number, pitchDeg: number): string {
  return t(`pulls.way.${turnWay(moment, pitchDeg)}`);
}

/** "Blade, half toward the leading edge"; "Air (estimate)". */
export function entryName({ kind, name, side }: PullEntry): string {
  if (kind === 'others' || kind === 'air' || kind === 'lag') return t(`pulls.${kind}`);
  if (side === null || side === 'whole') return name;
  return t('pulls.lumpOf', { part: name, side: sideText(side) });
}

function sideText(side: Exclude<LumpSide, 'whole'>): string {
  return typeof side === 'number' ? t('pulls.quarter', { n: side }) : t(`pulls.side.${side}`);
}

/** "+12.3 N mm"; plus raises the leading edge. */
export function entryMoment(moment: number, units: DisplayUnits): string {
  if (Number.isNaN(moment)) return t('pulls.noValue');
  return signedQuantity(displayMoment(moment, units));
}

/** The size of the pull, "812 N"; a dash for a share that has no one place. */
export function entryPull(entry: PullEntry, units: DisplayUnits): string {
  return entry.pulls.length === 0
    ? t('pulls.dash')
    : show(displayForce(length(entry.force), units));
}

/** "100 %", "44 %" of the pull at the design's speed. */
export function squareText(speedRpm: number, designRpm: number): string {
  return `${significant(100 * (speedRpm / designRpm) ** 2)}\u00a0%`;
}
