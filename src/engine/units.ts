/**
 * The only place where units are converted. Inside the program everything is SI (metre, kilogram, second,
 * radian, newton); a suffix in a name (`lengthMm`, `massGrams`, `speedRpm`) marks a value at an edge.
 *
 * Factors: the inch (25.4 mm), the avoirdupois pound (0.45359237 kg; ounce = 1/16) and standard gravity
 * (9.80665 m/s^2) are exact by definition (international yard and pound agreement of 1959; 3rd CGPM 1901).
 */
declare const unit: unique symbol;

/** An angle in radians. Made by `radians` or `radiansFromDegrees`, so that degrees cannot slip in. */
export type Radians = number & { readonly [unit]: 'rad' };

export const INCH_MM = 25.4;
export const OUNCE_GRAMS = 28.349523125;
const STANDARD_GRAVITY = 9.80665;
/** Newtons in one ounce-force. */
export const OUNCE_FORCE_N = (OUNCE_GRAMS / 1000) * STANDARD_GRAVITY;

export function radians(value: number): Radians {
  return value as Radians;
}
export function radiansFromDegrees(degrees: number): Radians {
  return ((degrees * Math.PI) / 180) as Radians;
}
export function degreesFromRadians(angle: Radians): number {
  return (angle * 180) / Math.PI;
}
export function metresFromMm(lengthMm: number): number {
  return lengthMm / 1000;
}
export function mmFromMetres(length: number): number {
  return length * 1000;
}
export function kilogramsFromGrams(massGrams: number): number {
  return massGrams / 1000;
}
export function gramsFromKilograms(mass: number): number {
  return mass * 1000;
}
/** Angular speed in rad/s from revolutions per minute. */
export function angularSpeedFromRpm(speedRpm: number): number {
  return (speedRpm * Math.PI) / 30;
}
export function ounceForceFromNewtons(force: number): number {
  return force / OUNCE_FORCE_N;
}
/** Second moments of mass on screen: 1 kg m^2 = 1e9 g mm^2. */
export function gramSquareMmFromSi(secondMoment: number): number {
  return secondMoment * 1e9;
}
