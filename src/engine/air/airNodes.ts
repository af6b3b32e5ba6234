import { degreesFromRadians, radians } from '../units';

/** Shares of a step at which nodes are added on both sides of a change of sign. */
const CLOSER = [0, 1 / 16, 1 / 8, 1 / 4, 1 / 2];
/** A regular node nearer than this share of a step to an added one is left out. */
const TOO_NEAR = 1 / 64;

/**
 * Pitches in degrees, ascending, at which the air is solved: `intervals` equal steps, and closer ones about each pitch
 * where the lift of a blade with this twist is zero, every quarter turn. A blade twisted by more than a step crosses
 * zero station by station and gets none.
 */
export function airNodes(
  fromDeg: number,
  toDeg: number,
  intervals: number,
  twist: Float64Array,
): Float64Array {
  const step = (toDeg - fromDeg) / intervals;
  const added = addedNodes(fromDeg, toDeg, step, twist);
  const nodes = [...added];
  for (let k = 0; k <= intervals; k++) {
    // Mirrored ranges get mirrored nodes, and zero is exactly zero.
    const node = (fromDeg * (intervals - k) + toDeg * k) / intervals;
    const end = k === 0 || k === intervals;
    if (end || !added.some((one) => Math.abs(one - node) < TOO_NEAR * step)) nodes.push(node);
  }
  return Float64Array.from(nodes.toSorted((a, b) => a - b));
}

function addedNodes(
  fromDeg: number,
  toDeg: number,
  step: number,
  twist: Float64Array,
): readonly number[] {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (const angle of twist) {
    least = Math.min(least, angle);
    most = Math.max(most, angle);
  }
  if (!(degreesFromRadians(radians(most - least)) <= step)) return [];
  const zero = -degreesFromRadians(radians((least + most) / 2));
  // The range's ends are nodes anyway: nothing is added within TOO_NEAR of them.
  const low = fromDeg + TOO_NEAR * step;
  const high = toDeg - TOO_NEAR * step;
  const nodes = new Set<number>();
  const first = Math.ceil((fromDeg - step - zero) / 90);
  for (let quarter = first; zero + 90 * quarter <= toDeg + step; quarter++) {
    for (const share of CLOSER) {
      for (const node of [zero + 90 * quarter - share * step, zero + 90 * quarter + share * step])
        if (node > low && node < high) nodes.add(node);
    }
  }
  return [...nodes];
}
