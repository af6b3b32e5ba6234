import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { gripPose } from '../../../src/engine/feathering/gripPose';
import { lumpPull, partLumps } from '../../../src/engine/feathering/lumps';
import type { RotorConditions } from '../../../src/engine/feathering/rotor';
import { createMoments } from '../../../src/engine/mass/moments';
import { radians } from '../../../src/engine/units';
import { cloud, conditions, LAW, pitchAngle } from '../../support/arbitrary';
import { type CloudPoint, cloudMoments } from '../../support/shapes';

type Triple = readonly [number, number, number];

const crossed = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dotted = (a: Triple, b: Triple) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/**
 * Newton, point by point: a point that goes round with the rotor is accelerated by w x (w x r), so it pulls with -m times
 * that. The place r by the axis u = (cos b, 0, sin b) through (0, a, 0), turned out by hand.
 */
function bruteForce(points: readonly CloudPoint[], rotor: RotorConditions, pitch: number) {
  const { angularSpeed, torqueOffset, precone } = rotor;
  const u: Triple = [Math.cos(precone), 0, Math.sin(precone)];
  const w: Triple = [-Math.sin(precone), 0, Math.cos(precone)];
  const spin: Triple = [0, 0, angularSpeed];
  let moment = 0;
  let scale = 0;
  const force = [0, 0, 0];
  for (const [m, x, y, z] of points) {
    const h = y * Math.cos(pitch) - z * Math.sin(pitch);
    const k = y * Math.sin(pitch) + z * Math.cos(pitch);
    const arm: Triple = [x * u[0] + k * w[0], h, x * u[2] + k * w[2]];
    const r: Triple = [arm[0], arm[1] + torqueOffset, arm[2]];
    const inward = crossed(spin, crossed(spin, r));
    const pull: Triple = [-m * inward[0], -m * inward[1], -m * inward[2]];
    moment += dotted(u, crossed(arm, pull));
    pull.forEach((value, i) => {
      force[i] += value;
    });
    // What is added up, before anything cancels.
    scale += m * angularSpeed ** 2 * (Math.hypot(...r) + 0.1) ** 2;
  }
  return { moment, force, scale };
}

describe('the lumps that stand for a part', () => {
  test('pull and turn as all its points do by Newton\u2019s law, at any pitch, torque offset and precone', () => {
    fc.assert(
      fc.property(cloud, conditions, pitchAngle, (points, rotor, pitch) => {
        const X_RG = gripPose(rotor, radians(pitch));
        const lumps = partLumps(cloudMoments(points), rotor);
        const pulls = lumps.map((lump) => lumpPull(lump, rotor, X_RG));
        const exact = bruteForce(points, rotor, pitch);
        const turned = pulls.reduce((sum, pull) => sum + pull.moment, 0);
        // Some hundred roundings of 1e-16 of what is summed; roots of small differences cost a digit or two.
        expect(Math.abs(turned - exact.moment)).toBeLessThanOrEqual(1e-12 * exact.scale);
        for (let k = 0; k < 3; k++) {
          const summed = pulls.reduce((sum, pull) => sum + pull.force[k], 0);
          // Newtons from newton metres: nothing lies nearer to its lever than a tenth of a metre does here.
          expect(Math.abs(summed - exact.force[k])).toBeLessThanOrEqual(1e-11 * exact.scale);
        }
        expect(lumps.length).toBeLessThanOrEqual(rotor.precone === 0 ? 2 : 4);
      }),
      { ...LAW, numRuns: 150 },
    );
  });

  test('each pull points away from the shaft, and its share that turns is moment over lever', () => {
    fc.assert(
      fc.property(cloud, conditions, pitchAngle, (points, rotor, pitch) => {
        const X_RG = gripPose(rotor, radians(pitch));
        for (const lump of partLumps(cloudMoments(points), rotor)) {
          const pull = lumpPull(lump, rotor, X_RG);
          const size = lump.mass * rotor.angularSpeed ** 2 * Math.hypot(pull.at[0], pull.at[1]);
          expect(pull.force[2]).toBe(0);
          expect(pull.force[0] * pull.at[0] + pull.force[1] * pull.at[1]).toBeGreaterThanOrEqual(0);
          expect(Math.hypot(...pull.force)).toBeCloseTo(size, 9);
          const turning = Math.hypot(...pull.turning) * pull.lever;
          expect(Math.abs(turning - Math.abs(pull.moment))).toBeLessThanOrEqual(1e-12 * size);
        }
      }),
      { ...LAW, numRuns: 150 },
    );
  });

  test('a round body is one lump at its centre, a flat one two, and what has no mass none', () => {
    const rotor: RotorConditions = { angularSpeed: 1000, torqueOffset: 0, precone: radians(0) };
    const round: CloudPoint[] = [
      [0.001, 0.03, 0.01, 0.004],
      [0.001, 0.03, 0.01, -0.004],
      [0.001, 0.03, 0.014, 0],
      [0.001, 0.03, 0.006, 0],
    ];
    const [only, ...more] = partLumps(cloudMoments(round), rotor);
    expect(more).toHaveLength(0);
    expect(only.mass).toBeCloseTo(0.004, 15);
    [0.03, 0.01, 0].forEach((value, k) => expect(only.p_G[k]).toBeCloseTo(value, 12));
    expect(partLumps(cloudMoments(round.slice(0, 2)), rotor)).toHaveLength(2);
    expect(partLumps(createMoments(), rotor)).toHaveLength(0);
  });
});
