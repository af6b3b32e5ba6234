import { Printer } from 'lucide-react';
import { type KeyboardEvent, useState } from 'react';
import type { Part } from '../../design/design';
import { SWING_AXES } from '../../design/measured';
import { t } from '../../messages';
import { Dialog } from '../../ui/Dialog';
import { Press } from '../../ui/Press';
import { useAppState, useSession } from '../../ui/session';
import { measuredField } from './measuredFields';
import { OptionalNumberRow } from './OptionalNumberRow';
import { RuleList } from './RuleList';
import { BalanceDrawing } from './SwingDrawing';
import { SwingPrint } from './SwingPrint';
import { SwingStep } from './SwingStep';
import { BALANCE_RULES } from './swingRules';

const STEPS = ['balance', ...SWING_AXES] as const;
type Step = (typeof STEPS)[number];

/** The two-string pendulum, step by step: balance point first, then a timing about each axis. */
export function SwingSheet(props: {
  readonly part: Part;
  readonly open: boolean;
  readonly onClose: () => void;
}) {
  const { part } = props;
  const [step, setStep] = useState<Step>('balance');
  const opening = useAppState((state) => state.opening);
  const at = STEPS.indexOf(step);
  return (
    // Escape closes this dialog alone, not the drawer that the panel may lie in.
    <div onKeyDown={keepEscape}>
      <Dialog
        open={props.open}
        title={t('measured.sheet', { part: part.name })}
        onClose={props.onClose}
      >
        <nav className="swing-nav" aria-label={t('measured.steps')}>
          {STEPS.map((one, i) => (
            <button
              key={one}
              type="button"
              className="ui-button"
              aria-current={one === step ? 'step' : undefined}
              onClick={() => setStep(one)}
            >
              {i + 1}. {t(`measured.step.${one}`)}
            </button>
          ))}
        </nav>
        {step === 'balance' ? (
          <BalanceStep part={part} />
        ) : (
          <SwingStep key={`${opening} ${step}`} partId={part.id} about={step} />
        )}
        <footer className="swing-foot">
          <button type="button" className="ui-button" onClick={() => window.print()}>
            <Printer aria-hidden="true" />
            {t('measured.print')}
          </button>
          <span className="swing-gap" />
          <Press
            quick
            off={at === 0}
            why={t('measured.backWhy')}
            onPress={() => setStep(STEPS[at - 1])}
          >
            {t('measured.back')}
          </Press>
          <Press
            quick
            off={at === STEPS.length - 1}
            why={t('measured.nextWhy')}
            onPress={() => setStep(STEPS[at + 1])}
          >
            {t('measured.next')}
          </Press>
        </footer>
        <SwingPrint name={part.name} />
      </Dialog>
    </div>
  );
}

function keepEscape(event: KeyboardEvent): void {
  if (event.key === 'Escape') event.stopPropagation();
}

function BalanceStep(props: { readonly part: Part }) {
  const { part } = props;
  const session = useSession();
  const measured = useAppState(
    (state) => state.design.parts.find((one) => one.id === part.id)?.measured,
  );
  const row = (key: Parameters<typeof measuredField>[2]) => (
    <OptionalNumberRow field={measuredField(session, part, key)} value={measured?.[key]} />
  );
  return (
    <div className="swing-step">
      <p>{t('measured.intro')}</p>
      <p>{t('measured.which')}</p>
      <div className="swing-columns">
        <div>
          <BalanceDrawing />
        </div>
        <div>
          {row('massGrams')}
          {row('massStepGrams')}
          {row('centreXMm')}
          {row('centreYMm')}
          {row('centreStepMm')}
        </div>
      </div>
      <RuleList rules={BALANCE_RULES} />
    </div>
  );
}
