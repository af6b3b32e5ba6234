import { afterEach, describe, expect, it } from 'vitest';
import { partText, t } from '../../src/messages';
import { EN } from '../../src/messages/en';
import { LATER } from '../../src/messages/en/later';
import { speak } from '../../src/messages/languages';

describe('the message catalogue', () => {
  afterEach(() => speak('en'));

  it('has no place that its own braces do not close', () => {
    for (const [key, text] of Object.entries({ ...EN, ...LATER })) {
      expect(text.replace(/\{\w+\}/g, ''), key).not.toMatch(/[{}]/);
    }
  });

  it('is in another language once that is spoken, part types included', async () => {
    expect(partText('part.bolt.label', 'Blade bolt')).toBe('Blade bolt');
    await speak('de');
    expect(t('app.save')).toBe('Sichern');
    expect(partText('part.bolt.label', 'Blade bolt')).toBe('Blattbolzen');
    expect(partText('part.nobody.label', 'Nobody')).toBe('Nobody');
  });

  it('fills places, and leaves a place without a value as it stands', () => {
    expect(t('app.opened', { name: 'Three lumps' })).toBe('Opened Three lumps.');
    expect(t('app.opened')).toContain('{name}');
  });
});
