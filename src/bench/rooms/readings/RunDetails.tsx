import { useAppState } from '../../../ui/session';
import { lacksPlace } from '../../namedSteps';
import type { BenchRun } from '../../readings/benchSection';
import { faultText } from '../../readings/faultText';
import { countedReadings, runReadings } from '../../runReadings';
import { say } from '../../say';
import { useBench, useDesk } from '../useDesk';
import { draftOfRun } from './gridDraft';
import { NoRuns } from './NoRuns';
import { OverTime } from './OverTime';
import { RunFields } from './RunFields';
import { runNeeds } from './runNeeds';
import { readingText } from './runText';
import { StepsBox } from './StepsBox';

/** The run that is looked at: what is known of it, its readings, and the text as it came. */
export function RunDetails({ onGrid }: { readonly onGrid: () => void }) {
  const desk = useDesk();
  const run = useBench(({ runs, chosen }) => runs.find(({ id }) => id === chosen));
  const unit = useAppState((state) => state.settings.units.force);
  if (!run) return <NoRuns />;
  return (
    <div className="bench-stack" key={run.id} data-testid="bench-run">
      <RunFields about={run} onChange={(change) => desk.changeRun(run.id, change)} />
      <div className="bench-buttons">
        {run.rows && (
          <button
            type="button"
            className="ui-button"
            data-testid="bench-edit-rows"
            onClick={() => {
              desk.set({ draft: draftOfRun(run, unit) });
              onGrid();
            }}
          >
            {say('benchRoom.editRows')}
          </button>
        )}
        <button
          type="button"
          className="ui-button"
          data-testid="bench-remove"
          onClick={() => desk.removeRun(run.id)}
        >
          {say('benchRoom.removeRun')}
        </button>
      </div>
      <Needs run={run} />
      <Readings run={run} />
      {run.table && (
        <details>
          <summary>{say('benchRoom.rawText')}</summary>
          <pre className="bench-raw" tabIndex={0}>
            {run.table.text.slice(0, 100_000)}
          </pre>
          {run.table.text.length > 100_000 && <p>{say('benchRoom.rawCut')}</p>}
        </details>
      )}
    </div>
  );
}

/** What keeps the run from being fitted, or from being fitted as what it was. */
function Needs({ run }: { readonly run: BenchRun }) {
  const place = useBench((state) => state.place);
  const lacks = runNeeds(run, place);
  if (lacks.length === 0) return null;
  return (
    <ul className="bench-words bench-fault" data-testid="bench-needs">
      {lacks.map((need) => (
        <li key={need}>{say(`benchRoom.needs.${need}`)}</li>
      ))}
    </ul>
  );
}

/** A log whose pitch steps have to be named first, otherwise the readings that count. */
function Readings({ run }: { readonly run: BenchRun }) {
  const naming = useBench((state) => state.naming);
  const read = runReadings(run);
  if (!read.ok)
    return (
      <ul className="bench-fault">
        {read.error.map((fault) => (
          <li key={faultText(fault)}>{faultText(fault)}</li>
        ))}
      </ul>
    );
  const lacks = lacksPlace(read.value);
  if (lacks && (!run.steps || naming?.run === run.id))
    return <StepsBox run={run} readings={read.value} />;
  return (
    <>
      <OverTime run={run} readings={read.value} canName={lacks} />
      <ReadingTable run={run} />
    </>
  );
}

const MOST = 400;

function ReadingTable({ run }: { readonly run: BenchRun }) {
  const desk = useDesk();
  const units = useAppState((state) => state.settings.units);
  const { readings: read, steady } = countedReadings(run);
  if (!read.ok) return null;
  const aside = new Set(run.setAside);
  const texts = read.value.slice(0, MOST).map((one) => readingText(one, units));
  const columns = (['pitch', 'scale', 'load', 'travel', 'speed', 'time'] as const).filter((name) =>
    texts.some((text) => text[name] !== ''),
  );
  return (
    <>
      {steady && (
        <p className="lower-quiet">
          {say(run.steps ? 'benchRoom.named' : 'benchRoom.steady', {
            stretches: steady.readings.length,
            samples: steady.samples,
            of: steady.of,
          })}
        </p>
      )}
      <table className="lower-table" data-testid="bench-table">
        <thead>
          <tr>
            <th scope="col" className="lower-number">
              {say('benchRoom.row')}
            </th>
            {columns.map((name) => (
              <th scope="col" key={name} className="lower-number">
                {say(`benchRoom.head.${name}`)}
              </th>
            ))}
            <th scope="col">{say('benchRoom.counted')}</th>
            <th scope="col">{say('benchRoom.meta.note')}</th>
          </tr>
        </thead>
        <tbody>
          {texts.map((text, k) => (
            <tr key={k} data-aside={aside.has(k) || undefined}>
              <th scope="row" className="lower-number">
                {read.value[k].row}
              </th>
              {columns.map((name) => (
                <td key={name} className="lower-number">
                  {text[name]}
                </td>
              ))}
              <td>
                <input
                  type="checkbox"
                  checked={!aside.has(k)}
                  aria-label={say('benchRoom.countRow', { row: read.value[k].row })}
                  onChange={({ target }) => desk.setAside(run.id, k, !target.checked)}
                />
              </td>
              <td>{read.value[k].note}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {read.value.length > MOST && (
        <p className="lower-quiet">
          {say('benchRoom.firstOf', { shown: MOST, count: read.value.length })}
        </p>
      )}
    </>
  );
}
