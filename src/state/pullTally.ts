import { gripPose } from '../engine/feathering/gripPose';
import { type LumpPull, lumpPull, partLumps } from '../engine/feathering/lumps';
import type { RotorConditions } from '../engine/feathering/rotor';
import { M } from '../engine/mass/moments';
import { add, type Vec3, ZERO } from '../engine/math/vector';
import {
  angularSpeedFromRpm,
  type Radians,
  radiansFromDegrees,
  rpmFromAngularSpeed,
} from '../engine/units';
import type { PullGrain } from './pullsShow';
import type { HeadReading, PartReading } from './reading';
import { turningParts } from './turningParts';

/** One step of the build-up: a part, one of its lumps, or a share that no part's own mass makes. N m. */
export interface PullEntry {
  readonly key: string;
  readonly kind: 'part' | 'lump' | 'others' | 'rod' | 'air' | 'lag';
  /** Id of the part; null for a share that no part has. */
  readonly part: string | null;
  readonly name: string;
  /** A lump: where it lies about the part's centre. */
  readonly side: LumpSide | null;
  /** Empty where there is no single place to draw an arrow at: rod, air, a blade that swings, many small parts. */
  readonly pulls: readonly LumpPull[];
  /** Sum of the pulls' vectors, N, rotor frame. */
  readonly force: Vec3;
  readonly moment: number;
}

/** The half toward the leading edge ..., or the number of a quarter; 'whole': the part is one lump. */
export type LumpSide = 'whole' | 'leading' | 'trailing' | 'upper' | 'lower' | 1 | 2 | 3 | 4;

/** All steps at one pitch and speed. */
export interface PullTally {
  readonly entries: readonly PullEntry[];
  /** The total moment as the rest of the page has it, N m: what the entries must come to. NaN: it has none. */
  readonly total: number;
  readonly speedRpm: number;
  /** The design stands still: shares that are scaled from its speed are left out. */
  readonly scaled: boolean;
}

/** More parts than this are not shown one by one: the smallest are one step together. */
const MOST_PARTS = 40;

/**
 * The pulls at a pitch, in the order of the rail; rod, air and a swinging blade come last. At another speed than the
 * design's everything goes with its square: exact for mass; for the air it is an estimate of an estimate (its sections'
 * numbers may depend on the speed).
 */
export function pullTally(
  reading: HeadReading,
  pitchDeg: number,
  grain: PullGrain,
  speedRpm: number | null,
): PullTally {
  const { revision } = reading;
  if (held.reading !== reading || held.revision !== revision || held.pitchDeg !== pitchDeg) {
    held = { reading, revision, pitchDeg, tallies: new Map() };
  }
  const key = `${grain} ${speedRpm}`;
  let tally = held.tallies.get(key);
  if (!tally) {
    // A slider over many speeds must not pile them up.
    if (held.tallies.size > 20) held.tallies.clear();
    tally = tallyOf(reading, pitchDeg, grain, speedRpm);
    held.tallies.set(key, tally);
  }
  return tally;
}

/** The last ones made: stage, dial, table and curve ask for the same. */
let held: {
  readonly reading: HeadReading | null;
  readonly revision: number;
  readonly pitchDeg: number;
  readonly tallies: Map<string, PullTally>;
} = { reading: null, revision: -1, pitchDeg: Number.NaN, tallies: new Map() };

function tallyOf(
  reading: HeadReading,
  pitchDeg: number,
  grain: PullGrain,
  speedRpm: number | null,
): PullTally {
  const designRpm = rpmFromAngularSpeed(reading.rotor.angularSpeed);
  const tried = speedRpm ?? designRpm;
  const rotor: RotorConditions =
    speedRpm === null
      ? reading.rotor
      : { ...reading.rotor, angularSpeed: angularSpeedFromRpm(speedRpm) };
  const square = designRpm === 0 ? 0 : (tried / designRpm) ** 2;
  const parts = turningParts(reading).filter(({ moments_G }) => moments_G[M] > 0);
  const alone = new Set(largest(parts));
  const entries = parts.filter((part) => alone.has(part)).flatMap(entriesOf);
  const others = parts.filter((part) => !alone.has(part));
  if (others.length > 0) {
    const moment = others.reduce((sum, part) => sum + momentOf(part), 0);
    entries.push(share('others', '', moment, null));
  }
  const { linkage } = reading;
  const rod = linkage?.rodPart ? reading.part(linkage.rodPart) : undefined;
  // Its bound is zero where the design does not count it.
  if (rod && rod.bound > 0 && square > 0) {
    entries.push(share('rod', rod.part.name, square * rod.momentAt(pitchDeg), rod.part.id));
  }
  for (const term of square > 0 ? reading.terms : []) {
    entries.push(share(term.id, '', square * term.momentAt(pitchDeg), null));
  }
  // A rotor that stands still has no numbers to scale: its parts alone are known at another speed.
  const total =
    designRpm === 0 && speedRpm !== null
      ? entries.reduce((sum, entry) => sum + entry.moment, 0)
      : square * reading.momentAt(pitchDeg);
  return { entries, total, speedRpm: tried, scaled: designRpm > 0 };

  /** The page's own number, not the sum of the lumps: the two agree, which a test holds. */
  function momentOf(part: PartReading): number {
    if (designRpm > 0) return square * part.momentAt(pitchDeg);
    return sumOf(pullsOf(part, rotor, radiansFromDegrees(pitchDeg)));
  }

  function entriesOf(part: PartReading): PullEntry[] {
    const pulls = pullsOf(part, rotor, radiansFromDegrees(pitchDeg));
    const { id, name } = part.part;
    if (grain === 'parts') {
      const force = resultant(pulls);
      const moment = momentOf(part);
      return [{ key: id, kind: 'part', part: id, name, side: null, pulls, force, moment }];
    }
    return pulls.map((pull, i) => ({
      key: `${id}/${i}`,
      kind: 'lump',
      part: id,
      name,
      side: sideOf(pulls, i),
      pulls: [pull],
      force: pull.force,
      moment: pull.moment,
    }));
  }
}

/** The lumps of a part and what pulls at them. */
export function pullsOf(
  part: Pick<PartReading, 'moments_G'>,
  rotor: RotorConditions,
  pitch: Radians,
): readonly LumpPull[] {
  const X_RG = gripPose(rotor, pitch);
  return partLumps(part.moments_G, rotor).map((lump) => lumpPull(lump, rotor, X_RG));
}

/** Moments of the entries one after the other, added up: what the chain shows. One more than there are entries. */
export function runningSums(entries: readonly PullEntry[]): readonly number[] {
  const sums = [0];
  for (const { moment } of entries) sums.push(sums[sums.length - 1] + moment);
  return sums;
}

function largest(parts: readonly PartReading[]): readonly PartReading[] {
  if (parts.length <= MOST_PARTS) return parts;
  return parts.toSorted((a, b) => b.bound - a.bound).slice(0, MOST_PARTS - 1);
}

function share(
  kind: 'others' | 'rod' | 'air' | 'lag',
  name: string,
  moment: number,
  part: string | null,
): PullEntry {
  return { key: kind, kind, part, name, side: null, pulls: [], force: ZERO, moment };
}

function resultant(pulls: readonly LumpPull[]): Vec3 {
  return pulls.reduce((sum, pull) => add(sum, pull.force), ZERO);
}

function sumOf(pulls: readonly LumpPull[]): number {
  return pulls.reduce((sum, pull) => sum + pull.moment, 0);
}

function sideOf(pulls: readonly LumpPull[], i: number): LumpSide {
  if (pulls.length === 1) return 'whole';
  if (pulls.length > 2) return (i + 1) as LumpSide;
  const [, y, z] = pulls[i].lump.p_G;
  const [, otherY, otherZ] = pulls[1 - i].lump.p_G;
  if (Math.abs(y - otherY) >= Math.abs(z - otherZ)) return y > otherY ? 'leading' : 'trailing';
  return z > otherZ ? 'upper' : 'lower';
}
