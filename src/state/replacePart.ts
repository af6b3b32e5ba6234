import type { Part } from '../design/design';
import { fail, type Result, succeed } from '../engine/result';
import type { Live } from './live';
import { type Refusal, refusalOf } from './refusal';

/**
 * Writes what `change` makes of a part, if the rules of the whole head allow it. A `change` that gives the same object
 * back writes nothing and leaves no undo step.
 */
export function replacePart(
  live: Live,
  id: string,
  change: (part: Part) => Part,
): Result<Part, Refusal> {
  const placed = live.model.placed(id);
  if (!placed) return fail({ field: id, rule: 'unknownPart' });
  const next = change(placed.part);
  if (next === placed.part) return succeed(next);
  const outcome = live.commitPart(next);
  // The model's own list: the reading's waits for the next frame.
  const ids = live.model.parts.map(({ part }) => part.id);
  return outcome.ok ? outcome : fail(refusalOf(outcome.error, ids, id));
}
