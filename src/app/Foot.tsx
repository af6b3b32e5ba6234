import { useState } from 'react';
import { useStore } from 'zustand';
import { t } from '../messages';
import { useAppState } from '../ui/session';
import { useServices } from './AppContext';
import { CautionsDialog } from './CautionsDialog';
import { LanguageChoice } from './LanguageChoice';

const KEPT = {
  starting: 'app.footStarting',
  kept: 'app.footSaving',
  keeping: 'keep.footKeeping',
  otherTab: 'keep.footOtherTab',
  failed: 'app.footFailed',
} as const;

/** The caution that is always in sight, whether the work is being kept, and the way to the rest. */
export function Foot() {
  const { keeper } = useServices();
  const state = useStore(keeper.status, (now) => now.state);
  const note = useAppState((now) => now.design.note);
  const [open, setOpen] = useState(false);
  return (
    <footer className="app-foot">
      <p className="app-foot-caution">
        {t('app.foot')} {note && <span className="app-foot-note">{note}</span>}
      </p>
      <span className="app-foot-state" data-state={state} data-testid="autosave-state">
        {t(KEPT[state])}
      </span>
      <button type="button" className="app-foot-button" onClick={() => setOpen(true)}>
        {t('app.cautions')}
      </button>
      <LanguageChoice />
      <CautionsDialog open={open} onClose={() => setOpen(false)} />
    </footer>
  );
}
