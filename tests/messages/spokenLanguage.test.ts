import { afterEach, describe, expect, it, vi } from 'vitest';
import { t } from '../../src/messages';
import { EN } from '../../src/messages/en';
import { LANGUAGES, speak, spokenLanguage } from '../../src/messages/languages';
import { spoken } from '../../src/messages/spoken';

describe('a language that has to be fetched', () => {
  afterEach(async () => {
    vi.restoreAllMocks();
    await speak('en');
  });

  it('is not spoken where another was chosen before it came', async () => {
    let isWanted = true;
    const german = speak('de', () => isWanted);
    isWanted = false;
    expect(await german).toBe(false);
    expect(spokenLanguage()).toBe('en');
    expect(spoken.decimalSign).toBe('.');
    expect(t('app.save')).toBe(EN['app.save']);
    expect(await speak('de', () => true)).toBe(true);
    expect(t('app.save')).not.toBe(EN['app.save']);
  });

  it('that cannot be had leaves the one that is spoken', async () => {
    vi.spyOn(LANGUAGES.de, 'load').mockRejectedValue(new TypeError('no network'));
    await expect(speak('de')).rejects.toThrow('no network');
    expect(spokenLanguage()).toBe('en');
    expect(t('app.save')).toBe(EN['app.save']);
  });
});
