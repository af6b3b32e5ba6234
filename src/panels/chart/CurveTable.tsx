import { useRef } from 'react';
import { t } from '../../messages';
import { displayForce, displayMoment, significant } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import { signedDegrees } from '../../state/words/pitchText';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { setText } from '../marks/svg';
import { CopyTable } from '../plots/CopyTable';
import { shownText } from '../plots/plotText';

const STEP_DEG = 10;
const PITCHES = Array.from({ length: 180 / STEP_DEG + 1 }, (_, i) => -90 + i * STEP_DEG);

/** The moment, with rounding in place of zero (a sine at 90 degrees) taken for zero. */
function clean(reading: HeadReading, pitchDeg: number): number {
  const moment = reading.momentAt(pitchDeg);
  return Math.abs(moment) < 1e-12 * reading.momentScale ? 0 : moment;
}

/** The curve in numbers, at every ten degrees: for who cannot see the plot, or wants to copy it. */
export function CurveTable() {
  const session = useSession();
  const table = useRef<HTMLTableElement>(null);
  const body = useRef<HTMLTableSectionElement>(null);
  const units = useRef<HTMLTableRowElement>(null);
  /** Of each row those of force and moment, looked up once. */
  const cells = useRef<readonly (readonly HTMLTableCellElement[])[] | null>(null);
  useLive((reading, changes) => {
    if (!body.current || !units.current || !(changes.design || changes.settings)) return;
    const shown = session.store.getState().settings.units;
    setText(units.current.cells[1], t('chart.forceIn', { unit: displayForce(0, shown).unit }));
    setText(units.current.cells[2], t('chart.momentIn', { unit: displayMoment(0, shown).unit }));
    cells.current ??= Array.from(body.current.rows, ({ cells: [, force, moment] }) => [
      force,
      moment,
    ]);
    PITCHES.forEach((pitch, i) => {
      const [forceCell, momentCell] = cells.current?.[i] ?? [];
      if (!forceCell || !momentCell) return;
      const moment = clean(reading, pitch);
      // Where the rod does not reach there is no head: neither force nor moment.
      if (Number.isNaN(moment)) {
        for (const cell of [forceCell, momentCell]) setText(cell, t('chart.unreachable'));
        return;
      }
      const force = reading.forceOf(reading.momentAt(pitch), pitch);
      setText(
        forceCell,
        force === null
          ? t(reading.linkage ? 'chart.overCentre' : 'chart.noForce')
          : significant(displayForce(force, shown).value),
      );
      setText(momentCell, significant(displayMoment(moment, shown).value));
    });
  });

  return (
    // A scrolling region needs a tab stop of its own.
    <div className="chart-table" role="region" aria-label={t('chart.table')} tabIndex={0}>
      <CopyTable testId="curve-copy" text={() => table.current && shownText(table.current)} />
      <table data-testid="curve-table" ref={table}>
        <caption>{t('chart.tableCaption')}</caption>
        <thead>
          <tr ref={units}>
            <th scope="col">{t('chart.pitch')}</th>
            <th scope="col" />
            <th scope="col" />
          </tr>
        </thead>
        <tbody ref={body}>
          {PITCHES.map((pitch) => (
            <tr key={pitch}>
              <th scope="row">{signedDegrees(pitch, 0)}</th>
              <td />
              <td />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
