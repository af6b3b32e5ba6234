import { BENCH_ROLES, BENCH_TRAVELS } from '../design/sections/bench';
import type { LocalNotes } from '../state/localNotes';
import type { RememberedMappings } from './readings/remembered';
import { unitFromText } from './readings/unitNames';
import type { GridDraft } from './typedRows';

/** What the desk keeps in the browser: columns that a person set, and readings that are being typed. */
type Notes = Pick<LocalNotes, 'read' | 'write'>;

const COLUMNS = 'bench.columns';
const DRAFT = 'bench.draft';

export function writeRemembered(notes: Notes, memory: RememberedMappings): void {
  notes.write(COLUMNS, JSON.stringify(memory));
}

export function writeDraft(notes: Notes, draft: GridDraft | null): void {
  notes.write(DRAFT, draft ? JSON.stringify(draft) : '');
}

/** Mappings of the last visit. Written by this program, perhaps by another version: what is not understood is forgotten. */
export function readRemembered(notes: Notes): RememberedMappings {
  const found = parsed(notes.read(COLUMNS));
  if (!isRecord(found)) return {};
  const sound = Object.entries(found).filter(
    ([, mapping]) => Array.isArray(mapping) && mapping.every(isColumn),
  );
  return Object.fromEntries(sound) as RememberedMappings;
}

/** What was being typed at the last visit; the run that it was of may be gone. */
export function readDraft(notes: Notes): GridDraft | null {
  const found = parsed(notes.read(DRAFT));
  return isDraft(found) ? { ...found, run: null } : null;
}

function parsed(text: string | null): unknown {
  try {
    return JSON.parse(text || 'null');
  } catch {
    return null;
  }
}

function isRecord(found: unknown): found is Readonly<Record<string, unknown>> {
  return typeof found === 'object' && found !== null && !Array.isArray(found);
}

function isColumn(found: unknown): boolean {
  if (!isRecord(found)) return false;
  const { role, unit, flipped, travel } = found;
  return (
    isOneOf(BENCH_ROLES, role) &&
    (unit === null || (typeof unit === 'string' && unitFromText(unit) === unit)) &&
    typeof flipped === 'boolean' &&
    (travel === null || isOneOf(BENCH_TRAVELS, travel))
  );
}

function isDraft(found: unknown): found is GridDraft {
  if (!isRecord(found) || !isRecord(found.about) || typeof found.about.name !== 'string')
    return false;
  const { place, unit, rows, about } = found;
  return (
    (place === 'pitch' || place === 'scale') &&
    (unit === 'N' || unit === 'ozf') &&
    ABOUT_TEXTS.every((key) => about[key] === undefined || typeof about[key] === 'string') &&
    ABOUT_NUMBERS.every((key) => about[key] === undefined || Number.isFinite(about[key])) &&
    Array.isArray(rows) &&
    rows.every(isRow)
  );
}

const ABOUT_TEXTS = ['fitted', 'gauge', 'date', 'note'] as const;
const ABOUT_NUMBERS = ['speedRpm', 'armMm', 'gaugeStepN'] as const;

function isRow(found: unknown): boolean {
  if (!isRecord(found)) return false;
  const { pitch, force, travel, note } = found;
  const areTexts = [pitch, force, note].every((cell) => typeof cell === 'string');
  return areTexts && (travel === '' || isOneOf(BENCH_TRAVELS, travel));
}

function isOneOf(list: readonly string[], found: unknown): boolean {
  return typeof found === 'string' && list.includes(found);
}
