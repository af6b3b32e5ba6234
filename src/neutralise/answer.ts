import type { Design, Part } from '../design/design';
import { HeadForces } from '../design/forces/headForces';
import { limitInUse } from '../design/forces/headLoads';
import type { LimitInUse } from '../design/forces/loadTypes';
import { speedRange } from '../design/forces/speedSweep';
import { HeadModel } from '../design/headModel';
import { headVerdict } from '../design/headVerdict';
import { ROTOR_SECTION } from '../design/sections/rotor';
import { anglesOf, type Verdict } from '../design/verdict';
import { createMoments, JYY, JYZ, JZZ, M } from '../engine/mass/moments';
import { degreesFromRadians, radiansFromDegrees } from '../engine/units';

/** What a head does: the columns of the table of answers. SI; angles in degrees. */
export interface HeadReport {
  /** -used, half of it, flat, half, used. */
  readonly pitchesDeg: readonly number[];
  /** Push-rod force at each (N, tension positive; null over centre), or without an arm the moments (N m). */
  readonly holds: readonly (number | null)[];
  readonly kind: 'force' | 'moment';
  /** Mass of the grip with all that turns with it, kg. */
  readonly mass: number;
  /** J_yy - J_zz and J_yz, kg m^2. */
  readonly even: number;
  readonly odd: number;
  readonly restsDeg: readonly number[];
  /** The pitches about flat (or the rest angle nearest to it) where friction holds the grip; null where it does not. */
  readonly bandDeg: readonly [number, number] | null;
  readonly verdict: Verdict;
  /** At the overspeed, anywhere within the pitch in use. */
  readonly limit: LimitInUse | null;
}

const RANGE_DEG = 90;

/** The report of a head from its forces. */
export function headReport(forces: HeadForces): HeadReport {
  const { model, linkage } = forces;
  const { rotor } = model.sections;
  const used = rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  const [from, to] = [radiansFromDegrees(-RANGE_DEG), radiansFromDegrees(RANGE_DEG)];
  const totals = model.totals(createMoments());
  const equilibria = forces.equilibria(from, to);
  const pitchesDeg = [-1, -0.5, 0, 0.5, 1].map((share) => share * used + 0);
  const restsDeg = anglesOf(equilibria, 'stable');
  const bands = forces
    .bands(from, to, equilibria)
    .map(([low, high]) => [degreesFromRadians(low), degreesFromRadians(high)] as const);
  return {
    pitchesDeg,
    holds: pitchesDeg.map((deg) => holdAt(forces, deg)),
    kind: linkage ? 'force' : 'moment',
    mass: totals[M],
    even: totals[JYY] - totals[JZZ],
    odd: totals[JYZ],
    restsDeg,
    bandDeg: bandNear(bands, 0),
    verdict: headVerdict(forces, { totals, equilibria, from, to }),
    limit: limitInUse(forces, speedRange(rotor).overspeedRpm),
  };
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

/** The report of a design with other parts; null where a rule refuses them. */
export function reportOf(design: Design, parts: readonly Part[]): HeadReport | null {
  const model = new HeadModel();
  return model.load({ ...design, parts }).ok ? headReport(new HeadForces(model)) : null;
}
