import { afterEach, describe, expect, it } from 'vitest';
import { partText, t } from '../../src/messages';
import { EN } from '../../src/messages/en';
import { LATER } from '../../src/messages/en/later';
import { languageOf } from '../../src/messages/languages';
import { phrase } from '../../src/messages/phrases';
import { speakOther } from '../support/pseudo';

describe('the message catalogue', () => {
  let english = () => {};
  afterEach(() => english());

  it('has no place that its own braces do not close', () => {
    for (const [key, text] of Object.entries({ ...EN, ...LATER })) {
      expect(text.replace(/\{\w+\}/g, ''), key).not.toMatch(/[{}]/);
    }
  });

  it('says what another language has in it, and the rest in English', () => {
    english = speakOther({ 'app.save': 'Sichern', 'part.bolt.label': 'Bolzen' });
    expect(t('app.save')).toBe('Sichern');
    expect(partText('part.bolt.label', 'Blade bolt')).toBe('Bolzen');
    expect(partText('part.nut.label', 'Nut')).toBe('Nut');
    expect(t('app.open')).toBe(EN['app.open']);
  });

  it('fills places, numbers with the decimal sign of the language, and leaves a place without a value', () => {
    expect(t('app.opened', { name: 'Three lumps' })).toBe('Opened Three lumps.');
    expect(t('app.opened')).toContain('{name}');
    expect(t('app.opened', { name: 1.5 })).toBe('Opened 1.5.');
    english = speakOther({ 'app.opened': '{name} offen.' });
    expect(t('app.opened', { name: 1.5 })).toBe('1,5 offen.');
  });

  it('says phrases by their English, with what stands in their places said too', () => {
    const hundred = 'has a coordinate of 1.5 in line 12, beyond 100';
    expect(phrase(hundred)).toBe(hundred);
    english = speakOther({
      'phrase.has a coordinate of {a} in {b}, beyond {c}': 'hat {b} die Koordinate {a} über {c}',
      'phrase.line {a}': 'in Zeile {a}',
      'phrase.the core': 'der Kern',
    });
    expect(phrase(hundred)).toBe('hat in Zeile 12 die Koordinate 1,5 über 100');
    expect(phrase('the core')).toBe('der Kern');
    expect(phrase('the core of it')).toBe('the core of it');
  });

  it('takes the first language of the browser that it speaks', () => {
    expect(languageOf(['fr-CH', 'de-CH', 'en'])).toBe('de');
    expect(languageOf(['en-GB', 'de'])).toBe('en');
    expect(languageOf(['fr', 'it'])).toBe('en');
    expect(languageOf(['en-US@posix'])).toBe('en');
    expect(languageOf([])).toBe('en');
  });
});
