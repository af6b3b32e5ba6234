import {
  boltFrictionTorque,
  featheringChange,
  freeLag,
  type HingedBody,
  hingedBody,
  lagBand,
} from '../../engine/lag/lag';
import { pullOn } from '../../engine/loads/pull';
import { accumulate, createMoments, type Moments } from '../../engine/mass/moments';
import type { Pose } from '../../engine/math/pose';
import {
  curveThrough,
  potentialAt,
  potentialOf,
  slopeAt,
  valueAt,
} from '../../engine/math/smoothCurve';
import { type Radians, radians, radiansFromDegrees } from '../../engine/units';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';
import { BLADE_BOLT_SECTION } from '../sections/bladeBolt';
import { sectionValues } from '../sections/section';
import { airLoadAt } from './airLoad';
import type { HeadAir } from './headAir';
import { hingedGroup } from './hinged';
import type { MomentTerm } from './momentTerm';
import { seatedDiameter } from './seatedBolts';

/** A blade on its bolt at one pitch. Angles from where it is drawn, about the bolt. */
export interface LagAt {
  readonly free: Radians;
  /** Where friction holds it; null: anywhere within a quarter turn. */
  readonly band: readonly [Radians, Radians] | null;
  /** What the free angle changes in the feathering moment, N m: the mass's share and the air's. */
  readonly moment: number;
}

export interface HeadLag {
  /** The parts that swing, the hinged one first. */
  readonly parts: readonly PlacedPart[];
  /** Counted in the moment. */
  readonly hold: 'clamped' | 'free';
  /** Null where no stable angle is within a quarter turn. */
  at(pitch: Radians): LagAt | null;
  /** Null where it is clamped. */
  readonly term: MomentTerm | null;
}

/**
 * Where in the pitch in use (both ends and flat are looked at) friction does not hold a blade that counts as clamped at the
 * angle it is drawn at; null where it does. It would swing there, and what is worked out as drawn does not hold.
 */
export function slipsAt(lag: HeadLag | null, used: Radians): Radians | null {
  if (lag?.hold !== 'clamped') return null;
  for (const pitch of [radians(0), used, radians(-used)]) {
    const band = lag.at(pitch)?.band;
    if (band && !(band[0] <= 0 && band[1] >= 0)) return pitch;
  }
  return null;
}

/** Pitches at which the free angle is found; between them cubics. */
const RANGE_DEG = 90;

/**
 * The blade on its bolt, solved when something that it depends on has changed: the swinging parts, their place, the
 * rotor, the air, how it is held, the bolt that rubs.
 */
export class LagDesk {
  private key: readonly unknown[] = [];
  private held: HeadLag | null = null;

  lag(model: HeadModel, air: HeadAir): HeadLag | null {
    const group = hingedGroup(model);
    const { rotor, bladeBolt } = model.sections;
    const boltDiameter = seatedDiameter(model);
    const key = [
      rotor,
      bladeBolt,
      air,
      boltDiameter,
      ...group.flatMap(({ part, values, pose }) => [part.hidden, values, pose, part.measured]),
    ];
    if (key.length === this.key.length && key.every((one, i) => one === this.key[i])) {
      return this.held;
    }
    this.key = key;
    this.held = group.length > 0 ? headLag(model, air, group, boltDiameter) : null;
    return this.held;
  }
}

function headLag(
  model: HeadModel,
  air: HeadAir,
  group: readonly PlacedPart[],
  boltDiameter: number,
): HeadLag {
  const { rotor, sections } = model;
  const values = sectionValues(BLADE_BOLT_SECTION, sections.bladeBolt);
  const hinge = group[0].pose;
  const moments_G = sumOf(group);
  const body = hingedBody(moments_G, hinge);
  const { bladeCount } = sections.rotor;
  const drive = (pitch: Radians) => airDrive(air, hinge, pitch, bladeCount);
  const shiftOfAir = (pitch: Radians, lag: Radians) => airShift(air, hinge, pitch, bladeCount, lag);

  function at(pitch: Radians): LagAt | null {
    const torque = drive(pitch);
    const free = freeLag(body, rotor, pitch, torque);
    if (free === null) return null;
    const friction = boltFrictionTorque({
      coefficient: values.frictionCoefficient,
      pull: pullOn(moments_G, rotor, pitch),
      boltDiameter,
      clampForce: values.clampForceN,
      // The cheeks press on a ring about as wide as the bolt is thick.
      faceRadius: boltDiameter,
    });
    const [low, high] = lagBand(body, rotor, pitch, free, torque, friction);
    return {
      free,
      band: Number.isFinite(low) && Number.isFinite(high) ? [radians(low), radians(high)] : null,
      moment: featheringChange(body, rotor, pitch, free) + shiftOfAir(pitch, free),
    };
  }

  return {
    parts: group,
    hold: values.hold,
    at,
    term: values.hold === 'free' ? lagTerm(model, body, drive, shiftOfAir) : null,
  };
}

function lagTerm(
  { rotor }: HeadModel,
  body: HingedBody,
  drive: (pitch: Radians) => number,
  shiftOfAir: (pitch: Radians, lag: Radians) => number,
): MomentTerm {
  const nodes = new Float64Array(2 * RANGE_DEG + 1).map((_, i) =>
    radiansFromDegrees(i - RANGE_DEG),
  );
  const changes = nodes.map((node) => {
    const pitch = radians(node);
    const free = freeLag(body, rotor, pitch, drive(pitch));
    if (free === null) return Number.NaN;
    return featheringChange(body, rotor, pitch, free) + shiftOfAir(pitch, free);
  });
  const curve = curveThrough(nodes, changes);
  const potential = potentialOf(curve);
  return {
    id: 'lag',
    moment: (pitch) => valueAt(curve, pitch),
    slope: (pitch) => slopeAt(curve, pitch),
    energy: (pitch) => potentialAt(curve, potential, pitch),
  };
}

/**
 * Torque of the air about the hinge, N m: the forces at their radius, seen along the hinge. With the hinge's axis n in
 * the rotor frame and the lever out along X, T and -H give n_z (-H lever) - n_y (T lever); thrust counts as the blade is
 * pitched.
 */
function airDrive(air: HeadAir, hinge: Pose, pitch: Radians, bladeCount: number): number {
  const { ofDrag, ofThrust, up, forward } = airAboutHinge(air, hinge, pitch, bladeCount);
  return -up * ofDrag - forward * ofThrust;
}

/**
 * What the air turns the grip by because the blade has swung from where it is drawn, N m: the air is solved as drawn, and a lag d
 * carries each force off the feathering axis by its lever times sin d, square to hinge and span. To first order in d:
 * that the swung blade meets the air a little nearer or farther out is left out.
 */
function airShift(
  air: HeadAir,
  hinge: Pose,
  pitch: Radians,
  bladeCount: number,
  lag: Radians,
): number {
  const { ofDrag, ofThrust, up, forward } = airAboutHinge(air, hinge, pitch, bladeCount);
  return Math.sin(lag) * (up * ofThrust - forward * ofDrag);
}

/** Moments of the air's forces on their levers from the hinge, N m, and the hinge's direction in the rotor frame. */
function airAboutHinge(air: HeadAir, hinge: Pose, pitch: Radians, bladeCount: number) {
  const [, , , , , ny, , , nz] = hinge.rotation;
  const up = ny * Math.sin(pitch) + nz * Math.cos(pitch);
  const forward = ny * Math.cos(pitch) - nz * Math.sin(pitch);
  if (air.kind !== 'estimated') return { ofDrag: 0, ofThrust: 0, up, forward };
  const { thrust, flapMoment, drag, dragTorque } = airLoadAt(air, pitch, bladeCount);
  const [x] = hinge.translation;
  return { ofDrag: dragTorque - drag * x, ofThrust: flapMoment - thrust * x, up, forward };
}

function sumOf(group: readonly PlacedPart[]): Moments {
  const sum = createMoments();
  for (const { part, moments_G } of group) if (!part.hidden) accumulate(sum, moments_G);
  return sum;
}
