import { useId } from 'react';
import type { Design } from '../../design/design';
import { PLUS_MINUS_LIMITS } from '../../design/sections/tolerance';
import { type MessageKey } from '../../messages';
import {
  type ToleranceSource,
  toleranceOf,
  withTolerance,
} from '../../neutralise/closeness/tolerances';
import { knobPart, knobValue, sameKnob } from '../../neutralise/knobs';
import { refusalText } from '../../state/refusalText';
import { shownText } from '../../state/shownUnits';
import { t } from '../../state/words/closenessText';
import { knobText } from '../../state/words/planText';
import { useSession } from '../../ui/session';
import { useOptionalEntry } from '../measured/useOptionalEntry';
import type { SlopeRow } from './slopeRows';
import '../fields/fields.css';

/** The tolerance of one number; empty: what holds for it otherwise, which stands there in grey. */
export function ToleranceField({
  row,
  design,
}: {
  readonly row: SlopeRow;
  readonly design: Design;
}) {
  const { actions, store } = useSession();
  const id = useId();
  const { ref, unit } = row;
  const own = design.tolerance?.own?.find((one) => sameKnob(one, ref))?.plusMinus;
  const usual = usualOf(row, design);
  const name = t('closely.toleranceOf', { name: knobText(design, ref) });
  const entry = useOptionalEntry(
    {
      key: `tolerance-${row.key}`,
      label: t('closely.toleranceShort'),
      help: '',
      limits: {
        ...PLUS_MINUS_LIMITS,
        unit,
        ...(usual === null ? {} : { standard: usual.plusMinus }),
      },
      step: unit === 'kg/m3' ? 1 : 0.01,
      commit(plusMinus) {
        const { design: open, settings } = store.getState();
        const rows = withTolerance(open.tolerance, ref, plusMinus);
        const outcome = actions.setSection('tolerance', {
          own: rows.length > 0 ? rows : undefined,
        });
        return outcome.ok ? null : refusalText(outcome.error, open, null, settings.units);
      },
    },
    own,
  );
  const help = t('closely.toleranceHelp', { usual: t(usualKey(usual?.source)) });
  return (
    <>
      <span className="field-box closeness-field" data-invalid={entry.fault !== null || undefined}>
        <input
          className="field-input"
          type="text"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          aria-label={name}
          aria-invalid={entry.fault !== null}
          aria-describedby={entry.fault === null ? `${id}-help` : `${id}-help ${id}-fault`}
          title={help}
          placeholder={
            usual === null
              ? t('closely.exact')
              : shownText(Number(usual.plusMinus.toPrecision(4)), entry.unit)
          }
          data-testid={`tolerance-${row.key}`}
          value={entry.text}
          onChange={(event) => entry.onChange(event.target.value)}
          onFocus={(event) => event.target.select()}
          onKeyDown={entry.onKeyDown}
          onKeyUp={entry.onKeyUp}
          onBlur={entry.onBlur}
        />
        {entry.text !== '' && entry.unit.name && (
          <span className="field-unit">{entry.unit.name}</span>
        )}
      </span>
      <span className="ui-unseen" id={`${id}-help`}>
        {help}
      </span>
      {entry.fault !== null && (
        <p className="field-fault" role="alert" id={`${id}-fault`}>
          {entry.fault}
        </p>
      )}
    </>
  );
}

function usualKey(source: ToleranceSource | undefined): MessageKey {
  return source === undefined || source === 'own'
    ? 'closely.usual.none'
    : `closely.usual.${source}`;
}

/** What holds where the number has no tolerance of its own; null: exact. */
function usualOf({ ref, unit }: SlopeRow, design: Design) {
  const part = knobPart(design, ref);
  if (!part) return null;
  const { own: _, ...general } = design.tolerance ?? {};
  const value = knobValue(design, ref);
  return value === undefined
    ? null
    : toleranceOf({ ...design, tolerance: general }, part, ref, value, unit);
}
