import type { BenchReading } from '../engine/identify/benchReading';
import type { Calibration } from '../engine/identify/calibration';
import { type Result, succeed } from '../engine/result';
import {
  angularSpeedFromRpm,
  metresFromMm,
  type Radians,
  radiansFromDegrees,
} from '../engine/units';
import type { GaugeHead } from './gaugeHead';
import { type BenchRow, type BenchRun, tableOfRun } from './readings/benchSection';
import type { ReadingsFault } from './readings/fault';
import { readingsOf } from './readings/preview';
import type { Reading } from './readings/types';
import type { RestReading } from './restDrag';
import { RUNG_KEYS, type Rung, type RungKey, rungFileName, rungName } from './rungs';
import { type AirUse, readingAt, senseOf } from './setup';

/** Why a reading of a run takes no part in a fit; it is kept all the same. */
export type LeftOut =
  /** The person set it aside. */
  | 'setAside'
  /** Neither pitch nor scale: a logged series whose steps were not looked for. */
  | 'noPlace'
  /** A scale reading, and no calibration; or the calibration's linkage does not reach there. */
  | 'noCalibration'
  /** Neither the row nor the run says how fast it turned. */
  | 'noSpeed'
  /** Over centre or out of the rod's reach: a force says nothing of the moment. */
  | 'noLever';

/** A run as numbers for the fit. Places count the run's readings from 0, in their order. */
export interface RunReadings {
  readonly readings: readonly BenchReading[];
  /** Place of each of `readings`. */
  readonly places: readonly number[];
  /** Readings at no speed: drag at rest. */
  readonly rest: readonly RestReading[];
  readonly leftOut: readonly { readonly place: number; readonly why: LeftOut }[];
  /** Places whose scale reading lies outside what was calibrated. */
  readonly beyondCalibration: readonly number[];
  /** Places where nothing says which way the control was moved: they count as held. */
  readonly unsaid: readonly number[];
}

export interface RunContext {
  /** The head as it was fitted, with the gauge where it was. */
  readonly head: GaugeHead;
  /** Zero of the gauge that holds for the run. */
  readonly zero: number;
  readonly calibration?: Calibration | null;
  readonly air?: AirUse;
}

/** The readings of a run, from its table or typed by hand; all faults of the table's mapping where it cannot be read. */
export function readingsOfRun(run: BenchRun): Result<readonly Reading[], readonly ReadingsFault[]> {
  if (!run.table) return succeed((run.rows ?? []).map(typedReading));
  const stored = tableOfRun(run);
  if (!stored.ok) throw new Error('readingsOfRun(): a run with a table has none');
  const derived = readingsOf(stored.value);
  return derived.ok ? succeed(derived.value.readings) : derived;
}

function typedReading(
  { pitchDeg, scaleMm, forceN, travel, note }: BenchRow,
  index: number,
): Reading {
  return {
    row: index + 1,
    column: 0,
    pitch: pitchDeg === undefined ? null : radiansFromDegrees(pitchDeg),
    scale: scaleMm === undefined ? null : metresFromMm(scaleMm),
    force: forceN,
    moment: null,
    travel: travel ?? null,
    speed: null,
    time: null,
    run: '',
    note: note ?? '',
  };
}

/**
 * A run for the fit: pitch from the row or through the calibration, speed from the row or the run, sense from the way of
 * travel, and what the head makes of a moment there. A moment counts as the force that it makes at the gauge. Nothing is
 * corrected to another speed: each reading keeps its own, and the fit goes with its square.
 */
export function benchReadings(
  readings: readonly Reading[],
  run: Pick<BenchRun, 'speedRpm' | 'setAside'>,
  context: RunContext,
): RunReadings {
  const out = new RunDesk(context);
  const runSpeed = run.speedRpm === undefined ? null : angularSpeedFromRpm(run.speedRpm);
  const setAside = new Set(run.setAside);
  readings.forEach((reading, place) => {
    if (setAside.has(place)) out.leave(place, 'setAside');
    else out.take(reading, place, reading.speed ?? runSpeed);
  });
  return out;
}

class RunDesk implements RunReadings {
  readonly readings: BenchReading[] = [];
  readonly places: number[] = [];
  readonly rest: RestReading[] = [];
  readonly leftOut: { readonly place: number; readonly why: LeftOut }[] = [];
  readonly beyondCalibration: number[] = [];
  readonly unsaid: number[] = [];

  constructor(private readonly context: RunContext) {}

  leave(place: number, why: LeftOut): void {
    this.leftOut.push({ place, why });
  }

  take(reading: Reading, place: number, speed: number | null): void {
    const { head, zero, air = 'known' } = this.context;
    const pitch = this.pitchOf(reading);
    if (typeof pitch === 'string') return this.leave(place, pitch);
    if (speed === null) return this.leave(place, 'noSpeed');
    const known = readingAt(head, pitch, speed, air);
    const { forcePerMoment, travel } = known;
    const force = reading.force ?? (reading.moment ?? Number.NaN) * forcePerMoment;
    if (!Number.isFinite(forcePerMoment * force)) return this.leave(place, 'noLever');
    if (!Number.isFinite(known.knownForce ?? 0)) return this.leave(place, 'noLever');
    const scale = reading.pitch === null ? reading.scale : null;
    const { calibration } = this.context;
    const shifts = scale === null ? undefined : calibration?.shiftsAt(scale);
    if (scale !== null && calibration?.beyond(scale)) this.beyondCalibration.push(place);
    // Within a hair of where the linkage ends there is a force, but no slope by which an error of the pitch could count.
    const slopes = [known.forcePerMomentSlope ?? 0, ...(shifts ?? [])];
    if (!slopes.every(Number.isFinite)) return this.leave(place, 'noLever');
    const sense = senseOf(reading.travel, forcePerMoment);
    if (sense === null) this.unsaid.push(place);
    if (speed === 0) this.rest.push({ travel, force, sense, place });
    else {
      const own = { ...known, force, sense: sense ?? 0, zero };
      this.readings.push(shifts ? { ...own, scaleShifts: shifts } : own);
      this.places.push(place);
    }
  }

  private pitchOf({ pitch, scale }: Reading): Radians | LeftOut {
    if (pitch !== null) return pitch;
    if (scale === null) return 'noPlace';
    const found = this.context.calibration?.pitchAt(scale);
    return found === undefined || Number.isNaN(found) ? 'noCalibration' : found;
  }
}

type Fitted = Pick<BenchRun, 'parts' | 'fitted'>;

/** The step of the ladder that `fitted` names: its key or its name, which practice and example files carry, in any case. */
export function rungNamed(fitted: string | undefined): RungKey | null {
  const said = plain(fitted ?? '');
  const found = RUNG_KEYS.find((key) =>
    [key, rungFileName(key), rungName(key)].some((name) => said === plain(name)),
  );
  return found ?? null;
}

/** Whether a run says what was fitted. One that does not counts as the head as designed, the last rung. */
export function saysFitted({ parts, fitted }: Fitted): boolean {
  return (fitted ?? '').trim() !== '' || parts !== undefined;
}

/**
 * The rung that a run was of: the one that it names, otherwise the one whose parts were on; where it says nothing, the last.
 * Null where what it says is none of these.
 */
export function rungOfRun(run: Fitted, rungs: readonly Rung[]): Rung | null {
  if (!saysFitted(run)) return rungs[rungs.length - 1];
  const { parts, fitted } = run;
  const key = rungNamed(fitted);
  const named = rungs.find((rung) => rung.key === key);
  if (named || !parts) return named ?? null;
  const on = new Set(parts);
  // Two rungs may have the same parts on, an ordinary nut being the same part in another form: then the later one.
  return (
    rungs.findLast(
      (rung) =>
        rung.key !== 'drag' && rung.on.length === on.size && rung.on.every((id) => on.has(id)),
    ) ?? null
  );
}

function plain(text: string): string {
  return text.trim().toLowerCase();
}
