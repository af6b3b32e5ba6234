import { describe, expect, it } from 'vitest';
import type { Part } from '../../src/design/design';
import { HeadForces } from '../../src/design/forces/headForces';
import { HeadModel } from '../../src/design/headModel';
import type { Measured, Swing } from '../../src/design/measured';
import { measuredReport, type ReportedQuantity } from '../../src/design/measuredReport';
import { materialsOf, NO_MATERIALS, valuesOf } from '../../src/design/resolve';
import { largestTerm, swingTerms } from '../../src/design/swingTerms';
import { findWarnings } from '../../src/design/warnings';
import { warningMessage } from '../../src/design/warningText';
import { swingMoment } from '../../src/design/weighPart';
import { radians } from '../../src/engine/units';
import { designOf, partOf } from './designs';

/** A box of 40 x 20 x 10 mm in a density of 2500 kg/m3: 8 cm3, 20 g. */
const BOX = { sizeMm: [40, 20, 10], densityKgM3: 2500 };
const MASS = 0.02;

function block(measured?: Measured, more = {}): Part {
  return partOf('block', 'box', { ...BOX, ...(measured ? { measured } : {}), ...more });
}

function reportOf(part: Part, materials = NO_MATERIALS) {
  const report = measuredReport(part, valuesOf(part, materials), materials);
  if (!report) throw new Error('reportOf(): there is no report');
  const of = (what: ReportedQuantity['what']) =>
    report.quantities.find((one) => one.what === what) as ReportedQuantity;
  return { ...report, of };
}

describe('a part as drawn beside what was measured', () => {
  // Derived: m = rho a b c; I_x = m (b^2 + c^2) / 12 about the centre of a box. Rounding: some tens of 1e-16.
  const inertiaX = (MASS * (0.02 ** 2 + 0.01 ** 2)) / 12;

  it('a box has the mass and moments of the closed form, and nothing measured changes nothing', () => {
    const { of, densityFactor, quantities } = reportOf(block());
    expect(of('mass').modelled).toBeCloseTo(MASS, 14);
    expect(of('inertiaX').modelled / inertiaX).toBeCloseTo(1, 12);
    expect(densityFactor).toBe(1);
    for (const { modelled, applied, comparison } of quantities) {
      expect(applied).toBe(modelled);
      expect(comparison).toBeNull();
    }
  });

  it('weighed 3.4 % heavier, its density is scaled by 1.034 and its moments with it', () => {
    const { of, densityFactor, density } = reportOf(block({ massGrams: 20.68 }));
    expect(densityFactor).toBeCloseTo(1.034, 12);
    expect(density?.to).toBeCloseTo(2585, 8);
    expect(of('mass').applied).toBeCloseTo(0.02068, 14);
    expect(of('inertiaX').applied / inertiaX).toBeCloseTo(1.034, 12);
  });

  // By hand: the scale steps by 0.1 g, u = 0.1 / sqrt(12) = 0.028868 g; the drawing 2 % of 20 g = 0.4 g.
  it('combines the step of the scale with the 2 % of the dimensions in squares', () => {
    const { comparison } = reportOf(block({ massGrams: 20.5, massStepGrams: 0.1 })).of('mass');
    const byHand = Math.sqrt((0.1e-3 / Math.sqrt(12)) ** 2 + 0.4e-3 ** 2);
    expect((comparison?.uncertainty ?? 0) / byHand).toBeCloseTo(1, 12);
    expect((comparison?.expected ?? 0) / (2 * byHand)).toBeCloseTo(1, 12);
    expect(comparison?.difference).toBeCloseTo(0.0005, 14);
  });

  it('disagrees beyond twice the combined uncertainty and not before', () => {
    const byHand = 1000 * Math.sqrt((0.01e-3 / Math.sqrt(12)) ** 2 + 0.4e-3 ** 2);
    const at = (massGrams: number) => reportOf(block({ massGrams })).of('mass').comparison;
    expect(at(20 + 1.999 * byHand)?.disagrees).toBe(false);
    expect(at(20 + 2.001 * byHand)?.disagrees).toBe(true);
    expect(at(20 - 2.001 * byHand)?.disagrees).toBe(true);
  });

  // A centre is uncertain by 2 % of the rms distance from the origin: a box about its middle, a / sqrt(12).
  it('a balance point is expected within the ruler and 2 % of how far the mass lies out', () => {
    const { comparison } = reportOf(block({ centreXMm: 1, centreStepMm: 1 })).of('centreX');
    const byHand = Math.sqrt((0.001 / Math.sqrt(12)) ** 2 + (0.02 * 0.04) ** 2 / 12);
    expect((comparison?.uncertainty ?? 0) / byHand).toBeCloseTo(1, 12);
    expect(comparison?.disagrees).toBe(true);
  });

  // Half the range over sqrt(3) (JCGM 100, GUM, 4.3.7): 2300 to 2700 puts 200 / sqrt(3) kg/m3 on 2500.
  it('a material that is sold from 2300 to 2700 kg/m3 widens what is expected', () => {
    const design = {
      ...designOf([]),
      materials: [
        {
          id: 'own',
          name: 'Own',
          densityKgM3: 2500,
          densityLowKgM3: 2300,
          densityHighKgM3: 2700,
        },
      ],
    };
    const { densityKgM3: _, ...rest } = block({ massGrams: 21.5 }) as unknown as Record<
      string,
      unknown
    >;
    const part = { ...rest, material: 'own' } as unknown as Part;
    const { of, ranges } = reportOf(part, materialsOf(design));
    const byHand = Math.hypot(0.02 * MASS, (MASS * 200) / 2500 / Math.sqrt(3));
    expect(of('mass').modelUncertainty / byHand).toBeCloseTo(1, 12);
    expect(ranges).toMatchObject([{ material: 'own', low: 2300, high: 2700 }]);
    expect(of('mass').comparison?.disagrees).toBe(false);
    expect(reportOf(block({ massGrams: 21.5 })).of('mass').comparison?.disagrees).toBe(true);
  });

  it('there is no report of a part without mass', () => {
    const nothing = partOf('block', 'box', { sizeMm: [40, 20, 10], densityKgM3: 2500 });
    const values = { ...valuesOf(nothing, NO_MATERIALS), densityKgM3: 0 };
    expect(measuredReport(nothing, values, NO_MATERIALS)).toBeNull();
  });
});

describe('what limits a timing', () => {
  const swing: Swing = {
    about: 'span',
    spacingMm: 60,
    stringLengthMm: 500,
    swings: 20,
    seconds: 9,
    cradleGrams: 3,
  };

  it('its parts add in squares to the uncertainty of the moment', () => {
    const terms = swingTerms(swing, 0.02, 0.0004);
    const { moment, uncertainty } = swingMoment(swing, 0.02, 0.0004);
    // Derived: without a cradle moment of its own the relative uncertainties are the same sum.
    const byHand = Math.hypot(terms.mass, terms.spacing, terms.length, terms.time);
    expect(uncertainty / moment / byHand).toBeCloseTo(1, 12);
  });

  // By hand: 2 x 0.3 / sqrt(12) / 9 = 1.9 %; 2 x 0.5 / sqrt(12) / 60 = 0.5 %; the mass 0.0004 / 0.023 = 1.7 %.
  it('is the watch for 9 s, and the mass once five times as many swings are counted', () => {
    expect(largestTerm(swingTerms(swing, 0.02, 0.0004))).toBe('time');
    const longer = { ...swing, swings: 100, seconds: 45 };
    expect(largestTerm(swingTerms(longer, 0.02, 0.0004))).toBe('mass');
    expect(largestTerm(swingTerms({ ...longer, spacingMm: 10 }, 0.02, 0.0004))).toBe('spacing');
  });
});

describe('the warning that a measurement and its drawing disagree', () => {
  function warningsOf(part: Part) {
    const model = new HeadModel();
    expect(model.load(designOf([part])).ok).toBe(true);
    return findWarnings(new HeadForces(model), radians(-1), radians(1)).filter(
      ({ code }) => code === 'measuredDisagrees',
    );
  }

  it('says what was weighed, what is drawn, by how much and what was expected', () => {
    const [warning, ...others] = warningsOf(block({ massGrams: 21 }));
    expect(others).toEqual([]);
    // 1 g of 20 g is 5 %; 2 x 2.0005 % is 4.0 %.
    expect(warningMessage(warning)).toBe(
      '"box": weighed 21.0 g, modelled 20.0 g: 5.0 % more, beyond the 4.0 % expected.',
    );
  });

  it('is not given within what is expected, nor for a hidden part', () => {
    expect(warningsOf(block({ massGrams: 20.5 }))).toEqual([]);
    expect(warningsOf(block({ massGrams: 21 }, { hidden: true }))).toEqual([]);
  });

  it('gives the difference of a centre as a length, since a centre may lie at zero', () => {
    const [warning] = warningsOf(block({ centreXMm: -5 }));
    expect(warningMessage(warning)).toMatch(/measured at -5\.00 mm, .*: 5\.00 mm less, beyond the/);
  });
});
