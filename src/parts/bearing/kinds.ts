import type { BearingFacts, BearingKind } from '../facts';

interface KindFacts {
  readonly carries: BearingFacts['carries'];
  /** Running coefficient of friction where none is typed. */
  readonly friction: number;
  /** Share of the ring between bore and rim that is metal. */
  readonly fill: number;
}

/**
 * What is usual for each type. Friction: the middle of the published range for a moment coefficient x load x bore / 2
 * (published table of the friction of rolling bearings: deep groove 0.0010 to 0.0015, thrust ball 0.0010 to 0.0015, needle with cage
 * 0.0020 to 0.0030); plain, dry, 0.15 (memory). Starting takes up to twice as much as running.
 *
 * Fill is a calibration and no evidence. Deep groove: mean of 16 printed masses of open bearings, 0.634 to 0.730, so a mass
 * is within 7.5 %; eight shielded ones lie between 0.54 and 0.81. Thrust ball: two masses from sellers' pages, 0.89 and
 * 0.91, which seem high. Needle: drawn cup with cage (memory). Plain: full.
 */
export const BEARING_KINDS: Readonly<Record<BearingKind, KindFacts>> = {
  deepGroove: { carries: 'radial', friction: 0.00125, fill: 0.68 },
  thrustBall: { carries: 'thrust', friction: 0.00125, fill: 0.9 },
  needle: { carries: 'radial', friction: 0.0025, fill: 0.66 },
  plain: { carries: 'radial', friction: 0.15, fill: 1 },
};
