import type { MeasuredQuantity } from '../engine/mass/measured';
import type { ValidityFinding } from '../engine/mass/validity';
import { unreachable } from '../engine/result';
import { gramSquareMmFromSi, gramsFromKilograms, mmFromMetres } from '../engine/units';
import type { SeatSize } from '../parts/contract';
import type { LimitInUse } from './forces/loadTypes';
import type { DesignWarning } from './warnings';

/** A warning as one English sentence. */
export function warningMessage(warning: DesignWarning): string {
  switch (warning.code) {
    case 'misfit':
      return `"${warning.part}" (${sizeText(warning.own)}) does not fit "${warning.on}" (${sizeText(warning.seat)}).`;
    case 'bottomsOut':
      return `"${warning.bolt}" is ${figure(warning.byMm)} mm too long for "${warning.nut}", which is closed.`;
    case 'shortBolt':
      return warning.lacks === 'lock'
        ? `"${warning.bolt}" ends ${figure(warning.byMm)} mm before what locks "${warning.nut}": the nut can come off.`
        : `"${warning.bolt}" is ${figure(warning.byMm)} mm too short for "${warning.nut}": too little thread holds it.`;
    case 'bladeSlips':
      return `The clamp force does not hold "${warning.part}" as it is drawn at ${degrees(warning.pitchDeg)} deg: it swings on its bolt, which is not counted.`;
    case 'beyondLimit':
      return `"${warning.part}" carries more than it may (${LIMITS[warning.what]}) from ${warning.limitRpm.toFixed(0)} rpm, at ${degrees(warning.pitchDeg)} deg: ${(100 * warning.use).toFixed(0)} % of its limit at ${warning.judgedRpm.toFixed(0)} rpm.`;
    case 'overlap':
      return `"${warning.part}" enters the keep-out "${warning.keepOut}" by ${figure(mmFromMetres(-warning.gap))} mm at ${degrees(warning.pitchDeg)} deg.`;
    case 'tooClose':
      return `"${warning.part}" comes to ${figure(mmFromMetres(warning.gap))} mm from the keep-out "${warning.keepOut}" at ${degrees(warning.pitchDeg)} deg; ${figure(mmFromMetres(warning.wanted))} mm are wanted.`;
    case 'noMass':
      return 'No visible part has any mass, so there is no moment.';
    case 'notTurning':
      return 'The rotor does not turn, so there is no moment at any pitch.';
    case 'neutral':
      return 'The head is neutral: the moment vanishes at every pitch, so no pitch is listed as an equilibrium.';
    case 'severalArms':
      return `More than one part has a ball for the push rod: "${warning.used}" is used, ${list(warning.others)} not.`;
    case 'ballOnAxis':
      return `The ball of "${warning.arm}" lies on the feathering axis: no push rod can hold the grip.`;
    case 'overCentre':
      return `The arm goes over centre at ${warning.pitchesDeg.map(degrees).join(', ')} deg: there is no push-rod force there, and it grows without limit nearby.`;
    case 'noReach':
      return 'The push rod does not reach the slider at flat pitch.';
    case 'stop':
      return `The slider meets its stop at ${warning.pitchesDeg.map(degrees).join(', ')} deg.`;
    case 'unreachable':
      return `The push rod reaches no further than ${warning.pitchesDeg.map(degrees).join(', ')} deg: it jams there.`;
    case 'airEstimate':
      return 'The share of the air is an estimate by blade elements and momentum; the inertial share is exact.';
    case 'airNoBlade':
      return 'Air is counted, but no visible part is a blade.';
    case 'airNoTable':
      return 'Air is counted from a table of the section, but there is none that can be used.';
    case 'airUnsolved':
      return `At ${warning.count} of the pitches a station of the blade has no solution for the air: there is a gap.`;
    case 'frictionUnknown':
      return 'Friction is counted, but there is neither a table of drag at rest nor a bearing: it is taken as zero.';
    case 'hiddenParts':
      return `Hidden parts are left out of every number: ${list(warning.names)}.`;
    case 'measuredDisagrees':
      return disagreementText(warning);
    case 'implausible':
      return `${warning.part === null ? 'The head' : `"${warning.part}"`} ${findingText(warning.finding)}.`;
    default:
      return unreachable(warning);
  }
}

const LIMITS: Readonly<Record<LimitInUse['what'], string>> = {
  bearing: 'static rating',
  shear: 'shear',
  bending: 'bending between the cheeks',
  shearAndBending: 'shear and bending together',
  cheekPressure: 'pressure in the cheeks',
  rootPressure: "pressure in the blade's root",
  headPull: 'bending by what overhangs',
  thread: 'clamp force in the thread',
};

const MEASURED: Readonly<Record<MeasuredQuantity, string>> = {
  mass: 'weighed',
  centreX: 'centre along the span (x) measured at',
  centreY: 'centre along the chord (y) measured at',
  centreZ: 'centre through the thickness (z) measured at',
  inertiaX: 'moment of inertia about the span (x) timed at',
  inertiaY: 'moment of inertia about the chord (y) timed at',
  inertiaZ: 'moment of inertia about the thickness (z) timed at',
};

/** A centre may lie at zero: its difference is a length; the others are shares of the modelled value. */
function disagreementText(warning: DesignWarning & { readonly code: 'measuredDisagrees' }): string {
  const { part, what, modelled, measured, expected } = warning;
  const inUnit = (value: number) =>
    what === 'mass'
      ? `${figure(gramsFromKilograms(value))} g`
      : what.startsWith('centre')
        ? `${figure(mmFromMetres(value))} mm`
        : `${figure(gramSquareMmFromSi(value))} g mm2`;
  const share = (value: number) => `${((100 * value) / modelled).toFixed(1)} %`;
  const size = what.startsWith('centre') ? inUnit : share;
  const difference = measured - modelled;
  return (
    `"${part}": ${MEASURED[what]} ${inUnit(measured)}, modelled ${inUnit(modelled)}: ` +
    `${size(Math.abs(difference))} ${difference > 0 ? 'more' : 'less'}, beyond the ${size(expected)} expected.`
  );
}

/** Three digits, without an exponent for large numbers. */
function figure(value: number): string {
  return Math.abs(value) >= 100 ? value.toFixed(0) : value.toPrecision(3);
}

function findingText(finding: ValidityFinding): string {
  switch (finding.kind) {
    case 'notFinite':
      return `has a number that is not finite (number ${finding.place + 1} of its ten mass moments: ${finding.value})`;
    case 'massNotPositive':
      return `has a mass that is not positive: ${short(finding.mass)} kg`;
    case 'impossibleSpread':
      return `has a spread of mass that no body can have: principal inertias ${finding.principalInertia.map(short).join(', ')} kg m2 break the triangle inequality`;
    case 'implausibleMass':
      return `weighs ${short(finding.mass)} kg, outside ${finding.low} to ${finding.high} kg: is a unit wrong?`;
    case 'implausibleReach':
      return `has its mass ${short(finding.reach)} m from the shaft, beyond ${finding.high} m: is a unit wrong?`;
    default:
      return unreachable(finding);
  }
}

function degrees(value: number): string {
  return String(Number(value.toFixed(2)));
}

function short(value: number): string {
  return String(Number(value.toPrecision(4)));
}

function list(names: readonly string[]): string {
  const shown = names.slice(0, 8).map((name) => `"${name}"`);
  const rest = names.length - shown.length;
  return shown.join(', ') + (rest > 0 ? ` and ${rest} more` : '');
}

function sizeText(size: SeatSize): string {
  const pitch = size.kind === 'thread' ? ` x ${size.pitchMm}` : '';
  return `${size.kind} ${size.diameterMm}${pitch} mm`;
}
