import { airfoilHalfThickness } from '../../engine/mass/airfoil';
import type { AirfoilLoft, AirfoilStation } from '../../engine/mass/solid';
import {
  addPoint,
  addQuad,
  addTriangle,
  createSurface,
  type GrowingSurface,
  type Surface,
} from './surface';

const SKIN = 0;
const TRAILING_EDGE = 1;
const ROOT = 2;
const TIP = 3;

/**
 * A ruled airfoil loft: the same chord fractions at both ends, joined straight; the open trailing edge closed by a flat.
 * Chord fractions follow s = (1 - cos phi) / 2 in even steps of phi, `segmentsPerTurn` / 2 to a side (always even), so a
 * section falls short by the same share as a circle. Where thickness and chord taper differently the panels are twisted;
 * their diagonals alternate along the chord, alike above and below, so that what one panel gains the next one loses.
 */
export function loftSurface(solid: AirfoilLoft, segmentsPerTurn: number): Surface {
  const surface = createSurface();
  const panels = 2 * Math.max(4, Math.ceil(segmentsPerTurn / 4));
  const inward = solid.tip.x < solid.root.x;
  const low = inward ? solid.tip : solid.root;
  const high = inward ? solid.root : solid.tip;
  const count = 2 * panels + 1;
  addSection(surface, low, panels);
  addSection(surface, high, panels);
  // Seen from the tip a section runs counter-clockwise: trailing edge, below, leading edge, above.
  for (let i = 0; i < count - 1; i++) {
    const [a, b, c, d] = [i, i + 1, count + i + 1, count + i];
    if (i % 2 === 0) addQuad(surface, SKIN, a, b, c, d);
    else addQuad(surface, SKIN, b, c, d, a);
  }
  addQuad(surface, TRAILING_EDGE, count - 1, 0, count, 2 * count - 1);
  for (let i = 0; i < panels; i++) {
    const [below, nextBelow] = [i, i + 1];
    const [above, nextAbove] = [count - 1 - i, count - 2 - i];
    if (nextBelow === nextAbove) {
      addTriangle(surface, inward ? TIP : ROOT, below, above, nextBelow);
      addTriangle(surface, inward ? ROOT : TIP, count + below, count + nextBelow, count + above);
      continue;
    }
    addQuad(surface, inward ? TIP : ROOT, below, above, nextAbove, nextBelow);
    const [p, q, r, s] = [below, nextBelow, nextAbove, above].map((k) => count + k);
    addQuad(surface, inward ? ROOT : TIP, p, q, r, s);
  }
  return surface;
}

/** Lower trailing edge to leading edge to upper trailing edge, the leading edge once. */
function addSection(surface: GrowingSurface, station: AirfoilStation, panels: number): void {
  for (let k = -panels; k <= panels; k++) {
    const fraction = (1 - Math.cos((Math.PI * k) / panels)) / 2;
    const half = Math.sign(k) * airfoilHalfThickness(fraction) * station.thickness;
    const y = station.leadingEdgeY - fraction * station.chord;
    addPoint(surface, station.x, y, station.z + half);
  }
}
