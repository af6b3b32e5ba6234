import { useRef, useState } from 'react';
import { createHoverSolution, type HoverSolution, solveHover } from '../../engine/air/hover';
import { INCH_MM, mmFromMetres, radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { displayForce, displayMoment, show, significant } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import { displayPosition } from '../../state/shownUnits';
import { signedDegrees } from '../../state/words/pitchText';
import type { PlotData } from '../../ui/drawn/plotLayout';
import { HelpRow } from '../../ui/help/HelpRow';
import type { PlotToSave } from '../../ui/plotFiles';
import { PlotTools } from '../../ui/plots/PlotTools';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { CountedSwitches } from '../chart/CountedSwitches';
import { PlotBox } from '../plots/PlotBox';
import { AIR_COLUMNS, type AirView, airColumn, axisPlace, unsolvedText } from './airPlot';
import { judgedStation, sectionPlot, sectionSummary } from './sectionPlot';
import './air.css';

/** The air along one blade at the pitch of the pointer: what each station does, and what it adds up to. */
export function AirRoom() {
  const { store, live } = useSession();
  const [view, setView] = useState<AirView>('thrust');
  const [asTable, setAsTable] = useState(false);
  const totals = useRef<HTMLUListElement>(null);
  const solution = useRef<HoverSolution | null>(null);

  /** Solved anew at the pitch of the pointer; null where there is nothing to solve. */
  function solve(reading: HeadReading): HoverSolution | null {
    const { air } = reading;
    if (air.kind !== 'estimated') return null;
    const count = air.blade.stations.length;
    if (solution.current?.status.length !== count) solution.current = createHoverSolution(count);
    const pitch = radiansFromDegrees(store.getState().pitchDeg);
    return solveHover(air.blade, air.section, air.conditions, pitch, solution.current);
  }

  useLive((reading, changes) => {
    if (!totals.current || !(changes.design || changes.pitch || changes.settings)) return;
    const lines = totalLines(reading, solve(reading), store.getState().pitchDeg);
    const rows = totals.current.children;
    while (rows.length > lines.length) rows[rows.length - 1].remove();
    lines.forEach((line, i) => {
      const row = rows[i] ?? totals.current?.appendChild(document.createElement('li'));
      if (row && row.textContent !== line) row.textContent = line;
    });
  });

  function totalLines(
    reading: HeadReading,
    solved: HoverSolution | null,
    pitchDeg: number,
  ): string[] {
    const { air } = reading;
    if (air.kind !== 'estimated' || !solved) {
      return [t(`notes.air.${air.kind === 'estimated' ? 'off' : air.kind}`)];
    }
    const { units } = store.getState().settings;
    const gaps = unsolvedText(solved, air.blade, units);
    // Totals without a station are none.
    if (solved.unsolved > 0) return [t('air.at', { pitch: signedDegrees(pitchDeg) }), ...gaps];
    return [
      t('air.at', { pitch: signedDegrees(pitchDeg) }),
      t('air.thrust', {
        thrust: show(displayForce(solved.thrust, units)),
        momentum: show(displayForce(solved.momentumThrust, units)),
      }),
      t('air.torque', {
        torque: show(displayMoment(solved.shaftTorque, units)),
        power: significant(solved.power),
      }),
      t('air.moment', { moment: show(displayMoment(solved.featheringMoment, units)) }),
      axisPlace(air.blade),
      t('air.proof', {
        residual: solved.worstResidual === 0 ? '0' : solved.worstResidual.toExponential(0),
      }),
      ...gaps,
    ];
  }

  function data(reading: HeadReading): PlotData | null {
    const { air } = reading;
    const solved = solve(reading);
    if (air.kind !== 'estimated' || !solved) return null;
    if (view === 'section') return sectionPlot(air, solved.angleOfAttack[judgedStation(air).index]);
    const { units } = store.getState().settings;
    const { values, unit } = airColumn(view, solved, units);
    const perMetre = units.length === 'mm' ? mmFromMetres(1) : mmFromMetres(1) / INCH_MM;
    return {
      x: air.blade.stations.map((station) => station * perMetre),
      lines: [{ name: t(`air.column.${view}`), look: 'total', values }],
      xTitle: t('air.axis', { unit: units.length }),
      yTitle: `${t(`air.column.${view}`)}, ${unit}`,
    };
  }

  function summary(reading: HeadReading): string {
    const { air } = reading;
    const solved = solve(reading);
    if (air.kind !== 'estimated' || !solved) return '';
    if (view === 'section') return sectionSummary(air);
    const { units } = store.getState().settings;
    const { values, unit } = airColumn(view, solved, units);
    const { stations } = air.blade;
    return [0, 0.25, 0.5, 0.75, 1]
      .map((share) => Math.round(share * (stations.length - 1)))
      .map((i) =>
        t('air.summary', {
          station: `${displayPosition(stations[i], units)}\u00a0${units.length}`,
          value: Number.isNaN(values[i])
            ? t('air.noValue')
            : `${significant(values[i])}\u00a0${unit}`,
        }),
      )
      .join(' ');
  }

  function toSave(): PlotToSave | null {
    live.flush();
    const shown = data(live.reading);
    const { design, pitchDeg } = store.getState();
    const at = t('speed.at', { pitch: signedDegrees(pitchDeg) });
    const what = `${t('lower.air')}: ${t(`air.column.${view}`)}. ${at}.`;
    return (
      shown && {
        data: shown,
        design,
        lines: [what, t('notes.estimate')],
        summary: summary(live.reading),
        name: `air-${view}`,
      }
    );
  }

  return (
    <section className="lower-room" aria-label={t('lower.air')} data-testid="air-room">
      <div className="lower-head">
        <select
          className="chart-quantity"
          aria-label={t('air.choose')}
          data-testid="air-column"
          value={view}
          onChange={(event) => setView(event.target.value as AirView)}
        >
          {[...AIR_COLUMNS, 'section' as const].map((name) => (
            <option key={name} value={name}>
              {t(`air.column.${name}`)}
            </option>
          ))}
        </select>
        <PlotTools testId="air" plot={toSave} asTable={asTable} onTable={setAsTable} />
        <CountedSwitches />
        <p className="lower-quiet">{t('notes.estimate')}</p>
        <HelpRow ids={['airMoment', 'thrust', 'quarterChord']} />
      </div>
      <div className="air-body">
        {/* Another choice is another picture. */}
        <PlotBox
          key={view}
          data={data}
          summary={summary}
          testId="air-plot"
          asTable={asTable}
          tableName={t(`air.column.${view}`)}
        />
        {/* Scrolls where there is little room; with the focus on it the arrow keys do that. */}
        <ul className="lower-list" tabIndex={0} ref={totals} data-testid="air-totals" />
      </div>
    </section>
  );
}
