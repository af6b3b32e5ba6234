import type { Vec3 } from '../math/vector';
import { fail, type Result, succeed } from '../result';
import { completeElliptic, createJacobi, incompleteElliptic, jacobi } from './elliptic';

/** Why a body cannot be tumbled. */
export type FreeBodyFault =
  /** Axis 0, 1, 2: moment of inertia or spin is not positive (spin: not finite). */
  | {
      readonly kind: 'outOfRange';
      readonly field: 'inertia' | 'spin';
      readonly axis: number;
      readonly value: number;
    }
  /** No body has one principal moment above the sum of the others (triangle inequality). */
  | { readonly kind: 'noSuchBody'; readonly axis: number; readonly excess: number };

export type FreeMotion =
  /** Spin about a principal axis, or a body that is round: the spin stays as it is. */
  | 'steady'
  /** The spin circles the axis of the smallest (largest) moment; about the middle axis it swings from one sign to the other. */
  | 'aroundSmallest'
  | 'aroundLargest'
  /** Exactly between the two: it comes to the middle axis once and for all. */
  | 'separatrix';

/** A rigid body on which nothing turns: the exact solution of Euler's equations for its spin in its own principal axes. */
export interface FreeBody {
  readonly motion: FreeMotion;
  /** Principal axis (0, 1, 2) of the middle moment. */
  readonly middle: number;
  /** Time after which the spin in the body's axes is again what it was, s; null where it never is, or always. */
  readonly period: number | null;
  /** Time between two changes of sign of the spin about the middle axis, s: half the period. Null where there are none. */
  readonly flipTime: number | null;
  /** The parameter m of the elliptic functions. */
  readonly parameter: number;
  /** Twice the kinetic energy, J, and the square of the angular momentum: both kept. */
  readonly twiceEnergy: number;
  readonly momentumSquared: number;
  /** Spin at a time, rad/s, body axes. */
  spinAt(time: number, out: Float64Array): Float64Array;
}

/**
 * Euler's equations I1 w1' = (I2 - I3) w2 w3 (and cyclic) solved by Jacobi's functions (L. D. Landau, E. M. Lifshitz,
 * Mechanics, par. 37). With I1 < I2 < I3 and
 *
 *   a = 2 E I3 - L^2 = I1 (I3 - I1) w1^2 + I2 (I3 - I2) w2^2,   b = L^2 - 2 E I1 = I2 (I2 - I1) w2^2 + I3 (I3 - I1) w3^2,
 *
 * written as sums so that nothing is lost, the spin circles axis 3 where q = (I3 - I2) I3 w3^2 - (I2 - I1) I1 w1^2 > 0:
 *
 *   w1 = sqrt(a / (I1 (I3 - I1))) cn u,   w2 = sqrt(a / (I2 (I3 - I2))) sn u,   w3 = +-sqrt(b / (I3 (I3 - I1))) dn u,
 *   u = u0 + s sqrt((I3 - I2) b / (I1 I2 I3)),   m = (I2 - I1) a / ((I3 - I2) b),   1 - m = (I3 - I1) q / ((I3 - I2) b),
 *
 * and axis 1 where q < 0, by the same with 1 and 3 exchanged. Period 4 K(m) / rate. Near the middle axis 1 - m is small
 * and K grows as ln(4 / sqrt(1 - m)): a cleaner start flips later, not less. `inertia` are the principal moments, in any
 * order; two or three of them may be equal. Exact to rounding: about 1e-15 times the number of periods passed.
 */
export function createFreeBody(inertia: Vec3, spin: Vec3): Result<FreeBody, FreeBodyFault> {
  for (let axis = 0; axis < 3; axis++) {
    if (!(inertia[axis] > 0 && inertia[axis] < Infinity)) {
      return fail({ kind: 'outOfRange', field: 'inertia', axis, value: inertia[axis] });
    }
    if (!Number.isFinite(spin[axis])) {
      return fail({ kind: 'outOfRange', field: 'spin', axis, value: spin[axis] });
    }
  }
  const sum = inertia[0] + inertia[1] + inertia[2];
  for (let axis = 0; axis < 3; axis++) {
    const excess = 2 * inertia[axis] - sum;
    // A plate meets it exactly, to rounding.
    if (excess > 1e-12 * sum) return fail({ kind: 'noSuchBody', axis, excess });
  }
  return succeed(solve(inertia, spin));
}

function solve(inertia: Vec3, spin: Vec3): FreeBody {
  const ascending = [0, 1, 2].toSorted((i, j) => inertia[i] - inertia[j]);
  const [I1, I2, I3] = ascending.map((axis) => inertia[axis]);
  const [w1, , w3] = ascending.map((axis) => spin[axis]);
  const q = (I3 - I2) * I3 * w3 * w3 - (I2 - I1) * I1 * w1 * w1;
  // The axis that the spin circles comes last; equal moments make q vanish where it must go round the odd axis.
  const aroundLargest = q > 0 || (q === 0 && I1 === I2);
  const order = aroundLargest ? ascending : ascending.toReversed();
  const facts = {
    middle: ascending[1],
    twiceEnergy: inertia.reduce((total, I, i) => total + I * spin[i] ** 2, 0),
    momentumSquared: inertia.reduce((total, I, i) => total + (I * spin[i]) ** 2, 0),
  };
  if (isSteady(inertia, spin)) {
    return {
      ...facts,
      motion: 'steady',
      period: null,
      flipTime: null,
      parameter: 0,
      spinAt: (_, out) => {
        out.set(spin);
        return out;
      },
    };
  }
  const circling = circle(inertia, spin, order, Math.abs(q));
  const quarter = completeElliptic(circling.complement) / circling.rate;
  const closes = quarter < Infinity;
  return {
    ...facts,
    motion: closes ? (aroundLargest ? 'aroundLargest' : 'aroundSmallest') : 'separatrix',
    period: closes ? 4 * quarter : null,
    flipTime: closes ? 2 * quarter : null,
    parameter: 1 - circling.complement,
    spinAt: circling.spinAt,
  };
}

/** Whether the spin lies along its angular momentum: no two unequal moments share in it. */
function isSteady(inertia: Vec3, spin: Vec3): boolean {
  const [I, w] = [inertia, spin];
  return [0, 1, 2].every((i) => {
    const j = (i + 1) % 3;
    return w[i] * w[j] === 0 || I[i] === I[j];
  });
}

/** The motion about the axis order[2]; `q` as in `createFreeBody`, not negative. */
function circle(inertia: Vec3, spin: Vec3, order: readonly number[], q: number) {
  const [I1, I2, I3] = order.map((axis) => inertia[axis]);
  // An odd order of axes is a mirrored frame, in which the spin turns its sign.
  const even = (order[1] - order[0] + 3) % 3 === 1;
  const mirror = even ? 1 : -1;
  const [w1, w2, w3] = order.map((axis) => mirror * spin[axis]);
  // Differences with the sign of the order, so that both cases read the same: positive products throughout.
  const [d21, d31, d32] = [I2 - I1, I3 - I1, I3 - I2].map(Math.abs);
  const a = I1 * d31 * w1 * w1 + I2 * d32 * w2 * w2;
  const b = I2 * d21 * w2 * w2 + I3 * d31 * w3 * w3;
  const rate = Math.sqrt((d32 * b) / (I1 * I2 * I3));
  const complement = Math.min(1, (d31 * q) / (d32 * b));
  // w3 keeps its sign; with it negative, w1 and w3 turn theirs. With I1 > I3 the circling runs the other way.
  const third = w3 < 0 ? -1 : 1;
  const sense = I3 > I1 ? 1 : -1;
  const size1 = third * sense * Math.sqrt(a / (I1 * d31));
  // Without a period cn keeps its sign: where w1 has the other one, w1 and w2 turn theirs.
  const branch = complement === 0 && w1 * size1 < 0 ? -1 : 1;
  const most1 = branch * size1;
  const most2 = branch * Math.sqrt(a / (I2 * d32));
  const most3 = third * Math.sqrt(b / (I3 * d31));
  const start = incompleteElliptic(w1 / most1, w2 / most2, complement);
  const values = createJacobi();
  return {
    rate,
    complement,
    spinAt(time: number, out: Float64Array): Float64Array {
      jacobi(start + rate * time, complement, values);
      out[order[0]] = mirror * most1 * values.cn;
      out[order[1]] = mirror * most2 * values.sn;
      out[order[2]] = mirror * most3 * values.dn;
      return out;
    },
  };
}
