import { describe, expect, it } from 'vitest';
import type { Tolerance } from '../../src/design/design';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { HeadModel } from '../../src/design/headModel';
import { designOf, fullHead } from './designs';

function withTolerance(tolerance: unknown) {
  return { ...designOf(fullHead()), tolerance: tolerance as Tolerance };
}

function faultOf(tolerance: unknown) {
  const read = parseDesign(JSON.stringify(withTolerance(tolerance)));
  return read.ok ? null : `${read.error.path}: ${read.error.reason.code}`;
}

const OWN = [
  { part: 'nut', field: 'heightMm', plusMinus: 0.05 },
  { part: 'lump', field: 'positionMm', component: 1, plusMinus: 0.2 },
];

describe('the tolerances of a design', () => {
  it('come back from a file as they were written, keys in one order', () => {
    const shuffled = [{ plusMinus: 0.05, field: 'heightMm', part: 'nut' }, OWN[1]];
    const design = withTolerance({ seed: 7, generalClass: 'fine', own: shuffled });
    const text = serializeDesign(design);
    const read = parseDesign(text);
    expect(read.ok && read.value.tolerance).toEqual({ seed: 7, generalClass: 'fine', own: OWN });
    expect(text.indexOf('"generalClass"')).toBeLessThan(text.indexOf('"seed"'));
    expect(text.indexOf('"heightMm",')).toBeLessThan(text.indexOf('"plusMinus": 0.05'));
  });

  it('are known to the model', () => {
    const model = new HeadModel();
    const design = withTolerance({ own: OWN });
    expect(model.load(design).ok).toBe(true);
    expect(model.sections.tolerance).toBe(design.tolerance);
  });

  it('may name a part that is gone', () => {
    expect(faultOf({ own: [{ part: 'sold', field: 'heightMm', plusMinus: 1 }] })).toBeNull();
  });

  it.each([
    [{ generalClass: 'v' }, 'tolerance.generalClass: notAChoice'],
    [{ densityPercent: -1 }, 'tolerance.densityPercent: tooSmall'],
    [{ samples: 10.5 }, 'tolerance.samples: notWhole'],
    [{ samples: 1e7 }, 'tolerance.samples: tooLarge'],
    [{ own: {} }, 'tolerance.own: wrongType'],
    [{ own: [{ ...OWN[0], plusMinus: -0.1 }] }, 'tolerance.own[0].plusMinus: tooSmall'],
    [{ own: [{ ...OWN[0], part: '' }] }, 'tolerance.own[0].part: emptyText'],
    [{ own: [{ part: 'nut', plusMinus: 1 }] }, 'tolerance.own[0].field: missing'],
    [{ own: [{ ...OWN[1], component: 3 }] }, 'tolerance.own[0].component: tooLarge'],
    [{ own: [OWN[0], OWN[1], OWN[0]] }, 'tolerance.own[2]: unsound'],
    [{ own: Array.from({ length: 501 }, () => OWN[0]) }, 'tolerance.own: tooMany'],
    [{ own: [{ ...OWN[0], unit: 'mm' }] }, 'tolerance.own[0]: unknownKey'],
  ])('are refused as %j with the field named', (tolerance, fault) => {
    expect(faultOf(tolerance)).toBe(fault);
  });

  it.each([
    [{ own: [{ ...OWN[0], plusMinus: Number.NaN }] }, 'tolerance.own[0].plusMinus: notFinite'],
    [{ own: [{ ...OWN[0], part: 7 }] }, 'tolerance.own[0].part: wrongType'],
    [{ own: [{ ...OWN[0], field: 'x'.repeat(65) }] }, 'tolerance.own[0].field: textTooLong'],
    [{ own: [{ ...OWN[1], component: 0.5 }] }, 'tolerance.own[0].component: notWhole'],
    [{ own: [OWN[0], OWN[0]] }, 'tolerance.own[1]: unsound'],
  ])('are refused by the model too: %j', (tolerance, fault) => {
    const outcome = new HeadModel().load(withTolerance(tolerance));
    expect(outcome.ok ? null : `${outcome.error.path}: ${outcome.error.reason.code}`).toBe(fault);
  });
});
