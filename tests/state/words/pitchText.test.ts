import { afterEach, describe, expect, it } from 'vitest';
import { GERMAN } from '../../../src/messages/de';
import { verdictText } from '../../../src/panels/measured/reportText';
import { createSession } from '../../../src/state/createSession';
import { METRIC_UNITS } from '../../../src/state/settings';
import { shownLoad, signedDegrees, spokenPitch } from '../../../src/state/words/pitchText';
import { DEMOS, demo } from '../../output/solids/heads';
import { speakOther } from '../../support/pseudo';

let stop = () => {};
afterEach(() => stop());

describe('a pitch that the linkage cannot hold', () => {
  it('is called out of reach where the rod is too short, and over centre only where the arm is', () => {
    const { reading } = createSession(demo(DEMOS[2]), () => {}).live;
    const [unreachable, centre] = [
      reading.linkage?.unreachableDeg.at(-1)?.[1] ?? 0,
      reading.linkage?.overCentreDeg[0] ?? 0,
    ];
    expect(reading.forceAt(unreachable)).toBeNull();
    expect(shownLoad(reading, unreachable, METRIC_UNITS)).toBe('out of reach');
    expect(spokenPitch(reading, 90, METRIC_UNITS)).toBe(
      '90.0 degrees, out of the push rod\u2019s reach',
    );
    expect(shownLoad(reading, centre, METRIC_UNITS)).not.toBe('out of reach');
  });
});

describe('numbers whose words depend on their size', () => {
  for (const [name, sign, speak] of [
    ['English', '.', () => () => {}],
    ['a language with a decimal comma', ',', () => speakOther(GERMAN.opening)],
  ] as const) {
    it(`pitches above zero have a plus sign as shown, in ${name}`, () => {
      stop = speak();
      expect(signedDegrees(76.94)).toBe(`+76${sign}9°`);
      expect(signedDegrees(-0.73)).toBe(`\u22120${sign}7°`);
      expect(signedDegrees(20, 0)).toBe('+20°');
      // What rounds to nothing has no sign.
      for (const pitch of [0, 0.04, -0.04]) expect(signedDegrees(pitch)).toBe(`0${sign}0°`);
    });

    it(`a difference of less than one unit of what is shown is called the same, a larger one is not, in ${name}`, () => {
      stop = speak();
      const said = (difference: number) =>
        verdictText(
          {
            what: 'mass',
            modelled: 100,
            measured: 100 + difference,
            uncertainty: 1,
            ratio: 1 + difference / 100,
            measuredUncertainty: 1,
            modelUncertainty: 1,
            difference,
            expected: 5,
            disagrees: false,
          },
          METRIC_UNITS,
        );
      expect(said(0.4)).toContain(`0${sign}4`);
      expect(said(0.04)).not.toContain(`0${sign}0`);
    });
  }
});
