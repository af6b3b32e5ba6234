/**
 * Which parts' shares the chart draws: the five largest by amplitude, each in a slot with a colour and a dash of its
 * own, and the rest added up in the last slot. A part keeps its slot while it stays among the largest, so that lines
 * do not change colour under a drag.
 */
export const SHARE_SLOTS = 6;

export interface RankedPart {
  readonly id: string;
  /** Largest moment it can make, N m. */
  readonly size: number;
}

export interface SlotPlan {
  /** Part in each slot, or null. */
  readonly parts: readonly (string | null)[];
  /** Parts that are added up in the last slot; empty where every part has a slot of its own. */
  readonly others: readonly string[];
}

/** Shares below this fraction of the largest are no line of their own: they would lie on the axis. */
const NEGLIGIBLE = 1e-6;

export function planSlots(
  before: readonly (string | null)[],
  candidates: readonly RankedPart[],
): SlotPlan {
  const ranked = candidates.toSorted((a, b) => b.size - a.size);
  const largest = ranked[0]?.size ?? 0;
  const drawn = ranked.filter((part) => part.size > NEGLIGIBLE * largest);
  const named = drawn.length <= SHARE_SLOTS ? drawn : drawn.slice(0, SHARE_SLOTS - 1);
  const others = drawn.slice(named.length).map((part) => part.id);
  const slots = SHARE_SLOTS - (others.length > 0 ? 1 : 0);

  const wanted = new Set(named.map((part) => part.id));
  const parts: (string | null)[] = [];
  for (let i = 0; i < SHARE_SLOTS; i++) {
    const id = before[i] ?? null;
    const kept = id !== null && i < slots && wanted.delete(id);
    parts.push(kept ? id : null);
  }
  for (const part of named) {
    if (wanted.has(part.id)) parts[parts.indexOf(null)] = part.id;
  }
  return { parts, others };
}
