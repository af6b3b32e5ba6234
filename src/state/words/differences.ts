import type { Part } from '../../design/design';
import type { Materials } from '../../design/resolve';
import { partText, t } from '../../messages';
import { partType } from '../../parts/registry';
import type { DisplayUnits } from '../settings';
import { type PartFact, partFacts } from './partFacts';

/** What a cell says, and whether it is not what the first column (the one on the stage) says. */
export interface Cell {
  readonly text: string;
  readonly differs: boolean;
}

export interface DifferenceRow {
  readonly key: string;
  readonly label: string;
  /** The part that it is about, where it is about one. */
  readonly part: string | null;
  readonly cells: readonly Cell[];
}

/**
 * The rows in which lists of parts differ, a part (by its id) after the other in the order of the first list, those that
 * only others have at the end. A part that is not in every list has a row that says so; its fields are held against each
 * other where it is there.
 */
export function partRows(
  lists: readonly (readonly Part[])[],
  materials: Materials,
  units: DisplayUnits,
): DifferenceRow[] {
  const byId = lists.map((parts) => new Map<string, Part>(parts.map((part) => [part.id, part])));
  const ids = new Set(lists.flatMap((parts) => parts.map((part) => part.id)));
  const rows: DifferenceRow[] = [];
  for (const id of ids) {
    const found = byId.map((parts) => parts.get(id) ?? null);
    // The same object in every list: the usual case.
    if (found.every((part) => part !== null && part === found[0])) continue;
    rows.push(...rowsOfPart(id, found, lists, materials, units));
  }
  return rows;
}

function rowsOfPart(
  id: string,
  found: readonly (Part | null)[],
  lists: readonly (readonly Part[])[],
  materials: Materials,
  units: DisplayUnits,
): DifferenceRow[] {
  const first = found.find((part) => part !== null) as Part;
  const there = found.filter((part) => part !== null);
  const rows: DifferenceRow[] = [];
  const add = (key: string, field: string, texts: readonly CellSource[]) => {
    const label = t('tryOuts.partField', { part: first.name || id, field });
    const row = rowOf(`${id} ${key}`, label, id, texts);
    if (row) rows.push(row);
  };
  add(
    'there',
    t('tryOuts.inHead'),
    found.map((part) => ({
      value: part !== null,
      text: t(part ? 'tryOuts.isThere' : 'tryOuts.gone'),
    })),
  );
  if (there.some((part) => part.kind !== first.kind)) {
    add('kind', t('tryOuts.kind'), found.map(kindCell));
    return rows;
  }
  const byRow = there.every((part) => part.catalogue !== undefined);
  const facts = found.map((part, i) =>
    part ? partFacts(part, byRow, { parts: lists[i], materials, units }) : null,
  );
  for (const { key, label } of orderedKeys(facts)) {
    add(
      key,
      label,
      facts.map((own) => factCell(own, key)),
    );
  }
  return rows;
}

interface CellSource {
  /** Undefined: there is nothing to compare (the part or the field is not there). */
  readonly value: unknown;
  readonly text: string;
}

function kindCell(part: Part | null): CellSource {
  if (!part) return { value: undefined, text: t('tryOuts.none') };
  const type = partType(part.kind);
  return { value: part.kind, text: partText(`part.${part.kind}.label`, type.label) };
}

function factCell(facts: readonly PartFact[] | null, key: string): CellSource {
  const own = facts?.find((one) => one.key === key);
  return own ?? { value: undefined, text: t('tryOuts.none') };
}

/** Every key once, in the order of the first part that has it. */
function orderedKeys(facts: readonly (readonly PartFact[] | null)[]): readonly PartFact[] {
  const seen = new Map<string, PartFact>();
  for (const one of facts.flatMap((own) => own ?? []))
    if (!seen.has(one.key)) seen.set(one.key, one);
  return [...seen.values()];
}

/** A row, or null where all that is there is alike. */
function rowOf(
  key: string,
  label: string,
  part: string,
  sources: readonly CellSource[],
): DifferenceRow | null {
  const there = sources.filter(({ value }) => value !== undefined);
  // A part that is missing has its own row; a field that only one kind of seat has is told with the seat.
  if (there.every(({ value }) => value === there[0].value)) return null;
  const [{ value: shown }] = sources;
  const cells = sources.map(({ value, text }) => ({ text, differs: value !== shown }));
  return { key, label, part, cells };
}
