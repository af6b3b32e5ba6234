import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createHarmonics,
  featheringHarmonics,
  featheringMoment,
} from '../../../src/engine/feathering/harmonics';
import { axisDirection } from '../../../src/engine/feathering/lumps';
import { accumulate, createMoments, type Moments } from '../../../src/engine/mass/moments';
import { dot, type Vec3 } from '../../../src/engine/math/vector';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { gripPose } from '../../../src/scene/maths/gripFrame';
import { partPulls, pullMoment, turningBound } from '../../../src/scene/maths/pull';
import { real } from '../../support/arbitrary';

function lump(mass: number, [x, y, z]: Vec3): Moments {
  const moments = createMoments();
  moments.set([mass, mass * x, mass * y, mass * z, mass * x * x, mass * y * y, mass * z * z]);
  moments.set([mass * x * y, mass * x * z, mass * y * z], 7);
  return moments;
}

function body(...lumps: readonly Moments[]): Moments {
  const sum = createMoments();
  for (const one of lumps) accumulate(sum, one);
  return sum;
}

const rotor = (torqueOffset = 0, preconeDeg = 0) => ({
  angularSpeed: 1068,
  torqueOffset,
  precone: radiansFromDegrees(preconeDeg),
});

const place = fc.tuple(real(-0.05, 0.05), real(-0.02, 0.02), real(-0.02, 0.02));

describe('the pull on a part', () => {
  it('of one lump is W^2 m R, away from the shaft and in the plane of rotation', () => {
    const conditions = rotor();
    const [pull, ...more] = partPulls(
      lump(0.001, [0.03, 0.004, 0.002]),
      conditions,
      gripPose(conditions, 0),
    );
    expect(more).toHaveLength(0);
    const factor = 1068 ** 2 * 0.001;
    expect(pull.force[0]).toBeCloseTo(factor * 0.03, 9);
    expect(pull.force[1]).toBeCloseTo(factor * 0.004, 9);
    expect(pull.force[2]).toBe(0);
  });
  it('is the sum of its two shares, and the share that turns crosses both axis and lever', () => {
    fc.assert(
      fc.property(place, place, real(-90, 90), (p, q, pitch) => {
        const conditions = rotor(0.003);
        const X_RG = gripPose(conditions, pitch);
        for (const pull of partPulls(body(lump(0.001, p), lump(0.002, q)), conditions, X_RG)) {
          for (let k = 0; k < 3; k++)
            expect(pull.turning[k] + pull.still[k]).toBeCloseTo(pull.force[k], 9);
          const size = Math.hypot(...pull.force) + 1e-9;
          expect(Math.abs(dot(pull.turning, axisDirection(X_RG))) / size).toBeLessThan(1e-12);
        }
      }),
      { seed: 1, numRuns: 200 },
    );
  });
  it('of any part has exactly the part\u2019s feathering moment, torque offset included', () => {
    fc.assert(
      fc.property(
        fc.array(place, { minLength: 1, maxLength: 5 }),
        real(-90, 90),
        real(-0.01, 0.01),
        (places, pitch, offset) => {
          const conditions = rotor(offset);
          const X_RG = gripPose(conditions, pitch);
          const moments = body(...places.map((p, i) => lump(0.001 * (i + 1), p)));
          const pulls = partPulls(moments, conditions, X_RG);
          const drawn = pulls.reduce((sum, pull) => sum + pullMoment(pull, X_RG), 0);
          const exact = featheringMoment(
            featheringHarmonics(moments, conditions, createHarmonics()),
            radiansFromDegrees(pitch),
          );
          // A part rounder than 1 mm is drawn as one lump: that leaves out at most W^2 m (1 mm)^2 / 2.
          const single = pulls.length === 1 ? (1068 ** 2 * moments[0] * 1e-6) / 2 : 0;
          expect(Math.abs(drawn - exact)).toBeLessThan(single + 1e-9);
        },
      ),
      { seed: 2, numRuns: 300 },
    );
  });
  it('of a part on the feathering axis turns nothing', () => {
    const conditions = rotor();
    for (const pitch of [-30, 0, 70]) {
      const [pull] = partPulls(lump(0.002, [0.04, 0, 0]), conditions, gripPose(conditions, pitch));
      expect(Math.hypot(...pull.turning)).toBe(0);
    }
  });
  it('turns most at 45 degrees, where it reaches the bound that sets the scale', () => {
    const conditions = rotor();
    const moments = body(lump(0.001, [0.04, 0.01, 0]), lump(0.001, [0.04, -0.01, 0]));
    const turning = (pitch: number) =>
      Math.hypot(...partPulls(moments, conditions, gripPose(conditions, pitch))[0].turning);
    const bound = turningBound(moments, conditions);
    expect(turning(45)).toBeCloseTo(bound, 9);
    for (let pitch = -90; pitch <= 90; pitch += 5)
      expect(turning(pitch)).toBeLessThan(bound * (1 + 1e-9));
  });
  it('of nothing, or of a hidden part without mass, is no arrow', () => {
    const conditions = { ...rotor(), precone: radians(0) };
    expect(partPulls(createMoments(), conditions, gripPose(conditions, 0))).toHaveLength(0);
  });
});
