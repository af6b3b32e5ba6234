import type { Design } from '../design/design';
import type { DesignFault } from '../design/fault';
import { HeadForces } from '../design/forces/headForces';
import type { MomentTerm } from '../design/forces/momentTerm';
import { HeadModel } from '../design/headModel';
import { COS1, createHarmonics, featheringMoment, SIN1 } from '../engine/feathering/harmonics';
import { createMoments, JYY, JYZ, JZZ } from '../engine/mass/moments';
import { bracketedRoot } from '../engine/math/rootBracket';
import { fail, type Result, succeed } from '../engine/result';
import { type Radians, radians, radiansFromDegrees } from '../engine/units';

/** Where the force gauge pulls. A pull (tension) reads positive. */
export type GaugePlace =
  /** In the push rod of one grip. */
  | { readonly kind: 'rod' }
  /**
   * At the slider, all grips. `pullsAlong` is the way along Z that a pull of the gauge moves the slider: +1 (left out) gives
   * the force chart's slider force.
   */
  | { readonly kind: 'slider'; readonly pullsAlong?: 1 | -1 }
  /**
   * At an arm on one grip, square to it, the push rod taken off: no rod, no linkage drag. `arm` in m, signed: positive where
   * a pull lowers the leading edge, so that a moment which raises it reads tension. An arm of 1 m reads the moment itself.
   */
  | { readonly kind: 'arm'; readonly arm: number };

/** J_yy - J_zz and J_yz of all that turns with the grip, kg m^2. */
export interface SpreadAndProduct {
  readonly spread: number;
  readonly product: number;
}

export type GaugeHeadFault =
  | { readonly kind: 'design'; readonly fault: DesignFault }
  /** The design's rotor stands still: nothing can be expected of a run. */
  | { readonly kind: 'notTurning' }
  /** A gauge in rod or at the slider needs an arm and a linkage. */
  | { readonly kind: 'noLinkage' };

/**
 * A head with a gauge on it: what one N m of its moment reads, and every force that is no part of J_yy - J_zz and J_yz. All
 * forces are the gauge's (N, tension positive); pitch in rad, speed in rad/s. NaN over centre and out of reach. What spins
 * goes with the square of the speed, the air too (its coefficients are taken as the same at every speed, as the hover model
 * has them).
 */
export class GaugeHead {
  private readonly coefficients = createHarmonics();
  private steady: readonly [number, number] | null = null;

  private constructor(
    readonly design: Design,
    readonly forces: HeadForces,
    readonly place: GaugePlace,
  ) {
    const { harmonics } = forces.model;
    this.coefficients[SIN1] = harmonics[SIN1];
    this.coefficients[COS1] = harmonics[COS1];
  }

  static of(design: Design, place: GaugePlace): Result<GaugeHead, GaugeHeadFault> {
    const model = new HeadModel();
    const outcome = model.load(design);
    if (!outcome.ok) return fail({ kind: 'design', fault: outcome.error });
    if (!(model.rotor.angularSpeed > 0)) return fail({ kind: 'notTurning' });
    const forces = new HeadForces(model);
    if (place.kind !== 'arm' && !forces.linkage) return fail({ kind: 'noLinkage' });
    return succeed(new GaugeHead(design, forces, place));
  }

  /** The design's speed, rad/s. */
  get designSpeed(): number {
    return this.forces.model.rotor.angularSpeed;
  }

  get totals(): SpreadAndProduct {
    const totals = this.forces.model.totals(createMoments());
    return { spread: totals[JYY] - totals[JZZ], product: totals[JYZ] };
  }

  /** Gauge force for one N m of one grip's moment, N/(N m): -1 over how far the gauge moves per radian. */
  forcePerMoment(pitch: Radians): number {
    const { place, forces } = this;
    if (place.kind === 'arm') return 1 / place.arm;
    const link = forces.linkAt(pitch);
    if (!link) return Number.NaN;
    const rod = forces.forcePerMoment(link);
    if (place.kind === 'rod') return rod;
    return (place.pullsAlong ?? 1) * forces.model.sections.rotor.bladeCount * link.axis[2] * rod;
  }

  /** Its derivative by pitch, by central difference: only for what an error of the pitch setting does. */
  forcePerMomentSlope(pitch: Radians): number {
    const h = 1e-4;
    return (
      (this.forcePerMoment(radians(pitch + h)) - this.forcePerMoment(radians(pitch - h))) / (2 * h)
    );
  }

  /** Slider travel from its place at flat pitch, m; for a gauge at an arm the way of its end. */
  travel(pitch: Radians): number {
    return this.place.kind === 'arm' ? -this.place.arm * pitch : this.forces.travelAt(pitch);
  }

  /** The pitch at a slider travel, between the places over centre next to flat; NaN where there is none. */
  pitchAtTravel(travel: number): Radians {
    if (this.place.kind === 'arm') return radians(-travel / this.place.arm);
    const f = (pitch: number) => this.forces.travelAt(radians(pitch)) - travel;
    const [low, high] = this.steadyRange();
    return radians(bracketedRoot(f, low, high, 1e-13)?.root ?? Number.NaN);
  }

  /** Where travel goes one way about flat pitch, to half a degree. */
  private steadyRange(): readonly [number, number] {
    this.steady ??= this.findSteadyRange();
    return this.steady;
  }

  private findSteadyRange(): readonly [number, number] {
    const sign = Math.sign(this.forcePerMoment(radians(0)));
    const end = (way: number): number => {
      let deg = 0;
      while (deg < 89.5) {
        const next = this.forcePerMoment(radiansFromDegrees(way * (deg + 0.5)));
        if (!(Math.sign(next) === sign)) break;
        deg += 0.5;
      }
      return radiansFromDegrees(way * deg);
    };
    return [end(-1), end(1)];
  }

  /** Total moment of one grip that the gauge answers to, N m. */
  moment(pitch: Radians, angularSpeed: number): number {
    const sum = this.termMoments(pitch, () => true);
    return this.scale(angularSpeed) * (featheringMoment(this.forces.model.harmonics, pitch) + sum);
  }

  /** Force without friction, N: the force chart's where the speed is the design's. */
  force(pitch: Radians, angularSpeed: number): number {
    return this.forcePerMoment(pitch) * this.moment(pitch, angularSpeed);
  }

  /** Force that is no part of J_yy - J_zz and J_yz, nor of the air: rod, swinging blade, torque offset, precone. */
  knownForce(pitch: Radians, angularSpeed: number): number {
    const sum = this.termMoments(pitch, ({ id }) => id !== 'air');
    const skew = featheringMoment(this.coefficients, pitch);
    return this.forcePerMoment(pitch) * this.scale(angularSpeed) * (sum + skew);
  }

  /** Force of the air as modelled; zero where the design does not count it. */
  airForce(pitch: Radians, angularSpeed: number): number {
    const sum = this.termMoments(pitch, ({ id }) => id === 'air');
    return this.forcePerMoment(pitch) * this.scale(angularSpeed) * sum;
  }

  get hasAir(): boolean {
    return this.forces.terms.some(({ id }) => id === 'air');
  }

  /** Force of friction, unsigned: drag at rest and bearings under their loads; at no speed the drag alone. */
  frictionForce(pitch: Radians, angularSpeed: number): number {
    const link = this.place.kind === 'arm' ? null : this.forces.linkAt(pitch);
    const friction = this.forces.frictionOf(pitch, link, this.scale(angularSpeed));
    return Math.abs(this.forcePerMoment(pitch)) * friction;
  }

  /** Moment of friction beside the drag at rest, N m. */
  bearingMoment(pitch: Radians, angularSpeed: number): number {
    return this.forces.frictionOf(pitch, null, this.scale(angularSpeed));
  }

  private termMoments(pitch: Radians, taken: (term: MomentTerm) => boolean): number {
    let sum = 0;
    for (const term of this.forces.terms) {
      // With the gauge at an arm the rod is off.
      if (term.id === 'rod' && this.place.kind === 'arm') continue;
      if (taken(term)) sum += term.moment(pitch);
    }
    return sum;
  }

  private scale(angularSpeed: number): number {
    return (angularSpeed / this.designSpeed) ** 2;
  }
}
