import type { RotorConditions } from '../feathering/rotor';
import { bracketedRoot } from '../math/rootBracket';
import { type Radians, radians } from '../units';
import { type Linkage, travelAtPitch } from './linkage';
import { overCentreAngles, reachableIntervals } from './reach';

/** An end of the pitch that the linkage can drive, and what ends it. */
export interface RangeEnd {
  readonly pitch: Radians;
  readonly why: 'overCentre' | 'unreachable' | 'range';
}

export interface WorkingRange {
  readonly low: RangeEnd;
  readonly high: RangeEnd;
}

/**
 * The pitches around zero that are reached without passing over centre, within [from, to]; from below zero to above it.
 * Null where pitch zero itself is out of reach. An arm that is over centre at zero has the range next to it above.
 */
export function workingRange(
  linkage: Linkage,
  rotor: RotorConditions,
  from: Radians,
  to: Radians,
): WorkingRange | null {
  const reached = reachableIntervals(linkage, rotor, from, to).find(
    ([low, high]) => low <= 0 && high >= 0,
  );
  if (!reached) return null;
  let low: RangeEnd = endAt(reached[0], from);
  let high: RangeEnd = endAt(reached[1], to);
  for (const pitch of overCentreAngles(linkage, rotor, from, to)) {
    if (pitch <= 0 && pitch > low.pitch) low = { pitch, why: 'overCentre' };
    if (pitch > 0 && pitch < high.pitch) high = { pitch, why: 'overCentre' };
  }
  return { low, high };
}

function endAt(pitch: Radians, end: Radians): RangeEnd {
  return { pitch, why: pitch === end ? 'range' : 'unreachable' };
}

/**
 * Pitches at which the slider meets its stops (travel in m from its place at pitch zero, the lower at most 0, the upper at
 * least 0; infinite where there is none), one on each side of pitch zero; null where that side ends before a stop.
 * Within the working range travel is monotone, so each is unique.
 */
export function travelStops(
  linkage: Linkage,
  rotor: RotorConditions,
  lowest: number,
  highest: number,
  from: Radians,
  to: Radians,
): { readonly low: Radians | null; readonly high: Radians | null } {
  const range = workingRange(linkage, rotor, from, to);
  if (!range) return { low: null, high: null };
  const stopToward = (end: RangeEnd) => {
    const last = within(end);
    const travel = travelAtPitch(linkage, rotor, last);
    const stop = travel > 0 ? highest : lowest;
    return Math.abs(travel) > Math.abs(stop) ? pitchWhere(linkage, rotor, stop, last) : null;
  };
  return { low: stopToward(range.low), high: stopToward(range.high) };
}

/**
 * The pitch in the working range within [from, to] at which the slider has travelled so far (m from its place at pitch
 * zero); null where it does not get there.
 */
export function pitchAtTravel(
  linkage: Linkage,
  rotor: RotorConditions,
  travel: number,
  from: Radians,
  to: Radians,
): Radians | null {
  const range = workingRange(linkage, rotor, from, to);
  if (!range) return null;
  return (
    pitchWhere(linkage, rotor, travel, within(range.high)) ??
    pitchWhere(linkage, rotor, travel, within(range.low))
  );
}

/** The end itself, or a hair inside it where the rod lies square to the shaft and rounding might say it does not reach. */
function within({ pitch, why }: RangeEnd): Radians {
  return why === 'unreachable' ? radians(pitch * (1 - 1e-12)) : pitch;
}

/** Between pitch zero and `end`. */
function pitchWhere(
  linkage: Linkage,
  rotor: RotorConditions,
  travel: number,
  end: Radians,
): Radians | null {
  const gap = (pitch: number) => travelAtPitch(linkage, rotor, radians(pitch)) - travel;
  const root = bracketedRoot(gap, 0, end);
  return root === null ? null : radians(root.root);
}
