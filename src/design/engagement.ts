import { inverse, transformPoint } from '../engine/math/pose';
import { mmFromMetres } from '../engine/units';
import { partType } from '../parts/registry';
import type { PlacedPart } from './headNode';

/**
 * Length of thread over its diameter under which a nut is not counted on: steel in steel, the height of a standard nut, 0.8
 * of the diameter (common practice).
 */
const LEAST_SHARE = 0.8;
/** Typed decimals: less than this is none, m. */
const SAME = 1e-9;

/** What a bolt that ends too soon in its nut fails to do: hold by enough thread, or reach what locks. */
export type ShortFor = 'thread' | 'lock';

/** A bolt that is too short for the nut on it. */
export interface ShortBolt {
  readonly bolt: string;
  readonly nut: string;
  readonly lacks: ShortFor;
  readonly byMm: number;
}

interface Head {
  readonly parts: readonly PlacedPart[];
  placed(id: string): PlacedPart | undefined;
}

/** The visible nuts in which their bolts end too soon. Nothing is refused for it. */
export function shortBolts(head: Head): readonly ShortBolt[] {
  return head.parts.flatMap((nut): ShortBolt[] => {
    const bolt = nut.part.socket && head.placed(nut.part.socket.part);
    const found = bolt && !nut.part.hidden ? shortIn(bolt, nut) : null;
    if (!bolt || !found) return [];
    return [{ bolt: nameOf(bolt.part), nut: nameOf(nut.part), ...found }];
  });
}

/** What a bolt lacks in one nut, the worse first; null where it lacks nothing, and where the part is no nut. */
export function shortIn(
  bolt: PlacedPart,
  nut: PlacedPart,
): Pick<ShortBolt, 'lacks' | 'byMm'> | null {
  const thread = partType(nut.part.kind).innerThread?.(nut.values);
  const facts = partType(bolt.part.kind).fastener?.(bolt.values);
  if (!thread || !facts) return null;
  const [, , z] = transformPoint(inverse(bolt.pose), nut.pose.translation);
  // The nut's clamped face lies -z from the head's; the bolt goes on for the rest.
  const reach = facts.end + z;
  const least = LEAST_SHARE * thread.diameter;
  if (reach < least - SAME) return { lacks: 'thread', byMm: mmFromMetres(least - reach) };
  const { lockEnd } = thread;
  if (lockEnd === null || reach >= lockEnd - SAME) return null;
  return { lacks: 'lock', byMm: mmFromMetres(lockEnd - reach) };
}

function nameOf(part: { readonly id: string; readonly name: string }): string {
  return part.name === '' ? part.id : part.name;
}
