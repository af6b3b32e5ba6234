import { useId, useState } from 'react';
import { SCALE_STEPS } from './massProof';
import { t } from './roomText';
import { typedStep } from './weighing';

/** The scale's smallest division: a common one, or the person's own. */
export function ScaleStep(props: {
  readonly step: number;
  readonly onStep: (step: number) => void;
}) {
  const { step, onStep } = props;
  const common = SCALE_STEPS.some((one) => one === step);
  const [own, setOwn] = useState(false);
  const showsOwn = own || !common;
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const id = useId();

  function commit(): void {
    if (draft === null) return;
    const typed = typedStep(draft);
    setFault(typed.ok ? null : typed.error);
    if (!typed.ok) return;
    setDraft(null);
    onStep(typed.value);
  }

  return (
    <div className="drawing-step">
      <label className="drawing-label" title={t('drawing.stepHelp')}>
        {t('drawing.step')}
        <select
          className="ui-select"
          value={showsOwn ? 'own' : String(step)}
          data-testid="drawing-step"
          onChange={(event) => {
            const { value } = event.target;
            setOwn(value === 'own');
            setDraft(null);
            setFault(null);
            if (value !== 'own') onStep(Number(value));
          }}
        >
          {SCALE_STEPS.map((one) => (
            <option key={one} value={String(one)}>
              {t('drawing.stepGrams', { step: one })}
            </option>
          ))}
          <option value="own">{t('drawing.stepOwn')}</option>
        </select>
      </label>
      {showsOwn && (
        <span className="drawing-entry" data-invalid={fault !== null || undefined}>
          <input
            id={id}
            type="text"
            inputMode="decimal"
            autoComplete="off"
            aria-label={t('drawing.stepOwnLabel')}
            aria-invalid={fault !== null}
            aria-describedby={fault === null ? undefined : `${id}-fault`}
            data-testid="drawing-step-own"
            value={draft ?? String(step)}
            onChange={(event) => {
              setDraft(event.target.value);
              setFault(null);
            }}
            onFocus={(event) => event.target.select()}
            onBlur={commit}
            onKeyDown={(event) => {
              if (event.key === 'Enter') commit();
            }}
          />
          <span className="drawing-unit">g</span>
        </span>
      )}
      {fault !== null && (
        <p className="drawing-fault" role="alert" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </div>
  );
}
