import type { Part } from '../../design/design';
import { POSITION_LIMITS } from '../../design/limits';
import type { Vec3 } from '../../engine/math/vector';
import { metresFromMm } from '../../engine/units';
import { type MessageKey, t } from '../../messages';
import { isKeepOut } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { fieldLabel } from '../../state/refusalText';
import type { Session } from '../../state/session';
import { type HandleSpec, PART_STEPS, refusalOf } from './handleSpec';

/** Handles of where a part is: along its socket, or its place in the grip frame. */
export function placementSpecs(session: Session, part: Part): HandleSpec[] {
  return part.pose ? positionSpecs(session, part) : offsetSpecs(session, part);
}

const POSITION_KEYS: readonly MessageKey[] = [
  'stage.handle.positionX',
  'stage.handle.positionY',
  'stage.handle.positionZ',
];
const AXES: readonly Vec3[] = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

/** Three arrows that move a freely placed part in the grip frame, a keep-out in the rotor frame. */
function positionSpecs(session: Session, part: Part): HandleSpec[] {
  const { pose } = part;
  if (!pose) return [];
  const [x, y, z] = pose.positionMm;
  const position: Vec3 = [metresFromMm(x), metresFromMm(y), metresFromMm(z)];
  return AXES.map((direction, k) => ({
    key: `${part.id}/positionMm.${k}`,
    partId: part.id,
    parameter: 'positionMm',
    label: t(POSITION_KEYS[k]),
    unit: 'mm',
    min: POSITION_LIMITS.min,
    max: POSITION_LIMITS.max,
    steps: PART_STEPS,
    value: pose.positionMm[k],
    frame: isKeepOut(partType(part.kind)) ? 'rotor' : 'grip',
    motion: { kind: 'linear', position, direction, perMm: 1 },
    look: 'move',
    write(next) {
      const now = session.store.getState().design.parts.find((one) => one.id === part.id)?.pose;
      if (!now) return { field: part.id, rule: 'unknownPart' };
      const positionMm: [number, number, number] = [...now.positionMm];
      positionMm[k] = next;
      return refusalOf(session.actions.setPose(part.id, { ...now, positionMm }));
    },
  }));
}

/** One arrow along the socket, where the socket leaves room: a nut on its thread. */
function offsetSpecs(session: Session, part: Part): HandleSpec[] {
  const mount = part.socket;
  const parent = mount && session.live.model.placed(mount.part);
  if (!mount || !parent) return [];
  const socket = parent.sockets.find((one) => one.name === mount.name);
  if (!socket) return [];
  const [low, high] = socket.offsetRangeMm;
  if (!(high > low)) return [];
  return [
    {
      key: `${part.id}/offsetMm`,
      partId: part.id,
      parameter: 'offsetMm',
      label: fieldLabel(part, 'offsetMm'),
      unit: 'mm',
      min: low,
      max: high,
      steps: PART_STEPS,
      value: mount.offsetMm ?? socket.defaultOffsetMm,
      frame: 'part',
      // The part's z lies along the socket's. The layer sets the arrow beside the part.
      motion: { kind: 'linear', position: [0, 0, 0], direction: [0, 0, 1], perMm: 1 },
      look: 'move',
      write: (next) => refusalOf(session.actions.setMount(part.id, { offsetMm: next })),
    },
  ];
}
