import { useId, useState } from 'react';
import { RELEASE_LIMITS, type ReleaseChoices } from '../../design/release/releaseChoices';
import { t } from '../../messages';
import { shownNumber, shownText, shownUnit } from '../../state/shownUnits';
import { readTyped } from '../../state/typed/readTyped';
import { fieldName } from '../../state/words/letGoText';
import { useAppState, useSession } from '../../ui/session';
import { useLetGoState } from './useLetGo';

const HELP = {
  dampingPercent: 'letGo.dampingHelp',
  restitution: 'letGo.reboundHelp',
  sliderMassGrams: 'letGo.sliderMassHelp',
} as const;

/** What a release needs beside the design: kept in the browser, not in the design. */
export function LetGoChoices() {
  return (
    <div className="letgo-choices">
      {(Object.keys(HELP) as (keyof ReleaseChoices)[]).map((field) => (
        <ChoiceField key={field} field={field} />
      ))}
    </div>
  );
}

/** Refused beyond its limits, with the reason; the last good value stays. */
function ChoiceField(props: { readonly field: keyof ReleaseChoices }) {
  const { field } = props;
  const { letGo } = useSession();
  const units = useAppState((state) => state.settings.units);
  const value = useLetGoState((state) => state.choices[field]);
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState('');
  const limit = RELEASE_LIMITS[field];
  const unit = shownUnit(limit.unit, units);
  const shown = shownNumber(value, unit);
  const name = fieldName(field);

  function settle(): void {
    if (typed === null) return;
    if (typed.trim() === '') return setFault(t('letGo.noNumber', { field: name }));
    const read = readTyped(typed, { label: name, unit: limit.unit }, unit, null);
    if (!read.ok) return setFault(read.reason);
    const number = read.value ?? value;
    if (number < limit.min || number > limit.max) {
      const [min, max] = [limit.min, limit.max].map((edge) => shownText(edge, unit));
      return setFault(t('letGo.range', { field: name, min, max }));
    }
    if (number !== value) letGo.choose({ [field]: number });
    clear();
  }
  function clear(): void {
    setTyped(null);
    setFault('');
  }

  return (
    <div className="letgo-choice" title={t(HELP[field])}>
      <label htmlFor={id}>{name}</label>
      <span>
        <input
          id={id}
          className="letgo-input"
          inputMode="decimal"
          value={typed ?? shown}
          aria-invalid={fault !== ''}
          aria-describedby={`${id}-unit ${id}-help${fault === '' ? '' : ` ${id}-fault`}`}
          data-testid={`letgo-${field}`}
          onChange={(event) => setTyped(event.target.value)}
          onBlur={settle}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key === 'Escape') {
              event.preventDefault();
              clear();
            }
          }}
        />{' '}
        <span id={`${id}-unit`}>{unit.name}</span>
      </span>
      <span className="ui-unseen" id={`${id}-help`}>
        {t(HELP[field])}
      </span>
      {fault !== '' && (
        <p className="letgo-fault" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}
