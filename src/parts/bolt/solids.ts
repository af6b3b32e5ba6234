import type { Solid } from '../../engine/mass/solid';
import { metresFromMm } from '../../engine/units';
import { chamferedHexagon } from '../chamferedHexagon';
import { coneProfile, domeProfile, hexagon, prism, revolution, tubeProfile } from '../shapes';
import { type BoltValues, threadRadius } from './parameters';
import { unthreadedMm } from './problems';
import { type KeySocket, plainRound, socketedRound } from './socketed';

/**
 * Head, extension, plain shank, run-out and thread, each over its own stretch of z (the bolt's frame, see index). The
 * thread is a cylinder (`threadRadius`), its run-out and chamfered end are frustums: between the chamfer's cone and
 * the crests that it cuts nothing is taken off. A button head is a rim and a zone of a sphere about the axis; a hexagon's
 * chamfer is that of `chamferedHexagon`. Left out: the fillet under the head, the washer face of a hexagon head, the
 * drill point of the socket, knurls and tolerances. A screw's basic thread without chamfers comes out up to 6 % heavy; with the
 * catalogue's chamfers and rolled thread within the least and most that its tolerances allow.
 */
export function boltSolids(values: BoltValues): Solid[] {
  return [...shankSolids(values, keySocket(values)), ...headAndExtension(values)];
}

function headlessOr(values: BoltValues, headHeightMm: number): number {
  return values.headForm === 'none' ? 0 : headHeightMm;
}

function keySocket(values: BoltValues): KeySocket {
  const top = metresFromMm(headlessOr(values, values.headHeightMm) + values.extensionLengthMm);
  return {
    across: metresFromMm(values.socketAcrossMm),
    floor: top - metresFromMm(values.socketDepthMm),
  };
}

/** Everything above z = 0; nothing on a set screw without extension. */
export function headAndExtension(values: BoltValues): Solid[] {
  const shoulder = headlessOr(values, metresFromMm(values.headHeightMm));
  const top = metresFromMm(headlessOr(values, values.headHeightMm) + values.extensionLengthMm);
  const socket = keySocket(values);
  const solids = values.headForm === 'none' ? [] : headSolids(values, shoulder, socket);
  if (values.extensionLengthMm > 0) {
    const radius = metresFromMm(values.extensionDiameterMm) / 2;
    const outer = plainRound(radius, shoulder, top);
    solids.push(...socketedRound('extension', values.densityKgM3, outer, socket));
  }
  return solids;
}

/** Thread, run-out and plain shank, from the end up to z = 0. */
function shankSolids(values: BoltValues, socket: KeySocket): Solid[] {
  const density = values.densityKgM3;
  const end = -metresFromMm(values.lengthMm);
  const threadTop = Math.min(0, end + metresFromMm(values.threadLengthMm));
  const diameter = metresFromMm(values.shankDiameterMm);
  const pitch = metresFromMm(values.threadPitchMm);
  const mean = threadRadius(values.threadForm, diameter, pitch);
  const point = metresFromMm(values.pointDiameterMm) / 2;
  const pointTop = point > 0 ? end + mean - point : end;
  const thread = plainRound(mean, pointTop, threadTop);
  const solids = socketedRound('thread', density, thread, socket);
  if (point > 0) {
    solids.push(revolution('point', density, coneProfile(point, mean, end, pointTop)));
  }
  const rest = unthreadedMm(values);
  if (rest <= 0) return solids;
  const fades = values.threadRunOutMm < rest;
  const shankFrom = fades ? threadTop + metresFromMm(values.threadRunOutMm) : 0;
  if (values.threadRunOutMm > 0) {
    const profile = coneProfile(mean, diameter / 2, threadTop, shankFrom);
    solids.push(revolution('run-out', density, profile));
  }
  if (fades) solids.push(revolution('shank', density, tubeProfile(0, diameter / 2, shankFrom, 0)));
  return solids;
}

function headSolids(values: BoltValues, height: number, socket: KeySocket): Solid[] {
  const density = values.densityKgM3;
  if (values.headForm === 'hexagon') return hexagonHead(values, height, socket);
  const radius = metresFromMm(values.headDiameterMm) / 2;
  if (values.headForm === 'button') {
    const flat = metresFromMm(values.headTopDiameterMm) / 2;
    const outer = domeProfile(radius, metresFromMm(values.headRimHeightMm), flat, height);
    return socketedRound('head', density, outer, socket);
  }
  const chamfer = metresFromMm(values.headChamferMm);
  const plain = plainRound(radius, 0, height);
  const chamfered = [plain[0], [radius, height - chamfer], [radius - chamfer, height]] as const;
  return socketedRound('head', density, chamfer > 0 ? chamfered : plain, socket);
}

/** The chamfered bar, pierced above the floor of the socket. */
function hexagonHead(values: BoltValues, height: number, socket: KeySocket): Solid[] {
  const density = values.densityKgM3;
  const across = metresFromMm(values.headDiameterMm);
  const chamfer = metresFromMm(values.headChamferMm);
  const solids: Solid[] = [];
  for (const piece of chamferedHexagon(across, [0, height], 0, chamfer)) {
    const { outer, from, to } = piece;
    const name = piece.chamfer ? 'head chamfer' : 'head';
    const split = Math.min(to, Math.max(from, socket.floor));
    if (split > from) solids.push(prism(name, density, { outer, from, to: split }));
    if (split < to) {
      const ring = { outer, holes: [hexagon(socket.across)], from: split, to };
      solids.push(prism(`${name} round the key socket`, density, ring));
    }
  }
  return solids;
}
