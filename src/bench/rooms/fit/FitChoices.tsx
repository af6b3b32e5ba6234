import {
  BENCH_AIRS,
  BENCH_FIT_LIMITS,
  BENCH_NUMBER_LIMITS,
  BENCH_PLACES,
  BENCH_SHARED_LIMITS,
} from '../../../design/sections/bench';
import { readingFromSi, siFromReading } from '../../../engine/units';
import { useAppState } from '../../../ui/session';
import type { FitChoice } from '../../deskTypes';
import { say } from '../../say';
import { NumberField } from '../NumberField';
import { useBench, useDesk } from '../useDesk';

const FRICTIONS: readonly FitChoice['friction'][] = ['pull', 'moment', 'force', 'none'];
const ZEROS: readonly FitChoice['zeros'][] = ['free', 'none'];

/** What is fitted, and what is known of the gauge. */
export function FitChoices() {
  const desk = useDesk();
  const fit = useBench((state) => state.fit);
  const change = (next: Partial<FitChoice>) => desk.set({ fit: { ...fit, ...next } });
  return (
    <>
      <PlaceChoice />
      <Choice
        name="friction"
        value={fit.friction}
        options={FRICTIONS}
        onChoose={(friction) => change({ friction })}
      />
      <Choice
        name="zeros"
        value={fit.zeros}
        options={ZEROS}
        onChoose={(zeros) => change({ zeros })}
      />
      <Choice name="air" value={fit.air} options={BENCH_AIRS} onChoose={(air) => change({ air })} />
      <GaugeFields />
      <NumberField
        label={say('benchRoom.fit.pitchSigma')}
        unit={'\u00b0'}
        min={BENCH_FIT_LIMITS.pitchSigmaDeg.min}
        max={BENCH_FIT_LIMITS.pitchSigmaDeg.max}
        value={fit.pitchSigmaDeg}
        testId="bench-pitch-sigma"
        onChange={(value) => change({ pitchSigmaDeg: value ?? 0 })}
      />
      <SharedFields />
    </>
  );
}

const SHARED = ['gainPercent', 'leverPercent', 'speedPercent', 'pitchZeroDeg'] as const;

/** Uncertainties that all runs have alike. */
function SharedFields() {
  const desk = useDesk();
  const fit = useBench((state) => state.fit);
  return (
    <details data-testid="bench-shared">
      <summary>{say('benchRoom.fit.shared')}</summary>
      <p className="lower-quiet">{say('benchRoom.fit.sharedHelp')}</p>
      {SHARED.map((name) => (
        <NumberField
          key={name}
          label={say(`benchRoom.fit.${name}`)}
          unit={name === 'pitchZeroDeg' ? '\u00b0' : '%'}
          min={BENCH_SHARED_LIMITS[name].min}
          max={BENCH_SHARED_LIMITS[name].max}
          value={fit[name]}
          testId={`bench-${name}`}
          onChange={(value) => desk.set({ fit: { ...fit, [name]: value ?? 0 } })}
        />
      ))}
    </details>
  );
}

/** Where the gauge pulls, and for one at the slider which way. */
export function PlaceChoice() {
  const desk = useDesk();
  const place = useBench((state) => state.place);
  const pullsAlong = useBench((state) => state.pullsAlong);
  return (
    <>
      <Choice
        name="place"
        value={place}
        options={BENCH_PLACES}
        onChoose={(value) => desk.set({ place: value })}
      />
      {place === 'slider' && (
        <Choice
          name="pulls"
          value={pullsAlong === 1 ? 'up' : 'down'}
          options={['up', 'down'] as const}
          onChoose={(way) => desk.set({ pullsAlong: way === 'up' ? 1 : -1 })}
        />
      )}
    </>
  );
}

/** Step, noise and range of the gauge in the page's unit of force. */
export function GaugeFields() {
  const desk = useDesk();
  const unit = useAppState((state) => state.settings.units.force);
  const fit = useBench((state) => state.fit);
  const step = useBench((state) => state.gaugeStepN);
  const limit = useBench((state) => state.gaugeLimitN);
  const fromN = (value: number | null) => (value === null ? null : readingFromSi(value, unit));
  const toN = (value: number | null) => (value === null ? null : siFromReading(value, unit));
  const limitsOf = (name: keyof typeof BENCH_NUMBER_LIMITS) => ({
    unit,
    min: readingFromSi(BENCH_NUMBER_LIMITS[name].min, unit),
    max: readingFromSi(BENCH_NUMBER_LIMITS[name].max, unit),
  });
  return (
    <>
      <NumberField
        label={say('benchRoom.fit.step')}
        {...limitsOf('gaugeStepN')}
        value={fromN(step)}
        testId="bench-gauge-step"
        onChange={(value) => desk.set({ gaugeStepN: toN(value) ?? 0 })}
      />
      <NumberField
        label={say('benchRoom.fit.limit')}
        {...limitsOf('gaugeLimitN')}
        value={fromN(limit)}
        empty={say('benchRoom.unknown')}
        testId="bench-gauge-limit"
        onChange={(value) => desk.set({ gaugeLimitN: toN(value) })}
      />
      <NumberField
        label={say('benchRoom.fit.noise')}
        {...limitsOf('gaugeNoiseN')}
        value={fromN(fit.noiseN)}
        empty={say('benchRoom.fit.learn')}
        testId="bench-noise"
        onChange={(value) => desk.set({ fit: { ...fit, noiseN: toN(value) } })}
      />
    </>
  );
}

function Choice<T extends string>(props: {
  readonly name: 'place' | 'pulls' | 'friction' | 'zeros' | 'air';
  readonly value: T;
  readonly options: readonly T[];
  readonly onChoose: (value: T) => void;
}) {
  return (
    <label className="bench-field">
      {say(`benchRoom.fit.${props.name}`)}
      <select
        className="ui-select"
        value={props.value}
        data-testid={`bench-${props.name}`}
        onChange={({ target }) => props.onChoose(target.value as T)}
      >
        {props.options.map((value) => (
          <option key={value} value={value}>
            {say(`benchRoom.fit.${props.name}.${value}` as Parameters<typeof say>[0])}
          </option>
        ))}
      </select>
    </label>
  );
}
