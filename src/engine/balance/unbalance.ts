/** A grip in the rotor plane: mass kg, place of its centre out along its axis and ahead of it (m), angle of the axis (rad). */
export interface BalanceMass {
  readonly mass: number;
  readonly station: number;
  readonly ahead: number;
  readonly angle: number;
}

/** Unbalance U = sum m r in the rotor plane, kg m. */
export interface Unbalance {
  readonly x: number;
  readonly y: number;
}

export function unbalanceOf(masses: readonly BalanceMass[]): Unbalance {
  let x = 0;
  let y = 0;
  for (const { mass, station, ahead, angle } of masses) {
    const [s, c] = [Math.sin(angle), Math.cos(angle)];
    x += mass * (station * c - ahead * s);
    y += mass * (station * s + ahead * c);
  }
  return { x, y };
}

/** Balance quality grade of a rotor, m/s: U W / m (ISO 21940-11; its G numbers are in mm/s). */
export function balanceGrade(unbalance: number, rotorMass: number, angularSpeed: number): number {
  return (unbalance * angularSpeed) / rotorMass;
}

/** Unbalance that a grade (m/s) permits, kg m. */
export function permissibleUnbalance(
  grade: number,
  rotorMass: number,
  angularSpeed: number,
): number {
  return (grade * rotorMass) / angularSpeed;
}

/** The grades of ISO 21940-11, mm/s. */
export const STANDARD_GRADES = [0.4, 1, 2.5, 6.3, 16, 40, 100, 250, 630, 1600, 4000] as const;

/** The finest standard grade (mm/s) that a grade (m/s) keeps; null beyond them all. */
export function standardGrade(grade: number): number | null {
  return STANDARD_GRADES.find((one) => one >= grade * 1000 * (1 - 1e-12)) ?? null;
}

/** Moments m r to add along the grips' axes, kg m, never negative; and what of the unbalance they leave. */
export interface AddedMoments {
  readonly added: readonly number[];
  readonly left: number;
}

/**
 * What to add along the axes of evenly spaced grips (angles given, rad) to cancel an unbalance. Three or more: the two axes
 * that enclose the opposite direction share it, which leaves nothing. Two, or one: only what lies along the axis can be
 * cancelled.
 */
export function correctionMoments({ x, y }: Unbalance, angles: readonly number[]): AddedMoments {
  const size = Math.hypot(x, y);
  const added = angles.map(() => 0);
  if (size === 0) return { added, left: 0 };
  if (angles.length < 3) {
    let [restX, restY] = [x, y];
    angles.forEach((angle, i) => {
      const along = restX * Math.cos(angle) + restY * Math.sin(angle);
      // Rounding of an axis square to it is no correction.
      if (along >= -1e-12 * size) return;
      added[i] = -along;
      restX -= along * Math.cos(angle);
      restY -= along * Math.sin(angle);
    });
    return { added, left: Math.hypot(restX, restY) };
  }
  const wanted = Math.atan2(-y, -x);
  for (let i = 0; i < angles.length; i++) {
    const next = (i + 1) % angles.length;
    const width = (2 * Math.PI) / angles.length;
    const past = positiveAngle(wanted - angles[i]);
    if (past > width + 1e-12) continue;
    added[i] = (size * Math.sin(width - past)) / Math.sin(width);
    added[next] = (size * Math.sin(past)) / Math.sin(width);
    // An unbalance right opposite an axis leaves rounding on its neighbour.
    for (const k of [i, next]) if (added[k] < 1e-12 * size) added[k] = 0;
    return { added, left: 0 };
  }
  return { added, left: size };
}

function positiveAngle(angle: number): number {
  const turn = 2 * Math.PI;
  return ((angle % turn) + turn) % turn;
}
