import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { NO_MATERIALS } from '../../../src/design/resolve';
import { leftStandard, nearestListed, oddLength } from '../../../src/panels/catalogue/leftStandard';
import { previewOf } from '../../../src/panels/catalogue/preview';
import { leftStandardLines } from '../../../src/panels/catalogue/standardText';
import { createSession } from '../../../src/state/createSession';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';

const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
const read = parseDesign(readFileSync(file, 'utf8'));
const demo = (read as { value: Design }).value;
const bolt = demo.parts.find((part) => part.kind === 'bolt') as Part;
const SCREW = { standard: 'ISO 4762', size: 'M3' };

function listed(lengthMm: number) {
  const session = createSession(demo, (callback) => callback());
  const taken = session.actions.setCatalogue(bolt.id, { ...SCREW, lengthMm });
  if (!taken.ok) throw new Error(taken.error.rule);
  return { ...session, now: () => session.live.model.placed(bolt.id)?.part as Part };
}

describe('what has left the standard', () => {
  it('is nothing of a part that is as its row has it, or that has no row', () => {
    expect(leftStandard(bolt)).toEqual([]);
    expect(leftStandardLines(bolt, METRIC_UNITS)).toEqual([]);
    expect(leftStandardLines(listed(25).now(), METRIC_UNITS)).toEqual([]);
  });

  it('is named with both values, in the units on screen', () => {
    const { actions, now } = listed(25);
    actions.setParameter(bolt.id, 'headHeightMm', 3.2);
    // ISO 4762: the head of an M3 is 3 mm high.
    expect(leftStandard(now())).toEqual([{ field: 'headHeightMm', value: 3.2, standard: 3 }]);
    expect(leftStandardLines(now(), METRIC_UNITS)).toEqual([
      'Head height 3.2\u00a0mm, standard 3\u00a0mm',
    ]);
    expect(leftStandardLines(now(), INCH_UNITS)).toEqual([
      'Head height 0.126\u00a0in, standard 0.1181\u00a0in',
    ]);
    actions.setParameter(bolt.id, 'headHeightMm', 3);
    expect(leftStandard(now())).toEqual([]);
  });

  it('says a choice in words', () => {
    const { actions, now } = listed(25);
    actions.setParameter(bolt.id, 'threadForm', 'basic');
    expect(leftStandardLines(now(), METRIC_UNITS)).toEqual([
      'Thread form basic profile, standard rolled',
    ]);
  });

  it('holds a length that the standard does not list, with the next ones', () => {
    const part = listed(22).now();
    // ISO 888 and ISO 4762 list 20 and 25 and nothing between (memory).
    expect(leftStandardLines(part, METRIC_UNITS)).toEqual([
      '22\u00a0mm is not a standard length of ISO 4762 M3; next are 20\u00a0mm and 25\u00a0mm.',
    ]);
    const odd = oddLength(part);
    expect(odd && nearestListed(odd)).toBe(20);
    expect(oddLength(listed(25).now())).toBeNull();
  });
});

describe('the preview of a row', () => {
  it('weighs what the part weighs once the row is taken', () => {
    const preview = previewOf(bolt, { ...SCREW, lengthMm: 25 }, NO_MATERIALS);
    const { live } = listed(25);
    const [mass] = live.model.placed(bolt.id)?.moments_G ?? [];
    // The same solids summed once in the part frame and once carried to the grip: rounding of a dozen sums.
    expect(Math.abs((preview?.mass ?? 0) / mass - 1)).toBeLessThan(1e-14);
  });

  it('keeps the density that the part has, and shows no value that is 0', () => {
    const heavy = { ...bolt, densityKgM3: 15700 } as Part;
    const one = previewOf(bolt, { ...SCREW, lengthMm: 25 }, NO_MATERIALS)?.mass ?? 0;
    const two = previewOf(heavy, { ...SCREW, lengthMm: 25 }, NO_MATERIALS);
    // 15 700 is twice 7850 to the bit, and mass is proportional to density.
    expect(two?.mass).toBe(2 * one);
    const row = new Map(two?.row);
    expect(row.get('headHeightMm')).toBe(3);
    expect([...row.values()]).not.toContain(0);
  });

  it('is none where the reference leads nowhere', () => {
    expect(previewOf(bolt, { standard: 'ISO 1', size: 'M3' }, NO_MATERIALS)).toBeNull();
    expect(previewOf(bolt, SCREW, NO_MATERIALS)).toBeNull();
  });
});
