import { GripMotion, type Motion } from '../../engine/clearance/motion';
import {
  type Gap,
  nearestGap,
  type PlacedKeepOut,
  placeKeepOut,
} from '../../engine/clearance/nearestGap';
import { RodMotion } from '../../engine/clearance/rodMotion';
import { type PlacedSurface, placeSurface } from '../../engine/clearance/surface';
import { compose, POSE_IDENTITY, type Pose } from '../../engine/math/pose';
import type { Vec3 } from '../../engine/math/vector';
import { degreesFromRadians, metresFromMm, radians, radiansFromDegrees } from '../../engine/units';
import { partType } from '../../parts/registry';
import type { HeadForces } from '../forces/headForces';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';
import { CLEARANCE_SECTION } from '../sections/clearance';
import { sectionValues } from '../sections/section';
import { type PartValues, sameValues } from '../values';
import type { ClearancePair, ClearanceRange, HeadClearance } from './clearanceTypes';
import { isReduced, type TurningSurface, turningSurface } from './turningSurface';

/** Pitches looked through where no linkage says how far the grip can go, degrees each way. */
const QUARTER_DEG = 90;
/** A rod is looked at up to this far from the end of its reach, rad: at the end itself its place is lost to rounding. */
const SHY = 1e-7;

interface HeldPart {
  readonly kind: string;
  readonly values: PartValues;
  readonly surface: TurningSurface | null;
  pose: Pose;
  placed: PlacedSurface | null;
}

interface HeldKeepOut {
  readonly values: PartValues;
  readonly pose: Pose;
  readonly kept: PlacedKeepOut;
}

interface HeldPair {
  readonly key: readonly unknown[];
  readonly pair: ClearancePair;
}

/**
 * The clearance of a head: every visible turning part against every visible keep-out, through the pitch that the linkage
 * allows. A pair is searched anew only when part, keep-out, range or rotor has changed: a dragged nut is one search a
 * keep-out. `searched` counts them.
 */
export class ClearanceDesk {
  searched = 0;
  private readonly parts = new Map<string, HeldPart>();
  private readonly keepOuts = new Map<string, HeldKeepOut>();
  private pairs = new Map<string, HeldPair>();

  clearance(forces: HeadForces): HeadClearance {
    const { model } = forces;
    const range = rangeOf(forces);
    const { wantedGapMm } = sectionValues(CLEARANCE_SECTION, model.sections.clearance);
    const visible = model.parts.filter(({ part }) => !part.hidden);
    const keepOuts = visible.filter(({ part }) => partType(part.kind).keepOut);
    this.forget(model);
    const kept = new Map<string, HeldPair>();
    if (keepOuts.length > 0) {
      for (const placed of visible) {
        if (!turns(placed, forces, range)) continue;
        const surface = this.surfaceOf(placed);
        if (surface) this.holdAgainst(keepOuts, placed, surface, range, forces, kept);
      }
    }
    this.pairs = kept;
    const pairs = [...kept.values()].map(({ pair }) => pair).toSorted((a, b) => a.gap - b.gap);
    return { pairs, range, wanted: metresFromMm(wantedGapMm) };
  }

  /**
   * The height on the shaft, m, under which no turning part comes at any pitch that the linkage allows; null without
   * parts. Where a new keep-out can stand.
   */
  lowest(forces: HeadForces): number | null {
    const range = rangeOf(forces);
    const level = placeKeepOut({ shape: 'plane' }, POSE_IDENTITY, 'hub');
    let lowest: number | null = null;
    for (const placed of forces.model.parts) {
      if (placed.part.hidden || !turns(placed, forces, range)) continue;
      const surface = this.surfaceOf(placed);
      if (!surface) continue;
      const motion = motionOf(placed, forces);
      const { gap, error } = nearestGap(surface, motion, level, spanOf(placed, range));
      if (lowest === null || gap - error < lowest) lowest = gap - error;
    }
    return lowest;
  }

  private holdAgainst(
    keepOuts: readonly PlacedPart[],
    placed: PlacedPart,
    surface: PlacedSurface,
    range: ClearanceRange,
    forces: HeadForces,
    out: Map<string, HeldPair>,
  ): void {
    for (const keepOut of keepOuts) {
      const found = this.keepOutOf(keepOut);
      const id = `${placed.part.id}\n${keepOut.part.id}`;
      const key = [surface, found, ...moveKey(placed, range, forces)];
      const known = this.pairs.get(id);
      if (known && sameKey(known.key, key)) {
        out.set(id, known);
        continue;
      }
      this.searched++;
      const gap = nearestGap(surface, motionOf(placed, forces), found.kept, spanOf(placed, range));
      out.set(id, { key, pair: this.pairOf(placed, keepOut, found.kept, gap, forces) });
    }
  }

  private pairOf(
    placed: PlacedPart,
    keepOut: PlacedPart,
    kept: PlacedKeepOut,
    gap: Gap,
    forces: HeadForces,
  ): ClearancePair {
    const motion = motionOf(placed, forces);
    const onPart = new Float64Array(3);
    const [x, y, z] = gap.onPart;
    motion.aim(gap.pitch, gap.pitch);
    motion.place(1, x, y, z, onPart);
    const surface = this.parts.get(placed.part.id)?.surface;
    return {
      part: placed.part.id,
      keepOut: keepOut.part.id,
      meeting: gap.meeting,
      gap: gap.gap,
      error: gap.error + (surface?.deviation ?? 0),
      reduced: surface?.reduced === true || isReduced(keepOut.values),
      pitchDeg: degreesFromRadians(radians(gap.pitch)),
      azimuthDeg: degreesFromRadians(radians(gap.azimuth)),
      anyAzimuth: !kept.passed,
      onPart: [onPart[0], onPart[1], onPart[2]],
      onKeepOut: turnedBack(gap.onKeepOut, gap.azimuth),
    };
  }

  private surfaceOf(placed: PlacedPart): PlacedSurface | null {
    const { part, values } = placed;
    // A rod's points are given in its own frame, everything else in the grip's.
    const pose = placed.carriedBy === 'rod' ? POSE_IDENTITY : placed.pose;
    let held = this.parts.get(part.id);
    const isKnown =
      held?.kind === part.kind && sameValues(partType(part.kind), held.values, values);
    if (!held || !isKnown) {
      held = { kind: part.kind, values, surface: turningSurface(placed), pose, placed: null };
      this.parts.set(part.id, held);
    }
    if (held.placed && held.pose === pose) return held.placed;
    held.pose = pose;
    held.placed = held.surface && placeSurface(held.surface.tree, pose);
    return held.placed;
  }

  private keepOutOf({ part, values, pose, carriedBy }: PlacedPart): HeldKeepOut {
    const type = partType(part.kind);
    const known = this.keepOuts.get(part.id);
    if (known && known.pose === pose && sameValues(type, known.values, values)) return known;
    const facts = type.keepOut?.(values);
    if (!facts) throw new Error(`keepOutOf(): part is no keep-out: ${part.id}`);
    const own = facts.pose ? compose(pose, facts.pose) : pose;
    const fixedTo = carriedBy === 'hub' ? 'hub' : 'case';
    const held = { values, pose, kept: placeKeepOut(facts.shape, own, fixedTo) };
    this.keepOuts.set(part.id, held);
    return held;
  }

  private forget(model: HeadModel): void {
    for (const held of [this.parts, this.keepOuts]) {
      for (const id of held.keys()) if (!model.placed(id)) held.delete(id);
    }
  }
}

/** The least gap of all pairs; null where nothing must be kept clear of. For whoever looks through many heads. */
export function leastPair({ pairs }: HeadClearance): ClearancePair | null {
  return pairs[0] ?? null;
}

/** Parts on the grip, and the rod that drives it; out of its reach it has no place. */
function turns(placed: PlacedPart, { linkage }: HeadForces, range: ClearanceRange): boolean {
  if (placed.carriedBy === 'grip') return true;
  return range.from === 'linkage' && linkage?.rod === placed && linkage.linkage.length !== null;
}

function rangeOf(forces: HeadForces): ClearanceRange {
  const { linkage } = forces;
  const whole = { lowDeg: -QUARTER_DEG, highDeg: QUARTER_DEG };
  if (!linkage) return { ...whole, from: 'noLinkage' };
  const quarter = radiansFromDegrees(QUARTER_DEG);
  const ends = forces.travel(radiansFromDegrees(-QUARTER_DEG), quarter)?.ends;
  if (!ends) return { ...whole, from: 'noReach' };
  return { lowDeg: ends.low.deg, highDeg: ends.high.deg, from: 'linkage' };
}

function motionOf(placed: PlacedPart, { linkage, model }: HeadForces): Motion {
  if (placed.carriedBy !== 'rod' || !linkage) return new GripMotion(model.rotor);
  return new RodMotion(linkage.linkage, model.rotor, placed.pose.rotation);
}

/** What else the movement depends on, compared one by one. */
function moveKey(
  placed: PlacedPart,
  { lowDeg, highDeg, from }: ClearanceRange,
  { linkage, model }: HeadForces,
): readonly unknown[] {
  const { torqueOffset, precone } = model.rotor;
  const key = [lowDeg, highDeg, from, torqueOffset, precone];
  if (placed.carriedBy !== 'rod' || !linkage) return key;
  const { ball_G, side, length, sliderX, sliderY } = linkage.linkage;
  return [...key, placed.pose, ...ball_G, side, length, sliderX, sliderY];
}

function spanOf(placed: PlacedPart, { lowDeg, highDeg }: ClearanceRange) {
  const [low, high] = [radiansFromDegrees(lowDeg), radiansFromDegrees(highDeg)];
  return placed.carriedBy === 'rod' ? { low: low + SHY, high: high - SHY } : { low, high };
}

function turnedBack([x, y, z]: Vec3, azimuth: number): Vec3 {
  const c = Math.cos(azimuth);
  const s = Math.sin(azimuth);
  return [c * x + s * y, c * y - s * x, z];
}

function sameKey(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((one, i) => one === b[i]);
}
