import type { Design, DesignSections, FreePose, Mount, Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import { materialsOf } from '../design/resolve';
import type { SectionName } from '../design/sections';
import { withValue } from '../design/writeValue';
import { fail, type Result, succeed } from '../engine/result';
import type { ParameterValue } from '../parts/contract';
import { forgetMissingSelection } from './forgetMissing';
import { createGesture, type Gesture } from './gesture';
import { createKeepOutActions, type KeepOutActions } from './keepOutActions';
import type { Live } from './live';
import { createPartActions, type PartActions } from './partActions';
import { createPicking, type PickingActions } from './picking';
import { type Refusal, refusalOf } from './refusal';
import { replacePart } from './replacePart';
import type { DisplayUnits, Settings } from './settings';
import { createSourceActions, type SourceActions } from './sourceActions';
import type { AppStore, Notice } from './store';
import { createTryOutActions, type TryOutActions } from './tryOutActions';
import { createUnitSteps } from './unitSteps';

export type { Refusal } from './refusal';

/** New values of some of a section's fields. */
export type SectionChange<N extends SectionName> = {
  readonly [K in keyof NonNullable<DesignSections[N]>]?:
    | NonNullable<DesignSections[N]>[K]
    | undefined;
};

/** The only hands that write to the store. A change that breaks a rule is refused and nothing is written. */
export interface Actions extends PartActions, SourceActions, KeepOutActions {
  readonly gesture: Gesture;
  readonly picking: PickingActions;
  readonly tryOuts: TryOutActions;
  setParameter(id: string, field: string, value: ParameterValue): Result<Part, Refusal>;
  setPose(id: string, pose: FreePose): Result<Part, Refusal>;
  setMount(id: string, change: Partial<Pick<Mount, 'offsetMm' | 'turnDeg'>>): Result<Part, Refusal>;
  /** Changes fields of a section; a field that is undefined is let go. */
  setSection<N extends SectionName>(name: N, change: SectionChange<N>): Result<Design, Refusal>;
  setDesignName(name: string): Result<Design, DesignFault>;
  /** Another design in place of this one: one undo step, selection and pitch pointer reset. */
  openDesign(design: Design): Result<Design, DesignFault>;
  select(id: string | null): void;
  /** Any angle; kept in [-90, 90] by the pointer that sets it. */
  setPitch(pitchDeg: number): void;
  setSettings(change: Partial<Settings>): void;
  /** A person's choice of display units: one undo step. */
  setUnits(units: DisplayUnits): void;
  notify(notice: Notice | null): void;
  /** One step back or forward. In the middle of a drag, undo takes back the drag. */
  undo(): void;
  redo(): void;
}

export function createActions(store: AppStore, live: Live): Actions {
  const get = store.getState;
  const gesture = createGesture(store);
  /** What was said of a step no longer holds when steps are gone through; a warning stays until it is dismissed. */
  function dropSaid(): void {
    if (get().notice?.tone === 'plain') store.setState({ notice: null });
  }

  /** Counts on after an undo, so that no two openings share a number. */
  let openings = get().opening;

  const replace = (id: string, change: (part: Part) => Part) => replacePart(live, id, change);

  const unitSteps = createUnitSteps(store);
  const partActions = createPartActions(store, live, gesture);

  return {
    ...partActions,
    picking: createPicking(store, live, partActions),
    ...createSourceActions(store, live),
    ...createKeepOutActions(store, live),
    tryOuts: createTryOutActions(store, live, gesture),
    gesture,
    setParameter(id, field, value) {
      return replace(id, (part) => withValue(part, field, value, materialsOf(get().design)));
    },
    setPose(id, pose) {
      return replace(id, (part) => ({ ...part, pose }) as Part);
    },
    setMount(id, change) {
      return replace(id, (part) => ({ ...part, socket: { ...part.socket, ...change } }) as Part);
    },
    setSection(name, change) {
      const { design } = get();
      const section: Readonly<Record<string, unknown>> = design[name] ?? {};
      const entries = Object.entries(change);
      if (entries.every(([field, value]) => section[field] === value)) return succeed(design);
      const next = Object.entries({ ...section, ...change }).filter(
        ([, value]) => value !== undefined,
      );
      const outcome = live.commitSections({ [name]: Object.fromEntries(next) });
      return outcome.ok ? outcome : fail(refusalOf(outcome.error, live.reading.order));
    },
    setDesignName(name) {
      const { design } = get();
      if (design.name === name) return succeed(design);
      return live.commitDesign({ ...design, name });
    },
    openDesign(design) {
      gesture.end();
      const outcome = live.commitDesign(design, {
        opening: openings + 1,
        selection: null,
        pitchDeg: 0,
        notice: null,
        picking: null,
        compared: [],
      });
      if (outcome.ok) openings++;
      return outcome;
    },
    select(id) {
      if (get().selection === id) return;
      store.setState({ selection: id, picking: null });
    },
    setPitch(pitchDeg) {
      if (get().pitchDeg !== pitchDeg) store.setState({ pitchDeg });
    },
    setSettings(change) {
      store.setState({ settings: { ...get().settings, ...change } });
    },
    setUnits(units) {
      gesture.end();
      unitSteps.set(units);
    },
    notify(notice) {
      store.setState({ notice });
    },
    undo() {
      dropSaid();
      if (gesture.cancel() || unitSteps.undo()) return;
      store.temporal.getState().undo();
      forgetMissingSelection(store);
    },
    redo() {
      gesture.end();
      dropSaid();
      if (unitSteps.redo()) return;
      store.temporal.getState().redo();
      forgetMissingSelection(store);
    },
  };
}
