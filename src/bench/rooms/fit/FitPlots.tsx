import { useMemo, useState } from 'react';
import { rpmFromAngularSpeed } from '../../../engine/units';
import { displayForce, fixed } from '../../../state/quantities';
import { useAppState } from '../../../ui/session';
import type { RungAnalysis } from '../../analysis';
import type { FittedHead } from '../../fitRung';
import { rungName } from '../../rungs';
import { say } from '../../say';
import { PointPlot } from '../plots/PointPlot';
import { cross, ring, shape } from '../plots/plotScene';
import { useDesk } from '../useDesk';
import { speedsOf } from './curves';
import { forceContent, frictionContent, idOf, isAtSpeed, leftContent } from './plotContents';
import type { ShownReading } from './shownReadings';

/** Readings over the predicted and the fitted curve, what the fit leaves over, and friction. */
export function FitPlots(props: {
  readonly rung: RungAnalysis;
  readonly fitted: FittedHead;
  readonly shown: readonly ShownReading[];
}) {
  const { rung, fitted, shown } = props;
  const desk = useDesk();
  const units = useAppState((state) => state.settings.units);
  const speeds = useMemo(() => speedsOf(rung), [rung]);
  const [chosen, setChosen] = useState<number | null>(null);
  const [picked, setPicked] = useState<string | null>(null);
  const [pair, setPair] = useState<string | null>(null);
  const speed = speeds.find((one) => one === chosen) ?? speeds[speeds.length - 1];
  const { force, left, friction } = useMemo(() => {
    const forces = forceContent(rung, fitted, shown, speed, units);
    return {
      force: forces,
      left: leftContent(shown, forces.x, units),
      friction: frictionContent(rung, fitted, speed, forces.x, units),
    };
  }, [rung, fitted, shown, speed, units]);
  const { unit } = displayForce(0, units);
  const name = rungName(rung.rung.key);
  const largest = left.points.reduce(
    (most, { y, state }) => (state === 'aside' ? most : Math.max(most, Math.abs(y))),
    0,
  );
  function toggle(id: string): void {
    const one = shown.find((reading) => idOf(reading) === id);
    if (one) desk.setAside(one.origin.run, one.origin.place, one.state !== 'aside');
  }
  const reader = { picked, onPick: setPicked, onToggle: toggle };
  return (
    <div className="bench-plots">
      <div>
        <div className="bench-plot-head">
          <h3 className="ui-heading">{say('benchRoom.plot.force')}</h3>
          <SpeedChoice speeds={speeds} chosen={speed} onChoose={setChosen} />
        </div>
        <PointPlot
          testId="bench-plot-force"
          title={say('benchRoom.plot.force')}
          about={name}
          xTitle={say('benchRoom.plot.pitch')}
          yTitle={say('benchRoom.plot.forceAxis', { unit })}
          summary={say('benchRoom.plot.forceSummary', {
            count: shown.filter(({ reading }) => isAtSpeed(reading, speed)).length,
            rpm: fixed(rpmFromAngularSpeed(speed), 0),
            aside: shown.filter(({ state }) => state === 'aside').length,
          })}
          content={force}
          hint
          {...reader}
        />
        <PlotKey shown={shown} />
      </div>
      <div>
        <h3 className="ui-heading bench-plot-head">{say('benchRoom.plot.left')}</h3>
        <PointPlot
          testId="bench-plot-left"
          title={say('benchRoom.plot.left')}
          about={name}
          xTitle={say('benchRoom.plot.pitch')}
          yTitle={say('benchRoom.plot.leftAxis')}
          summary={say('benchRoom.plot.leftSummary', {
            count: left.points.length,
            largest: fixed(largest, 1),
          })}
          content={left}
          {...reader}
        />
        <p className="lower-quiet">{say('benchRoom.plot.leftKey')}</p>
      </div>
      {friction && (
        <div>
          <h3 className="ui-heading bench-plot-head">{say('benchRoom.plot.friction')}</h3>
          <PointPlot
            testId="bench-plot-friction"
            title={say('benchRoom.plot.friction')}
            about={name}
            held={say('benchRoom.plot.measured')}
            xTitle={say('benchRoom.plot.pitch')}
            yTitle={say('benchRoom.plot.frictionAxis', { unit })}
            summary={say('benchRoom.plot.frictionSummary', { count: friction.points.length })}
            content={friction}
            picked={pair}
            onPick={setPair}
          />
          <p className="lower-quiet">{say('benchRoom.plot.frictionKey')}</p>
        </div>
      )}
    </div>
  );
}

function SpeedChoice(props: {
  readonly speeds: readonly number[];
  readonly chosen: number;
  readonly onChoose: (speed: number) => void;
}) {
  const { speeds, chosen, onChoose } = props;
  if (speeds.length < 2) return null;
  return (
    <select
      className="ui-select"
      aria-label={say('benchRoom.plot.speed')}
      value={chosen}
      data-testid="bench-plot-speed"
      onChange={({ target }) => onChoose(Number(target.value))}
    >
      {speeds.map((one) => (
        <option key={one} value={one}>{`${fixed(rpmFromAngularSpeed(one), 0)} rpm`}</option>
      ))}
    </select>
  );
}

/** What the shapes and lines mean; only of those that are there. */
function PlotKey({ shown }: { readonly shown: readonly ShownReading[] }) {
  const kinds = new Set(shown.map(({ reading }) => reading.sense));
  const states = new Set(shown.map(({ state }) => state));
  return (
    <p className="bench-key">
      {([1, -1, 0] as const)
        .filter((sense) => kinds.has(sense))
        .map((sense) => {
          const kind = sense === 1 ? 'pull' : sense === -1 ? 'push' : 'held';
          return (
            <span key={kind}>
              <svg width="14" height="14" aria-hidden="true">
                <path className="bench-point" data-kind={kind} d={shape(kind, 7, 7)} />
              </svg>
              {say(`benchRoom.travel.${kind}`)}
            </span>
          );
        })}
      {states.has('doubted') && (
        <span>
          <svg width="18" height="18" aria-hidden="true">
            <path className="bench-doubt" d={ring(9, 9, 7)} />
          </svg>
          {say('benchRoom.plot.keyDoubted')}
        </span>
      )}
      {states.has('aside') && (
        <span>
          <svg width="16" height="16" aria-hidden="true">
            <path className="bench-cross" d={cross(8, 8)} />
          </svg>
          {say('benchRoom.plot.keyAside')}
        </span>
      )}
      {(['model', 'fit'] as const).map((look) => (
        <span key={look}>
          <svg width="24" height="8" aria-hidden="true">
            <path className={`bench-line bench-line-${look}`} d="M0 4H24" />
          </svg>
          {say(`benchRoom.plot.${look}`)}
        </span>
      ))}
      {(['friction', 'fit'] as const).map((look) => (
        <span key={`band ${look}`}>
          <svg width="24" height="10" aria-hidden="true">
            <rect className={`bench-band-${look}`} width="24" height="10" />
          </svg>
          {say(`benchRoom.plot.band.${look}`)}
        </span>
      ))}
    </p>
  );
}
