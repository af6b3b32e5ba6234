import { afterEach, describe, expect, it } from 'vitest';
import { partText } from '../../src/messages';
import { speak } from '../../src/messages/languages';
import { phrase } from '../../src/messages/phrases';
import { keptTexts } from '../support/keptTexts';

/** Read the same in German: symbols, classes, names of alloys and of the invented heads, keys of the keyboard. */
const ALIKE =
  /^(?:Form|mm|cm|m|[\dA][\d.-]+|ISO [\d-]+.*|Balsa|PTFE|(?:Aluminium|Magnesium) [\w-]+|Heron.*|Dunlin.*|Esc|is not plain text)$/;

describe('English that is kept with what it is about', () => {
  afterEach(() => speak('en'));

  it('is found in the source, of every kind', () => {
    const keys = Object.keys(keptTexts());
    for (const kind of ['part.bolt.', 'rotor.', 'material.', 'fault.', 'demo.', 'phrase.the ']) {
      expect(keys.filter((key) => key.startsWith(kind)).length, kind).toBeGreaterThan(3);
    }
    // A template of a reader, with its places.
    expect(keys).toContain('phrase.has {a} bytes, less than a GLB header');
  });

  it('is all said in German: labels by their keys, phrases and what templates make by themselves', async () => {
    await speak('de');
    const missing = Object.entries(keptTexts()).filter(([key, english]) => {
      if (ALIKE.test(english)) return false;
      if (!key.startsWith('phrase.')) return partText(key, '') === '';
      // What stands in a place is text of a file here: in no language.
      const made = english.replace(/\{\w+\}/g, '\u2203');
      return phrase(made) === made;
    });
    expect(missing.map(([key]) => key)).toEqual([]);
  });
});
