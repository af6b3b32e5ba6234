import { type Result, succeed } from '../../engine/result';
import { t } from '../../messages';
import { type AirfoilFile, type AirfoilFileFault, readAirfoilFile } from '../../parts/airfoilFile';
import { refusalText } from '../../state/refusalText';
import type { Session } from '../../state/session';

/** Larger files are not even read: a section has some hundred points. */
export const MAX_SECTION_BYTES = 1_000_000;

/** Takes a section on from a file's text; the reason in words where it is refused. One undo step. */
export function takeSection(
  session: Session,
  partId: string,
  file: string,
  text: string,
): Result<AirfoilFile, string> {
  const read = readAirfoilFile(text);
  if (!read.ok) return { ok: false, error: faultText(file, read.error) };
  const { name, coordinates } = read.value;
  const outcome = session.actions.setValues(partId, {
    sectionCoordinates: coordinates,
    sectionName: name === '' ? nameOfFile(file) : name,
  });
  if (outcome.ok) return succeed(read.value);
  const { design, settings } = session.store.getState();
  const reason = refusalText(outcome.error, design, partId, settings.units);
  return { ok: false, error: t('section.refused', { file, reason }) };
}

function faultText(file: string, { line, reason }: AirfoilFileFault): string {
  return line === undefined
    ? t('section.unread', { file, reason })
    : t('section.unreadLine', { file, line, reason });
}

function nameOfFile(file: string): string {
  return file.replace(/\.[a-z0-9]+$/i, '').slice(0, 120);
}

/** Lets go of the section from a file: one undo step. */
export function dropSection({ actions }: Session, partId: string): string | null {
  const hold = actions.gesture.begin();
  for (const field of ['sectionCoordinates', 'sectionName']) {
    const outcome = actions.clearValue(partId, field);
    if (!outcome.ok) {
      hold.cancel();
      return field;
    }
  }
  hold.end();
  return null;
}

/** Room for an outline above and below its chord line, and a little more, in hundredths of the chord. */
export function outlineHeight(coordinates: readonly number[]): number {
  const heights = coordinates.filter((_, i) => i % 2 === 1).map(Math.abs);
  return Math.ceil(200 * Math.max(0, ...heights)) + 2;
}

/** An outline as an SVG path in a box of 100 by `height`, nose to the left, heights as they are. */
export function outlinePath(coordinates: readonly number[], height: number): string {
  let path = '';
  for (let i = 0; i + 1 < coordinates.length; i += 2) {
    const x = (100 * coordinates[i]).toFixed(2);
    const y = (height / 2 - 100 * coordinates[i + 1]).toFixed(2);
    path += `${i === 0 ? 'M' : 'L'}${x} ${y}`;
  }
  return path === '' ? '' : `${path}Z`;
}
