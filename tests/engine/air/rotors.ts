import type { BladeGeometry, HoverConditions } from '../../../src/engine/air/hover';
import { createHoverSolution, solveHover } from '../../../src/engine/air/hover';
import type { AirSection, SectionCoefficients } from '../../../src/engine/air/section';
import { angularSpeedFromRpm, radians, radiansFromDegrees } from '../../../src/engine/units';

/** An untwisted blade of one chord, stations of one width, quarter chord at (y, z) from the feathering axis. */
export function plainBlade(
  rootRadius: number,
  tipRadius: number,
  chord: number,
  count: number,
  arm = { y: 0, z: 0 },
): BladeGeometry {
  const width = (tipRadius - rootRadius) / count;
  const filled = (value: number) => new Float64Array(count).fill(value);
  return {
    stations: Float64Array.from({ length: count }, (_, k) => rootRadius + (k + 0.5) * width),
    widths: filled(width),
    chords: filled(chord),
    quarterChordY: filled(arm.y),
    quarterChordZ: filled(arm.z),
    twist: filled(0),
    tipRadius,
    rootRadius,
  };
}

export function conditionsAt(speedRpm: number, bladeCount: number): HoverConditions {
  return {
    angularSpeed: angularSpeedFromRpm(speedRpm),
    bladeCount,
    density: 1.225,
    viscosity: 1.7894e-5,
    tipLoss: true,
    rootLoss: false,
  };
}

/** T / (rho pi R^2 (W R)^2). */
export function thrustCoefficient(
  blade: BladeGeometry,
  section: AirSection,
  conditions: HoverConditions,
  pitchDeg: number,
): number {
  const solution = createHoverSolution(blade.stations.length);
  solveHover(blade, section, conditions, radiansFromDegrees(pitchDeg), solution);
  const tipSpeed = conditions.angularSpeed * blade.tipRadius;
  return (
    solution.thrust / (conditions.density * Math.PI * blade.tipRadius ** 2 * tipSpeed * tipSpeed)
  );
}

/** A section by three functions of the angle. */
export function sectionOf(
  lift: (angle: number) => number,
  drag: (angle: number) => number = () => 0,
  moment: (angle: number) => number = () => 0,
): AirSection {
  return {
    name: 'test',
    coefficients: (angle: number, _reynolds: number, out: SectionCoefficients) => {
      out.lift = lift(angle);
      out.drag = drag(angle);
      out.moment = moment(angle);
      out.outside = 0;
      return out;
    },
  };
}

export const DEGREE = radians(Math.PI / 180);
