import { polarSection } from '../../design/forces/polarSection';
import { MAX_POLAR_TEXT, type PolarFile } from '../../design/sections/air';
import { type PolarFault, writePolarText } from '../../engine/air/polar';
import { createCoefficients, symmetricSection } from '../../engine/air/section';
import { t } from '../../messages';
import { refusalText } from '../../state/refusalText';
import type { Session } from '../../state/session';

/** Takes a table of a section on and counts with it; the reason in words where it is refused. One undo step. */
export function takePolar(session: Session, file: string, text: string): string | null {
  if (text.length > MAX_POLAR_TEXT) {
    return t('conditions.polarTooLong', { limit: MAX_POLAR_TEXT / 1000 });
  }
  const polar: PolarFile = { name: file.slice(0, 120), text };
  const read = polarSection(polar);
  if (!read.ok) return polarFaultText(file, read.error);
  const outcome = session.actions.setSection('air', { polar, section: 'table' });
  if (outcome.ok) return null;
  const { design, settings } = session.store.getState();
  return refusalText(outcome.error, design, null, settings.units);
}

/** The endings of files that a section's coefficients come in. */
export const POLAR_ENDINGS = ['.csv', '.txt', '.dat', '.tsv', '.pol'];

export function isPolarName(name: string): boolean {
  return POLAR_ENDINGS.some((ending) => name.toLowerCase().endsWith(ending));
}

/** The same from a file as it was chosen or dropped. */
export async function takePolarFile(session: Session, file: File): Promise<string | null> {
  if (file.size > 4 * MAX_POLAR_TEXT) {
    return t('conditions.polarTooLong', { limit: MAX_POLAR_TEXT / 1000 });
  }
  return takePolar(session, file.name, await file.text());
}

/** Lets go of the table: the built-in section again. */
export function dropPolar({ actions }: Session): void {
  actions.setSection('air', { polar: undefined, section: undefined });
}

/** What a table holds, in a sentence. */
export function polarText(polar: PolarFile): string {
  const read = polarSection(polar);
  if (!read.ok) return polarFaultText(polar.name, read.error);
  const { coverage } = read.value;
  const { rows, lowestDeg: from, highestDeg: to } = coverage;
  const { lowestReynolds: low, highestReynolds: high } = coverage;
  const held = t('conditions.polarHeld', { name: polar.name, rows, from, to });
  if (low === null || high === null) return held;
  return t('conditions.polarReynolds', { held, low: Math.round(low), high: Math.round(high) });
}

function polarFaultText(name: string, { kind, line, value, limit, text }: PolarFault): string {
  const reason = t(`polar.${kind}`, {
    value: Number.isNaN(value) ? text : value,
    limit: Number.isNaN(limit) ? '' : limit,
    text,
  });
  return t('conditions.polarUnread', { name, line, reason });
}

/** The built-in section as a table that can be read back: a start for one's own. */
export function examplePolar(): string {
  const section = symmetricSection();
  const out = createCoefficients();
  const rows = [];
  for (let angleDeg = -180; angleDeg <= 180; angleDeg += Math.abs(angleDeg) < 30 ? 1 : 5) {
    const { lift, drag, moment } = section.coefficients((angleDeg * Math.PI) / 180, 100_000, out);
    const round = (value: number) => Number(value.toFixed(5));
    rows.push({ angleDeg, lift: round(lift), drag: round(drag), moment: round(moment) });
  }
  return writePolarText({ name: 'built-in symmetric section', blocks: [{ reynolds: null, rows }] });
}
