import { fillCurve, momentScale } from '../design/curve';
import type { Design } from '../design/design';
import { balanceOf } from '../design/forces/balance';
import { HeadForces } from '../design/forces/headForces';
import { slipsAt } from '../design/forces/headLag';
import { bearingLoads, headLoads, limitInUse } from '../design/forces/headLoads';
import { servoHolding } from '../design/forces/servo';
import { type SpeedSweep, speedSweep } from '../design/forces/speedSweep';
import type { HeadModel } from '../design/headModel';
import { headVerdict } from '../design/headVerdict';
import { ROTOR_SECTION } from '../design/sections/rotor';
import { COS1, SIN1 } from '../engine/feathering/harmonics';
import { PitchGrid } from '../engine/feathering/pitchGrid';
import { createMoments } from '../engine/mass/moments';
import { degreesFromRadians, radiansFromDegrees } from '../engine/units';
import { createLinkageReading } from './linkageReading';
import type { CurveSamples, FrictionReading, HeadReading, LinkageReading } from './reading';
import { createShares } from './shares';

/** Range of the page's curve and of its rest and flee angles. */
export const PITCH_RANGE_DEG = 90;
const SAMPLES_PER_DEGREE = 4;
const SAMPLE_COUNT = 2 * PITCH_RANGE_DEG * SAMPLES_PER_DEGREE + 1;

const NONE: readonly number[] = [];

/** A reading that `refresh` fills in place from the model. */
export interface WritableReading extends HeadReading {
  /** Everything that is asked beside it. */
  readonly forces: HeadForces;
  refresh(design: Design): void;
}

export function createReading(model: HeadModel): WritableReading {
  const forces = new HeadForces(model);
  const totals = createMoments();
  const curve = emptyCurve();
  const grid = new PitchGrid(curve.pitchDeg.map(radiansFromDegrees));
  const shares = createShares(forces, grid);
  const from = radiansFromDegrees(-PITCH_RANGE_DEG);
  const to = radiansFromDegrees(PITCH_RANGE_DEG);
  let design: Design | null = null;
  let order: readonly string[] = [];
  let orderSource: unknown = null;
  let linkage: LinkageReading | null = null;
  let revision = 0;
  // Worked out once a revision and only when asked for: in a drag few of the pictures show them.
  const equilibria = onceARevision(() => forces.equilibria(from, to));
  const filledCurve = onceARevision(() => {
    fillCurve(forces, grid, curve);
    return curve;
  });
  const bandsDeg = onceARevision(() =>
    forces
      .bands(from, to, equilibria())
      .map(([low, high]) => [degreesFromRadians(low), degreesFromRadians(high)] as const),
  );
  /** The last sweep asked for: plot and words want the same one. */
  let sweep: { revision: number; pitchDeg: number; found: SpeedSweep } | null = null;

  function onceARevision<T extends object>(work: () => T): () => T {
    let at = -1;
    let found: T | undefined;
    return () => {
      if (found === undefined || at !== revision) {
        found = work();
        at = revision;
      }
      return found;
    };
  }

  const momentAt = (pitchDeg: number) => forces.moment(radiansFromDegrees(pitchDeg));

  const forceOf = (moment: number, pitchDeg: number) =>
    forces.forceOf(moment, radiansFromDegrees(pitchDeg));
  const sliderAt = (pitchDeg: number) => forces.sliderForce(radiansFromDegrees(pitchDeg));

  const friction: FrictionReading = {
    get counted() {
      return forces.friction !== null;
    },
    get known() {
      return forces.friction?.known === true;
    },
    get beyondTable() {
      return forces.friction?.beyondTable(usedPitchDeg()) === true;
    },
    at: (pitchDeg) => forces.frictionAt(radiansFromDegrees(pitchDeg)),
  };

  function usedPitchDeg(): number {
    return model.sections.rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  }

  return {
    forces,
    get revision() {
      return revision;
    },
    get order() {
      return order;
    },
    part: (id) => shares.part(id),
    get terms() {
      return shares.terms();
    },
    get rotor() {
      return model.rotor;
    },
    get usedPitchDeg() {
      return usedPitchDeg();
    },
    totals,
    get offAxisMoment() {
      return Math.hypot(model.harmonics[SIN1], model.harmonics[COS1]);
    },
    get equilibria() {
      return equilibria();
    },
    get linkage() {
      return linkage;
    },
    get momentScale() {
      return momentScale(totals, model.rotor);
    },
    get overCentreDeg() {
      return linkage?.overCentreDeg ?? NONE;
    },
    friction,
    get bandsDeg() {
      return bandsDeg();
    },
    get air() {
      return forces.air;
    },
    get curve() {
      return filledCurve();
    },
    momentAt,
    forceOf,
    forceAt: (pitchDeg) => forceOf(momentAt(pitchDeg), pitchDeg),
    sliderAt,
    servoAt: (pitchDeg) => servoHolding(forces, radiansFromDegrees(pitchDeg), sliderAt(pitchDeg)),
    energyAt: (pitchDeg) => forces.energy(radiansFromDegrees(pitchDeg)),
    bladeSlipsDeg: () => {
      const pitch = slipsAt(forces.lag, radiansFromDegrees(usedPitchDeg()));
      return pitch === null ? null : degreesFromRadians(pitch);
    },
    lagAt: (pitchDeg) => {
      const { lag } = forces;
      const found = lag?.at(radiansFromDegrees(pitchDeg));
      if (!lag || !found) return null;
      return {
        hold: lag.hold,
        freeDeg: degreesFromRadians(found.free),
        bandDeg: found.band && [
          degreesFromRadians(found.band[0]),
          degreesFromRadians(found.band[1]),
        ],
        moment: found.moment,
      };
    },
    loadsAt: (pitchDeg, speedRpm) => headLoads(forces, radiansFromDegrees(pitchDeg), speedRpm),
    bearingsAt: (pitchDeg) => bearingLoads(forces, radiansFromDegrees(pitchDeg)),
    limitInUse: (speedRpm) => limitInUse(forces, speedRpm),
    speeds(pitchDeg) {
      if (sweep?.revision !== revision || sweep.pitchDeg !== pitchDeg) {
        sweep = { revision, pitchDeg, found: speedSweep(forces, radiansFromDegrees(pitchDeg)) };
      }
      return sweep.found;
    },
    clearance: () => forces.clearance,
    lowestTurning: () => forces.lowestTurning,
    verdict: () => headVerdict(forces, { totals, equilibria: equilibria(), from, to }),
    balance: () => balanceOf(model, design?.otherGrips ?? []),
    refresh(next) {
      revision++;
      design = next;
      if (orderSource !== model.parts) {
        orderSource = model.parts;
        order = model.parts.map(({ part }) => part.id);
      }
      model.totals(totals);
      linkage = createLinkageReading(forces, from, to);
    },
  };
}

function emptyCurve(): CurveSamples {
  const pitchDeg = new Float64Array(SAMPLE_COUNT);
  for (let i = 0; i < SAMPLE_COUNT; i++) pitchDeg[i] = i / SAMPLES_PER_DEGREE - PITCH_RANGE_DEG;
  const column = () => new Float64Array(SAMPLE_COUNT);
  return {
    pitchDeg,
    moment: column(),
    energy: column(),
    friction: column(),
    force: column(),
    forcePerMoment: column(),
    sliderPerMoment: column(),
    servoPerMoment: column(),
  };
}
