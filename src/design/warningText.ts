import type { ValidityFinding } from '../engine/mass/validity';
import { unreachable } from '../engine/result';
import type { DesignWarning } from './warnings';

/** A warning as one English sentence. */
export function warningMessage(warning: DesignWarning): string {
  switch (warning.code) {
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
    case 'hiddenParts':
      return `Hidden parts are left out of every number: ${list(warning.names)}.`;
    case 'implausible':
      return `${warning.part === null ? 'The head' : `"${warning.part}"`} ${findingText(warning.finding)}.`;
    default:
      return unreachable(warning);
  }
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
