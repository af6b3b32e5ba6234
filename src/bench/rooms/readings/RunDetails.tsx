import { useAppState } from '../../../ui/session';
import { RUNG_NAMES } from '../../analysis';
import { BENCH_LIMITS, type BenchRun } from '../../readings/benchSection';
import { faultText } from '../../readings/faultText';
import { countedReadings } from '../../runReadings';
import { say } from '../../say';
import { NumberField } from '../NumberField';
import { useBench, useDesk } from '../useDesk';
import { readingText } from './runText';

/** The run that is looked at: what is known of it, its readings, and the text as it came. */
export function RunDetails() {
  const run = useBench(({ runs, chosen }) => runs.find(({ id }) => id === chosen));
  if (!run)
    return (
      <div className="bench-empty" data-testid="bench-empty">
        <p>{say('benchRoom.empty')}</p>
        <p className="lower-quiet">{say('benchRoom.emptyMore')}</p>
      </div>
    );
  return (
    <div className="bench-stack" key={run.id} data-testid="bench-run">
      <Metadata run={run} />
      <ReadingTable run={run} />
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

const WORDS = ['gauge', 'date', 'note'] as const;

type WordField = 'name' | 'fitted' | (typeof WORDS)[number];

function Metadata({ run }: { readonly run: BenchRun }) {
  const desk = useDesk();
  function number(field: 'speedRpm' | 'armMm' | 'gaugeStepN', text: 'speed' | 'arm' | 'step') {
    const { min, max, unit } = BENCH_LIMITS[field];
    return (
      <NumberField
        label={say(`benchRoom.meta.${text}`)}
        unit={unit}
        min={min}
        max={max}
        value={run[field] ?? null}
        empty={say('benchRoom.unknown')}
        testId={`bench-${text}`}
        onChange={(value) => desk.changeRun(run.id, { [field]: value ?? undefined })}
      />
    );
  }
  function word(name: WordField, list?: string) {
    return (
      <label className="bench-field" key={name}>
        {say(`benchRoom.meta.${name}`)}
        <input
          className="bench-input"
          value={run[name] ?? ''}
          maxLength={200}
          list={list}
          data-testid={`bench-meta-${name}`}
          onChange={({ target }) => desk.changeRun(run.id, { [name]: target.value })}
        />
      </label>
    );
  }
  return (
    <div className="bench-stack">
      <div className="bench-fields">
        {word('name')}
        {word('fitted', 'bench-rung-names')}
        <datalist id="bench-rung-names">
          {Object.values(RUNG_NAMES).map((name) => (
            <option key={name} value={name} />
          ))}
        </datalist>
        {number('speedRpm', 'speed')}
        {number('gaugeStepN', 'step')}
        <button
          type="button"
          className="ui-button"
          data-testid="bench-remove"
          onClick={() => desk.removeRun(run.id)}
        >
          {say('benchRoom.remove')}
        </button>
      </div>
      <details>
        <summary>{say('benchRoom.more')}</summary>
        <div className="bench-fields">
          {WORDS.map((name) => word(name))}
          {number('armMm', 'arm')}
        </div>
      </details>
    </div>
  );
}

const MOST = 400;

function ReadingTable({ run }: { readonly run: BenchRun }) {
  const desk = useDesk();
  const units = useAppState((state) => state.settings.units);
  const { readings: read, steady } = countedReadings(run);
  if (!read.ok)
    return (
      <ul className="bench-fault">
        {read.error.map((fault) => (
          <li key={faultText(fault)}>{faultText(fault)}</li>
        ))}
      </ul>
    );
  const aside = new Set(run.setAside);
  const texts = read.value.slice(0, MOST).map((one) => readingText(one, units));
  const columns = (['pitch', 'scale', 'load', 'travel', 'speed', 'time'] as const).filter((name) =>
    texts.some((text) => text[name] !== ''),
  );
  return (
    <>
      {steady && (
        <p className="lower-quiet">
          {say('benchRoom.steady', {
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
