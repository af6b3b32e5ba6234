import { afterEach, describe, expect, it } from 'vitest';
import { type Catalogue, partText, setCatalogue, t } from '../../src/messages';
import { EN } from '../../src/messages/en';
import { LATER } from '../../src/messages/en/later';

describe('the message catalogue', () => {
  afterEach(() => setCatalogue(null));

  it('has no place that its own braces do not close', () => {
    for (const [key, text] of Object.entries({ ...EN, ...LATER })) {
      expect(text.replace(/\{\w+\}/g, ''), key).not.toMatch(/[{}]/);
    }
  });

  it('a second language is an object with the same keys, part types and demos included', () => {
    const other = Object.fromEntries(
      Object.keys({ ...EN, ...LATER }).map((key) => [key, `<${key}>`]),
    );
    setCatalogue({ ...other, 'part.bolt.label': 'Bolzen' } as unknown as Catalogue);
    expect(t('app.save')).toBe('<app.save>');
    expect(partText('part.bolt.label', 'Blade bolt')).toBe('Bolzen');
    expect(partText('part.nut.label', 'Nut')).toBe('Nut');
  });

  it('fills places, and leaves a place without a value as it stands', () => {
    expect(t('app.opened', { name: 'Three lumps' })).toBe('Opened Three lumps.');
    expect(t('app.opened')).toContain('{name}');
  });
});
