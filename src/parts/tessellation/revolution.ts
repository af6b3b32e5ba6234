import type { Revolution } from '../../engine/mass/solid';
import { flatten } from './flatten';
import { addPoint, addQuad, addTriangle, createSurface, type Surface } from './surface';

/** A profile point nearer to the axis than this share of the largest radius lies on it. */
const ON_AXIS = 1e-9;

/** The flattened profile swept round z in `segmentsPerTurn` steps; points on the axis are single poles. */
export function revolutionSurface(solid: Revolution, segmentsPerTurn: number): Surface {
  const { points, smooth } = flatten(solid.profile, segmentsPerTurn);
  const surface = createSurface();
  const largest = Math.max(...points.map(([radius]) => radius));
  const { cosines, sines } = unitCircle(segmentsPerTurn);
  const rings = points.map(([radius, z]) => {
    if (radius <= ON_AXIS * largest) return [addPoint(surface, 0, 0, z)];
    const ring: number[] = [];
    for (let k = 0; k < segmentsPerTurn; k++) {
      ring.push(addPoint(surface, radius * cosines[k], radius * sines[k], z));
    }
    return ring;
  });
  // The profile runs counter-clockwise in (radius, z), so the way round the axis, then along it, gives the outside.
  for (let i = 0; i < rings.length; i++) {
    const p = rings[i];
    const q = rings[(i + 1) % rings.length];
    if (p.length === 1 && q.length === 1) continue;
    for (let k = 0; k < segmentsPerTurn; k++) {
      const next = (k + 1) % segmentsPerTurn;
      if (p.length === 1) addTriangle(surface, smooth[i], p[0], q[next], q[k]);
      else if (q.length === 1) addTriangle(surface, smooth[i], p[k], p[next], q[0]);
      else addQuad(surface, smooth[i], p[k], p[next], q[next], q[k]);
    }
  }
  return surface;
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
