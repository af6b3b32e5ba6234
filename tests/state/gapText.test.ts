import { describe, expect, it } from 'vitest';
import type { ClearancePair } from '../../src/design/clearance/clearanceTypes';
import { errorText, gapOnStage, lengthText, overlapText } from '../../src/state/gapText';
import { INCH_UNITS, METRIC_UNITS } from '../../src/state/settings';

const PAIR: ClearancePair = {
  part: 'bolt',
  keepOut: 'case',
  meeting: 'clear',
  gap: 0.002314,
  error: 0.0000123,
  reduced: false,
  pitchDeg: 38.24,
  azimuthDeg: 97.4,
  anyAzimuth: true,
  onPart: [0, 0, 0],
  onKeepOut: [0, 0, 0],
};

describe('the words of a gap', () => {
  it('have hundredths of a millimetre, or ten-thousandths of an inch of 25.4 mm', () => {
    expect(lengthText(0.002314, METRIC_UNITS)).toBe('2.31\u00a0mm');
    expect(lengthText(0.3127, METRIC_UNITS)).toBe('313\u00a0mm');
    expect(lengthText(0.0254, INCH_UNITS)).toBe('1.0000\u00a0in');
  });

  it('round an error up and never to nothing', () => {
    expect(errorText(0.0000123, METRIC_UNITS)).toBe('0.02\u00a0mm');
    expect(errorText(0.00001, METRIC_UNITS)).toBe('0.01\u00a0mm');
    expect(errorText(0, METRIC_UNITS)).toBe('0.01\u00a0mm');
    expect(errorText(0.000012, INCH_UNITS)).toBe('0.0005\u00a0in');
  });

  it('name the pitch with its sign, and the azimuth only where it makes a difference', () => {
    expect(gapOnStage(PAIR, METRIC_UNITS)).toBe('2.31\u00a0mm at +38.2\u00b0');
    expect(gapOnStage({ ...PAIR, anyAzimuth: false }, METRIC_UNITS)).toContain('turned 97\u00b0');
    const into: ClearancePair = { ...PAIR, meeting: 'cut', gap: -0.00042, pitchDeg: -5 };
    expect(gapOnStage(into, METRIC_UNITS)).toBe('0.42\u00a0mm in at \u22125.0\u00b0');
  });

  it('tell of the deepest overlap and how many more there are, of none nothing', () => {
    const nameOf = (id: string) => id.toUpperCase();
    expect(overlapText([PAIR], nameOf, METRIC_UNITS)).toBeNull();
    const cut: ClearancePair = { ...PAIR, meeting: 'cut', gap: -0.00042 };
    expect(overlapText([cut, cut, PAIR], nameOf, METRIC_UNITS)).toBe(
      'BOLT enters CASE by 0.42\u00a0mm at +38.2\u00b0. And 1 more.',
    );
    const within: ClearancePair = { ...cut, meeting: 'keepOutInside' };
    expect(overlapText([within], nameOf, METRIC_UNITS)).toBe(
      'BOLT holds all of CASE at +38.2\u00b0.',
    );
  });
});
