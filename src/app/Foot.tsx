import { useState } from 'react';
import { t } from '../messages';
import { useAppState } from '../ui/session';
import { CautionsDialog } from './CautionsDialog';
import { KeptState } from './keep/KeptState';
import { LanguageChoice } from './LanguageChoice';

/** The caution that is always in sight, whether the work is being kept, and the way to the rest. */
export function Foot() {
  const note = useAppState((now) => now.design.note);
  const [open, setOpen] = useState(false);
  return (
    <footer className="app-foot">
      <p className="app-foot-caution">
        {t('app.foot')} {note && <span className="app-foot-note">{note}</span>}
      </p>
      <KeptState />
      <button type="button" className="app-foot-button" onClick={() => setOpen(true)}>
        {t('app.cautions')}
      </button>
      <LanguageChoice />
      <CautionsDialog open={open} onClose={() => setOpen(false)} />
    </footer>
  );
}
