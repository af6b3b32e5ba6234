import type { Outline, Solid } from '../../engine/mass/solid';
import { threadMeanRadius } from '../../engine/mass/thread';
import { metresFromMm } from '../../engine/units';
import { chamferedHexagon } from '../chamferedHexagon';
import { circle, hexagon, prism, revolution, tubeProfile } from '../shapes';
import type { NutValues } from './parameters';
import { countersunkEnds } from './problems';

/**
 * Body, collar and closed end, one after the other along z from the clamped face, pierced by the thread; where there is
 * a locking ring, the far end is pierced by the ring's outer diameter instead and the ring sits in it.
 *
 * The thread is a bore of the mean section of the ISO 68-1 profile (`threadMeanRadius`: a tapped thread is cut, not
 * rolled). With a countersink the metal between that bore and the countersink's diameter is a turned piece of its own.
 * The closed end is as wide as what it closes: the collar, or the body where there is none (which then has no chamfer
 * there). Left out: a washer face, the lip turned in over a ring, tolerances. Without chamfers and countersinks a common
 * M3 nut comes out up to 4 % heavy.
 */
export function nutSolids(values: NutValues): Solid[] {
  const density = values.densityKgM3;
  const bodyEnd = metresFromMm(values.heightMm);
  const threadEnd = metresFromMm(values.heightMm + values.collarHeightMm);
  const bores = boresOf(values, threadEnd);
  const solids = bodySolids(values, bodyEnd, bores);
  let outer = bodyOutline(values);
  if (values.collarHeightMm > 0) {
    outer = circle(metresFromMm(values.collarDiameterMm) / 2);
    solids.push(...pierced('collar', density, { outer, from: bodyEnd, to: threadEnd }, bores));
  }
  if (values.countersinkDiameterMm > 0) solids.push(countersunkThread(values, bores));
  if (values.insertHeightMm > 0) {
    const inner = metresFromMm(values.insertInnerDiameterMm) / 2;
    const profile = tubeProfile(inner, bores.ring, bores.ringFrom, threadEnd);
    solids.push(revolution('locking ring', values.insertDensityKgM3, profile));
  }
  if (values.closedEndMm > 0) {
    const to = threadEnd + metresFromMm(values.closedEndMm);
    solids.push(prism('closed end', density, { outer, from: threadEnd, to }));
  }
  return solids;
}

/** Radii that body and collar are pierced with, below and above z = ringFrom (the end of the thread where no ring is). */
interface Bores {
  readonly thread: number;
  readonly mean: number;
  readonly ring: number;
  readonly ringFrom: number;
}

function boresOf(values: NutValues, threadEnd: number): Bores {
  const diameter = metresFromMm(values.threadDiameterMm);
  const mean = threadMeanRadius(diameter, metresFromMm(values.threadPitchMm));
  const sink = metresFromMm(values.countersinkDiameterMm) / 2;
  return {
    mean,
    thread: sink > 0 ? sink : mean,
    ring: metresFromMm(values.insertOuterDiameterMm) / 2,
    ringFrom: threadEnd - metresFromMm(values.insertHeightMm),
  };
}

function bodyOutline(values: NutValues): Outline {
  const across = metresFromMm(values.acrossMm);
  return values.form === 'hex' ? hexagon(across) : circle(across / 2);
}

function bodySolids(values: NutValues, end: number, bores: Bores): Solid[] {
  const density = values.densityKgM3;
  const across = metresFromMm(values.acrossMm);
  const chamfer = metresFromMm(values.chamferMm);
  if (chamfer === 0) {
    return pierced('body', density, { outer: bodyOutline(values), from: 0, to: end }, bores);
  }
  const upper = values.closedEndMm > 0 && values.collarHeightMm === 0 ? 0 : chamfer;
  if (values.form === 'hex') {
    return chamferedHexagon(across, [0, end], chamfer, upper).flatMap((piece) =>
      pierced(piece.chamfer ? 'body chamfer' : 'body', density, piece, bores),
    );
  }
  const radius = across / 2;
  const core = radius - chamfer;
  const straight = end - upper > chamfer;
  const rim: Outline = [
    [core, 0],
    [radius, chamfer],
    ...(straight ? [[radius, end - upper] as const] : []),
    [core, end],
  ];
  return [
    ...pierced('body', density, { outer: circle(core), from: 0, to: end }, bores),
    revolution('body rim', density, rim),
  ];
}

interface Stretch {
  readonly outer: Outline;
  readonly from: number;
  readonly to: number;
}

/** A stretch pierced by the thread up to where the ring begins, and by the ring from there on. */
function pierced(name: string, density: number, stretch: Stretch, bores: Bores): Solid[] {
  const { outer, from, to } = stretch;
  const split = Math.min(to, Math.max(from, bores.ringFrom));
  const pieces: Solid[] = [];
  if (split - from > NOTHING) {
    pieces.push(prism(name, density, { outer, holes: [circle(bores.thread)], from, to: split }));
  }
  if (to - split > NOTHING) {
    const holes = [circle(bores.ring)];
    pieces.push(prism(`${name} round the ring`, density, { outer, holes, from: split, to }));
  }
  return pieces;
}

/** A height that is the rounding of a difference, not a piece of metal, m. */
const NOTHING = 1e-12;

/** Between the mean bore and the countersink's diameter, sloped at 45 degrees at each open end. */
function countersunkThread(values: NutValues, { mean, thread, ringFrom }: Bores): Solid {
  const depth = thread - mean;
  const far = countersunkEnds(values) === 2 ? ringFrom - depth : ringFrom;
  const profile: Outline = [
    [mean, depth],
    [thread, 0],
    [thread, ringFrom],
    [mean, far],
  ];
  return revolution('thread', values.densityKgM3, profile);
}
