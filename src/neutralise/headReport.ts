import { bottomsOut } from '../design/bottomsOut';
import { type ClearanceDesk, leastPair } from '../design/clearance/clearanceDesk';
import { shortBolts } from '../design/engagement';
import type { HeadForces } from '../design/forces/headForces';
import type { LimitInUse } from '../design/forces/loadTypes';
import { speedRange } from '../design/forces/speedSweep';
import { lookWith } from '../design/headOutlook';
import { figuresOf } from '../design/variantOutlook';
import type { Verdict } from '../design/verdict';
import { M } from '../engine/mass/moments';
import { radiansFromDegrees } from '../engine/units';

/** What a head does: the columns of the table of answers. SI; angles in degrees. */
export interface HeadReport {
  /** -used, half of it, flat, half, used. */
  readonly pitchesDeg: readonly number[];
  /** Push-rod force at each (N, tension positive; null over centre), or without an arm the moments (N m). */
  readonly holds: readonly (number | null)[];
  readonly kind: 'force' | 'moment';
  /** Mass of the grip with all that turns with it, kg. */
  readonly mass: number;
  readonly restsDeg: readonly number[];
  /** The pitches about flat (or nearest to it) where friction holds the grip; null where it does not. */
  readonly bandDeg: readonly [number, number] | null;
  readonly verdict: Verdict;
  /** At the overspeed, anywhere within the pitch in use. */
  readonly limit: LimitInUse | null;
  /** The least gap to a keep-out through the whole travel; null where there is none. */
  readonly gap: ReportedGap | null;
  /** A bolt meets the end of a closed nut, mm too long; null where none does. */
  readonly bottomsMm: number | null;
  /** A bolt ends too soon in its nut, mm too short for its lock or for enough thread; null where none does. */
  readonly shortMm: number | null;
}

export interface ReportedGap {
  /** m; negative: the depth of the overlap. The true gap is within `error` of it. */
  readonly gap: number;
  readonly error: number;
  readonly wanted: number;
  /** Less than wanted, the error taken the bad way. */
  readonly tooNear: boolean;
}

/** The report of a head from its forces. A desk that has seen a head with the same parts looks only at what differs. */
export function headReport(forces: HeadForces, desk: ClearanceDesk): HeadReport {
  const { overspeedRpm } = speedRange(forces.model.sections.rotor);
  const figures = figuresOf(lookWith(forces), overspeedRpm);
  const { pitchesDeg, moments, totals, restsDeg, verdict, limit, bandsDeg } = figures;
  return {
    pitchesDeg,
    holds: figures.forces ?? moments,
    kind: figures.forces ? 'force' : 'moment',
    mass: totals[M],
    restsDeg,
    bandDeg: bandNear(bandsDeg ?? [], 0),
    verdict,
    limit,
    gap: reportedGap(forces, desk),
    bottomsMm: bottomsOut(forces.model)[0]?.byMm ?? null,
    shortMm: shortBolts(forces.model)[0]?.byMm ?? null,
  };
}

/** The least gap of a head to its keep-outs. */
export function reportedGap(forces: HeadForces, desk: ClearanceDesk): ReportedGap | null {
  const found = desk.clearance(forces);
  const least = leastPair(found);
  if (!least) return null;
  const { gap, error } = least;
  return { gap, error, wanted: found.wanted, tooNear: gap - error < found.wanted };
}

/** Push-rod force at a pitch, or the moment without an arm; null where there is no force. */
export function holdAt(forces: HeadForces, pitchDeg: number): number | null {
  const pitch = radiansFromDegrees(pitchDeg);
  const moment = forces.moment(pitch);
  if (!forces.linkage) return Number.isFinite(moment) ? moment : null;
  return forces.forceOf(moment, pitch);
}

function bandNear(
  bands: readonly (readonly [number, number])[],
  pitchDeg: number,
): readonly [number, number] | null {
  const away = ([low, high]: readonly [number, number]) =>
    Math.max(0, low - pitchDeg, pitchDeg - high);
  return bands.reduce<readonly [number, number] | null>(
    (best, band) => (best === null || away(band) < away(best) ? band : best),
    null,
  );
}
