import { bottomsOut } from '../design/bottomsOut';
import { ClearanceDesk } from '../design/clearance/clearanceDesk';
import type { Design } from '../design/design';
import { shortBolts } from '../design/engagement';
import type { HeadForces } from '../design/forces/headForces';
import { headLoads } from '../design/forces/headLoads';
import type { Margin } from '../design/forces/loadTypes';
import { speedRange } from '../design/forces/speedSweep';
import { ROTOR_SECTION } from '../design/sections/rotor';
import { M } from '../engine/mass/moments';
import { radiansFromDegrees } from '../engine/units';
import { withPick } from './choices';
import { isExact } from './goal';
import { reportedGap } from './headReport';
import { allSteps, type JobProgress, type JobSteps } from './job';
import type { KnobRef } from './knobs';
import { solveKnobs } from './solveKnobs';
import { TrialHead, type Wanted } from './trialHead';

/** A length and a diameter of one part: the family is every pair of them that reaches the goal. */
export interface FamilyRequest {
  readonly design: Design;
  readonly wanted: Wanted;
  readonly length: KnobRef;
  readonly diameter: KnobRef;
  /** The density that the materials are for; null: the material stays. */
  readonly density: string | null;
  readonly materials: readonly string[];
  readonly lengthsMm: readonly [number, number];
  readonly diametersMm: readonly [number, number];
  /** Thickest bar that can be had. */
  readonly largestBarMm: number;
}

export interface FamilyPoint {
  readonly diameterMm: number;
  readonly lengthMm: number;
  /** Of the whole grip, kg. */
  readonly mass: number;
}

/** Solutions of one material, along the diameters; null where there is none within the lengths. */
export interface FamilyCurve {
  /** Null: the material that the part has. */
  readonly material: string | null;
  readonly points: readonly (FamilyPoint | null)[];
}

/** What forbids a pair of length and diameter, as bits. */
export const FORBIDDEN = {
  rule: 1,
  bolt: 2,
  bearing: 4,
  clearance: 8,
  stock: 16,
  short: 32,
} as const;

/** Cells over the plane, row by row from the shortest length; every cell stands for its middle. */
export interface FamilyMap {
  readonly columns: number;
  readonly rows: number;
  readonly cells: Uint8Array;
}

export interface Family {
  readonly curves: readonly FamilyCurve[];
  /** For the first material. */
  readonly map: FamilyMap;
}

/** Diameters at which the curves are worked out. */
const PLACES = 41;
const COLUMNS = 36;
const ROWS = 24;

/**
 * The family of a request: curves of one solution a diameter (the shortest where there are several) for each material,
 * and where the plane is forbidden for the first of them: by a rule of the part, by the loads of bolt or bearings at
 * overspeed (at five pitches across the pitch in use), by a gap less than wanted, by the bar, by a bolt that ends too soon in its nut.
 */
export function runFamily(
  request: FamilyRequest,
  onProgress: (progress: JobProgress) => void = () => {},
): Family {
  return allSteps(familySteps(request), onProgress);
}

/** The same in steps: a diameter of a curve, or a cell of the map each. */
export function* familySteps(request: FamilyRequest): JobSteps<Family> {
  const materials = request.density === null ? [null] : request.materials;
  const total = materials.length * PLACES + COLUMNS * ROWS;
  let done = 0;
  const tick = (): JobProgress => ({ done: ++done, total });
  const curves: FamilyCurve[] = [];
  for (const material of materials) {
    const design = madeOf(request, material);
    const points: (FamilyPoint | null)[] = [];
    for (let i = 0; i < PLACES; i++) {
      yield tick();
      points.push(pointAt(request, design, between(request.diametersMm, i / (PLACES - 1))));
    }
    curves.push({ material, points });
  }
  return { curves, map: yield* mapSteps(request, madeOf(request, materials[0] ?? null), tick) };
}

function between([low, high]: readonly [number, number], share: number): number {
  return low + (high - low) * share;
}

function madeOf({ design, density, length }: FamilyRequest, material: string | null): Design {
  if (material === null || density === null) return design;
  return (
    withPick(design, { kind: 'material', part: length.part, field: density, material }) ?? design
  );
}

function pointAt(
  { wanted, length, diameter, lengthsMm }: FamilyRequest,
  design: Design,
  diameterMm: number,
): FamilyPoint | null {
  const wide = withPick(design, { kind: 'values', ref: diameter, value: diameterMm }) ?? design;
  const made = TrialHead.of(wide, wanted, [{ ref: length }]);
  if (!made.ok) return null;
  const head = made.value;
  const { solutions } = solveKnobs(head, [{ min: lengthsMm[0], max: lengthsMm[1] }]);
  const found = solutions
    .filter(({ leads, held }) => (isExact(wanted.goal, design) ? leads : held[0] === 0))
    .toSorted((a, b) => a.values[0] - b.values[0])[0];
  if (!found || !head.set(found.values)) return null;
  const mass = head.forces.model.totals(new Float64Array(10))[M];
  return { diameterMm, lengthMm: found.values[0], mass };
}

/** The middle of a cell of the map. */
export function cellMiddle(
  { diametersMm, lengthsMm }: Pick<FamilyRequest, 'diametersMm' | 'lengthsMm'>,
  { columns, rows }: FamilyMap,
  column: number,
  row: number,
): readonly [diameterMm: number, lengthMm: number] {
  return [between(diametersMm, (column + 0.5) / columns), between(lengthsMm, (row + 0.5) / rows)];
}

function* mapSteps(
  request: FamilyRequest,
  design: Design,
  tick: () => JobProgress,
): JobSteps<FamilyMap> {
  const map = { columns: COLUMNS, rows: ROWS, cells: new Uint8Array(COLUMNS * ROWS) };
  const made = TrialHead.of(
    design,
    { goal: { kind: 'neutral' }, speedsRpm: [design.rotor.speedRpm] },
    [{ ref: request.diameter }, { ref: request.length }],
  );
  if (!made.ok) throw new Error(`runFamily(): design is not checked: ${made.error.path}`);
  const desk = new ClearanceDesk();
  for (let row = 0; row < ROWS; row++) {
    for (let column = 0; column < COLUMNS; column++) {
      map.cells[row * COLUMNS + column] = forbiddenAt(
        request,
        made.value,
        desk,
        cellMiddle(request, map, column, row),
      );
      yield tick();
    }
  }
  return map;
}

/** What forbids a pair, as bits of `FORBIDDEN`. */
function forbiddenAt(
  { largestBarMm }: Pick<FamilyRequest, 'largestBarMm'>,
  head: TrialHead,
  desk: ClearanceDesk,
  [diameterMm, lengthMm]: readonly [number, number],
): number {
  const stock = diameterMm > largestBarMm ? FORBIDDEN.stock : 0;
  if (!head.set([diameterMm, lengthMm])) return stock | FORBIDDEN.rule;
  const { model } = head.forces;
  if (bottomsOut(model).length > 0) return stock | FORBIDDEN.rule;
  const short = shortBolts(model).length > 0 ? FORBIDDEN.short : 0;
  const { bolt, bearing } = greatestUse(head.forces);
  const near = reportedGap(head.forces, desk)?.tooNear ? FORBIDDEN.clearance : 0;
  const overloaded = (bolt > 1 ? FORBIDDEN.bolt : 0) | (bearing > 1 ? FORBIDDEN.bearing : 0);
  return stock | short | near | overloaded;
}

const SHARES = [-1, -0.5, 0, 0.5, 1];

/** The largest use of any bolt check and of any bearing at overspeed, across the pitch in use. */
function greatestUse(forces: HeadForces): { readonly bolt: number; readonly bearing: number } {
  const { rotor } = forces.model.sections;
  const used = rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  const { overspeedRpm } = speedRange(rotor);
  let bolt = 0;
  let bearing = 0;
  for (const share of SHARES) {
    const loads = headLoads(forces, radiansFromDegrees(share * used), overspeedRpm);
    for (const { rating } of loads.bearings) bearing = Math.max(bearing, usedShare(rating));
    for (const { checks } of loads.bolts) {
      for (const { name, margin } of checks) {
        if (name !== 'thread') bolt = Math.max(bolt, usedShare(margin));
      }
    }
  }
  return { bolt, bearing };
}

function usedShare(margin: Margin): number {
  return margin.kind === 'known' ? margin.use : 0;
}
