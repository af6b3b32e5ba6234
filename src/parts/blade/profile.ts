import { AIRFOIL_SECTION } from '../../engine/mass/airfoil';
import type { AreaMoments } from '../../engine/mass/outline';
import { sectionMoments } from '../../engine/mass/sectionLoft';
import type { SectionLoft } from '../../engine/mass/solid';
import { metresFromMm } from '../../engine/units';
import type { SpanProfile } from '../contract';
import { airfoilEnds, coreLoft, isPlainSection, outerLoft } from './airfoilShape';
import { densitiesOf } from './bladeSolids';
import type { BladeValues } from './parameters';
import { type Rod, rodsOf } from './rods';

/** Mass of a slice per length, kg/m, and its first moment about the blade's x, kg. */
interface Slice {
  mass: number;
  first: number;
}

/**
 * Mass per length and chordwise centre from the root block's round end to the tip, in the blade's own axes: each value is
 * that of the slice at its station, from the slice's area in closed form. A station on the step from the root block to
 * the airfoil counts as airfoil, on the end of a rod as rod. `count` is at least 2.
 */
export function bladeProfile(values: BladeValues, count: number): SpanProfile {
  const from = -metresFromMm(values.rootWidthMm) / 2;
  const begin = metresFromMm(values.rootLengthMm);
  const tip = metresFromMm(values.lengthMm);
  const x = new Float64Array(count);
  const massPerLength = new Float64Array(count);
  const centreY = new Float64Array(count);
  const rods = rodsOf(values);
  for (let k = 0; k < count; k++) {
    x[k] = k === count - 1 ? tip : from + ((tip - from) * k) / (count - 1);
    const slice: Slice = { mass: 0, first: 0 };
    if (x[k] < begin) addRoot(values, x[k], slice);
    else addAirfoil(values, rods, (x[k] - begin) / (tip - begin), x[k], slice);
    massPerLength[k] = slice.mass;
    centreY[k] = slice.mass > 0 ? slice.first / slice.mass : Number.NaN;
  }
  return { x, massPerLength, centreY };
}

/** Root block and bushing lie evenly about the bolt axis: no first moment. */
function addRoot(values: BladeValues, x: number, slice: Slice): void {
  const half = metresFromMm(values.rootWidthMm) / 2;
  const hole = chordWidth(metresFromMm(values.boltHoleMm) / 2, x);
  const bush = Math.max(hole, chordWidth(metresFromMm(values.bushDiameterMm) / 2, x));
  const block = (x < 0 ? chordWidth(half, x) : 2 * half) - bush;
  const perArea = block * values.densityKgM3 + (bush - hole) * values.bushDensityKgM3;
  slice.mass += metresFromMm(values.rootBlockThicknessMm) * perArea;
}

/** Width of a circle at the distance x from its centre. */
function chordWidth(radius: number, x: number): number {
  return 2 * Math.sqrt(Math.max(0, (radius - x) * (radius + x)));
}

function addAirfoil(
  values: BladeValues,
  rods: readonly Rod[],
  t: number,
  x: number,
  slice: Slice,
): void {
  const { outer, around } = densitiesOf(values);
  if (isPlainSection(values)) {
    const { root, tip } = airfoilEnds(values);
    const chord = root.chord + t * (tip.chord - root.chord);
    const edge = root.leadingEdgeY + t * (tip.leadingEdgeY - root.leadingEdgeY);
    const mass = outer * chord * (root.thickness + t * (tip.thickness - root.thickness));
    slice.mass += mass * AIRFOIL_SECTION.area;
    slice.first += mass * (AIRFOIL_SECTION.area * edge - AIRFOIL_SECTION.first * chord);
  } else {
    addLoft(outerLoft(values), t, outer, slice);
  }
  const core = values.build === 'skin' ? coreLoft(values) : null;
  if (core) addLoft(core, t, around - outer, slice);
  for (const rod of rods) {
    if (x < rod.fromX || x > rod.toX) continue;
    const square = (density: number, diameter: number) => density * diameter * diameter;
    const quarters = square(rod.density, rod.diameter) - square(rod.density, rod.bore);
    const taken = square(around, rod.diameter);
    const mass = (Math.PI / 4) * (quarters - taken);
    slice.mass += mass;
    slice.first += mass * rod.y;
  }
}

const scratch: AreaMoments = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };

function addLoft(loft: SectionLoft, t: number, density: number, slice: Slice): void {
  sectionMoments(loft, t, scratch);
  const sense = scratch.area < 0 ? -density : density;
  slice.mass += sense * scratch.area;
  slice.first += sense * scratch.x;
}
