import type { HeadClearance } from '../design/clearance/clearanceTypes';
import type { Part } from '../design/design';
import type { Balance } from '../design/forces/balanceTypes';
import type { HeadAir } from '../design/forces/headAir';
import type { HeadLoads, LimitInUse } from '../design/forces/loadTypes';
import type { Servo } from '../design/forces/servo';
import type { SpeedSweep } from '../design/forces/speedSweep';
import type { TravelEnds } from '../design/forces/travel';
import type { PartValues } from '../design/values';
import type { Verdict } from '../design/verdict';
import type { Equilibria } from '../engine/feathering/equilibria';
import type { Harmonics } from '../engine/feathering/harmonics';
import type { RotorConditions } from '../engine/feathering/rotor';
import type { Moments } from '../engine/mass/moments';
import type { Pose } from '../engine/math/pose';
import type { Vec3 } from '../engine/math/vector';
import type { Carrier } from '../parts/contract';

/** A share of the feathering moment: of a part, of the air, of a blade that swings. N m and J, energy zero at flat. */
export interface ShareReading {
  momentAt(pitchDeg: number): number;
  energyAt(pitchDeg: number): number;
  /** A size that |moment| does not exceed by much at any pitch, N m: for scales and for an order of importance. */
  readonly bound: number;
  /** The moment at the pitches of the curve, where it is no rigid body's. Read only. */
  readonly curveMoments?: Float64Array;
  /** The same as coefficients, where it is the share of a rigid body. Written in place by the next change. */
  readonly harmonics?: Harmonics;
}

/** One part as it stands in the head. `pose_G` places the part frame in the grip frame; moments about the grip origin. */
export interface PartReading extends ShareReading {
  readonly part: Part;
  /** All of its parameters: written, from catalogue, material or default. */
  readonly values: PartValues;
  readonly pose_G: Pose;
  /** Of a rod: as it hangs at flat pitch. It is not in the head's totals. */
  readonly moments_G: Moments;
  /**
   * 'rod': runs from its socket to the slider; its pose follows `LinkageReading.rodAxisAt`. 'hub', 'case': a keep-out: it
   * weighs nothing, and `pose_G` is its place in the rotor frame, whatever the pitch.
   */
  readonly carriedBy: Carrier;
}

/** A counted share that no part has: zero where the design does not count it, then it is not in the list. */
export interface TermReading extends ShareReading {
  readonly id: 'air' | 'lag';
}

/**
 * Sampled curves over `pitchDeg` (ascending); NaN marks a gap (over centre, out of reach, no arm). `moment` times one of
 * the `...PerMoment` columns is the force or torque that it stands for; the same holds for every share of the moment.
 */
export interface CurveSamples {
  readonly pitchDeg: Float64Array;
  /** Total feathering moment of one grip, N m. */
  readonly moment: Float64Array;
  /** Potential energy, J. */
  readonly energy: Float64Array;
  /** Friction that holds one grip, N m, never negative: pushing reads moment + friction, pulling moment - friction. */
  readonly friction: Float64Array;
  /** Push-rod force of one grip, N, tension positive. */
  readonly force: Float64Array;
  /** Push-rod force for one N m of moment. */
  readonly forcePerMoment: Float64Array;
  /** Force that the control must put on the slider along +Z, all grips, for one N m of each grip's moment. */
  readonly sliderPerMoment: Float64Array;
  /** Torque that the servo must hold, all grips, for one N m of each grip's moment, N m; NaN without servo numbers. */
  readonly servoPerMoment: Float64Array;
}

/** The push rod and the slider. Angles in degrees, positions in the rotor frame, SI. */
export interface LinkageReading {
  readonly ball_G: Vec3;
  /** Distance of the ball from the feathering axis, m; zero: no rod can turn the grip. */
  readonly reach: number;
  /** Null: no rod is drawn, it is taken as weightless and parallel to the shaft. */
  readonly rodPart: string | null;
  /** Pitches in [-90, 90] where the arm goes over centre, degrees. */
  readonly overCentreDeg: readonly number[];
  /** Spans in [-90, 90] that the rod does not reach. */
  readonly unreachableDeg: readonly (readonly [number, number])[];
  /** The design gives the arms between slider and servo. */
  readonly hasServo: boolean;
  /** How far pitch can go each way from flat, and what ends it. Null: flat pitch itself is out of reach. */
  readonly ends: TravelEnds | null;
  /** Slider travel from its place at flat pitch, m; NaN out of reach. */
  travelAt(pitchDeg: number): number;
  /** Slider travel per radian of pitch, m. */
  ratioAt(pitchDeg: number): number;
  /** Centre of the slider's ball; null out of reach. */
  sliderBallAt(pitchDeg: number): Vec3 | null;
  /** Unit vector from the arm's ball to the slider's; null out of reach. */
  rodAxisAt(pitchDeg: number): Vec3 | null;
}

export interface FrictionReading {
  /** The design counts friction. */
  readonly counted: boolean;
  /** Something gives it: a table of drag at rest, or bearings. */
  readonly known: boolean;
  /** Slider travel in use goes beyond the table of drag: its end rows are held there. */
  readonly beyondTable: boolean;
  /** N m; zero where it is not counted or not known. */
  at(pitchDeg: number): number;
}

/**
 * Everything derived from the design, kept up to date by `live`. The arrays are updated in place: read them when
 * told of a change, do not keep them.
 */
export interface HeadReading {
  /** Grows by one with every change of anything derived from the design. */
  readonly revision: number;
  readonly order: readonly string[];
  part(id: string): PartReading | undefined;
  readonly rotor: RotorConditions;
  readonly usedPitchDeg: number;
  /** Sum of all visible parts that turn with the grip, about the grip origin. A push rod is not among them. */
  readonly totals: Moments;
  /** The share that torque offset and precone add, N m: its amplitude. */
  readonly offAxisMoment: number;
  readonly terms: readonly TermReading[];
  /** Rest and flee angles in [-90, 90] degrees. */
  readonly equilibria: Equilibria;
  /** The greatest moment that mass of this spread could make, N m: rounding is judged against it. */
  readonly momentScale: number;
  /** Pitches in [-90, 90] where the arm goes over centre, degrees; empty without an arm. */
  readonly overCentreDeg: readonly number[];
  /** Null without an arm. */
  readonly linkage: LinkageReading | null;
  readonly friction: FrictionReading;
  /** Pitch intervals in [-90, 90] where friction holds the grip, degrees; empty where friction is not counted or zero. */
  readonly bandsDeg: readonly (readonly [number, number])[];
  readonly air: HeadAir;
  readonly curve: CurveSamples;
  /** Total moment at a pitch, N m. */
  momentAt(pitchDeg: number): number;
  /** Push-rod force at a pitch, N, tension positive; null without an arm, over centre or out of reach. */
  forceAt(pitchDeg: number): number | null;
  /** Push-rod force that a moment of one grip makes at a pitch, N; null as above. */
  forceOf(moment: number, pitchDeg: number): number | null;
  /** Force on the slider along +Z, all grips, N; null as above. */
  sliderAt(pitchDeg: number): number | null;
  servoAt(pitchDeg: number): Servo;
  energyAt(pitchDeg: number): number;
  /** Where a blade lies on its bolt at a pitch; null: no part hinges there, or it has no stable angle. */
  lagAt(pitchDeg: number): LagReading | null;
  /** A pitch in use at which the clamp does not hold the blade as drawn, though it counts as clamped; null: it holds. */
  bladeSlipsDeg(): number | null;
  /** What bearings, blade and bolt carry at a pitch, at the design's speed or another. Computed when asked. */
  loadsAt(pitchDeg: number, speedRpm?: number): HeadLoads;
  /** Its bearings alone, at the design's speed: cheap enough for a frame. */
  bearingsAt(pitchDeg: number): HeadLoads['bearings'];
  /** The limit that is met first within the pitch in use; null where none is known. Computed when asked. */
  limitInUse(speedRpm?: number): LimitInUse | null;
  /** Moment, forces and friction against speed at one pitch. Computed when asked. */
  speeds(pitchDeg: number): SpeedSweep;
  /** Gaps of turning parts to the keep-outs through the whole travel. Computed when asked, and remembered. */
  clearance(): HeadClearance;
  /** The height on the shaft under which no turning part comes at any pitch, m; null without parts. Computed when asked. */
  lowestTurning(): number | null;
  /** Computed when asked. */
  verdict(): Verdict;
  balance(): Balance;
}

/** Where the blade lies on its bolt, degrees from where it is drawn, turned about the bolt's axis. */
export interface LagReading {
  /** Clamped: this is what it would do if it were free; nothing of it is counted. */
  readonly hold: 'clamped' | 'free';
  readonly freeDeg: number;
  /** How far friction on the bolt lets it stay from there; null: friction holds it anywhere. */
  readonly bandDeg: readonly [number, number] | null;
  /** What the free angle changes in the feathering moment, N m. */
  readonly moment: number;
}
