import type { BoltClass } from './boltClasses';

/** Partial factor of bolts, EN 1993-1-8 (recommended value of gamma_M2). */
const GAMMA_M2 = 1.25;

/** What lies in a shear plane. */
export type PlaneSection = 'shank' | 'thread';

export interface BoltSections {
  readonly shankDiameter: number;
  /** Stress area, m^2, and diameter at the root of the thread, m. */
  readonly stressArea: number;
  readonly rootDiameter: number;
}

/**
 * Shear resistance of one plane, N: a_v f_ub A / 1.25 (EN 1993-1-8 Table 3.4). a_v is 0.6 on the plain shank; through the
 * thread as the class says, on the stress area. `outside`: the class is none that the table names.
 */
export function shearResistance(
  sections: BoltSections,
  plane: PlaneSection,
  strength: BoltClass,
): { readonly force: number; readonly outside: boolean } {
  const shank = plane === 'shank';
  const area = shank ? (Math.PI / 4) * sections.shankDiameter ** 2 : sections.stressArea;
  const factor = shank && strength.inShearTable ? 0.6 : strength.threadShear;
  return {
    force: (factor * strength.nominalTensile * area) / GAMMA_M2,
    outside: !strength.inShearTable,
  };
}

/** Where the blade sits between the cheeks, m: cheek thickness a, root thickness b, gap on each side c. */
export interface PinSeat {
  readonly cheek: number;
  readonly root: number;
  readonly gap: number;
}

/**
 * Bending moment in the bolt as a pin under a pull F, N m: F (b + 4 c + 2 a) / 8 (EN 1993-1-8, 3.13, from memory): load
 * and supports spread evenly over root and cheeks.
 */
export function pinMoment(pull: number, { cheek, root, gap }: PinSeat): number {
  return (pull * (root + 4 * gap + 2 * cheek)) / 8;
}

/** Bending resistance of a pin of diameter d, N m: 1.5 W_el f_yp, W_el = pi d^3 / 32 (EN 1993-1-8 Table 3.10, from memory). */
export function pinResistance(diameter: number, strength: BoltClass): number {
  return 1.5 * sectionModulus(diameter) * strength.nominalYield;
}

export function sectionModulus(diameter: number): number {
  return (Math.PI * diameter ** 3) / 32;
}

/** Mean pressure of a bolt on two cheeks, Pa: F / (2 d t). */
export function cheekPressure(pull: number, diameter: number, cheek: number): number {
  return pull / (2 * diameter * cheek);
}

/** Mean pressure of what is `thick` between the cheeks on a pin of diameter d, Pa: F / (d t). */
export function rootPressure(pull: number, diameter: number, thick: number): number {
  return pull / (diameter * thick);
}

/** Bending stress, Pa, where a mass hangs over a face: its pull times its distance from the face, over the section. */
export function overhangStress(moment: number, diameter: number): number {
  return moment / sectionModulus(diameter);
}
