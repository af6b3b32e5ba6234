import { useState } from 'react';
import { shownNumber, shownUnit } from '../../state/shownUnits';
import { weighedGrams } from '../../state/typed/weighedGrams';
import { useAppState, useSession } from '../../ui/session';
import { massText } from './massText';
import { t } from './roomText';
import type { DrawnPart } from './useSheet';
import { type Judgement, judgement, takeAsMass } from './weighing';

/** What the field for the scale's reading shows and does. */
export interface Weighing {
  readonly text: string;
  readonly unitName: string;
  /** Whether something is typed that the design does not have. */
  readonly typing: boolean;
  /** Why what stands in the field is no mass or was not taken; null where nothing is wrong or was not asked yet. */
  readonly fault: string | null;
  readonly judged: Judgement | null;
  /** What the design counts with, where the part was weighed before. */
  readonly counted: string | null;
  onChange(text: string): void;
  /** Says what is wrong with what was typed. */
  settle(): void;
  /** Writes the reading into the design. */
  take(): void;
  /** Back to what the design has. */
  drop(): void;
}

export function useWeighing({ part, window, step }: DrawnPart): Weighing {
  const session = useSession();
  const units = useAppState((state) => state.settings.units);
  const unit = shownUnit('g', units);
  const known = part.measured?.massGrams;
  const knownStep = part.measured?.massStepGrams ?? step;
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const text = draft ?? (known === undefined ? '' : shownNumber(known, unit));
  const typed = weighedGrams(text, units);
  const grams = typed.ok ? typed.value : undefined;

  return {
    text,
    unitName: unit.name,
    typing: draft !== null,
    fault,
    judged: grams === undefined || part.catalogue ? null : judgement(window, step, grams, units),
    counted:
      known === undefined
        ? null
        : t('drawing.counted', { mass: massText(known, knownStep, units) }),
    onChange(next) {
      setDraft(next);
      setFault(null);
    },
    settle: () => setFault(typed.ok ? null : typed.error),
    take() {
      if (grams === undefined) {
        setFault(typed.ok ? t('drawing.weighedEmpty') : typed.error);
        return;
      }
      const taken = draft === null && part.measured?.massStepGrams === step;
      const refused = taken ? null : takeAsMass(session, part, grams, step);
      setFault(refused);
      if (refused === null) setDraft(null);
    },
    drop() {
      setDraft(null);
      setFault(null);
    },
  };
}
