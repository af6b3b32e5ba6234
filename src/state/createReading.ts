import { fillCurve, headEquilibria, partHarmonics } from '../design/curve';
import { DEFAULT_USED_PITCH_DEG, type Design } from '../design/design';
import { HeadModel } from '../design/headModel';
import type { Equilibria } from '../engine/feathering/equilibria';
import {
  createHarmonics,
  featheringEnergy,
  featheringMoment,
  type Harmonics,
} from '../engine/feathering/harmonics';
import { overCentreAngles, type ParallelRod, pushRodForce } from '../engine/linkage/parallelRod';
import { createMoments } from '../engine/mass/moments';
import { degreesFromRadians, radians, radiansFromDegrees } from '../engine/units';
import type { CurveSamples, HeadReading, PartReading } from './reading';

/** Range of the page's curve and of its rest and flee angles. */
export const PITCH_RANGE_DEG = 90;
const SAMPLES_PER_DEGREE = 4;
const SAMPLE_COUNT = 2 * PITCH_RANGE_DEG * SAMPLES_PER_DEGREE + 1;

/** A reading that `refresh` fills in place from the model. */
export interface WritableReading extends HeadReading {
  refresh(design: Design): void;
}

export function createReading(model: HeadModel): WritableReading {
  const totals = createMoments();
  const curve = emptyCurve();
  const pitches = curve.pitchDeg.map(radiansFromDegrees);
  const shares = new Map<string, Harmonics>();
  let order: readonly string[] = [];
  let orderSource: unknown = null;
  let equilibria: Equilibria = { kind: 'neutral' };
  let rod: ParallelRod | null = null;
  let overCentreDeg: readonly number[] = [];
  let usedPitchDeg = DEFAULT_USED_PITCH_DEG;
  let revision = 0;

  function shareOf(id: string): Harmonics {
    let share = shares.get(id);
    if (!share) {
      share = createHarmonics();
      shares.set(id, share);
    }
    return share;
  }

  function forceAt(pitchDeg: number): number | null {
    if (rod === null) return null;
    const pitch = radiansFromDegrees(pitchDeg);
    const moment = featheringMoment(model.harmonics, pitch);
    return pushRodForce(moment, rod, pitch, model.rotor.precone);
  }

  const reading: WritableReading = {
    get revision() {
      return revision;
    },
    get order() {
      return order;
    },
    part(id): PartReading | undefined {
      const placed = model.placed(id);
      if (!placed) return undefined;
      const harmonics = partHarmonics(placed, model.rotor, shareOf(id));
      return {
        part: placed.part,
        values: placed.values,
        pose_G: placed.pose,
        moments_G: placed.moments_G,
        harmonics,
        carriedBy: placed.carriedByRod ? 'rod' : 'grip',
      };
    },
    get rotor() {
      return model.rotor;
    },
    get usedPitchDeg() {
      return usedPitchDeg;
    },
    totals,
    get harmonics() {
      return model.harmonics;
    },
    get equilibria() {
      return equilibria;
    },
    get rod() {
      return rod;
    },
    get overCentreDeg() {
      return overCentreDeg;
    },
    curve,
    momentAt: (pitchDeg) => featheringMoment(model.harmonics, radiansFromDegrees(pitchDeg)),
    forceAt,
    energyAt: (pitchDeg) => featheringEnergy(model.harmonics, radiansFromDegrees(pitchDeg)),
    refresh(design) {
      revision++;
      usedPitchDeg = design.rotor.usedPitchDeg ?? DEFAULT_USED_PITCH_DEG;
      if (orderSource !== model.parts) {
        orderSource = model.parts;
        order = model.parts.map(({ part }) => part.id);
      }
      model.totals(totals);
      rod = model.rod;
      const from = radiansFromDegrees(-PITCH_RANGE_DEG);
      const to = radiansFromDegrees(PITCH_RANGE_DEG);
      equilibria = headEquilibria(model, from, to);
      overCentreDeg = rod ? overCentreAngles(rod, from, to).map(degreesFromRadians) : [];
      fillCurve(model, pitches, curve.moment, curve.force);
      for (let i = 0; i < SAMPLE_COUNT; i++) {
        curve.energy[i] = featheringEnergy(model.harmonics, radians(pitches[i]));
      }
    },
  };
  return reading;
}

function emptyCurve(): CurveSamples {
  const pitchDeg = new Float64Array(SAMPLE_COUNT);
  for (let i = 0; i < SAMPLE_COUNT; i++) pitchDeg[i] = i / SAMPLES_PER_DEGREE - PITCH_RANGE_DEG;
  return {
    pitchDeg,
    moment: new Float64Array(SAMPLE_COUNT),
    force: new Float64Array(SAMPLE_COUNT),
    energy: new Float64Array(SAMPLE_COUNT),
  };
}
