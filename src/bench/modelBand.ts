import { MODEL_SHARE } from '../design/massCard';
import { MEASURED_LIMITS } from '../design/measured';
import {
  createHarmonics,
  featheringHarmonics,
  featheringMoment,
} from '../engine/feathering/harmonics';
import { M } from '../engine/mass/moments';
import { gramsFromKilograms, type Radians, radiansFromDegrees } from '../engine/units';
import { derivativeOf } from '../neutralise/closeness/derivatives';
import { spreadOf } from '../neutralise/closeness/draws';
import { HeadProbe } from '../neutralise/closeness/headProbe';
import { tolerancesOf, toleranceValues } from '../neutralise/closeness/tolerances';
import type { GaugeHead } from './gaugeHead';

/** What the band of an expected reading rests on: the design's own tolerances, or a share of every mass. */
export type BandFrom = 'tolerances' | 'masses';

export interface ModelBand {
  readonly from: BandFrom;
  /** Standard uncertainty of the force at the gauge at each pitch, N, at the design's speed; it goes with its square. */
  readonly sigma: Float64Array;
}

/**
 * How far a sound head's gauge may read from the model, by how the head is made. Where the design says how closely
 * (its section `tolerance`), every tolerance by first order, root of the sum of squares, as the tab How close has it; the
 * form of the distribution is the section's. Where it says nothing, every mass by itself: a part that was weighed by its
 * scale's step, another by 2 % (common practice). Friction is not in it, nor what a deviation changes in the air or in a
 * blade's swing.
 */
export function modelBand(head: GaugeHead, pitchesDeg: readonly number[]): ModelBand {
  if (head.design.tolerance === undefined)
    return {
      from: 'masses',
      sigma: Float64Array.from(pitchesDeg, (deg) => massSigma(head, radiansFromDegrees(deg))),
    };
  return { from: 'tolerances', sigma: toleranceSigma(head, pitchesDeg) };
}

function toleranceSigma(head: GaugeHead, pitchesDeg: readonly number[]): Float64Array {
  const { design, place } = head;
  const square = new Float64Array(pitchesDeg.length);
  const probe = HeadProbe.of(design, pitchesDeg, 'nominal');
  // The gauge's own head holds the same design: it was accepted.
  if (!probe.ok) throw new Error(`modelBand(): the design is refused: ${probe.error.path}`);
  const { layout } = probe.value;
  const row = probe.value.read(new Float64Array(layout.count));
  const isArm = place.kind === 'arm';
  const unit = spreadOf(toleranceValues(design.tolerance));
  // At the slider and at an arm the gauge reads a multiple of the rod's force, or of the moment.
  const per = pitchesDeg.map((deg, i) => {
    const gauge = head.forcePerMoment(radiansFromDegrees(deg));
    return isArm ? gauge : (gauge * row[layout.momentAt(i)]) / row[layout.forceAt(i)];
  });
  for (const { ref, plusMinus } of tolerancesOf(design)) {
    const found = derivativeOf(design, probe.value, ref);
    if (found?.outcome.kind !== 'found') continue;
    const { slopes } = found.outcome;
    for (let i = 0; i < square.length; i++) {
      const slope = slopes[isArm ? layout.momentAt(i) : layout.forceAt(i)];
      square[i] += (per[i] * slope * plusMinus * unit) ** 2;
    }
  }
  return square.map(Math.sqrt);
}

function massSigma(head: GaugeHead, pitch: Radians): number {
  const { model } = head.forces;
  const share = createHarmonics();
  let variance = 0;
  for (const { part, carriedBy, moments_G } of model.parts) {
    if (part.hidden || carriedBy !== 'grip') continue;
    const mass = gramsFromKilograms(moments_G[M]);
    const step = part.measured?.massStepGrams ?? MEASURED_LIMITS.massStepGrams.standard;
    const out = part.measured?.massGrams === undefined ? MODEL_SHARE : step / Math.sqrt(12) / mass;
    const moment = featheringMoment(featheringHarmonics(moments_G, model.rotor, share), pitch);
    variance += (out * moment) ** 2;
  }
  return Math.abs(head.forcePerMoment(pitch)) * Math.sqrt(variance);
}
