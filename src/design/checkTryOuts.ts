import { checkParts, longTexts, MAX_LONG_TEXT } from './checkParts';
import type { Design, Part, TryOut } from './design';
import { type DesignFault, fault } from './fault';
import { MAX_ID, MAX_NAME, MAX_NOTE, MAX_TRY_OUT_PARTS, MAX_TRY_OUTS } from './limits';
import { type Materials, materialsOf } from './resolve';

/**
 * The first fault of the try-outs, or null: their number, texts, ids, that exactly one is the one on the stage and at most
 * one is adopted, every rule of each one's parts (path `tryOuts[i].parts[j]...`), and what all of them hold together.
 */
export function checkTryOuts(
  design: Pick<Design, 'tryOuts' | 'parts' | 'materials'>,
): DesignFault | null {
  const { tryOuts, parts } = design;
  if (tryOuts === undefined || tryOuts.length === 0) return null;
  if (tryOuts.length > MAX_TRY_OUTS) {
    return fault('tryOuts', { code: 'tooMany', count: tryOuts.length, limit: MAX_TRY_OUTS });
  }
  const marks = checkMarks(tryOuts);
  if (marks) return marks;
  const materials = materialsOf(design);
  for (let i = 0; i < tryOuts.length; i++) {
    const path = `tryOuts[${i}]`;
    const found = checkTexts(tryOuts[i], path) ?? checkVariant(tryOuts[i].parts, path, materials);
    if (found) return found;
  }
  return checkSizes(tryOuts.map((one) => one.parts ?? parts));
}

function checkMarks(tryOuts: readonly TryOut[]): DesignFault | null {
  const seen = new Map<string, number>();
  let adopted: number | undefined;
  for (let i = 0; i < tryOuts.length; i++) {
    const { id } = tryOuts[i];
    const first = seen.get(id);
    if (first !== undefined) {
      return fault(`tryOuts[${i}].id`, { code: 'repeatedTryOut', id, first });
    }
    seen.set(id, i);
    if (!tryOuts[i].adopted) continue;
    if (adopted !== undefined) {
      return fault(`tryOuts[${i}].adopted`, { code: 'adoptedTwice', first: adopted });
    }
    adopted = i;
  }
  const count = tryOuts.filter((one) => one.parts === undefined).length;
  return count === 1 ? null : fault('tryOuts', { code: 'shownTryOuts', count });
}

function checkTexts({ id, name, note = '' }: TryOut, path: string): DesignFault | null {
  if (id === '') return fault(`${path}.id`, { code: 'emptyText' });
  for (const [key, { length }, limit] of [
    ['id', id, MAX_ID],
    ['name', name, MAX_NAME],
    ['note', note, MAX_NOTE],
  ] as const) {
    if (length > limit) return fault(`${path}.${key}`, { code: 'textTooLong', length, limit });
  }
  return null;
}

/** Lists that were found sound, and beside which own materials: what nobody touches is looked at once. */
const sound = new WeakMap<readonly Part[], Materials>();

function checkVariant(
  parts: readonly Part[] | undefined,
  path: string,
  materials: Materials,
): DesignFault | null {
  if (parts === undefined || sound.get(parts) === materials) return null;
  const found = checkParts(parts, materials);
  if (found) return fault(`${path}.${found.path}`, found.reason);
  sound.set(parts, materials);
  return null;
}

/** Whichever is on the stage, the whole must fit a file. */
function checkSizes(lists: readonly (readonly Part[])[]): DesignFault | null {
  const count = lists.reduce((sum, parts) => sum + parts.length, 0);
  if (count > MAX_TRY_OUT_PARTS) {
    return fault('tryOuts', { code: 'tooManyTryOutParts', count, limit: MAX_TRY_OUT_PARTS });
  }
  const length = lists.reduce((sum, parts) => sum + longTexts(parts), 0);
  return length > MAX_LONG_TEXT
    ? fault('tryOuts', { code: 'tooLong', length, limit: MAX_LONG_TEXT })
    : null;
}
