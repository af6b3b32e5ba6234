import { useState } from 'react';
import { t } from '../messages';
import { useAppState } from '../ui/session';
import { CautionsDialog } from './CautionsDialog';
import { KeptState } from './keep/KeptState';
import { LanguageChoice } from './LanguageChoice';

/** A longer note, in letters, scrolls within two lines: it would push the rooms out of the window. */
const LONG_NOTE = 250;

/** The caution that is always in sight, whether the work is being kept, and the way to the rest. */
export function Foot() {
  const note = useAppState((now) => now.design.note);
  const [open, setOpen] = useState(false);
  const isLong = (note?.length ?? 0) > LONG_NOTE;
  return (
    <footer className="app-foot">
      <p className="app-foot-caution">
        {t('app.foot')} {note && !isLong && <span className="app-foot-note">{note}</span>}
      </p>
      {isLong && (
        <section className="app-foot-long" tabIndex={0} aria-label={t('app.designNote')}>
          {note}
        </section>
      )}
      <KeptState />
      <button type="button" className="app-foot-button" onClick={() => setOpen(true)}>
        {t('app.cautions')}
      </button>
      <LanguageChoice />
      <CautionsDialog open={open} onClose={() => setOpen(false)} />
    </footer>
  );
}
