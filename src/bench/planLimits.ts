import type { Design } from '../design/design';
import { BENCH_PLAN_LIMITS, MAX_PLAN_PITCHES, MAX_PLAN_SPEEDS } from '../design/sections/bench';
import { CONTROL_SECTION } from '../design/sections/control';
import { sectionValues } from '../design/sections/section';
import { mmFromMetres, radiansFromDegrees } from '../engine/units';
import { GaugeHead, type GaugePlace } from './gaugeHead';

/** What a list of the plan may hold, in the unit that is typed. */
export interface ListLimits {
  readonly min: number;
  readonly max: number;
  readonly most: number;
}

/** Whether the slider comes to this pitch between the stops that the design names; where it names none, always. */
export function isBetweenStops(head: GaugeHead, deg: number): boolean {
  if (head.place.kind === 'arm') return true;
  const stops = sectionValues(CONTROL_SECTION, head.design.control);
  const mm = mmFromMetres(head.travel(radiansFromDegrees(deg)));
  return mm >= (stops.lowestTravelMm ?? -Infinity) && mm <= (stops.highestTravelMm ?? Infinity);
}

/**
 * Pitches at which the gauge has a lever with the sign it has at flat pitch, between the slider's stops: beyond, the arm is
 * over centre, the rod does not reach or the slider does not go, and the mechanism may jam. Whole degrees inward. Where the
 * head has no such linkage, or the gauge is at an arm: what a plan may hold at all.
 */
export function pitchLimits(design: Design, place: GaugePlace): ListLimits {
  const { min, max } = BENCH_PLAN_LIMITS.pitchDeg;
  const most = MAX_PLAN_PITCHES;
  const head = GaugeHead.of(design, place);
  if (!head.ok || place.kind === 'arm') return { min, max, most };
  const lever = (deg: number) => Math.sign(head.value.forcePerMoment(radiansFromDegrees(deg)));
  const sign = lever(0);
  const end = (way: 1 | -1): number => {
    let deg = 0;
    const goesOn = (next: number) => lever(next) === sign && isBetweenStops(head.value, next);
    while (deg < max && goesOn(way * (deg + 1))) deg++;
    return way * deg || 0;
  };
  return sign === 1 || sign === -1 ? { min: end(-1), max: end(1), most } : { min, max, most };
}

/** Up to the fastest that the design is meant to turn: nothing is worked out for more. */
export function speedLimits({ rotor }: Design): ListLimits {
  const max = Math.max(rotor.speedRpm, rotor.highestSpeedRpm ?? 0);
  return { min: BENCH_PLAN_LIMITS.speedRpm.min, max, most: MAX_PLAN_SPEEDS };
}
