import { type Materials, materialKeyOf, materialNamed } from '../../design/resolve';
import { type PartValues, valueOf } from '../../design/values';
import { gripPose } from '../../engine/feathering/gripPose';
import type { RotorConditions } from '../../engine/feathering/rotor';
import { rodRotation } from '../../engine/linkage/rodPose';
import type { Solid } from '../../engine/mass/solid';
import { compose, POSE_IDENTITY, type Pose, transformPoint } from '../../engine/math/pose';
import type { Vec3 } from '../../engine/math/vector';
import { radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { isKeepOut, isUsed, type PartType } from '../../parts/contract';
import { partType } from '../../parts/registry';
import type { PartReading } from '../../state/reading';
import { materialName } from '../../state/words/materialText';

/** One part as a file has it. */
export interface FileBody {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  /** What it is weighed by, in the part's own frame; nothing symbolic among them. */
  readonly solids: readonly Solid[];
  /** Where the part's frame stands in the file's. */
  readonly pose: Pose;
  readonly material: string;
  readonly finish: PartType['finish'];
  /** An imported body: its solids are the picture that the design keeps of it. */
  readonly isPicture: boolean;
}

export type LeftOutReason = 'hidden' | 'keepOut' | 'pointMass';

export interface FileBodies {
  readonly bodies: readonly FileBody[];
  readonly leftOut: readonly { readonly name: string; readonly reason: LeftOutReason }[];
}

export type PlacedReading = Pick<PartReading, 'part' | 'values' | 'pose_G' | 'carriedBy'>;

/** How the head stands: rotor frame, pitch in degrees, and the rod's direction at it (null: it does not reach). */
export interface HeadStand {
  readonly rotor: RotorConditions;
  readonly pitchDeg: number;
  readonly rodAxis: Vec3 | null;
}

/** Every visible part in the rotor frame, the grip turned to a pitch: as the stage shows it. */
export function headBodies(
  parts: readonly PlacedReading[],
  stand: HeadStand,
  materials: Materials,
): FileBodies {
  const X_RG = gripPose(stand.rotor, radiansFromDegrees(stand.pitchDeg));
  return gathered(parts, materials, (placed) => rotorPose(placed, X_RG, stand.rodAxis));
}

/** One part in its own frame, whether it is hidden or not. */
export function partBodies(placed: PlacedReading, materials: Materials): FileBodies {
  const shown = { ...placed, part: { ...placed.part, hidden: false } };
  return gathered([shown], materials, () => POSE_IDENTITY);
}

function gathered(
  parts: readonly PlacedReading[],
  materials: Materials,
  poseOf: (placed: PlacedReading) => Pose,
): FileBodies {
  const bodies: FileBody[] = [];
  const leftOut: FileBodies['leftOut'][number][] = [];
  for (const placed of parts) {
    const { part, values } = placed;
    const type = partType(part.kind);
    const all = type.solids(values as never);
    const solids = all.filter(({ shape }) => shape.shape !== 'point');
    const reason = reasonToLeaveOut(placed, type, solids);
    if (reason) {
      leftOut.push({ name: part.name, reason });
      continue;
    }
    bodies.push({
      id: part.id,
      name: part.name,
      kind: part.kind,
      solids,
      pose: poseOf(placed),
      material: materialNames(placed, type, materials),
      finish: type.finish,
      isPicture: solids.some(({ shape }) => shape.shape === 'known'),
    });
  }
  return { bodies, leftOut };
}

function reasonToLeaveOut(
  { part }: PlacedReading,
  type: PartType,
  solids: readonly Solid[],
): LeftOutReason | null {
  if (part.hidden) return 'hidden';
  if (isKeepOut(type)) return 'keepOut';
  return solids.length === 0 ? 'pointMass' : null;
}

/** As the stage places it: see `partPose` there. */
function rotorPose({ pose_G, carriedBy }: PlacedReading, X_RG: Pose, rodAxis: Vec3 | null): Pose {
  if (carriedBy === 'grip') return compose(X_RG, pose_G);
  if (carriedBy !== 'rod') return pose_G;
  const { rotation, translation } = pose_G;
  return {
    rotation: rodAxis ? rodRotation(rotation, rodAxis) : rotation,
    translation: transformPoint(X_RG, translation),
  };
}

/**
 * Names of its materials, with the density where that is written and wins; the density alone where none is named: "Steel",
 * "PA6, 1350 kg/m3", "Density 1140 kg/m3". A part may be known by its mass alone.
 */
function materialNames({ part, values }: PlacedReading, type: PartType, materials: Materials) {
  const names = new Set<string>();
  for (const [key, parameter] of Object.entries(type.parameters)) {
    if (materialKeyOf(parameter) === undefined || !isUsed(parameter, values)) continue;
    const id = materialNamed(part, parameter);
    const density = String(valueIn(values, key));
    if (id === undefined) names.add(t('files.material.density', { density }));
    else {
      const name = materialName(id, materials);
      const written = valueOf(part, key) !== undefined;
      names.add(written ? t('files.material.both', { name, density }) : name);
    }
  }
  return [...names].join(' + ') || t('files.material.none');
}

function valueIn(values: PartValues, key: string): unknown {
  return values[key as keyof PartValues];
}
