import { partType } from '../../parts/registry';
import type { HeadModel } from '../headModel';
import type { PlacedPart } from '../headNode';

/**
 * The first visible part that can swing on its seat, followed by everything that it carries; empty where there is none. A
 * second one swings on a hinge of its own and is not known here.
 */
export function hingedGroup(model: HeadModel): readonly PlacedPart[] {
  const first = model.parts.find(
    ({ part }) => !part.hidden && part.socket && partType(part.kind).hinged,
  );
  if (!first) return [];
  const group = [first];
  const ids = new Set([first.part.id]);
  // Parents may stand after their children in the list: look until nothing is added.
  for (let before = 0; before < ids.size; ) {
    before = ids.size;
    for (const placed of model.parts) {
      const parent = placed.part.socket?.part;
      if (parent === undefined || ids.has(placed.part.id) || !ids.has(parent)) continue;
      ids.add(placed.part.id);
      group.push(placed);
    }
  }
  return group;
}
