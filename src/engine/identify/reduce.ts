import type { Radians } from '../units';
import { type BenchReading, type Gauge, type RestDrag, restDragAt } from './benchReading';

/** A pitch at which both senses were read at one speed, reduced by hand's arithmetic. SI, tension positive. */
export interface SplitRow {
  readonly pitch: Radians;
  readonly angularSpeed: number;
  readonly zero: number;
  /** Mean of pull and push: the force of the moment, N, the zero taken off. */
  readonly momentForce: number;
  readonly momentSigma: number;
  /** Half of pull less push, less the drag at rest: friction that spinning adds, N. Below zero: see `reversed`. */
  readonly friction: number;
  readonly frictionSigma: number;
  /** Pull less push, N: the whole width of the loop. */
  readonly hysteresis: number;
  /** Pull reads less than push beyond doubt: the senses are exchanged, or the sign of tension is. */
  readonly reversed: boolean;
  /** Moment of the grip that this force answers to, N m. */
  readonly moment: number;
  /** One of the two was read between neighbours of its pass, not at this pitch. */
  readonly interpolated: boolean;
}

/** Passes reduced, and the area of each loop. */
export interface SplitPasses {
  readonly rows: readonly SplitRow[];
  /** Work lost in a loop, J, by trapezes over slider travel between the first and last row of one speed and zero. */
  readonly loops: readonly {
    readonly angularSpeed: number;
    readonly zero: number;
    readonly work: number;
  }[];
  /** Readings that found no partner (no pass in the other sense around their pitch), by place. */
  readonly unpaired: readonly number[];
}

/** Two pitches closer than this are one, rad (0.006 degrees): settings on a scale are typed. */
export const SAME_PITCH = 1e-4;

/** A force read at another speed as it would be at this one: what spins goes with W^2; zero and drag at rest must be off. */
export function forceAtSpeed(force: number, angularSpeed: number, wanted: number): number {
  return force * (wanted / angularSpeed) ** 2;
}

/** A reading without its gauge's zero and, where it was moving, without the drag at rest at its travel, N. */
export function netForce(
  { force, zero, sense, travel }: BenchReading,
  zeros: readonly number[],
  drag: readonly RestDrag[],
): number {
  return force - (zeros[zero] ?? 0) - sense * restDragAt(drag, travel).force;
}

/**
 * Splits push and pull into moment and friction pitch by pitch: the picture beside `benchFit`, which does the same with all
 * readings at once. Repeats are averaged; where the other pass was not read at a pitch but around it, straight between its
 * neighbours (the error is an eighth of the curve's bend over the gap squared). Zeros are subtracted first. Held readings take
 * no part. Uncertainties: noise and step of the gauge (noise null: the step alone), those of the drag at rest.
 */
export function splitPasses(
  readings: readonly BenchReading[],
  gauge: Gauge,
  zeros: readonly number[],
  drag: readonly RestDrag[],
): SplitPasses {
  const rows: SplitRow[] = [];
  const loops: SplitPasses['loops'][number][] = [];
  const unpaired: number[] = [];
  const each = (gauge.noise ?? 0) ** 2 + gauge.step ** 2 / 12;
  for (const run of runsOf(readings)) {
    const pull = passOf(readings, run, 1);
    const push = passOf(readings, run, -1);
    const own: { row: SplitRow; travel: number }[] = [];
    for (const pitch of distinctPitches([...pull, ...push].map((point) => point.pitch))) {
      const high = at(pull, pitch);
      const low = at(push, pitch);
      if (!high || !low) {
        for (const { pitch: one, places } of [...pull, ...push]) {
          if (Math.abs(one - pitch) < SAME_PITCH) unpaired.push(...places);
        }
        continue;
      }
      const { travel, forcePerMoment } = high.exact ?? low.exact ?? readings[0];
      const rest = restDragAt(drag, travel);
      const variance = each * (high.share + low.share);
      const hysteresis = high.force - low.force;
      const friction = hysteresis / 2 - rest.force;
      const momentForce = (high.force + low.force) / 2 - (zeros[run.zero] ?? 0);
      const row: SplitRow = {
        pitch: pitch as Radians,
        ...run,
        momentForce,
        momentSigma: Math.sqrt(variance) / 2,
        friction,
        frictionSigma: Math.sqrt(variance / 4 + rest.sigma ** 2),
        hysteresis,
        reversed: hysteresis < -2 * Math.sqrt(variance),
        moment: momentForce / forcePerMoment,
        interpolated: !high.exact || !low.exact,
      };
      own.push({ row, travel });
      rows.push(row);
    }
    loops.push({ ...run, work: loopWork(own) });
  }
  return { rows, loops, unpaired };
}

interface Run {
  readonly angularSpeed: number;
  readonly zero: number;
}

function runsOf(readings: readonly BenchReading[]): Run[] {
  const runs = new Map<string, Run>();
  for (const { angularSpeed, zero } of readings)
    runs.set(`${angularSpeed} ${zero}`, { angularSpeed, zero });
  return [...runs.values()];
}

interface PassPoint {
  readonly pitch: number;
  readonly force: number;
  readonly count: number;
  readonly reading: BenchReading;
  readonly places: readonly number[];
}

/** Mean of the repeats at each pitch of one sense, ascending in pitch. */
function passOf(readings: readonly BenchReading[], run: Run, sense: number): PassPoint[] {
  const points: PassPoint[] = [];
  const places = readings
    .map((_, i) => i)
    .filter((i) => {
      const one = readings[i];
      return one.sense === sense && one.zero === run.zero && one.angularSpeed === run.angularSpeed;
    })
    .toSorted((a, b) => readings[a].pitch - readings[b].pitch);
  for (const i of places) {
    const last = points.at(-1);
    const { pitch, force } = readings[i];
    if (last && pitch - last.pitch < SAME_PITCH) {
      const count = last.count + 1;
      points[points.length - 1] = {
        ...last,
        count,
        force: last.force + (force - last.force) / count,
        places: [...last.places, i],
      };
    } else points.push({ pitch, force, count: 1, reading: readings[i], places: [i] });
  }
  return points;
}

/** Ascending, those that are one only once. */
export function distinctPitches(pitches: readonly number[]): number[] {
  const sorted = pitches.toSorted((a, b) => a - b);
  return sorted.filter((pitch, k) => k === 0 || pitch - sorted[k - 1] >= SAME_PITCH);
}

/** Force of a pass at a pitch; `share` is its variance in readings' variances. Null outside the pass. */
function at(
  pass: readonly PassPoint[],
  pitch: number,
): { force: number; share: number; exact: BenchReading | null } | null {
  const same = pass.find((point) => Math.abs(point.pitch - pitch) < SAME_PITCH);
  if (same) return { force: same.force, share: 1 / same.count, exact: same.reading };
  const k = pass.findIndex((point) => point.pitch > pitch);
  if (k <= 0) return null;
  const [a, b] = [pass[k - 1], pass[k]];
  const part = (pitch - a.pitch) / (b.pitch - a.pitch);
  return {
    force: a.force + part * (b.force - a.force),
    share: (1 - part) ** 2 / a.count + part ** 2 / b.count,
    exact: null,
  };
}

function loopWork(points: readonly { row: SplitRow; travel: number }[]): number {
  let work = 0;
  for (let k = 1; k < points.length; k++) {
    const width = (points[k].row.hysteresis + points[k - 1].row.hysteresis) / 2;
    work += width * Math.abs(points[k].travel - points[k - 1].travel);
  }
  return work;
}
