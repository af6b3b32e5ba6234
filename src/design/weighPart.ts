import { type BifilarResult, bifilarMoment } from '../engine/mass/bifilar';
import { applyMeasured, type MeasuredBody, type MeasuredFault } from '../engine/mass/measured';
import { M, type Moments, transformMoments } from '../engine/mass/moments';
import { sumSolids } from '../engine/mass/weigh';
import { inverse, type Pose } from '../engine/math/pose';
import { fail, type Result, succeed } from '../engine/result';
import {
  gramSquareMmFromSi,
  gramsFromKilograms,
  kilogramsFromGrams,
  metresFromMm,
  radiansFromDegrees,
} from '../engine/units';
import { isKeepOut } from '../parts/contract';
import { partType } from '../parts/registry';
import type { Part } from './design';
import { type DesignFault, fault } from './fault';
import { MEASURED_LIMITS, type Measured, SWING_AXES, SWING_LIMITS, type Swing } from './measured';
import type { PartValues } from './values';

/**
 * Moments of a part in its own frame (kg, m): those of its solids, corrected by what was measured of it. The fault (its
 * path within the part) where the measurements cannot be true of it. `out` is only whole on success.
 */
export function weighPart(
  part: Part,
  values: PartValues,
  out: Moments,
): Result<Moments, DesignFault> {
  const type = partType(part.kind);
  // A keep-out is drawn, not made.
  if (isKeepOut(type)) out.fill(0);
  else sumSolids(type.solids(values), out);
  if (!part.measured) return succeed(out);
  if (!(out[M] > 0))
    return fail(impossible(part.measured, { kind: 'modelWithoutMass', mass: out[M] }));
  const bodyPose = bodyPoseOf(part, values);
  if (bodyPose) transformMoments(out, inverse(bodyPose), out);
  const applied = applyMeasured(out, measuredMoments(part.measured, out[M]), out);
  if (!applied.ok) return fail(impossible(part.measured, applied.error));
  if (bodyPose) transformMoments(out, bodyPose, out);
  return succeed(out);
}

/** Which of the measurements is at odds, and how. */
function impossible(measured: Measured, found: MeasuredFault): DesignFault {
  const grams = (kilograms: number) => `${gramsFromKilograms(kilograms).toPrecision(4)} g`;
  const gramMm2 = (value: number) => `${gramSquareMmFromSi(value).toPrecision(4)} g mm2`;
  const path = (measured.swings ?? []).length > 0 ? 'measured.swings' : 'measured';
  switch (found.kind) {
    case 'modelWithoutMass':
      return told('measured', `the dimensions give a mass of ${grams(found.mass)} to scale`);
    case 'impossibleValue':
      return told(path, `${found.what} comes out at ${found.value.toPrecision(4)} in SI units`);
    case 'timedTwice':
      return told(path, `${SWING_AXES[found.axis]} is timed twice with different results`);
    case 'impossibleModel':
      return told(path, `the dimensions spread their mass as no body can`);
    default:
      return told(
        path,
        `the timings leave a spread of ${gramMm2(found.spread)} along the ${SWING_AXES[found.axis]}; ` +
          `the moments about span, chord and thickness would be ${found.inertias.map(gramMm2).join(', ')}`,
      );
  }
}

function told(path: string, detail: string): DesignFault {
  return fault(path, { code: 'measuredImpossible', detail });
}

/** The frame that measurements of a part are made in, in the part frame; null where it is the part frame itself. */
export function bodyPoseOf(part: Part, values: PartValues): Pose | null {
  return partType(part.kind).bodyPose?.(values) ?? null;
}

/** What was measured, in SI; timings are worked out with the weighed mass, or the modelled one where it was not weighed. */
function measuredMoments(measured: Measured, modelledMass: number): MeasuredBody {
  const { massGrams, swings = [] } = measured;
  const mass = massGrams === undefined ? modelledMass : kilogramsFromGrams(massGrams);
  return {
    ...(massGrams === undefined ? {} : { mass }),
    centre: [
      metresOrNull(measured.centreXMm),
      metresOrNull(measured.centreYMm),
      metresOrNull(measured.centreZMm),
    ],
    inertia: swings.map((swing) => ({
      axis: SWING_AXES.indexOf(swing.about) as 0 | 1 | 2,
      ...swingMoment(swing, mass, massUncertainty(measured)),
    })),
  };
}

function metresOrNull(mm: number | undefined): number | null {
  return mm === undefined ? null : metresFromMm(mm);
}

/** A reading in steps of `step` lies anywhere within half a step: a uniform spread, of standard deviation step / sqrt(12). */
export function readingUncertainty(step: number): number {
  return step / Math.sqrt(12);
}

/** Standard uncertainty of the weighed mass, kg. */
export function massUncertainty(measured: Measured): number {
  const step = measured.massStepGrams ?? MEASURED_LIMITS.massStepGrams.standard;
  return measured.massGrams === undefined ? 0 : readingUncertainty(kilogramsFromGrams(step));
}

/** kg m^2 from one g mm^2. */
const GRAM_MM2 = 1e-9;

/** The moment of inertia about the swing's axis through the centre of mass, with its standard uncertainty, kg m^2. */
export function swingMoment(swing: Swing, mass: number, uncertainty: number): BifilarResult {
  const spacingStep = swing.spacingStepMm ?? SWING_LIMITS.spacingStepMm.standard;
  const timeStep = swing.timeStepSeconds ?? SWING_LIMITS.timeStepSeconds.standard;
  const length = readingUncertainty(metresFromMm(spacingStep));
  return bifilarMoment({
    mass,
    massUncertainty: uncertainty,
    spacing: metresFromMm(swing.spacingMm),
    spacingUncertainty: length,
    stringLength: metresFromMm(swing.stringLengthMm),
    stringLengthUncertainty: length,
    swings: swing.swings,
    seconds: swing.seconds,
    secondsUncertainty: readingUncertainty(timeStep),
    amplitude: radiansFromDegrees(swing.amplitudeDeg ?? 0),
    cradleMass: kilogramsFromGrams(swing.cradleGrams ?? 0),
    cradleMoment: (swing.cradleMomentGMm2 ?? 0) * GRAM_MM2,
  });
}
