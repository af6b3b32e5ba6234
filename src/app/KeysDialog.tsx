import { Fragment } from 'react';
import { t } from '../messages';
import { phrase } from '../messages/phrases';
import { Dialog } from '../ui/Dialog';
import { useAppState, useSession } from '../ui/session';
import { useServices } from './AppContext';
import { SHORTCUTS } from './shortcuts';

/** Every key, from the table that binds them. */
export function KeysDialog(props: { readonly open: boolean; readonly onClose: () => void }) {
  const { firstMinute } = useServices();
  const groups = [...new Set(SHORTCUTS.map((shortcut) => shortcut.group))];
  return (
    <Dialog open={props.open} title={t('app.keysTitle')} onClose={props.onClose}>
      <p>
        <button
          type="button"
          className="ui-button"
          data-testid="first-again"
          onClick={() => {
            props.onClose();
            firstMinute.again();
          }}
        >
          {t('first.again')}
        </button>
      </p>
      <p>{t('app.keysNote')}</p>
      <LetterKeys />
      <div className="app-keys">
        {groups.map((group) => (
          <section key={group}>
            <h3>{t(group)}</h3>
            <dl>
              {SHORTCUTS.filter((shortcut) => shortcut.group === group).map(({ label, keys }) => (
                <Fragment key={label}>
                  <dt>{t(label)}</dt>
                  <dd>
                    {keys.map((chord) => (
                      <Chord key={chord} chord={chord} />
                    ))}
                  </dd>
                </Fragment>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </Dialog>
  );
}

/** Switches the keys that are one letter, digit or sign off and on. */
function LetterKeys() {
  const { actions } = useSession();
  const on = useAppState((state) => state.settings.letterKeys);
  return (
    <p>
      <label className="app-letters">
        <input
          type="checkbox"
          data-testid="letter-keys"
          checked={on}
          onChange={(event) => actions.setSettings({ letterKeys: event.target.checked })}
        />
        {t('app.letterKeys')}
      </label>
    </p>
  );
}

function Chord(props: { readonly chord: string }) {
  return (
    <span className="app-chord">
      {(props.chord === '+' ? ['+'] : props.chord.split('+')).map((key) => (
        <kbd key={key}>{keyName(key)}</kbd>
      ))}
    </span>
  );
}

function keyName(key: string): string {
  if (key === 'Mod') return t(onMac() ? 'app.cmd' : 'app.ctrl');
  if (key === 'Shift') return t('app.shift');
  if (key === 'Alt') return t('app.alt');
  return phrase(key);
}

function onMac(): boolean {
  return /Mac|iPhone|iPad/.test(navigator.platform);
}
