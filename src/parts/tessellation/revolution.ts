import type { Revolution } from '../../engine/mass/solid';
import { sameData } from '../sameData';
import { flatten } from './flatten';
import { addQuad, addTriangle, createSurface, type Surface } from './surface';

/** A profile point nearer to the axis than this share of the largest radius lies on it. */
const ON_AXIS = 1e-9;

/** What of a swept profile does not depend on where its points lie. */
interface Net {
  readonly onAxis: readonly boolean[];
  readonly smooth: readonly number[];
  readonly segmentsPerTurn: number;
  readonly triangles: Uint32Array;
  readonly faces: readonly number[];
}

/** The flattened profile swept round z in `segmentsPerTurn` steps; points on the axis are single poles. */
export function revolutionSurface(solid: Revolution, segmentsPerTurn: number): Surface {
  const { points, smooth } = flatten(solid.profile, segmentsPerTurn);
  const largest = Math.max(...points.map(([radius]) => radius));
  const onAxis = points.map(([radius]) => radius <= ON_AXIS * largest);
  const { triangles, faces } = netOf(onAxis, smooth, segmentsPerTurn);
  return { positions: sweptPoints(points, onAxis, segmentsPerTurn), triangles, faces };
}

function sweptPoints(
  points: readonly (readonly [number, number])[],
  onAxis: readonly boolean[],
  segmentsPerTurn: number,
): Float64Array {
  const { cosines, sines } = unitCircle(segmentsPerTurn);
  const count = onAxis.reduce((sum, isPole) => sum + (isPole ? 1 : segmentsPerTurn), 0);
  const positions = new Float64Array(3 * count);
  let at = 0;
  for (let i = 0; i < points.length; i++) {
    const radius = points[i][0];
    const z = points[i][1];
    for (let k = 0; k < (onAxis[i] ? 1 : segmentsPerTurn); k++) {
      positions[at] = onAxis[i] ? 0 : radius * cosines[k];
      positions[at + 1] = onAxis[i] ? 0 : radius * sines[k];
      positions[at + 2] = z;
      at += 3;
    }
  }
  return positions;
}

/** Of a piece that grows under the hand the net stays: so many are remembered. */
const REMEMBERED = 8;
const nets: Net[] = [];

function netOf(
  onAxis: readonly boolean[],
  smooth: readonly number[],
  segmentsPerTurn: number,
): Net {
  const known = nets.find(
    (net) =>
      net.segmentsPerTurn === segmentsPerTurn &&
      sameData(net.onAxis, onAxis) &&
      sameData(net.smooth, smooth),
  );
  if (known) return known;
  const made = { onAxis, smooth, segmentsPerTurn, ...woven(onAxis, smooth, segmentsPerTurn) };
  nets.unshift(made);
  if (nets.length > REMEMBERED) nets.pop();
  return made;
}

/** The profile runs counter-clockwise in (radius, z), so the way round the axis, then along it, gives the outside. */
function woven(
  onAxis: readonly boolean[],
  smooth: readonly number[],
  segmentsPerTurn: number,
): Pick<Net, 'triangles' | 'faces'> {
  const surface = createSurface();
  let first = 0;
  const firsts = onAxis.map((isPole) => {
    const here = first;
    first += isPole ? 1 : segmentsPerTurn;
    return here;
  });
  for (let i = 0; i < onAxis.length; i++) {
    const j = (i + 1) % onAxis.length;
    const [p, q] = [firsts[i], firsts[j]];
    if (onAxis[i] && onAxis[j]) continue;
    for (let k = 0; k < segmentsPerTurn; k++) {
      const next = (k + 1) % segmentsPerTurn;
      if (onAxis[i]) addTriangle(surface, smooth[i], p, q + next, q + k);
      else if (onAxis[j]) addTriangle(surface, smooth[i], p + k, p + next, q);
      else addQuad(surface, smooth[i], p + k, p + next, q + next, q + k);
    }
  }
  return { triangles: Uint32Array.from(surface.triangles), faces: surface.faces };
}

interface UnitCircle {
  readonly cosines: Float64Array;
  readonly sines: Float64Array;
}

/** By their number of steps. */
const circles = new Map<number, UnitCircle>();

function unitCircle(segmentsPerTurn: number): UnitCircle {
  const known = circles.get(segmentsPerTurn);
  if (known) return known;
  const angles = Float64Array.from(
    { length: segmentsPerTurn },
    (_, k) => (2 * Math.PI * k) / segmentsPerTurn,
  );
  const made = { cosines: angles.map(Math.cos), sines: angles.map(Math.sin) };
  circles.set(segmentsPerTurn, made);
  return made;
}
