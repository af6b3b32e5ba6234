import { useState } from 'react';
import { MEASURED_LIMITS } from '../../design/measured';
import { localNotes } from '../../state/localNotes';
import { FORMATS } from './paper';
import type { LengthUnit, Projection } from './sheetTypes';

/** What is chosen for the drawings; no part of the design, kept in this browser. */
export interface DrawingChoice {
  /** Name of a format, or 'auto'. */
  readonly format: string;
  readonly projection: Projection;
  /** Null: the page's own. */
  readonly unit: LengthUnit | null;
  /** The scale's smallest division, g; null: that of the part's own weighing, else what its window asks for. */
  readonly step: number | null;
  /** Whether the design rides in an SVG of the sheet. */
  readonly carries: boolean;
}

const AT_FIRST: DrawingChoice = {
  format: 'auto',
  projection: 'first',
  unit: null,
  step: null,
  carries: true,
};
const NOTE = 'drawing';

export function useDrawingChoice(): readonly [
  DrawingChoice,
  (change: Partial<DrawingChoice>) => void,
] {
  const [choice, setChoice] = useState(() => readChoice(localNotes().read(NOTE)));
  function change(part: Partial<DrawingChoice>): void {
    const next = { ...choice, ...part };
    localNotes().write(NOTE, JSON.stringify(next));
    setChoice(next);
  }
  return [choice, change];
}

/** What was kept; whatever of it is unknown or impossible now is left out. */
export function readChoice(text: string | null): DrawingChoice {
  const { format, projection, unit, step, carries } = parsed(text);
  const known = format === 'auto' || FORMATS.some(({ name }) => name === format);
  const { min, max } = MEASURED_LIMITS.massStepGrams;
  return {
    format: known ? (format as string) : AT_FIRST.format,
    projection: projection === 'first' || projection === 'third' ? projection : 'first',
    unit: unit === 'mm' || unit === 'in' ? unit : null,
    step: typeof step === 'number' && step >= min && step <= max ? step : null,
    carries: carries !== false,
  };
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}
