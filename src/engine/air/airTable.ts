import { curveThrough, potentialAt, potentialOf, slopeAt, valueAt } from '../math/smoothCurve';
import { type Radians, radiansFromDegrees } from '../units';
import { airNodes } from './airNodes';
import { type BladeGeometry, createHoverSolution, type HoverConditions, solveHover } from './hover';
import type { AirSection } from './section';

/**
 * Air over a range of pitches, for the drag path: solved at the nodes, between them cubics continuous with their
 * slope. Outside the range and next to a pitch without solution every curve is NaN.
 */
export interface AirTable {
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly stepDeg: number;
  /** The nodes: every step, and closer ones where the lift of an untwisted blade changes sign. */
  readonly nodesDeg: Float64Array;
  /** Pitches solved, one a node. */
  readonly solves: number;
  /** Nodes with at least one station without solution. */
  readonly gaps: number;
  /** Stations without solution, and those whose section answered outside its data, at each node. */
  readonly unsolved: Uint16Array;
  readonly outsideStations: Uint16Array;
  /** One blade, about the feathering axis, N m, positive raises the leading edge. */
  moment(pitch: Radians): number;
  /** dM/dt of the same curve, N m/rad. */
  slope(pitch: Radians): number;
  /**
   * V with M = -dV/dt as for the inertial moment, J: minus the exact integral of the curve, zero at pitch zero (at the
   * range's near end where zero lies outside). NaN beyond a gap.
   */
  energy(pitch: Radians): number;
  /** All blades, N. */
  thrust(pitch: Radians): number;
  /** All blades, on the shaft, N m. */
  torque(pitch: Radians): number;
  /** One blade: int r dT about the shaft, N m; its drag along -Y, N, and the moment of it about the shaft, N m. */
  flapMoment(pitch: Radians): number;
  dragForce(pitch: Radians): number;
  dragTorque(pitch: Radians): number;
}

/** More nodes than this is a slip of unit. */
const MOST_NODES = 100_000;

/**
 * Solves the air at every step from `fromDeg` to `toDeg` (the step is shortened to fit a whole number of times). Where
 * the lift of a blade changes sign, thrust starts like t|t| and near 90 degrees the inflow like the root of t: there,
 * for a blade twisted by less than a step, nodes are added down to a sixteenth of it (`airNodes`). Between nodes the
 * error at one degree is below 0.2 % of the largest moment of the range, see the test. Throws where the range is empty
 * or not finite, and where `solveHover` throws.
 */
export function buildAirTable(
  blade: BladeGeometry,
  section: AirSection,
  conditions: HoverConditions,
  fromDeg: number,
  toDeg: number,
  stepDeg = 1,
): AirTable {
  const intervals = Math.max(1, Math.ceil((toDeg - fromDeg) / stepDeg - 1e-9));
  if (!(toDeg > fromDeg && stepDeg > 0 && intervals < MOST_NODES))
    throw new RangeError(
      `buildAirTable(): range or step is wrong: ${fromDeg}, ${toDeg}, ${stepDeg}`,
    );
  const step = (toDeg - fromDeg) / intervals;
  const nodesDeg = airNodes(fromDeg, toDeg, intervals, blade.twist);
  const count = nodesDeg.length;
  const moments = new Float64Array(count);
  const thrusts = new Float64Array(count);
  const torques = new Float64Array(count);
  const flaps = new Float64Array(count);
  const drags = new Float64Array(count);
  const dragTorques = new Float64Array(count);
  const unsolved = new Uint16Array(count);
  const outsideStations = new Uint16Array(count);
  const solution = createHoverSolution(blade.stations.length);
  let gaps = 0;
  for (let k = 0; k < count; k++) {
    solveHover(blade, section, conditions, radiansFromDegrees(nodesDeg[k]), solution);
    moments[k] = solution.featheringMoment;
    thrusts[k] = solution.thrust;
    torques[k] = solution.shaftTorque;
    flaps[k] = solution.flapMoment;
    drags[k] = solution.dragForce;
    dragTorques[k] = solution.dragTorque;
    unsolved[k] = solution.unsolved;
    outsideStations[k] = solution.outsideStations;
    if (solution.unsolved > 0) gaps++;
  }
  const nodes = nodesDeg.map((deg) => radiansFromDegrees(deg));
  const moment = curveThrough(nodes, moments);
  const thrust = curveThrough(nodes, thrusts);
  const torque = curveThrough(nodes, torques);
  const flap = curveThrough(nodes, flaps);
  const drag = curveThrough(nodes, drags);
  const dragTorque = curveThrough(nodes, dragTorques);
  const potential = potentialOf(moment);
  return {
    fromDeg,
    toDeg,
    stepDeg: step,
    nodesDeg,
    solves: count,
    gaps,
    unsolved,
    outsideStations,
    moment: (pitch) => valueAt(moment, pitch),
    slope: (pitch) => slopeAt(moment, pitch),
    energy: (pitch) => potentialAt(moment, potential, pitch),
    thrust: (pitch) => valueAt(thrust, pitch),
    torque: (pitch) => valueAt(torque, pitch),
    flapMoment: (pitch) => valueAt(flap, pitch),
    dragForce: (pitch) => valueAt(drag, pitch),
    dragTorque: (pitch) => valueAt(dragTorque, pitch),
  };
}
