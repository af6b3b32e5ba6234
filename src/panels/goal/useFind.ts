import { planKnobs } from '../../state/plan';
import { faultText } from '../../state/words/planText';
import { useSession } from '../../ui/session';

/** Begins the search that the plan asks for and shows the answers; what keeps it from being begun is said. */
export function useFind(): () => void {
  const { plan: desk, actions, store } = useSession();
  return () => {
    const fault = desk.find();
    if (!fault) {
      actions.setSettings({ neutraliseView: 'answers' });
      return;
    }
    const { design, settings } = store.getState();
    const knobs = planKnobs(desk.store.getState().plan, design);
    actions.notify({ tone: 'warning', text: faultText(fault, design, knobs, settings.units) });
  };
}
