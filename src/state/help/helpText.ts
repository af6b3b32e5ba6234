import { addTexts, t } from '../../messages';
import { HELP_TEXT } from '../../messages/en/help';

export type HelpTextKey = keyof typeof HELP_TEXT;

addTexts('help', HELP_TEXT);

/** A text of the help: they come with this module, so that the page's first load does not hold them. */
export function sayHelp(
  key: HelpTextKey,
  values?: Readonly<Record<string, string | number>>,
): string {
  return t(key, values);
}

/** A text of an entry that not every entry has; null without. */
export function sayOptional(key: string): string | null {
  return key in HELP_TEXT ? sayHelp(key as HelpTextKey) : null;
}
