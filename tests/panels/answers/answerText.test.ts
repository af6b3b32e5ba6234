import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import type { SearchRequest } from '../../../src/neutralise/request';
import { runSearch } from '../../../src/neutralise/search';
import {
  answerName,
  changeText,
  exactText,
  gapText,
  obstacleText,
} from '../../../src/panels/answers/answerText';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';

function demo() {
  const path = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
  const read = parseDesign(readFileSync(path, 'utf8'));
  if (!read.ok) throw new Error(read.error.path);
  return read.value;
}

const HEIGHT = { part: 'nut', field: 'heightMm' };

function request(change: Partial<SearchRequest>): SearchRequest {
  return {
    design: demo(),
    wanted: { goal: { kind: 'neutral' }, speedsRpm: [10_200] },
    knobs: [],
    together: false,
    choices: [],
    weight: null,
    ...change,
  };
}

/** Spaces that do not break are spaces. */
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('an answer in words', () => {
  it('says what to turn, from what to what, what it would be exactly, and how exact it must be', () => {
    const { answers } = runSearch(
      request({ knobs: [{ ref: HEIGHT, min: 2.4, max: 20, step: 0.1 }] }),
    );
    const [answer] = answers;
    expect(plain(changeText(answer, demo(), METRIC_UNITS))).toBe(
      'Locking nut M3, height 2.4 mm \u2192 10.1 mm (exactly 10.135 mm)',
    );
    expect(plain(answerName(answer, demo(), METRIC_UNITS))).toBe('Locking nut M3, height 10.1 mm');
    // What the table says of exactness is the difference of two heads a tenth apart.
    expect(plain(exactText(answer, demo(), METRIC_UNITS))).toMatch(/^0\.1\d\d N per 0\.1 mm$/);
    expect(plain(changeText(answer, demo(), INCH_UNITS))).toContain('0.3976 in');
  });

  it('names what is bought, counted, made of another material and added', () => {
    const { answers } = runSearch(
      request({
        choices: [
          { kind: 'catalogue', part: 'nut', rows: [{ standard: 'ISO 4032', size: 'M3' }] },
          { kind: 'count', part: 'washer-top', counts: [0, 2] },
          { kind: 'material', part: 'bolt', field: 'densityKgM3', materials: ['titanium'] },
        ],
        weight: {
          bolt: 'bolt',
          side: 'both',
          diametersMm: [6],
          materials: ['brass'],
          minMm: 0.5,
          maxMm: 20,
          stepMm: 0.1,
        },
      }),
    );
    const texts = answers.map((answer) => plain(changeText(answer, demo(), METRIC_UNITS)));
    const has = (pattern: RegExp) => expect(texts.some((text) => pattern.test(text))).toBe(true);
    has(/Locking nut M3: ISO 4032 M3/);
    has(/Washer under the head: none/);
    has(/Washer under the head: 2 \u00d7/);
    has(/Blade bolt M3 . 22: titanium/);
    has(/New weight 6 mm \u00d7 \d+(\.\d)? mm, brass, on head and far end/);
    has(/^The head as it is$/);
  });

  it('says which limit stands in the way and what it would take', () => {
    const { obstacles } = runSearch(
      request({ knobs: [{ ref: HEIGHT, min: 2.4, max: 8, step: 0.1 }] }),
    );
    const [{ knobs, obstacle }] = obstacles;
    const text = obstacleText(knobs, obstacle, { design: demo(), refs: [HEIGHT] }, METRIC_UNITS);
    expect(plain(text)).toBe(
      'Locking nut M3, height: the limit of 8 mm stands in the way; it would take 10.13 mm.',
    );
  });

  it('an overlap is not a clearance', () => {
    const gap = { error: 0.00001, wanted: 0.001, tooNear: true };
    expect(plain(gapText({ ...gap, gap: -0.0004 }, METRIC_UNITS))).toBe('overlaps 0.40 mm');
    expect(plain(gapText({ ...gap, gap: 0.0025 }, METRIC_UNITS))).toBe('2.50 mm');
    expect(gapText(null, METRIC_UNITS)).toBe('no keep-out');
  });
});
