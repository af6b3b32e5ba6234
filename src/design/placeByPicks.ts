import { type Circle, circleThrough } from '../engine/math/circleThrough';
import type { Pose } from '../engine/math/pose';
import {
  apply,
  cross,
  dot,
  length,
  type Mat3,
  scale,
  subtract,
  transpose,
  type Vec3,
} from '../engine/math/vector';
import { fail, type Result, succeed } from '../engine/result';
import { degreesFromRadians, metresFromMm, radians } from '../engine/units';

/** Three points on the rim of a hole, in the part's frame, metres. */
export type RimPicks = readonly [Vec3, Vec3, Vec3];

export interface Picks {
  /** The bore that turns about the feathering axis; null where the part has none. */
  readonly bore: RimPicks | null;
  /** The hole of the blade bolt; null where the part has none. */
  readonly bolt: RimPicks | null;
  /** Where the bolt's axis shall cross the feathering axis, mm; used with `bolt`. */
  readonly stationMm: number;
}

export interface PickedPlace {
  /** X_GP. */
  readonly pose: Pose;
  readonly bore: Circle | null;
  readonly bolt: Circle | null;
  /** How far the picked bolt axis is from square to the picked bore, degrees; null unless both were picked. */
  readonly outOfSquareDeg: number | null;
  /** How far the bolt axis passes beside the feathering axis, metres; null unless both were picked. */
  readonly beside: number | null;
}

export type PickFault =
  | { readonly kind: 'nothing' }
  /** The three points of that rim lie on a line. */
  | { readonly kind: 'onALine'; readonly rim: 'bore' | 'bolt' }
  /** Both holes point the same way: one of them is not what it was taken for. */
  | { readonly kind: 'parallel' };

/** Bolt and feathering axes are square by design: within this of parallel, a pick was wrong. */
const LEAST_ANGLE_DEG = 30;

/**
 * Where a body whose frame is a stranger's (a mesh) has to stand so that its bore turns about the feathering axis and
 * its bolt hole lies across it at a station. What the picks leave open stays as near as can be to where the part is
 * now (`present`, X_GP): with both picked the bolt lies outboard of the bore and z points to the side that it points to
 * now; with the bore alone the body keeps its station; with the bolt alone its x.
 */
export function placeByPicks(picks: Picks, present: Pose): Result<PickedPlace, PickFault> {
  const bore = picks.bore && circleThrough(...picks.bore);
  const bolt = picks.bolt && circleThrough(...picks.bolt);
  if (picks.bore && !bore) return fail({ kind: 'onALine', rim: 'bore' });
  if (picks.bolt && !bolt) return fail({ kind: 'onALine', rim: 'bolt' });
  if (!bore && !bolt) return fail({ kind: 'nothing' });
  const square =
    bore &&
    bolt &&
    degreesFromRadians(radians(Math.acos(Math.min(1, Math.abs(dot(bore.normal, bolt.normal))))));
  if (square !== null && square < LEAST_ANGLE_DEG) return fail({ kind: 'parallel' });

  const R_PG = transpose(present.rotation);
  const toward = (axis: Vec3, wanted: Vec3): Vec3 =>
    dot(axis, wanted) < 0 ? scale(axis, -1) : axis;
  const outboard = bore && bolt ? subtract(bolt.centre, bore.centre) : apply(R_PG, [1, 0, 0]);
  const upward = apply(R_PG, [0, 0, 1]);
  let x: Vec3;
  let z: Vec3;
  if (bore) {
    x = toward(bore.normal, outboard);
    z = unit(across(bolt ? toward(bolt.normal, upward) : upward, x), x);
  } else {
    z = toward((bolt as Circle).normal, upward);
    x = unit(across(outboard, z), z);
  }
  const y = cross(z, x);
  const rotation: Mat3 = [...x, ...y, ...z];
  const station = metresFromMm(picks.stationMm);
  const at = apply(rotation, (bore ?? (bolt as Circle)).centre);
  const along = bolt
    ? station - apply(rotation, bolt.centre)[0]
    : apply(present.rotation, (bore as Circle).centre)[0] + present.translation[0] - at[0];
  return succeed({
    pose: { rotation, translation: [along, -at[1], -at[2]] },
    bore,
    bolt,
    outOfSquareDeg: square === null ? null : 90 - square,
    beside: bore && bolt ? Math.abs(dot(y, outboard)) : null,
  });
}

/** The part of `a` square to the unit vector `b`. */
function across(a: Vec3, b: Vec3): Vec3 {
  return subtract(a, scale(b, dot(a, b)));
}

/** `a` to length one; any direction square to `b` where `a` is nothing. */
function unit(a: Vec3, b: Vec3): Vec3 {
  const size = length(a);
  if (size > 1e-6) return scale(a, 1 / size);
  const other: Vec3 = Math.abs(b[2]) < 0.9 ? [0, 0, 1] : [0, 1, 0];
  const square = across(other, b);
  return scale(square, 1 / length(square));
}
