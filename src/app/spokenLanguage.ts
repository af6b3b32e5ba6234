import { t } from '../messages';
import { type LanguageCode, languageOf, speak, spokenLanguage } from '../messages/languages';
import type { Session } from '../state/session';
import type { Settings } from '../state/settings';
import { reasonOf } from '../ui/fileErrors';

/** Speaks what is chosen before anything is drawn; English where that cannot be fetched. */
export async function speakAtFirst(chosen: Settings['language']): Promise<void> {
  try {
    await speak(codeOf(chosen));
  } catch {
    // A page that speaks English is better than none.
  }
  tellDocument();
}

/** Changes over when another language is chosen; `drawAnew` makes everything that shows text again. */
export function followLanguage({ store, actions }: Session, drawAnew: () => void): void {
  let wish = 0;
  store.subscribe(({ settings }, before) => {
    if (settings.language !== before.settings.language) void change(settings.language);
  });

  async function change(chosen: Settings['language']): Promise<void> {
    const mine = ++wish;
    const code = codeOf(chosen);
    if (code === spokenLanguage()) return;
    try {
      if (!(await speak(code, () => mine === wish))) return;
    } catch (error) {
      if (mine !== wish) return;
      const text = t('app.languageNotFetched', { reason: reasonOf(error) });
      actions.setSettings({ language: spokenLanguage() });
      actions.notify({ tone: 'warning', text });
      return;
    }
    if (mine !== wish) return;
    // What it says is in the language before.
    actions.notify(null);
    tellDocument();
    drawAnew();
  }
}

function codeOf(chosen: Settings['language']): LanguageCode {
  return chosen === 'system' ? languageOf(navigator.languages) : chosen;
}

/** Screen readers and the browser's hyphens go by it, and whoever keeps a mark of the page by its description. */
function tellDocument(): void {
  document.documentElement.lang = spokenLanguage();
  document.querySelector('meta[name="description"]')?.setAttribute('content', t('app.description'));
}
