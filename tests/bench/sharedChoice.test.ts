import { describe, expect, it } from 'vitest';
import { FIRST_FIT, fitOf, recordedFit } from '../../src/bench/fitChoice';
import { sharedErrors, USUAL_SHARED } from '../../src/bench/sharedErrors';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { lineCalibration } from '../../src/engine/identify/calibration';
import { radians } from '../../src/engine/units';
import { demo } from './heads';

const DESIGN = demo('4-turned-nut');

describe('what all runs have alike', () => {
  it('is kept in the design where it was chosen, and as usual where a file does not say', () => {
    const fit = recordedFit({ ...FIRST_FIT, gainPercent: 2 });
    const kept = { ...DESIGN, bench: { place: 'rod' as const, ...(fit ? { fit } : {}) } };
    const back = parseDesign(serializeDesign(kept));
    if (!back.ok) throw new Error(back.error.path);
    expect(fitOf(back.value.bench?.fit, undefined)).toEqual({ ...FIRST_FIT, gainPercent: 2 });
    expect(recordedFit(FIRST_FIT)).toBeUndefined();
    const { friction, zeros, air, pitchSigmaDeg } = FIRST_FIT;
    const older = fitOf({ friction, zeros, air, pitchSigmaDeg }, undefined);
    expect(older).toMatchObject({ ...USUAL_SHARED });
  });

  it('is refused beyond its limits, by the field', () => {
    const fit = { ...recordedFit({ ...FIRST_FIT, gainPercent: 2 }), gainPercent: 30 };
    const text = JSON.stringify({ ...JSON.parse(serializeDesign(DESIGN)), bench: { fit } });
    expect(parseDesign(text)).toMatchObject({
      ok: false,
      error: { path: 'bench.fit.gainPercent' },
    });
  });

  it('takes the calibration in only where readings went through one, and no error of nothing', () => {
    const made = lineCalibration([0, 1, 2].map((scale) => ({ scale, pitch: radians(scale) })));
    if (!made.ok) throw new Error(made.error.kind);
    const ids = (calibrated: boolean, gainPercent: number) =>
      sharedErrors({ ...USUAL_SHARED, gainPercent }, calibrated ? made.value : null).map(
        ({ id }) => id,
      );
    expect(ids(false, 1)).toEqual(['gain', 'lever', 'speed', 'pitch']);
    expect(ids(true, 0)).toEqual(['lever', 'speed', 'pitch', 'scale 0', 'scale 1']);
  });
});
