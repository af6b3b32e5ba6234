import { useId } from 'react';
import { MAX_NAME, MAX_NOTE } from '../../../design/limits';
import { readingFromSi, siFromReading } from '../../../engine/units';
import { useAppState } from '../../../ui/session';
import { BENCH_LIMITS } from '../../readings/benchSection';
import { RUNG_KEYS, rungFileName, rungName } from '../../rungs';
import { say } from '../../say';
import type { AboutChange, RunAbout } from '../../typedRows';
import { NumberField } from '../NumberField';

/** What is known of a run beside its readings; what is not known stays empty. */
export function RunFields(props: {
  readonly about: RunAbout;
  readonly onChange: (change: AboutChange) => void;
}) {
  const { about, onChange } = props;
  const id = useId();
  const unit = useAppState((state) => state.settings.units.force);
  const { speedRpm, armMm, gaugeStepN } = BENCH_LIMITS;
  function word(name: 'name' | 'fitted' | 'gauge' | 'date' | 'note', list?: string) {
    return (
      <label className="bench-field">
        {say(`benchRoom.meta.${name}`)}
        <input
          className={name === 'note' ? 'bench-input bench-note' : 'bench-input'}
          value={name === 'fitted' ? shownFitted(about.fitted) : (about[name] ?? '')}
          maxLength={name === 'note' ? MAX_NOTE : MAX_NAME}
          list={list}
          data-testid={`bench-meta-${name}`}
          onChange={({ target }) =>
            onChange({
              [name]: target.value === '' && name !== 'name' ? undefined : kept(name, target),
            })
          }
        />
      </label>
    );
  }
  return (
    <div className="bench-fields bench-about" data-testid="bench-about">
      {word('name')}
      {word('fitted', id)}
      <datalist id={id}>
        {RUNG_KEYS.map((key) => (
          <option key={key} value={rungName(key)} />
        ))}
      </datalist>
      <NumberField
        label={say('benchRoom.meta.speed')}
        {...speedRpm}
        value={about.speedRpm ?? null}
        empty={say('benchRoom.unknown')}
        testId="bench-speed"
        onChange={(value) => onChange({ speedRpm: value ?? undefined })}
      />
      {word('gauge')}
      <NumberField
        label={say('benchRoom.meta.step')}
        unit={unit}
        min={0}
        max={readingFromSi(gaugeStepN.max, unit)}
        value={about.gaugeStepN === undefined ? null : readingFromSi(about.gaugeStepN, unit)}
        empty={say('benchRoom.unknown')}
        testId="bench-step"
        onChange={(value) =>
          onChange({ gaugeStepN: value === null ? undefined : siFromReading(value, unit) })
        }
      />
      <NumberField
        label={say('benchRoom.meta.arm')}
        {...armMm}
        value={about.armMm ?? null}
        empty={say('benchRoom.noArm')}
        testId="bench-arm"
        onChange={(value) => onChange({ armMm: value ?? undefined })}
      />
      {word('date')}
      {word('note')}
    </div>
  );
}

/** A step of the ladder is kept by the name that every language reads, and shown by its own. */
function shownFitted(fitted: string | undefined): string {
  const key = RUNG_KEYS.find((one) => fitted === rungFileName(one));
  return key ? rungName(key) : (fitted ?? '');
}
function kept(name: string, { value }: HTMLInputElement): string {
  const key = name === 'fitted' ? RUNG_KEYS.find((one) => value === rungName(one)) : undefined;
  return key ? rungFileName(key) : value;
}
