import { useEffect, useRef } from 'react';
import { t } from '../../messages';
import { fixed, significant } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { displaySecondMoment } from '../../state/shownUnits';
import { useAppState } from '../../ui/session';
import { RACKET_AXES, type RacketBody } from './racketBody';
import type { RacketRun } from './racketRun';
import { throwRacket } from './racketThrow';

/** Three digits, all three moments in one unit, so that they can be compared. */
function momentText({ inertia }: RacketBody, i: number, units: DisplayUnits): string {
  const { value, unit } = displaySecondMoment(inertia[i], units);
  return unit === 'g\u00a0mm\u00b2'
    ? `${significant(value / 1000)}\u00a0kg\u00a0mm\u00b2`
    : `${significant(value)}\u00a0${unit}`;
}

/** The three throws in numbers, and how the free body and the gripped blade differ and what they share. */
export function RacketFacts({ body, run }: { readonly body: RacketBody; readonly run: RacketRun }) {
  const units = useAppState((state) => state.settings.units);
  const rows = useRef<HTMLTableSectionElement>(null);

  useEffect(() => {
    let drawn = Number.NaN;
    function show(): void {
      if (run.beside === drawn || !rows.current) return;
      drawn = run.beside;
      RACKET_AXES.forEach((axis, i) => {
        const { free, flips } = throwRacket(body.inertia, axis, run.beside);
        const cell = rows.current?.children[i].lastElementChild;
        if (!cell) return;
        // Only about the middle axis does the sign change: elsewhere half the period is nothing that is seen.
        cell.textContent =
          axis === 'middle' && free.flipTime !== null
            ? t('racket.every', { time: fixed(free.flipTime, 2) })
            : t(flips.length === 0 ? 'racket.never' : 'racket.once');
      });
    }
    show();
    return run.subscribe(show);
  }, [body, run]);

  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <section className="racket-facts lower-scroll" tabIndex={0} aria-label={t('racket.facts')}>
      <table className="lower-table" data-testid="racket-table">
        <thead>
          <tr>
            <th scope="col">{t('racket.column.axis')}</th>
            <th scope="col" className="lower-number">
              {t('racket.column.moment')}
            </th>
            <th scope="col">{t('racket.column.turns')}</th>
          </tr>
        </thead>
        <tbody ref={rows}>
          {RACKET_AXES.map((axis, i) => (
            <tr key={axis}>
              <th scope="row">{t(`racket.moment.${axis}`)}</th>
              <td className="lower-number">{momentText(body, i, units)}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      <p className="lower-quiet">{t('racket.made')}</p>
      {(['free', 'gripped', 'shared', 'rests'] as const).map((name) => (
        <p key={name}>
          <strong>{t(`racket.${name}.head`)}</strong> {t(`racket.${name}`)}
        </p>
      ))}
    </section>
  );
}
