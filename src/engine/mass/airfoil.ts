import { gaussLegendre } from '../math/gaussLegendre';

/**
 * The symmetric four-digit thickness distribution of NACA Report 460 (Jacobs, Ward and Pinkerton, 1933), with the
 * report's open trailing edge (last coefficient -0.1015): half-thickness over greatest thickness at the chord
 * fraction `station` in [0, 1] from the leading edge,
 *   f = 5 (0.2969 sqrt(s) - 0.1260 s - 0.3516 s^2 + 0.2843 s^3 - 0.1015 s^4).
 */
export function airfoilHalfThickness(station: number): number {
  const s = station;
  return 5 * (0.2969 * Math.sqrt(s) + s * (-0.126 + s * (-0.3516 + s * (0.2843 - 0.1015 * s))));
}

/** Height and slope of a camber line at one place of the chord, in chords. */
export interface CamberPoint {
  readonly height: number;
  readonly slope: number;
}

/**
 * The camber line of the four-digit series (NACA Report 460): two parabolas with their common vertex at the chord
 * fraction `position` (in (0, 1)), where the line is `camber` chords above the chord line:
 *   z = m / p^2 (2 p s - s^2) before p,  z = m / (1 - p)^2 ((1 - 2 p) + 2 p s - s^2) behind it.
 */
export function camberLine(camber: number, position: number, station: number): CamberPoint {
  const s = station;
  const p = position;
  const before = s < p;
  const rise = camber / (before ? p * p : (1 - p) * (1 - p));
  const height = rise * ((before ? 0 : 1 - 2 * p) + 2 * p * s - s * s);
  return { height, slope: 2 * rise * (p - s) };
}

/**
 * Section constants for unit chord and unit thickness, chord fraction s from the leading edge:
 *   area = int 2 f ds, first = int 2 f s ds, second = int 2 f s^2 ds, cube = int (2/3) f^3 ds.
 * With s = u^2 every integrand is a polynomial in u of degree <= 25, so a 16-point rule is exact.
 * A section of chord c and thickness t then has area `area` t c, chordwise second moment about the leading edge
 * `second` t c^3 and second moment about its chord line `cube` t^3 c.
 */
export interface SectionConstants {
  readonly area: number;
  readonly first: number;
  readonly second: number;
  readonly cube: number;
}

function integrate(): SectionConstants {
  const rule = gaussLegendre(16);
  let area = 0;
  let first = 0;
  let second = 0;
  let cube = 0;
  for (let k = 0; k < 16; k++) {
    const u = (rule.nodes[k] + 1) / 2;
    const s = u * u;
    const weight = (rule.weights[k] / 2) * 2 * u;
    const f = airfoilHalfThickness(s);
    area += weight * 2 * f;
    first += weight * 2 * f * s;
    second += weight * 2 * f * s * s;
    cube += (weight * 2 * f * f * f) / 3;
  }
  return { area, first, second, cube };
}

export const AIRFOIL_SECTION: SectionConstants = integrate();
