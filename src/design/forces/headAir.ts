import type { AirTable } from '../../engine/air/airTable';
import { airAt } from '../../engine/air/atmosphere';
import type { BladeGeometry, HoverConditions } from '../../engine/air/hover';
import type { PolarFault } from '../../engine/air/polar';
import { type AirSection, symmetricSection } from '../../engine/air/section';
import { transformPoint } from '../../engine/math/pose';
import { angularSpeedFromRpm } from '../../engine/units';
import type { LiftingStation } from '../../parts/facts';
import { partType } from '../../parts/registry';
import type { Air, Rotor } from '../design';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';
import { AIR_SECTION, type PolarFile } from '../sections/air';
import { sectionValues } from '../sections/section';
import { rememberedAirTable } from './airMemory';
import { polarSection } from './polarSection';

/** What the air does to one blade of the head, or why nothing is said. */
export type HeadAir =
  | { readonly kind: 'off' }
  | { readonly kind: 'notTurning' }
  /** No visible part is a lifting surface. */
  | { readonly kind: 'noBlade' }
  | { readonly kind: 'badTable'; readonly fault: PolarFault | null }
  | {
      readonly kind: 'estimated';
      readonly table: AirTable;
      readonly blade: BladeGeometry;
      readonly section: AirSection;
      readonly conditions: HoverConditions;
      readonly density: number;
      /** Largest camber of the blade's section as a share of its chord: the built-in section has none. */
      readonly camber: number;
    };

/** Elements along the span. */
export const AIR_ELEMENTS = 24;
/** The table's range and step, degrees: a grip can turn by a quarter either way. */
export const AIR_RANGE_DEG = 90;
const AIR_STEP_DEG = 1;

/**
 * The air on the head, solved when something that it depends on has changed: the lifting parts themselves, where they
 * stand, the rotor, the air. A dragged bolt is none of these. `solved` counts the tables that nobody had
 * made before.
 */
export class AirDesk {
  solved = 0;
  private key: readonly unknown[] = [];
  private held: HeadAir = { kind: 'off' };
  private polar: { readonly file: PolarFile; readonly section: AirSection | PolarFault } | null =
    null;

  /** The head's air as it is now; the same object until it changes. */
  air(model: HeadModel): HeadAir {
    const { rotor, air = {}, counted } = model.sections;
    const lifting = counted?.air ? liftingParts(model) : [];
    const key = [
      counted?.air,
      ...airKey(rotor),
      air,
      ...lifting.flatMap(({ values, pose }) => [values, pose]),
    ];
    if (key.length === this.key.length && key.every((one, i) => one === this.key[i])) {
      return this.held;
    }
    this.key = key;
    this.held = counted?.air ? this.estimate(rotor, air, lifting) : { kind: 'off' };
    return this.held;
  }

  private estimate(rotor: Rotor, air: Air, lifting: readonly PlacedPart[]): HeadAir {
    if (rotor.speedRpm === 0) return { kind: 'notTurning' };
    const blade = bladeGeometry(lifting);
    if (!blade) return { kind: 'noBlade' };
    const section = this.sectionOf(air);
    if (!section || !('coefficients' in section)) return { kind: 'badTable', fault: section };
    const conditions = hoverConditions(rotor, air);
    const { table, solved } = rememberedAirTable({
      blade: blade.geometry,
      section,
      source: this.polar?.section === section ? this.polar.file : 'builtIn',
      conditions,
      rangeDeg: AIR_RANGE_DEG,
      stepDeg: AIR_STEP_DEG,
    });
    if (solved) this.solved++;
    return {
      kind: 'estimated',
      table,
      blade: blade.geometry,
      section,
      conditions,
      density: conditions.density,
      camber: blade.camber,
    };
  }

  private sectionOf(air: Air): AirSection | PolarFault | null {
    if (sectionValues(AIR_SECTION, air).section === 'builtIn') return symmetricSection();
    const { polar } = air;
    if (!polar) return null;
    if (this.polar?.file !== polar) {
      const made = polarSection(polar);
      this.polar = { file: polar, section: made.ok ? made.value : made.error };
    }
    return this.polar.section;
  }
}

/** What of the rotor the air depends on. */
function airKey(rotor: Rotor): readonly unknown[] {
  const { speedRpm, bladeCount, temperatureC, altitudeM } = rotor;
  return [speedRpm, bladeCount, temperatureC, altitudeM];
}

export function hoverConditions(
  rotor: Rotor,
  air: Air,
  speedRpm = rotor.speedRpm,
): HoverConditions {
  const { temperatureC, altitudeM = 0 } = rotor;
  const { density, viscosity } = airAt({
    altitudeM,
    ...(temperatureC === undefined ? {} : { temperatureC }),
  });
  const { tipLoss, rootLoss } = sectionValues(AIR_SECTION, air);
  return {
    angularSpeed: angularSpeedFromRpm(speedRpm),
    bladeCount: rotor.bladeCount,
    density,
    viscosity,
    tipLoss,
    rootLoss,
  };
}

function liftingParts(model: HeadModel): readonly PlacedPart[] {
  return model.parts.filter(({ part }) => !part.hidden && partType(part.kind).lifting);
}

/**
 * The lifting parts cut into elements of equal width along the feathering axis, in the grip frame: chord, place of the
 * quarter chord and twist from the leading and trailing edges where the parts stand. Parts one behind the other at the
 * same station are not known to each other's flow. The torque offset and the precone do not enter the flow.
 */
function bladeGeometry(
  lifting: readonly PlacedPart[],
): { readonly geometry: BladeGeometry; readonly camber: number } | null {
  if (lifting.length === 0) return null;
  const geometry = emptyGeometry(AIR_ELEMENTS * lifting.length);
  let camber = 0;
  let at = 0;
  let root = Infinity;
  let tip = 0;
  for (const placed of lifting) {
    const edges = edgesOf(placed);
    const [first, last] = [edges[0], edges[edges.length - 1]];
    camber = Math.max(camber, ...edges.map((edge) => edge.camber));
    const [from, to] = [first.leading[0], last.leading[0]];
    if (!(to > from)) continue;
    root = Math.min(root, from);
    tip = Math.max(tip, to);
    for (let i = 0; i < AIR_ELEMENTS; i++, at++) {
      const width = (to - from) / AIR_ELEMENTS;
      writeElement(geometry, at, edges, from + (i + 0.5) * width, width);
    }
  }
  if (at === 0 || !(root >= 0)) return null;
  return { geometry: { ...trimmed(geometry, at), rootRadius: root, tipRadius: tip }, camber };
}

interface Edge {
  readonly leading: readonly number[];
  readonly trailing: readonly number[];
  readonly camber: number;
}

function edgesOf({ part, values, pose }: PlacedPart): readonly Edge[] {
  const stations: readonly LiftingStation[] = partType(part.kind).lifting?.(values) ?? [];
  return stations
    .map(({ leadingEdge, trailingEdge, camberRatio }) => ({
      leading: transformPoint(pose, leadingEdge),
      trailing: transformPoint(pose, trailingEdge),
      camber: camberRatio,
    }))
    .toSorted((a, b) => a.leading[0] - b.leading[0]);
}

type Elements = Omit<BladeGeometry, 'rootRadius' | 'tipRadius'>;

function emptyGeometry(count: number): Elements {
  const column = () => new Float64Array(count);
  return {
    stations: column(),
    widths: column(),
    chords: column(),
    quarterChordY: column(),
    quarterChordZ: column(),
    twist: column(),
  };
}

function trimmed(elements: Elements, count: number): Elements {
  if (elements.stations.length === count) return elements;
  return Object.fromEntries(
    Object.entries(elements).map(([name, column]) => [name, column.slice(0, count)]),
  ) as unknown as Elements;
}

/** Fills element `at` at station `x` from the edges on both sides of it, linear between them. */
function writeElement(
  out: Elements,
  at: number,
  edges: readonly Edge[],
  x: number,
  width: number,
): void {
  let k = 1;
  while (k < edges.length - 1 && edges[k].leading[0] < x) k++;
  const [a, b] = [edges[k - 1], edges[k]];
  const share = (x - a.leading[0]) / (b.leading[0] - a.leading[0]);
  const between = (p: readonly number[], q: readonly number[], axis: number) =>
    p[axis] + share * (q[axis] - p[axis]);
  const [ly, lz] = [1, 2].map((axis) => between(a.leading, b.leading, axis));
  const [ty, tz] = [1, 2].map((axis) => between(a.trailing, b.trailing, axis));
  out.stations[at] = x;
  out.widths[at] = width;
  out.chords[at] = Math.hypot(ly - ty, lz - tz);
  out.quarterChordY[at] = ly + (ty - ly) / 4;
  out.quarterChordZ[at] = lz + (tz - lz) / 4;
  out.twist[at] = Math.atan2(lz - tz, ly - ty);
}
