import { useEffect, useRef } from 'react';
import { t } from '../../messages';
import { signedDegrees } from '../../state/words/pitchText';
import { CopyTable } from '../../ui/plots/CopyTable';
import { shownText } from '../../ui/plots/plotText';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import '../../ui/plots/plotTools.css';
import { type CurveTableView, createCurveTableView, TABLE_PITCHES } from './curveTableView';

/** The curve in numbers, at every ten degrees: for who cannot see the plot, or wants to copy it. */
export function CurveTable() {
  const session = useSession();
  const table = useRef<HTMLTableElement>(null);
  const view = useRef<CurveTableView | null>(null);
  useEffect(() => {
    if (!table.current) return;
    const made = createCurveTableView(table.current, session);
    view.current = made;
    return () => {
      made.destroy();
      view.current = null;
    };
  }, [session]);
  useLive((_, changes) => {
    if (changes.design || changes.settings) view.current?.update();
  });

  return (
    // A scrolling region needs a tab stop of its own.
    <div
      className="ui-plot-table chart-table"
      role="region"
      aria-label={t('chart.table')}
      tabIndex={0}
    >
      <CopyTable testId="curve-copy" text={() => table.current && shownText(table.current)} />
      <table data-testid="curve-table" ref={table}>
        <caption>{t('chart.tableCaption')}</caption>
        <thead>
          <tr>
            <th scope="col">{t('chart.pitch')}</th>
            <th scope="col" />
            <th scope="col" />
          </tr>
        </thead>
        <tbody>
          {TABLE_PITCHES.map((pitch) => (
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
