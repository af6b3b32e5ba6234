import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { EN } from '../../../src/messages/en';
import { HELP_TEXT } from '../../../src/messages/en/help';
import { LATER } from '../../../src/messages/en/later';
import { createSession } from '../../../src/state/createSession';
import { helpHead } from '../../../src/state/help/helpHead';
import { sayHelp } from '../../../src/state/help/helpText';
import { filled, shownTerm, symbolic } from '../../../src/state/help/shownWork';
import { isTopic, TOPIC_IDS, TOPICS } from '../../../src/state/help/topics';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import { NAMED_ON_THE_PAGE } from './namedOnThePage';

const DEMOS = ['1-bare-grip', '3-ordinary-bolt'];

function demo(name: string) {
  const text = readFileSync(
    new URL(`../../../assets/designs/${name}.json`, import.meta.url),
    'utf8',
  );
  const read = parseDesign(text);
  if (!read.ok) throw new Error(read.error.path);
  return createSession(read.value, (update) => update());
}

describe('the help on quantities', () => {
  it('has a name and words for every entry, and a sign for every quantity', () => {
    for (const id of TOPIC_IDS) {
      const texts = HELP_TEXT as Readonly<Record<string, string>>;
      expect(texts[`help.${id}.name`], id).toBeTruthy();
      expect(texts[`help.${id}.what`], id).toBeTruthy();
      if (TOPICS[id].group !== 'words') expect(texts[`help.${id}.sign`], id).toBeTruthy();
    }
  });

  it('has no text of an entry that is not there', () => {
    for (const key of Object.keys(HELP_TEXT)) {
      const id = /^help\.(\w+)\.(name|what|sign|formula)$/.exec(key)?.[1];
      if (id && !/^help\.(none|source|group)\./.test(key)) expect(isTopic(id), key).toBe(true);
    }
  });

  it('names a source for every entry, and says where it is from memory', () => {
    for (const id of TOPIC_IDS) {
      expect(TOPICS[id].sources.length, id).toBeGreaterThan(0);
      for (const source of TOPICS[id].sources)
        expect(sayHelp(`help.source.${source}`)).toBeTruthy();
    }
    expect(sayHelp('help.source.propellerMoment')).toContain('from memory');
  });

  it('points only to entries that are there, and never to itself', () => {
    for (const id of TOPIC_IDS) {
      for (const other of TOPICS[id].see) {
        expect(isTopic(other), `${id} -> ${other}`).toBe(true);
        expect(other).not.toBe(id);
      }
    }
  });

  it('can be reached from somewhere: every entry is a see-also of another', () => {
    const seen = new Set(TOPIC_IDS.flatMap((id) => TOPICS[id].see));
    expect(TOPIC_IDS.filter((id) => !seen.has(id))).toEqual([]);
  });

  it('holds every quantity that the page names', () => {
    for (const [key, id] of Object.entries(NAMED_ON_THE_PAGE)) {
      expect(key in EN || key in LATER, key).toBe(true);
      expect(isTopic(id), `${key} -> ${id}`).toBe(true);
    }
  });

  it.each(DEMOS)('puts the numbers of %s in, in every choice of units, without a hole', (name) => {
    const session = demo(name);
    for (const pitchDeg of [0, -75]) {
      session.actions.setPitch(pitchDeg);
      const head = helpHead(session);
      for (const id of TOPIC_IDS) {
        const found = TOPICS[id].work?.(head);
        if (found?.kind === 'none') expect(sayHelp(found.why), id).toBeTruthy();
        if (found?.kind !== 'worked') continue;
        expect(found.lines.length, id).toBeGreaterThan(0);
        for (const line of found.lines) {
          for (const units of [METRIC_UNITS, INCH_UNITS]) {
            const text = `${symbolic(line)} ${filled(line, units)} ${shownTerm(line.result, units)}`;
            expect(text, `${name} ${id} at ${pitchDeg}`).not.toMatch(/NaN|undefined|Infinity|[{}]/);
          }
        }
      }
    }
  });

  it('writes a negative number into a formula in brackets', () => {
    const line = {
      result: { symbol: 'T', measure: 'force', value: 2 },
      formula: '\u2212{M} / {h}',
      terms: {
        M: { symbol: 'M', measure: 'moment', value: -0.02 },
        h: { symbol: 'h', measure: 'length', value: 0.01 },
      },
    } as const;
    expect(symbolic(line)).toBe('\u2212M / h');
    expect(filled(line, METRIC_UNITS)).toBe('\u2212(\u221220.0\u00a0N\u00a0mm) / 10.00\u00a0mm');
  });
});
