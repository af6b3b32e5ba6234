import type { Equilibria } from '../feathering/equilibria';
import { bracketedRoot } from '../math/rootBracket';
import { type Radians, radians } from '../units';

type Curve = (pitch: Radians) => number;

/** A place on the hills and wells of the energy against pitch. */
export interface Landmark {
  readonly kind: 'well' | 'hill' | 'shoulder';
  readonly pitch: Radians;
  /** J. */
  readonly energy: number;
  /**
   * Of a well: height of the lower of the two hills that bound it, J: energy that a grip at rest in it needs to leave. An end
   * of the range counts as a hill as high as the energy there, or where that has no value (the rod's reach ends) as it is
   * just inside. Null for hills and shoulders, and where neither side has a value.
   */
  readonly depth: number | null;
}

/** Wells (rest angles), hills (flee angles) and shoulders (tangent ones) in [low, high], ascending; none if neutral. */
export function landscape(
  energy: Curve,
  equilibria: Equilibria,
  low: Radians,
  high: Radians,
): readonly Landmark[] {
  if (equilibria.kind === 'neutral') return [];
  const roots = equilibria.roots.filter(({ pitch }) => pitch >= low && pitch <= high);
  const hills = [
    low,
    ...roots.filter(({ kind }) => kind === 'unstable').map(({ pitch }) => pitch),
    high,
  ];
  return roots.map(({ pitch, kind }) => {
    const own = energy(pitch);
    if (kind !== 'stable') {
      return { kind: kind === 'unstable' ? 'hill' : 'shoulder', pitch, energy: own, depth: null };
    }
    const left = heightAt(energy, hills.findLast((hill) => hill <= pitch) ?? low, pitch);
    const right = heightAt(energy, hills.find((hill) => hill >= pitch) ?? high, pitch);
    const height = Math.min(left, right) - own;
    return { kind: 'well', pitch, energy: own, depth: height < Infinity ? height : null };
  });
}

/** Energy at the top of a side of a well; at an end without a value that of the nearest pitch inside, to 1e-3 rad. */
function heightAt(energy: Curve, top: Radians, well: Radians): number {
  const inward = Math.sign(well - top);
  for (let back = 0; back <= 1e-3; back = back === 0 ? 1e-12 : 10 * back) {
    const value = energy(radians(top + inward * back));
    if (!Number.isNaN(value)) return value;
  }
  return Infinity;
}

/** Where a motion without friction turns, or why not. */
export interface ReachEnd {
  readonly pitch: Radians;
  readonly why: 'turns' | 'stop' | 'gap';
}

/** Width of a cell of the search. */
const CELL = Math.PI / 1440;

/**
 * How far a grip let go at `from` with this much energy (J, kinetic and potential; at rest: the potential there) rolls
 * either way without friction: to where the potential comes up to it, or to the end of the range, or to a gap (NaN).
 * Looks every eighth of a degree: a hill narrower than that and higher may be missed.
 */
export function reachWithoutFriction(
  energy: Curve,
  total: number,
  from: Radians,
  low: Radians,
  high: Radians,
): { readonly low: ReachEnd; readonly high: ReachEnd } {
  const spare = (pitch: number) => total - energy(radians(pitch));
  // At rest it leaves one way only: the way the potential falls.
  return { low: reachToward(spare, from, low), high: reachToward(spare, from, high) };
}

function reachToward(spare: (pitch: number) => number, from: number, end: number): ReachEnd {
  const count = Math.max(1, Math.ceil(Math.abs(end - from) / CELL));
  let near = from;
  for (let i = 1; i <= count; i++) {
    const far = i === count ? end : from + ((end - from) * i) / count;
    const left = spare(far);
    if (Number.isNaN(left)) return { pitch: radians(near), why: 'gap' };
    if (left < 0) {
      const at = spare(near) > 0 ? (bracketedRoot(spare, near, far)?.root ?? near) : near;
      return { pitch: radians(at), why: 'turns' };
    }
    near = far;
  }
  return { pitch: radians(end), why: 'stop' };
}

/**
 * Rate at a pitch, rad/s, of a motion with this energy: sqrt(2 (E - V) / I), the upper half of its curve in the plane of
 * rate against pitch. NaN where it does not come.
 */
export function rateAtEnergy(
  system: { readonly energy: Curve; readonly inertia: { readonly value: Curve } },
  total: number,
  pitch: Radians,
): number {
  const kinetic = total - system.energy(pitch);
  return kinetic < 0 ? Number.NaN : Math.sqrt((2 * kinetic) / system.inertia.value(pitch));
}
