import { checkDesignNumbers } from '../design/checkDesign';
import type { Design, DesignSections, Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import type { HeadForces } from '../design/forces/headForces';
import { HeadModel } from '../design/headModel';
import { fail, type Result, succeed } from '../engine/result';
import { type Changes, hasChanged, isDragged, noChanges, notePartChanges } from './changes';
import { createReading } from './createReading';
import type { HeadReading } from './reading';
import type { AppState, AppStore } from './store';
import { type Turn, Turns } from './turns';

/**
 * Derived results on the drag path. However many times the store is written between two frames, curves are filled once at most, and
 * listeners are told once; during a drag some when there is time. Listeners write to the DOM or to three.js objects directly: no React
 * render per pointer event.
 */
export interface Live {
  readonly reading: HeadReading;
  readonly model: HeadModel;
  /** What turns and holds the model. */
  readonly forces: HeadForces;
  /** While a part is dragged, others than `each` (usual) are told when there is time; else everybody at once. */
  subscribe(listener: (changes: Changes) => void, turn?: Turn): () => void;
  /** Brings everything and everybody up to date now (tests, before saving). */
  flush(): void;
  /**
   * Puts a changed part into model and store, if the rules of the whole head allow it. The one write of a drag: only
   * that part is weighed, and nothing is compared.
   */
  commitPart(part: Part): Result<Part, DesignFault>;
  /** Puts changed sections (rotor, control, air ...) into model and store, or refuses them and changes nothing. */
  commitSections(change: Partial<DesignSections>): Result<Design, DesignFault>;
  /**
   * Puts a whole changed design into model and store, or refuses it and changes nothing; `beside` is written in the same
   * step, so that nobody sees one without the other.
   */
  commitDesign(design: Design, beside?: Partial<AppState>): Result<Design, DesignFault>;
}

/** Runs the callback before the next picture; the page passes requestAnimationFrame, tests a direct call. */
export type Schedule = (callback: () => void) => void;

/** `now`: a clock in ms. */
export function createLive(
  store: AppStore,
  schedule: Schedule,
  now: () => number = () => performance.now(),
): Live {
  const model = new HeadModel();
  const reading = createReading(model);
  const turns = new Turns(now);
  /** The design that the model stands for. */
  let held: Design | null = null;
  let scheduled = false;
  /** Pictures since the last change. */
  let stillFor = 0;
  let pending = noChanges();

  function take(design: Design): DesignFault | null {
    const outcome = held === null ? model.load(design) : model.sync(design);
    if (!outcome.ok) return outcome.error;
    notePartChanges(pending, held, design);
    held = design;
    return null;
  }

  function wake(): void {
    if (scheduled) return;
    scheduled = true;
    schedule(tick);
  }

  function tick(): void {
    scheduled = false;
    const begun = now();
    const changes = taken();
    const { gesture } = store.getState();
    stillFor = changes === null ? stillFor + 1 : 0;
    // A picture without a move may come between two moves; after a second one the hand rests.
    const mayWait = gesture && stillFor < 2 && (changes === null || isDragged(changes));
    try {
      if (mayWait) turns.tellInTime(changes, begun);
      else turns.tellAll(changes);
    } finally {
      // Whoever is behind catches up in the next picture, moved or not.
      if (turns.behind) wake();
    }
  }

  /** What has changed, with the results brought up to it; null for nothing. */
  function taken(): Changes | null {
    if (!hasChanged(pending)) return null;
    const changes = pending;
    pending = noChanges();
    if (changes.design) reading.refresh(store.getState().design);
    return changes;
  }

  function write(design: Design, beside: Partial<AppState> = {}): void {
    held = design;
    pending.design = true;
    store.setState({ ...beside, design });
  }

  const first = take(store.getState().design);
  if (first) throw new Error(`createLive(): the first design is not sound: ${first.path}`);
  pending = noChanges();
  reading.refresh(store.getState().design);

  store.subscribe((state, before) => {
    if (state.design !== before.design) pending.design = true;
    if (state.design !== held) {
      // Undo, redo and a cancelled drag bring back designs that were held before, so they are sound.
      const fault = take(state.design);
      if (fault) throw new Error(`live: an unchecked design was written: ${fault.path}`);
    }
    if (state.pitchDeg !== before.pitchDeg) pending.pitch = true;
    if (state.selection !== before.selection || state.picking !== before.picking) {
      pending.selection = true;
    }
    if (state.settings !== before.settings || state.compared !== before.compared) {
      pending.settings = true;
    }
    if (hasChanged(pending)) wake();
  });

  return {
    reading,
    model,
    forces: reading.forces,
    subscribe(listener, turn = 'each') {
      return turns.subscribe(listener, turn);
    },
    flush() {
      if (!scheduled) return;
      // The picture that is asked for finds nothing left to do.
      scheduled = false;
      turns.tellAll(taken());
    },
    commitPart(part) {
      const outcome = model.setPart(part);
      if (!outcome.ok) return fail(outcome.error);
      const { design } = store.getState();
      const parts = design.parts.slice();
      parts[(model.placed(part.id) as { readonly index: number }).index] = part;
      if (pending.parts !== 'all') pending.parts.add(part.id);
      write({ ...design, parts });
      return succeed(part);
    },
    commitSections(change) {
      const design = { ...store.getState().design, ...change };
      const outcome = model.setSections(design);
      if (!outcome.ok) return fail(outcome.error);
      write(design);
      return succeed(design);
    },
    commitDesign(design, beside) {
      const fault = checkDesignNumbers(design) ?? take(design);
      if (fault) return fail(fault);
      write(design, beside);
      return succeed(design);
    },
  };
}
