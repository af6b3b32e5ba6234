import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design, Part } from '../../../src/design/design';
import { parseDesign } from '../../../src/design/file';
import { sectionGroups } from '../../../src/panels/conditions/sectionRows';
import type { Field, NumberField } from '../../../src/panels/fields/fieldModel';
import { parameterFields } from '../../../src/panels/fields/parameterFields';
import { placementFields } from '../../../src/panels/fields/placementFields';
import { createSession } from '../../../src/state/createSession';
import { refusalText } from '../../../src/state/refusalText';
import type { Session } from '../../../src/state/session';
import { INCH_UNITS, METRIC_UNITS } from '../../../src/state/settings';
import {
  type FieldUnit,
  grouped,
  secondMomentText,
  shownNumber,
  shownUnit,
} from '../../../src/state/shownUnits';
import { parseQuantity } from '../../../src/state/typed/parseQuantity';

function rotorFields(session: Session): Field[] {
  const [rotor] = sectionGroups(session);
  return rotor.runs.flatMap((run) => (run.kind === 'fields' ? run.fields : []));
}

const file = new URL('../../../assets/designs/3-ordinary-bolt.json', import.meta.url);
const read = parseDesign(readFileSync(file, 'utf8'));
const demo = (read as { value: Design }).value;
const open = () => createSession(demo, (callback) => callback());
const partOf = (kind: string) => demo.parts.find((part) => part.kind === kind) as Part;
const numberField = (fields: readonly Field[], key: string) =>
  fields.find((field) => field.key === key) as NumberField;

describe('fields of a part', () => {
  it('read the design and write it', () => {
    const session = open();
    const bolt = partOf('bolt');
    const field = numberField(parameterFields(session, bolt), 'extensionLengthMm');
    expect(field.commit(2.5)).toBeNull();
    expect(field.read()).toBe(2.5);
    expect(session.live.model.placed(bolt.id)?.part).toMatchObject({ extensionLengthMm: 2.5 });
    session.actions.undo();
    expect(field.read()).toBe((bolt as Part & { extensionLengthMm: number }).extensionLengthMm);
  });

  it('refuse what is outside the limits, and say which', () => {
    const session = open();
    const bolt = partOf('bolt');
    const field = numberField(parameterFields(session, bolt), 'extensionLengthMm');
    const before = session.store.getState().design;
    for (const value of [-1, Number.NaN, Number.POSITIVE_INFINITY, 1e9]) {
      const refusal = field.commit(value);
      expect(refusal).not.toBeNull();
      const text = refusal && refusalText(refusal, before, bolt.id, METRIC_UNITS);
      expect(text).toContain(field.label);
    }
    expect(session.store.getState().design).toBe(before);
  });

  it('name both fields of a rule between them, with the limit in the units on screen', () => {
    const session = open();
    const bolt = partOf('bolt') as Part & { lengthMm: number };
    const field = numberField(parameterFields(session, bolt), 'threadLengthMm');
    const refusal = field.commit(bolt.lengthMm + 1);
    if (!refusal) throw new Error('a thread longer than its bolt was taken');
    expect(refusalText(refusal, demo, bolt.id, METRIC_UNITS)).toBe(
      `Thread length must be at most Length (${bolt.lengthMm}\u00a0mm).`,
    );
    expect(refusalText(refusal, demo, bolt.id, INCH_UNITS)).toContain('\u00a0in)');
  });

  it('name the other part where that stands in the way', () => {
    const session = open();
    const bolt = partOf('bolt');
    const nut = partOf('nut');
    const refusal = numberField(parameterFields(session, bolt), 'threadLengthMm').commit(3);
    if (!refusal) throw new Error('the thread was shortened away from under its nut');
    const text = refusalText(refusal, session.store.getState().design, bolt.id, METRIC_UNITS);
    expect(text).toContain(nut.name);
  });
});

describe('placement fields', () => {
  it('keep a part where it is when it is taken off its seat', () => {
    const session = open();
    const nut = partOf('nut');
    const before = session.live.model.placed(nut.id)?.pose.translation;
    const [seat] = placementFields(session, nut);
    if (seat.kind !== 'choice') throw new Error('the seat comes first');
    expect(seat.commit('free')).toBeNull();
    const after = session.live.model.placed(nut.id);
    after?.pose.translation.forEach((value, i) => {
      expect(value).toBeCloseTo(before?.[i] ?? Number.NaN, 11);
    });
    const [again, position] = placementFields(session, after?.part as Part);
    expect(again.kind === 'choice' && again.read()).toBe('free');
    if (position.kind !== 'vector') throw new Error('position follows');
    expect(position.components[2].commit(-20)).toBeNull();
    expect(position.components.map((one) => one.read())[2]).toBe(-20);
  });

  it('refuse an offset beyond the thread', () => {
    const session = open();
    const offset = numberField(placementFields(session, partOf('nut')), 'offsetMm');
    expect(offset.commit(offset.max + 1)).toMatchObject({ rule: 'atMost' });
    expect(offset.commit(offset.min)).toBeNull();
  });
});

describe('fields of the rotor', () => {
  it('refuse half a blade', () => {
    const session = open();
    const refusal = numberField(rotorFields(session), 'bladeCount').commit(2.5);
    expect(refusal && refusalText(refusal, demo, null, METRIC_UNITS)).toContain('whole number');
  });
});

describe('numbers on screen', () => {
  it('say the same when they are typed in again', () => {
    const units = ['mm', 'g', 'deg', 'kg/m3', 'rpm', '1'] as const satisfies FieldUnit[];
    fc.assert(
      fc.property(
        fc.constantFrom(...units),
        fc.constantFrom(METRIC_UNITS, INCH_UNITS),
        fc.integer({ min: -9_999_999, max: 9_999_999 }).map((value) => value / 1000),
        (unit, display, value) => {
          const shown = shownUnit(unit, display);
          const typed = parseQuantity(shownNumber(value, shown), unit, shown.name);
          if (!typed.ok) throw new Error(typed.error.code);
          // Half of the last decimal that inches (4) and ounces (5) show.
          const rounding =
            shown.decimals === null ? 0 : 0.5 * 10 ** -shown.decimals * shown.perShown;
          expect(Math.abs(typed.value - value)).toBeLessThanOrEqual(rounding * 1.0001 + 1e-12);
        },
      ),
      { seed: 20, numRuns: 2000 },
    );
  });

  it('group large whole numbers and leave decimals alone', () => {
    expect(grouped('12345')).toBe('12\u202f345');
    expect(grouped('\u22121234567')).toBe('\u22121\u202f234\u202f567');
    expect(grouped('1940')).toBe('1940');
    expect(grouped('0.00384')).toBe('0.00384');
    expect(secondMomentText(1.94e-6, METRIC_UNITS)).toBe('1940\u00a0g\u00a0mm\u00b2');
  });
});
