import type { Radians } from '../units';
import { SOLVED, StationInflow } from './inflow';
import type { AirSection } from './section';

/**
 * A blade cut into stations, all arrays of one length; the blade is straight along grip x, its radius measured from
 * the shaft. Forces are taken as constant over a station's width.
 */
export interface BladeGeometry {
  /** Middle of the station from the shaft, m; rootRadius < radius < tipRadius. */
  readonly stations: Float64Array;
  readonly widths: Float64Array;
  readonly chords: Float64Array;
  /** Quarter-chord point from the feathering axis in the grip frame, m: ahead (y) and up (z). */
  readonly quarterChordY: Float64Array;
  readonly quarterChordZ: Float64Array;
  /** Nose up against the grip at pitch zero, rad. */
  readonly twist: Float64Array;
  readonly tipRadius: number;
  readonly rootRadius: number;
}

export interface HoverConditions {
  /** W >= 0, rad/s. */
  readonly angularSpeed: number;
  readonly bladeCount: number;
  /** kg/m^3 */
  readonly density: number;
  /** Dynamic, Pa s. */
  readonly viscosity: number;
  readonly tipLoss: boolean;
  readonly rootLoss: boolean;
}

/** Totals are NaN when a station has no solution (`unsolved` > 0): a gap, never a zero. */
export interface HoverSolution {
  /** All blades, N, along +Z. */
  thrust: number;
  /** All blades, N m, positive where the air brakes. */
  shaftTorque: number;
  /** W. */
  power: number;
  /** The part of the power that drives the induced velocity, W. */
  inducedPower: number;
  /** One blade about the feathering axis, N m, positive raises the leading edge. */
  featheringMoment: number;
  /** One blade: int r dT about the shaft, N m. */
  flapMoment: number;
  /** One blade: in-plane force along -Y, N. */
  dragForce: number;
  /** One blade: its moment about the shaft, N m; over dragForce it is the radius where the force acts. */
  dragTorque: number;
  /** Thrust of all annuli by momentum, N: equals `thrust` when solved. */
  momentumThrust: number;
  /** Stations without solution. */
  unsolved: number;
  /** Largest |blade - momentum| thrust of a station over the largest force of a station (per length). */
  worstResidual: number;
  /** Stations whose section answered outside its own data, see `outside`. */
  outsideStations: number;
  readonly inflowAngle: Float64Array;
  readonly angleOfAttack: Float64Array;
  /** One blade, per length of span: N/m, N, N, and blade thrust less momentum thrust, N/m. */
  readonly thrustPerLength: Float64Array;
  readonly torquePerLength: Float64Array;
  readonly momentPerLength: Float64Array;
  readonly residual: Float64Array;
  /** SOLVED, SECTION_NOT_FINITE, NO_BRACKET or SECTION_JUMPS. */
  readonly status: Uint8Array;
  /** Sum of OUTSIDE_ANGLE, BELOW_REYNOLDS, ABOVE_REYNOLDS. */
  readonly outside: Uint8Array;
  /** Working memory of the solver. */
  readonly station: StationInflow;
}

const NO_SECTION: AirSection = { name: 'none', coefficients: (_angle, _reynolds, out) => out };

export function createHoverSolution(stationCount: number): HoverSolution {
  return {
    thrust: 0,
    shaftTorque: 0,
    power: 0,
    inducedPower: 0,
    featheringMoment: 0,
    flapMoment: 0,
    dragForce: 0,
    dragTorque: 0,
    momentumThrust: 0,
    unsolved: 0,
    worstResidual: 0,
    outsideStations: 0,
    inflowAngle: new Float64Array(stationCount),
    angleOfAttack: new Float64Array(stationCount),
    thrustPerLength: new Float64Array(stationCount),
    torquePerLength: new Float64Array(stationCount),
    momentPerLength: new Float64Array(stationCount),
    residual: new Float64Array(stationCount),
    status: new Uint8Array(stationCount),
    outside: new Uint8Array(stationCount),
    station: new StationInflow(NO_SECTION),
  };
}

/**
 * Air forces of a hovering rotor without climb at one pitch, by blade elements and momentum, each annulus by itself
 * (`StationInflow` has the equation, its proof and what is left out). Pitch may be any angle of either sign.
 *
 * Force on a station in the rotor frame: thrust along Z, drag along -Y. In the grip frame, turned by the pitch t,
 * F_y = -H cos t + T sin t and F_z = H sin t + T cos t act at the quarter-chord point, so that per length
 *
 *   M = y F_z - z F_y + q c^2 C_m,     q = rho (W r / cos p)^2 / 2.
 *
 * An estimate, unlike the inertial moment: steady, no wake contraction, no compressibility, no torque offset or
 * precone, sections as in two-dimensional flow. Throws on a geometry or condition that no rotor can have. Allocates
 * nothing. At standstill all is zero.
 */
export function solveHover(
  blade: BladeGeometry,
  section: AirSection,
  conditions: HoverConditions,
  pitch: Radians,
  out: HoverSolution,
): HoverSolution {
  requireRotor(blade, conditions, pitch, out);
  clear(out);
  if (conditions.angularSpeed === 0) return out;
  let largest = 0;
  let worst = 0;
  out.station.section = section;
  for (let i = 0; i < blade.stations.length; i++) {
    solveStation(blade, conditions, pitch, i, out);
    const drag = out.torquePerLength[i] / blade.stations[i];
    largest = Math.max(largest, Math.hypot(out.thrustPerLength[i], drag));
    worst = Math.max(worst, Math.abs(out.residual[i]));
  }
  out.worstResidual = worst === 0 ? 0 : worst / largest;
  out.shaftTorque = conditions.bladeCount * out.dragTorque;
  out.power = out.shaftTorque * conditions.angularSpeed;
  return out;
}

function solveStation(
  blade: BladeGeometry,
  conditions: HoverConditions,
  pitch: number,
  i: number,
  out: HoverSolution,
): void {
  const { bladeCount, density, angularSpeed } = conditions;
  const station = out.station;
  const r = blade.stations[i];
  const chord = blade.chords[i];
  const width = blade.widths[i];
  const speed = angularSpeed * r;
  const half = bladeCount / 2;
  station.pitch = pitch + blade.twist[i];
  station.quarterSolidity = (bladeCount * chord) / (8 * Math.PI * r);
  station.tipFactor = conditions.tipLoss
    ? (half * (blade.tipRadius - r)) / r
    : Number.POSITIVE_INFINITY;
  station.rootFactor = conditions.rootLoss
    ? (half * (r - blade.rootRadius)) / blade.rootRadius
    : Number.POSITIVE_INFINITY;
  station.reynolds = (density * speed * chord) / conditions.viscosity;
  const status = station.solve();
  out.status[i] = status;
  if (status !== SOLVED) out.unsolved++;

  // A gap is NaN and makes the totals NaN.
  const inflow = status === SOLVED ? station.inflow : Number.NaN;
  const { lift, drag, moment, outside } = station.coefficients;
  const sine = Math.sin(inflow);
  const cosine = Math.cos(inflow);
  const pressureChord = 0.5 * density * (speed / cosine) * (speed / cosine) * chord;
  const thrust = pressureChord * (lift * cosine - drag * sine);
  const inPlane = pressureChord * (lift * sine + drag * cosine);
  const induced = speed * Math.tan(inflow);
  const annulus =
    4 * Math.PI * density * r * station.lossFactor(inflow) * induced * Math.abs(induced);
  const c = Math.cos(pitch);
  const s = Math.sin(pitch);
  const feathering =
    blade.quarterChordY[i] * (inPlane * s + thrust * c) -
    blade.quarterChordZ[i] * (thrust * s - inPlane * c) +
    pressureChord * chord * moment;

  out.inflowAngle[i] = inflow;
  out.angleOfAttack[i] = station.pitch - inflow;
  out.thrustPerLength[i] = thrust;
  out.torquePerLength[i] = inPlane * r;
  out.momentPerLength[i] = feathering;
  out.residual[i] = thrust - annulus / bladeCount;
  out.outside[i] = outside;
  if (outside !== 0) out.outsideStations++;
  out.thrust += bladeCount * thrust * width;
  out.momentumThrust += annulus * width;
  out.inducedPower += bladeCount * thrust * induced * width;
  out.featheringMoment += feathering * width;
  out.flapMoment += thrust * r * width;
  out.dragForce += inPlane * width;
  out.dragTorque += inPlane * r * width;
}

function clear(out: HoverSolution): void {
  out.thrust = 0;
  out.shaftTorque = 0;
  out.power = 0;
  out.inducedPower = 0;
  out.featheringMoment = 0;
  out.flapMoment = 0;
  out.dragForce = 0;
  out.dragTorque = 0;
  out.momentumThrust = 0;
  out.unsolved = 0;
  out.worstResidual = 0;
  out.outsideStations = 0;
  out.inflowAngle.fill(0);
  out.angleOfAttack.fill(0);
  out.thrustPerLength.fill(0);
  out.torquePerLength.fill(0);
  out.momentPerLength.fill(0);
  out.residual.fill(0);
  out.status.fill(SOLVED);
  out.outside.fill(0);
}

/** A programmer's fault throws; designs are checked before they come here. */
function requireRotor(
  blade: BladeGeometry,
  conditions: HoverConditions,
  pitch: number,
  out: HoverSolution,
): void {
  const n = blade.stations.length;
  const { angularSpeed, bladeCount, density, viscosity } = conditions;
  if (!Number.isFinite(pitch)) throw new RangeError(`solveHover(): pitch is not finite: ${pitch}`);
  if (!(angularSpeed >= 0 && angularSpeed < Number.POSITIVE_INFINITY))
    throw new RangeError(`solveHover(): angularSpeed is negative or not finite: ${angularSpeed}`);
  if (!(Number.isInteger(bladeCount) && bladeCount >= 1))
    throw new RangeError(`solveHover(): bladeCount is not a positive whole number: ${bladeCount}`);
  if (!(density > 0 && viscosity > 0 && density < 1e9 && viscosity < 1e9))
    throw new RangeError(
      `solveHover(): density or viscosity is not positive: ${density}, ${viscosity}`,
    );
  const same =
    blade.widths.length === n &&
    blade.chords.length === n &&
    blade.quarterChordY.length === n &&
    blade.quarterChordZ.length === n &&
    blade.twist.length === n &&
    out.status.length === n;
  if (!same) throw new RangeError('solveHover(): blade arrays and solution differ in length');
  for (let i = 0; i < n; i++) {
    const r = blade.stations[i];
    if (!(r > 0 && r > blade.rootRadius && r < blade.tipRadius))
      throw new RangeError(`solveHover(): station ${i} is not between root and tip: ${r}`);
    if (!(blade.chords[i] >= 0 && blade.widths[i] > 0 && Number.isFinite(blade.chords[i])))
      throw new RangeError(`solveHover(): chord or width of station ${i} is not positive`);
    if (!Number.isFinite(blade.twist[i] + blade.quarterChordY[i] + blade.quarterChordZ[i]))
      throw new RangeError(`solveHover(): twist or arm of station ${i} is not finite`);
  }
}
