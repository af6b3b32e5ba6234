import { t } from '../messages';
import {
  LANGUAGE_CODES,
  LANGUAGES,
  type LanguageCode,
  spokenLanguage,
} from '../messages/languages';
import { useSession } from '../ui/session';

/** The language of the page, each named in itself: who cannot read the page finds the way to the own. */
export function LanguageChoice() {
  const { actions } = useSession();
  return (
    <select
      className="app-foot-language"
      aria-label={t('app.language')}
      title={t('app.language')}
      data-testid="language"
      value={spokenLanguage()}
      onChange={({ target }) => actions.setSettings({ language: target.value as LanguageCode })}
    >
      {LANGUAGE_CODES.map((code) => (
        <option key={code} value={code} lang={code}>
          {LANGUAGES[code].name}
        </option>
      ))}
    </select>
  );
}
