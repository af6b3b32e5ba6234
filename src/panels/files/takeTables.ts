import { t } from '../../messages';
import type { Session } from '../../state/session';
import { isPolarName, takePolarFile } from '../conditions/polarDesk';
import type { ReadingsDoor } from './readingsDoor';

/**
 * Tables that look like readings go to the bench, where they are looked at before they are taken. Of the others the last goes
 * to the air; where it is no table of a section after all, it is looked at as readings could be.
 */
export async function takeTables(
  session: Session,
  readings: ReadingsDoor,
  tables: readonly File[],
): Promise<void> {
  const likeness = await Promise.all(tables.map((file) => readings.likeness(file)));
  const least = readings.isOpen() ? 0 : 0.5;
  const forBench = tables.filter((_, k) => likeness[k] > least);
  if (forBench.length > 0) await readings.offer(forBench);
  const section = tables.findLast((_, k) => likeness[k] <= least);
  if (section) await takeTable(session, readings, section, likeness[tables.indexOf(section)] > 0);
}

/** What is wrong with the table of a section is said. */
async function takeTable(
  session: Session,
  readings: ReadingsDoor,
  file: File,
  mayBeReadings: boolean,
): Promise<void> {
  const fault = await takePolarFile(session, file);
  if (fault && (mayBeReadings || !isPolarName(file.name))) return readings.offer([file]);
  const text = fault ?? t('conditions.polarTaken', { file: file.name });
  session.actions.notify({ tone: fault ? 'warning' : 'plain', text });
}
