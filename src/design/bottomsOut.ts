import { inverse, transformPoint } from '../engine/math/pose';
import { mmFromMetres } from '../engine/units';
import { partType } from '../parts/registry';
import type { PlacedPart } from './headNode';

/** A bolt that is too long for the closed nut on it: it meets the end before the nut is home. */
export interface BottomedNut {
  readonly nut: string;
  readonly bolt: string;
  /** How far the tip would have to go into solid metal, mm. */
  readonly byMm: number;
}

interface Head {
  readonly parts: readonly PlacedPart[];
  placed(id: string): PlacedPart | undefined;
}

/** Typed decimals: less than this is none. */
const SAME_MM = 1e-6;

/** Visible closed nuts whose bolt's tip lies beyond the end of their thread. Nothing is refused for it: a maker may cut. */
export function bottomsOut(head: Head): readonly BottomedNut[] {
  const found: BottomedNut[] = [];
  for (const { part, values, pose } of head.parts) {
    const end = part.hidden ? null : (partType(part.kind).threadEnd?.(values) ?? null);
    const bolt = part.socket && head.placed(part.socket.part);
    const facts = bolt && partType(bolt.part.kind).fastener?.(bolt.values);
    if (end === null || !bolt || !facts) continue;
    const [, , z] = transformPoint(inverse(bolt.pose), pose.translation);
    const byMm = mmFromMetres(facts.end + z - end);
    if (byMm > SAME_MM) found.push({ nut: nameOf(part), bolt: nameOf(bolt.part), byMm });
  }
  return found;
}

function nameOf(part: { readonly id: string; readonly name: string }): string {
  return part.name === '' ? part.id : part.name;
}
