import type { Part } from '../../design/design';
import { materialsOf, valuesOf } from '../../design/resolve';
import type { PartValues } from '../../design/values';
import { metresFromMm, radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import type { Handle, ParameterValue } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { fieldLabel } from '../../state/refusalText';
import type { Session } from '../../state/session';
import { type HandleSpec, type KeySteps, type Motion, PART_STEPS, refusalOf } from './handleSpec';
import { placementSpecs } from './placementSpecs';

/** Where the pitch pointer's knob is: along the feathering axis and out from it, mm. */
export interface PointerPlace {
  readonly stationMm: number;
  readonly radiusMm: number;
}

const PITCH_STEPS: KeySteps = { plain: 1, shift: 5, alt: 0.1, page: 10 };
const PITCH_END = 90;

/** Handles of the selection, in the order of its type's list, then its placement; the pitch pointer last. */
export function handleSpecs(session: Session, pointer: PointerPlace): HandleSpec[] {
  const { design, selection, picking } = session.store.getState();
  // While points are picked on a part a press drags nothing of it.
  const part = picking ? undefined : design.parts.find((one) => one.id === selection);
  const specs: HandleSpec[] = [];
  if (part) {
    const values = valuesOf(part, materialsOf(design));
    for (const handle of partType(part.kind).handles(values)) {
      const spec = parameterSpec(session, part, values, handle);
      if (spec) specs.push(spec);
    }
    specs.push(...placementSpecs(session, part));
  }
  specs.push(pitchSpec(session, pointer));
  return specs;
}

function parameterSpec(
  session: Session,
  part: Part,
  values: PartValues,
  handle: Handle,
): HandleSpec | null {
  const { parameter } = handle;
  const own = partType(part.kind).parameters[parameter];
  if (own?.type !== 'number' && own?.type !== 'vector') return null;
  const component = handle.kind === 'linear' ? handle.component : undefined;
  const held: unknown = values[parameter];
  const value = Array.isArray(held) ? held[component ?? 0] : held;
  if (typeof value !== 'number') return null;
  const field = fieldLabel(part, parameter);
  const axis = own.type === 'vector' && component !== undefined ? own.axes[component] : null;
  return {
    key: `${part.id}/${parameter}${component === undefined ? '' : `.${component}`}`,
    partId: part.id,
    parameter,
    label: axis ? t('stage.handle.component', { field, axis }) : field,
    unit: own.unit,
    min: own.min,
    max: own.max,
    steps: PART_STEPS,
    value,
    frame: 'part',
    motion: handle.kind === 'linear' ? linearMotion(handle) : turnMotion(handle),
    look: 'part',
    write(next) {
      const now = session.live.model.placed(part.id)?.values ?? values;
      const whole = component === undefined ? next : replaced(now[parameter], component, next);
      return refusalOf(session.actions.setParameter(part.id, parameter, whole));
    },
  };
}

function linearMotion(handle: Handle & { kind: 'linear' }): Motion {
  const { position, direction, perMm } = handle;
  return { kind: 'linear', position, direction, perMm };
}
function turnMotion(handle: Handle & { kind: 'turn' }): Motion {
  const { position, centre, axis, sense } = handle;
  return { kind: 'turn', position, centre, axis, sense };
}

function replaced(held: unknown, component: number, next: number): ParameterValue {
  const [x, y, z] = Array.isArray(held) ? (held as readonly number[]) : [0, 0, 0];
  const values: [number, number, number] = [x, y, z];
  values[component] = next;
  return values;
}

function pitchSpec(session: Session, pointer: PointerPlace): HandleSpec {
  const value = session.store.getState().pitchDeg;
  const angle = radiansFromDegrees(value);
  const radius = metresFromMm(pointer.radiusMm);
  const station = metresFromMm(pointer.stationMm);
  return {
    key: 'pitch/pitchDeg',
    partId: null,
    parameter: 'pitchDeg',
    label: t('stage.handle.pitch'),
    unit: 'deg',
    min: -PITCH_END,
    max: PITCH_END,
    steps: PITCH_STEPS,
    value,
    frame: 'axis',
    motion: {
      kind: 'turn',
      position: [station, radius * Math.cos(angle), radius * Math.sin(angle)],
      centre: [station, 0, 0],
      axis: [1, 0, 0],
      sense: 1,
    },
    look: 'pitch',
    write(next) {
      // The ends of its travel: the pointer stops there, nothing is refused.
      session.actions.setPitch(Math.min(PITCH_END, Math.max(-PITCH_END, next)));
      return null;
    },
  };
}
