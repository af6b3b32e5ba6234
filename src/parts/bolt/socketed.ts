import type { Outline, OutlineVertex, Solid } from '../../engine/mass/solid';
import { circle, hexagon, prism, revolution } from '../shapes';

/** A hexagonal hole from z = floor up through everything; metres, the bolt's frame. */
export interface KeySocket {
  readonly across: number;
  readonly floor: number;
}

/** The side of a turned piece: points (radius, z) with z rising, the last no farther from the axis than any above the floor. */
type Side = readonly [OutlineVertex, ...OutlineVertex[]];

/** The side of a cylinder. */
export function plainRound(
  radius: number,
  from: number,
  to: number,
): readonly [OutlineVertex, OutlineVertex] {
  return [
    [radius, from],
    [radius, to],
  ];
}

/**
 * A turned piece with the key socket in it, as disjoint solids: within the radius of its top, above the floor, a prism
 * with a hexagonal hole; all the rest a revolution. For a plain cylinder that is a disc below the floor.
 */
export function socketedRound(
  name: string,
  density: number,
  side: Side,
  socket: KeySocket,
): Solid[] {
  const [first, last] = [side[0], side[side.length - 1]];
  const [core, to] = last;
  const from = first[1];
  const split = Math.min(to, Math.max(from, socket.floor));
  const pieces: Solid[] = [];
  if (split === to) {
    pieces.push(revolution(name, density, [[0, from], ...side, [0, to]]));
    return pieces;
  }
  if (side.some(([radius]) => radius !== core)) {
    pieces.push(revolution(name, density, roundTheCore(side, split)));
  } else if (split > from) {
    pieces.push(revolution(name, density, [[0, from], first, [core, split], [0, split]]));
  }
  const ring = { outer: circle(core), holes: [hexagon(socket.across)], from: split, to };
  pieces.push(prism(`${name} round the key socket`, density, ring));
  return pieces;
}

/** What is left of the piece outside the pierced core that begins at z = split. */
function roundTheCore(side: Side, split: number): Outline {
  const [core] = side[side.length - 1];
  const from = side[0][1];
  if (split > from) return [[0, from], ...side, [core, split], [0, split]];
  return [...side, [core, from]];
}
