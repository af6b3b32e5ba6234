import { checkDesign } from '../../design/checkDesign';
import type { Design, Part } from '../../design/design';
import { type DesignFault, fault } from '../../design/fault';
import { HeadModel } from '../../design/headModel';
import { materialsOf } from '../../design/resolve';
import { withValue } from '../../design/writeValue';
import { fail, type Result, succeed } from '../../engine/result';
import { knobValue, withKnob } from '../../neutralise/knobs';
import { createReading } from '../../state/createReading';
import type { Change, Lesson } from './lesson';
import { type LessonHead, sectionField } from './quantity';

/** A design and where the pitch pointer stands on it. */
export interface SetHead {
  readonly design: Design;
  readonly pitchDeg: number;
}

/** As the lesson begins. */
export function sceneOf({ scene }: Lesson): SetHead {
  return { design: scene.design, pitchDeg: scene.pitchDeg ?? 0 };
}

/** The head as the scene and the changes of the steps up to and with `index` make it, whatever the pupil did. */
export function setFor(lesson: Lesson, index: number): Result<SetHead, DesignFault> {
  let set = sceneOf(lesson);
  for (let i = 0; i <= index; i++) {
    const changed = withChanges(set, lesson.steps[i].change ?? []);
    if (!changed.ok) return fail(fault(`steps[${i}].${changed.error.path}`, changed.error.reason));
    set = changed.value;
  }
  return succeed(set);
}

/** Worked out beside the stage. The design must be sound. */
export function readHead({ design, pitchDeg }: SetHead): LessonHead {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) throw new Error(`readHead(): the design is not sound: ${loaded.error.path}`);
  const reading = createReading(model);
  reading.refresh(design);
  return { design, reading, pitchDeg };
}

/** The head with every change made; the fault of one that names nothing, or makes a design that breaks a rule. */
export function withChanges(
  set: SetHead,
  changes: readonly Change[],
): Result<SetHead, DesignFault> {
  let { design, pitchDeg } = set;
  for (const [at, change] of changes.entries()) {
    if ('pitchDeg' in change) {
      pitchDeg = change.pitchDeg;
      continue;
    }
    const next = 'section' in change ? withSection(design, change) : withPart(design, change);
    if (next === null) return fail(fault(`change[${at}]`, unknownField(change)));
    const broken = checkDesign(next);
    if (broken) return fail(fault(`change[${at}].value`, broken.reason));
    design = next;
  }
  return succeed({ design, pitchDeg });
}

function unknownField(change: { readonly field: string }) {
  return { code: 'unsound', detail: `there is no ${change.field} there` } as const;
}

function withSection(
  design: Design,
  change: Extract<Change, { readonly section: string }>,
): Design | null {
  const { section, field, value } = change;
  if (!sectionField(change)) return null;
  const old = (design as unknown as Readonly<Record<string, object | undefined>>)[section];
  return { ...design, [section]: { ...old, [field]: value } };
}

function withPart(
  design: Design,
  change: Extract<Change, { readonly part: string }>,
): Design | null {
  const index = design.parts.findIndex(({ id }) => id === change.part);
  if (index < 0) return null;
  const part = changedPart(design, design.parts[index], change);
  return part && { ...design, parts: design.parts.with(index, part) };
}

function changedPart(
  design: Design,
  part: Part,
  change: Extract<Change, { readonly part: string }>,
): Part | null {
  const { field, component, value } = change;
  if (field === 'hidden') return { ...part, hidden: value === true };
  const ref = { part: part.id, field, ...(component === undefined ? {} : { component }) };
  const materials = materialsOf(design);
  if (typeof value === 'number') {
    return knobValue(design, ref) === undefined ? null : withKnob(part, ref, value, materials);
  }
  return typeof value === 'string' ? withValue(part, field, value, materials) : null;
}
