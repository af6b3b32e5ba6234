import { checkDesignNumbers } from '../design/checkDesign';
import type { Design, DesignSections, Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import type { HeadForces } from '../design/forces/headForces';
import { HeadModel } from '../design/headModel';
import { fail, type Result, succeed } from '../engine/result';
import { createReading } from './createReading';
import type { HeadReading } from './reading';
import type { AppState, AppStore } from './store';
import { type Turn, Turns } from './turns';

/** What has changed since the listener was last told. */
export interface Changes {
  /** Anything derived from the design: parts, rotor, curve, equilibria. */
  readonly design: boolean;
  /** Ids of parts whose parameters changed (redraw their geometry); 'all' when parts came, went or changed places. */
  readonly parts: ReadonlySet<string> | 'all';
  readonly pitch: boolean;
  /** Or the picks made on the selected part. */
  readonly selection: boolean;
  /** Or which try-outs are compared. */
  readonly settings: boolean;
}

/** Told to whoever is to draw itself anew. */
export const EVERYTHING: Changes = {
  design: true,
  parts: 'all',
  pitch: true,
  selection: true,
  settings: true,
};

/**
 * Derived results on the drag path. However many times the store is written between two frames, curves are filled
 * once, and listeners are told once; during a drag some when there is time. Listeners write to the DOM or to three.js objects directly: no React render per
 * pointer event.
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
  let pending = nothing();

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
    pending = nothing();
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
  pending = nothing();
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

interface PendingChanges {
  design: boolean;
  parts: Set<string> | 'all';
  pitch: boolean;
  selection: boolean;
  settings: boolean;
}

function nothing(): PendingChanges {
  return { design: false, parts: new Set(), pitch: false, selection: false, settings: false };
}

function hasChanged({ design, pitch, selection, settings }: Changes): boolean {
  return design || pitch || selection || settings;
}

/** Numbers of parts or sections and nothing else: what a drag writes. */
function isDragged({ parts, pitch, selection, settings }: Changes): boolean {
  return parts !== 'all' && !pitch && !selection && !settings;
}

/** Notes which parts differ between two designs: by name, or all of them when the list itself changed. */
function notePartChanges(pending: PendingChanges, before: Design | null, after: Design): void {
  if (before === null || before.parts.length !== after.parts.length) {
    pending.parts = 'all';
    return;
  }
  if (pending.parts === 'all') return;
  const sameMaterials = before.materials === after.materials;
  if (before.parts === after.parts && sameMaterials) return;
  for (let i = 0; i < after.parts.length; i++) {
    if (before.parts[i].id !== after.parts[i].id || before.parts[i].kind !== after.parts[i].kind) {
      pending.parts = 'all';
      return;
    }
    // Any part may be made of a material of the design's own.
    if (before.parts[i] !== after.parts[i] || !sameMaterials) pending.parts.add(after.parts[i].id);
  }
}
