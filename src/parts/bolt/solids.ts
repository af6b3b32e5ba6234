import type { Solid } from '../../engine/mass/solid';
import { threadMeanRadius } from '../../engine/mass/thread';
import { metresFromMm } from '../../engine/units';
import { circle, hexagon, prism, revolution, tubeProfile } from '../shapes';
import type { BoltValues } from './parameters';

/**
 * Head, extension, plain shank and thread, each over its own stretch of z (the bolt's frame, see index). Where the key
 * socket runs, the round is a prism with a hexagonal hole. The thread is the cylinder of equal volume (`threadMeanRadius`,
 * which states the approximation). Left out: chamfers, the fillet under the head, the drill point of the socket
 * and the tolerances, which together make a catalogue M3 cap screw up to about 6 % lighter.
 */
export function boltSolids(values: BoltValues): Solid[] {
  const density = values.densityKgM3;
  const end = -metresFromMm(values.lengthMm);
  const runOut = Math.min(0, end + metresFromMm(values.threadLengthMm));
  const diameter = metresFromMm(values.shankDiameterMm);
  const threadRadius = threadMeanRadius(diameter, metresFromMm(values.threadPitchMm));
  const solids: Solid[] = [
    revolution('thread', density, tubeProfile(0, threadRadius, end, runOut)),
  ];
  if (values.threadLengthMm < values.lengthMm) {
    solids.push(revolution('shank', density, tubeProfile(0, diameter / 2, runOut, 0)));
  }
  const shoulder = metresFromMm(values.headHeightMm);
  const top = metresFromMm(values.headHeightMm + values.extensionLengthMm);
  const floor = top - metresFromMm(values.socketDepthMm);
  const socket = metresFromMm(values.socketAcrossMm);
  solids.push(...socketed('head', density, values.headDiameterMm, 0, shoulder, floor, socket));
  if (values.extensionLengthMm > 0) {
    const { extensionDiameterMm } = values;
    solids.push(
      ...socketed('extension', density, extensionDiameterMm, shoulder, top, floor, socket),
    );
  }
  return solids;
}

/** A round from z = from to z = to with the key socket above z = floor: a plain piece below, a pierced one above. */
function socketed(
  name: string,
  density: number,
  diameterMm: number,
  from: number,
  to: number,
  floor: number,
  socketAcross: number,
): Solid[] {
  const radius = metresFromMm(diameterMm) / 2;
  const split = Math.min(to, Math.max(from, floor));
  const pieces: Solid[] = [];
  if (split > from) {
    pieces.push(revolution(name, density, tubeProfile(0, radius, from, split)));
  }
  if (split < to) {
    const ring = { outer: circle(radius), holes: [hexagon(socketAcross)], from: split, to };
    pieces.push(prism(`${name} round the key socket`, density, ring));
  }
  return pieces;
}
