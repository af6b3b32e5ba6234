import { useState } from 'react';
import { degreesFromRadians } from '../../../engine/units';
import { displayForce, fixed, show, showDegrees } from '../../../state/quantities';
import { useAppState } from '../../../ui/session';
import type { RungAnalysis } from '../../analysis';
import type { FittedHead } from '../../fitRung';
import { say } from '../../say';
import { type PlotPoint, PointPlot, shape } from '../plots/PointPlot';
import { rungCurves, speedsOf, zeroOf } from './curves';

const KINDS = { 1: 'pull', 0: 'held', [-1]: 'push' } as const;
const RPM = 30 / Math.PI;

/** Readings over the predicted and the fitted curve, and what the fit leaves over. */
export function FitPlots(props: { readonly rung: RungAnalysis; readonly fitted: FittedHead }) {
  const { rung, fitted } = props;
  const units = useAppState((state) => state.settings.units);
  const speeds = speedsOf(rung);
  const [chosen, setChosen] = useState<number | null>(null);
  const speed = speeds.find((one) => one === chosen) ?? speeds[speeds.length - 1];
  const curves = rungCurves(rung, fitted, speed);
  const shown = (values: readonly number[]) =>
    values.map((value) => displayForce(value, units).value);
  const flagged = new Set(rung.flags.map(({ index }) => index));
  const places = rung.readings.map((_, i) => i);
  const atSpeed = places.filter(
    (i) => Math.abs(rung.readings[i].angularSpeed - speed) < 1e-3 * speed,
  );
  const point = (i: number, y: number, text: string): PlotPoint => {
    const { pitch, sense } = rung.readings[i];
    const x = degreesFromRadians(pitch);
    const kind = KINDS[sense];
    const title = say('benchRoom.plot.point', {
      pitch: showDegrees(x),
      travel: say(`benchRoom.travel.${kind}`),
      text,
    });
    return { x, y, kind, flagged: flagged.has(i), title };
  };
  const forces = atSpeed.map((i) => {
    const { force, zero } = rung.readings[i];
    const net = force - zeroOf(fitted, zero);
    return point(i, displayForce(net, units).value, show(displayForce(net, units)));
  });
  const { unit } = displayForce(0, units);
  const { standardised } = fitted.fit;
  const residuals = places
    .filter((i) => Number.isFinite(standardised[i]))
    .map((i) => point(i, standardised[i], fixed(standardised[i], 2)));
  const largest = residuals.reduce((most, { y }) => Math.max(most, Math.abs(y)), 0);
  return (
    <div className="bench-plots">
      <div>
        <div className="bench-plot-head">
          <h3 className="ui-heading">{say('benchRoom.plot.force')}</h3>
          {speeds.length > 1 && (
            <select
              className="ui-select"
              aria-label={say('benchRoom.head.speed')}
              value={speed}
              onChange={({ target }) => setChosen(Number(target.value))}
            >
              {speeds.map((one) => (
                <option key={one} value={one}>{`${fixed(one * RPM, 0)} rpm`}</option>
              ))}
            </select>
          )}
        </div>
        <PointPlot
          testId="bench-plot-force"
          xTitle={say('benchRoom.plot.pitch')}
          yTitle={say('benchRoom.plot.forceAxis', { unit })}
          summary={say('benchRoom.plot.forceSummary', { count: forces.length })}
          x={curves.pitchDeg}
          bands={[
            {
              look: 'friction',
              low: shown(curves.frictionLow),
              high: shown(curves.frictionHigh),
            },
            { look: 'fit', low: shown(curves.fitLow), high: shown(curves.fitHigh) },
          ]}
          curves={[
            { name: say('benchRoom.plot.model'), look: 'model', y: shown(curves.model) },
            { name: say('benchRoom.plot.fit'), look: 'fit', y: shown(curves.fit) },
          ]}
          points={forces}
        />
        <PlotKey />
      </div>
      <div>
        <h3 className="ui-heading bench-plot-head">{say('benchRoom.plot.left')}</h3>
        <PointPlot
          testId="bench-plot-left"
          xTitle={say('benchRoom.plot.pitch')}
          yTitle={say('benchRoom.plot.leftAxis')}
          summary={say('benchRoom.plot.leftSummary', {
            count: residuals.length,
            largest: fixed(largest, 1),
          })}
          x={curves.pitchDeg}
          bands={[
            {
              look: 'two',
              low: curves.pitchDeg.map(() => -2),
              high: curves.pitchDeg.map(() => 2),
            },
          ]}
          curves={[]}
          points={residuals}
        />
        <p className="lower-quiet">{say('benchRoom.plot.leftKey')}</p>
      </div>
    </div>
  );
}

function PlotKey() {
  return (
    <p className="bench-key">
      {(['pull', 'push', 'held'] as const).map((kind) => (
        <span key={kind}>
          <svg width="14" height="14" aria-hidden="true">
            <path className="bench-point" data-kind={kind} d={shape(kind, 7, 7)} />
          </svg>
          {say(`benchRoom.travel.${kind}`)}
        </span>
      ))}
      {(['model', 'fit'] as const).map((look) => (
        <span key={look}>
          <svg width="24" height="8" aria-hidden="true">
            <path className={`bench-line bench-line-${look}`} d="M0 4H24" />
          </svg>
          {say(`benchRoom.plot.${look}`)}
        </span>
      ))}
      <span>{say('benchRoom.plot.bands')}</span>
    </p>
  );
}
