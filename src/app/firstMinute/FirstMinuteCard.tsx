import { Check, X } from 'lucide-react';
import { useStore } from 'zustand';
import { t } from '../../messages';
import { FIRST_STEPS, type FirstStep } from '../../state/firstMinute';
import { firstSelection } from '../../state/firstSelection';
import type { Session } from '../../state/session';
import { useShownPage } from '../../ui/lessonDoor';
import { useSession } from '../../ui/session';
import { useServices } from '../AppContext';
import './firstMinute.css';

/**
 * For a newcomer: three things to try, each ticked when it was done. It stands in a line of its own under the verdict,
 * covers nothing and asks for nothing.
 */
export function FirstMinuteCard() {
  const { firstMinute } = useServices();
  const { shown, done } = useStore(firstMinute.store);
  const page = useShownPage();
  if (!shown || page === 'lesson') return null;
  const count = FIRST_STEPS.filter((step) => done[step]).length;
  const all = count === FIRST_STEPS.length;
  return (
    <section className="first" aria-label={t('first.title')} data-testid="first-minute">
      <h2 className="first-title">{t('first.title')}</h2>
      {all ? (
        <p className="first-all">{t('first.all')}</p>
      ) : (
        <ol className="first-steps">
          {FIRST_STEPS.map((step) => (
            <Step key={step} step={step} done={done[step]} />
          ))}
        </ol>
      )}
      <p className="ui-unseen" role="status">
        {count === 0 ? '' : t('first.count', { done: count, of: FIRST_STEPS.length })}
        {all ? ` ${t('first.all')}` : ''}
      </p>
      <button
        type="button"
        className="ui-button ui-button-icon ui-button-bare"
        aria-label={t('first.dismiss')}
        title={t('first.dismiss')}
        data-testid="first-dismiss"
        onClick={() => {
          firstMinute.dismiss();
          document.getElementById('dial')?.focus({ preventScroll: true });
        }}
      >
        <X aria-hidden="true" />
      </button>
    </section>
  );
}

function Step(props: { readonly step: FirstStep; readonly done: boolean }) {
  const { step, done } = props;
  const session = useSession();
  const text = t(`first.step.${step}`);
  return (
    <li className="first-step" data-done={done || undefined} data-testid={`first-${step}`}>
      <span className="first-mark" aria-hidden="true">
        {done && <Check size={12} strokeWidth={3} />}
      </span>
      <span className="ui-unseen">{t(done ? 'first.done' : 'first.toDo', { step: '' })}</span>
      {done ? (
        <span>{text}</span>
      ) : (
        <button
          type="button"
          className="first-show"
          title={t(`first.show.${step}`)}
          data-testid={`first-show-${step}`}
          onClick={() => SHOW[step](session)}
        >
          {text}
        </button>
      )}
    </li>
  );
}

/** The way to where a step is done. */
const SHOW: Readonly<Record<FirstStep, (session: Session) => void>> = {
  bolt({ store, actions }) {
    const { design } = store.getState();
    actions.setSettings({ room: 'head' });
    actions.select(firstSelection(design));
  },
  dial() {
    document.querySelector<SVGElement>('#dial [role="slider"]')?.focus();
  },
  find({ actions }) {
    actions.setSettings({ room: 'neutralise' });
  },
};
