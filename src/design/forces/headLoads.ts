import type { RotorConditions } from '../../engine/feathering/rotor';
import { rodPullAtBall } from '../../engine/linkage/rodMass';
import {
  type AxisLoad,
  addForce,
  bendUpAt,
  createAxisLoad,
  spinAxisLoad,
} from '../../engine/loads/axisLoad';
import { staticEquivalentLoad } from '../../engine/loads/bearings';
import { pullOn } from '../../engine/loads/pull';
import { createMoments } from '../../engine/mass/moments';
import { degreesFromRadians, type Radians, radiansFromDegrees } from '../../engine/units';
import { rotorConditions } from '../headModel';
import { ROTOR_SECTION } from '../sections/rotor';
import { airLoadAt } from './airLoad';
import { boltLoads } from './boltLoads';
import {
  type AirLoad,
  addAir,
  headBearings,
  loadsOnBearings,
  type PlacedBearing,
} from './headBearings';
import type { HeadForces } from './headForces';
import type {
  BearingLoad,
  BoltLoads,
  FlapMoment,
  HeadLoads,
  LimitInUse,
  Margin,
} from './loadTypes';

/**
 * What bearings, blade and bolt carry at a pitch, at the design's speed or another. The pull goes exactly with the square
 * of the speed; the air is scaled with it too, from the design's speed. Limits are static ones: a head that turns for hours
 * also wears and tires, which is not judged.
 */
export function headLoads(forces: HeadForces, pitch: Radians, speedRpm?: number): HeadLoads {
  const { model } = forces;
  const { rotor: section } = model.sections;
  const rpm = speedRpm ?? section.speedRpm;
  const rotor = rotorConditions(section, rpm);
  const square = section.speedRpm > 0 ? (rpm / section.speedRpm) ** 2 : 0;
  const air = scaledAir(airLoadAt(forces.air, pitch, section.bladeCount), square);
  const pulls = model.parts
    .filter((placed) => !placed.part.hidden && placed.carriedBy === 'grip')
    .map(({ part, moments_G }) => ({
      id: part.id,
      pull: pullOn(moments_G, rotor, pitch),
    }));
  const placed = headBearings(model);
  const { mass, whole } = axisLoads(forces, pitch, rotor, air);
  const bearings = sharedAmong(placed, whole);
  const bolts = boltLoads(forces, pitch, rotor);
  const counted = forces.air.kind === 'estimated';
  return {
    speedRpm: rpm,
    pitchDeg: degreesFromRadians(pitch),
    pulls,
    axialPull: whole.along,
    thrust:
      counted && air.thrust !== 0
        ? { force: air.thrust, radius: air.flapMoment / air.thrust }
        : null,
    flap: flapAt(placed, mass, rotor, counted ? air : null),
    bearings,
    missing: (['radial', 'thrust'] as const).filter(
      (kind) => !placed.some(({ facts }) => facts.carries === kind),
    ),
    bolts,
    first: firstLimit(bearings, bolts, rpm),
  };
}

/** Only what the bearings carry at a pitch at the design's speed, as in `headLoads`. */
export function bearingLoads(forces: HeadForces, pitch: Radians): readonly BearingLoad[] {
  const { model } = forces;
  const placed = headBearings(model);
  if (placed.length === 0) return [];
  const { bladeCount, speedRpm } = model.sections.rotor;
  const square = speedRpm > 0 ? 1 : 0;
  const air = scaledAir(airLoadAt(forces.air, pitch, bladeCount), square);
  return sharedAmong(placed, axisLoads(forces, pitch, model.rotor, air).whole);
}

/** The load along and across the feathering axis: of the spin alone, and with air and rod. */
function axisLoads(forces: HeadForces, pitch: Radians, rotor: RotorConditions, air: AirLoad) {
  const totals = forces.model.totals(createMoments());
  const mass = spinAxisLoad(totals, rotor, pitch, createAxisLoad());
  const whole = { ...mass };
  addAir(whole, air, rotor);
  addRod(whole, forces, pitch, rotor);
  return { mass, whole };
}

function sharedAmong(placed: readonly PlacedBearing[], whole: AxisLoad): readonly BearingLoad[] {
  const loads = loadsOnBearings(placed, whole);
  return placed.map((bearing, i) => bearingLoad(bearing, loads[i], placed));
}

function scaledAir(air: AirLoad, square: number): AirLoad {
  return {
    thrust: square * air.thrust,
    flapMoment: square * air.flapMoment,
    drag: square * air.drag,
    dragTorque: square * air.dragTorque,
  };
}

/**
 * What the push rod does to the grip at its ball, at another speed than the design's too: what holds the total moment, and
 * its share of the rod's own pull. Nothing over centre and out of reach, where there is no such force.
 */
function addRod(load: AxisLoad, forces: HeadForces, pitch: Radians, rotor: RotorConditions): void {
  const { linkage, model } = forces;
  const link = forces.linkAt(pitch);
  const held = forces.forceOf(forces.moment(pitch), pitch);
  if (!linkage || link === null || held === null) return;
  const design = model.rotor.angularSpeed;
  const square = design > 0 ? (rotor.angularSpeed / design) ** 2 : 0;
  const [px, py, pz] = rodPullAtBall(linkage.linkage, rotor, link);
  const along = square * held;
  const [ex, ey, ez] = link.axis;
  const [x, y, z] = linkage.linkage.ball_G;
  const [s, c] = [Math.sin(pitch), Math.cos(pitch)];
  const place = [x, y * c - z * s, y * s + z * c] as const;
  addForce(load, [px + along * ex, py + along * ey, pz + along * ez], place, rotor);
}

/** About the middle of the radial bearings; of all of them where none is radial; of the shaft without any. */
function flapAt(
  placed: readonly PlacedBearing[],
  mass: AxisLoad,
  rotor: RotorConditions,
  air: AirLoad | null,
): FlapMoment {
  const radial = placed.filter(({ facts }) => facts.carries === 'radial');
  const used = radial.length > 0 ? radial : placed;
  const station = used.reduce((sum, one) => sum + one.station, 0) / Math.max(1, used.length);
  const fromMass = bendUpAt(mass, station);
  let fromThrust: number | null = null;
  if (air) {
    const thrust = createAxisLoad();
    addAir(thrust, air, rotor);
    fromThrust = bendUpAt(thrust, station);
  }
  // An added product x k over the axis bends the tip down by W^2 cos 2b of it.
  const perProduct = rotor.angularSpeed ** 2 * Math.cos(2 * rotor.precone);
  return {
    station,
    fromMass,
    fromThrust,
    balancingProduct:
      fromThrust === null || perProduct === 0 ? null : (fromMass + fromThrust) / perProduct,
  };
}

function bearingLoad(
  { placed, facts, station }: PlacedBearing,
  { radial, axial }: { readonly radial: number; readonly axial: number },
  all: readonly PlacedBearing[],
): BearingLoad {
  const value = staticEquivalentLoad(facts.carries, radial, axial);
  const stations = all.filter((one) => one.facts.carries === 'radial').map((one) => one.station);
  const alone = facts.carries === 'radial' && new Set(stations).size === 1;
  const rating: Margin =
    facts.staticLoad === null
      ? { kind: 'unknown', value, why: 'noRating' }
      : alone
        ? { kind: 'unknown', value, why: 'oneBearing' }
        : {
            kind: 'known',
            value,
            limit: facts.staticLoad,
            use: value / facts.staticLoad,
            source: 'ISO 76, static',
            outside: false,
          };
  return { id: placed.part.id, carries: facts.carries, station, radial, axial, rating };
}

/** Pitches at which the loads within the pitch in use are looked at: twentieths of it, both ends and flat among them. */
const LOOKS = 10;

/** The margin that is used up first within the pitch in use, at the design's speed or another. */
export function limitInUse(forces: HeadForces, speedRpm?: number): LimitInUse | null {
  const { rotor } = forces.model.sections;
  const used = rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  let worst: LimitInUse | null = null;
  for (let k = -LOOKS; k <= LOOKS; k++) {
    const pitchDeg = (used * k) / LOOKS;
    const { first } = headLoads(forces, radiansFromDegrees(pitchDeg), speedRpm);
    if (first && (!worst || first.use > worst.use)) worst = { ...first, pitchDeg };
  }
  return worst;
}

/** The margin that is used up first. Loads go with the square of the speed. */
function firstLimit(
  bearings: readonly BearingLoad[],
  bolts: readonly BoltLoads[],
  rpm: number,
): HeadLoads['first'] {
  const uses = [
    ...bearings.map(({ id, rating }) => ({ what: 'bearing' as const, id, margin: rating })),
    ...bolts.flatMap(({ id, checks }) =>
      checks
        .filter(({ name }) => name !== 'thread')
        .map(({ name, margin }) => ({ what: name, id, margin })),
    ),
  ].flatMap(({ what, id, margin }) =>
    margin.kind === 'known' && margin.use > 0 ? [{ what, id, use: margin.use }] : [],
  );
  if (uses.length === 0) return null;
  const worst = uses.reduce((a, b) => (b.use > a.use ? b : a));
  return { ...worst, limitRpm: rpm / Math.sqrt(worst.use) };
}
