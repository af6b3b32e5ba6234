import { useMemo, useState } from 'react';
import type { Design, Part } from '../../design/design';
import type { Result } from '../../engine/result';
import { useAppState, useRestingDesign } from '../../ui/session';
import { isoDay } from '../isoDay';
import type { DrawingChoice } from './choice';
import { drawSheet, type SheetChoice } from './drawSheet';
import { usualStep } from './massProof';
import { type MassWindow, massWindow } from './massWindow';
import { canDraw, drawnParts } from './pieces/drawnKinds';
import type { LengthUnit, Sheet } from './sheetTypes';

/** What the room shows: made anew when the design has come to rest, never during a drag. */
export interface DrawnPart {
  readonly part: Part;
  readonly sheet: Result<Sheet, 'tooBig'>;
  /** Where the chosen sheet is too small: the drawing on the one that fits, if any does. */
  readonly instead: Sheet | null;
  readonly window: MassWindow;
  readonly unit: LengthUnit;
  /** The scale's step, g. */
  readonly step: number;
}

export interface DrawingDesk {
  readonly design: Design;
  /** The parts that have a drawing. */
  readonly parts: readonly Part[];
  /** The selected part where it has none. */
  readonly undrawn: Part | null;
  readonly drawn: DrawnPart | null;
}

/** The drawing of the selected part; of the one looked at last where the selected has none; else of the first. */
export function useDrawing(choice: DrawingChoice): DrawingDesk {
  const design = useRestingDesign();
  const selection = useAppState((state) => state.selection);
  const pageUnit = useAppState((state) => state.settings.units.length);
  const [last, setLast] = useState<string | null>(null);
  const parts = useMemo(() => drawnParts(design), [design]);
  const withId = (id: string | null) => parts.find((part) => part.id === id);
  const part = withId(selection) ?? withId(last) ?? parts[0] ?? null;
  if (part && part.id !== last) setLast(part.id);
  const selected = design.parts.find(({ id }) => id === selection);
  const unit = choice.unit ?? pageUnit;
  const drawn = useMemo(
    () => part && drawnPart(design, part, choice, unit),
    [design, part, choice, unit],
  );
  return { design, parts, drawn, undrawn: selected && !canDraw(selected) ? selected : null };
}

function drawnPart(
  design: Design,
  part: Part,
  { format, projection, step: chosenStep }: DrawingChoice,
  unit: LengthUnit,
): DrawnPart {
  const window = massWindow(design, part);
  const step = chosenStep ?? part.measured?.massStepGrams ?? usualStep(window);
  const date = isoDay(new Date());
  const chosen: SheetChoice = { format, projection, unit, date, scaleStep: step };
  const sheet = drawSheet(design, part, chosen);
  const other = sheet.ok ? null : drawSheet(design, part, { ...chosen, format: 'auto' });
  const instead = other?.ok ? other.value : null;
  return { part, sheet, instead, window, unit, step };
}
