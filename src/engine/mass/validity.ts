import { eigenSymmetric } from '../math/eigenSymmetric';
import { centralSecondMoment } from './inertia';
import { JXX, JYY, JZZ, M, type Moments } from './moments';

/** What no real body, or no likely one, can have; with the numbers that say so, SI. */
export type ValidityFinding =
  /** One of the ten numbers is NaN or infinite. */
  | { readonly kind: 'notFinite'; readonly place: number; readonly value: number }
  | { readonly kind: 'massNotPositive'; readonly mass: number }
  /**
   * J about the centre of mass has a negative eigenvalue: more was taken away somewhere than was there. The same
   * breach seen in the principal moments of inertia is that one exceeds the sum of the other two.
   */
  | {
      readonly kind: 'impossibleSpread';
      readonly smallestEigenvalue: number;
      readonly principalInertia: readonly [number, number, number];
    }
  /** Outside what a blade grip weighs: likely a slip of the unit. */
  | {
      readonly kind: 'implausibleMass';
      readonly mass: number;
      readonly low: number;
      readonly high: number;
    }
  /** The root-mean-square distance of the mass from the origin is beyond any rotor of the kind. */
  | { readonly kind: 'implausibleReach'; readonly reach: number; readonly high: number };

/** From one milligram to half a ton, kg; ten metres. */
const MASS_LOW = 1e-6;
const MASS_HIGH = 500;
const REACH_HIGH = 10;

/**
 * Whether moments can be those of a real body, and of a likely one; empty where they can. Necessary and sufficient for
 * a non-negative mass distribution: m > 0 and J about the centre of mass positive semidefinite, which is the triangle
 * inequality of the principal inertias (I1 + I2 - I3 = 2 x the eigenvalue along axis 3). Eigenvalues down to
 * -1e-12 tr J about the origin pass: that is what subtracting S S^T / m leaves of a point mass far out.
 */
export function findValidity(moments: Moments): readonly ValidityFinding[] {
  for (let place = 0; place < moments.length; place++) {
    const value = moments[place];
    if (!Number.isFinite(value)) return [{ kind: 'notFinite', place, value }];
  }
  const mass = moments[M];
  const J = centralSecondMoment(moments);
  if (J === null) return [{ kind: 'massNotPositive', mass }];
  const findings: ValidityFinding[] = [];
  const trace = moments[JXX] + moments[JYY] + moments[JZZ];
  const [a, b, c] = eigenSymmetric(J).values;
  if (a < -1e-12 * Math.abs(trace)) {
    findings.push({
      kind: 'impossibleSpread',
      smallestEigenvalue: a,
      principalInertia: [a + b, a + c, b + c],
    });
  }
  if (mass < MASS_LOW || mass > MASS_HIGH) {
    findings.push({ kind: 'implausibleMass', mass, low: MASS_LOW, high: MASS_HIGH });
  }
  const reach = Math.sqrt(Math.max(0, trace) / mass);
  if (reach > REACH_HIGH) findings.push({ kind: 'implausibleReach', reach, high: REACH_HIGH });
  return findings;
}
