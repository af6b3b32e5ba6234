import type { Design } from '../design/design';

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

/** Noted until the next telling. */
interface PendingChanges {
  design: boolean;
  parts: Set<string> | 'all';
  pitch: boolean;
  selection: boolean;
  settings: boolean;
}

export function noChanges(): PendingChanges {
  return { design: false, parts: new Set(), pitch: false, selection: false, settings: false };
}

export function hasChanged({ design, pitch, selection, settings }: Changes): boolean {
  return design || pitch || selection || settings;
}

/** Numbers of parts or sections and nothing else: what a drag writes. */
export function isDragged({ parts, pitch, selection, settings }: Changes): boolean {
  return parts !== 'all' && !pitch && !selection && !settings;
}

/** Notes which parts differ between two designs: by name, or all of them when the list itself changed. */
export function notePartChanges(
  pending: PendingChanges,
  before: Design | null,
  after: Design,
): void {
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

/** What a listener has to hear that was not told the first. */
export function joined(before: Changes | null, now: Changes): Changes {
  if (before === null) return now;
  if (holds(before, now)) return before;
  return {
    design: before.design || now.design,
    parts:
      before.parts === 'all' || now.parts === 'all'
        ? 'all'
        : new Set([...before.parts, ...now.parts]),
    pitch: before.pitch || now.pitch,
    selection: before.selection || now.selection,
    settings: before.settings || now.settings,
  };
}

/** Whether the first says all that the second says: in a drag of one part it does, picture after picture. */
function holds(before: Changes, now: Changes): boolean {
  if (now.design && !before.design) return false;
  if (now.pitch && !before.pitch) return false;
  if (now.selection && !before.selection) return false;
  if (now.settings && !before.settings) return false;
  if (before.parts === 'all') return true;
  if (now.parts === 'all') return false;
  for (const part of now.parts) if (!before.parts.has(part)) return false;
  return true;
}
