import { describe, expect, it } from 'vitest';
import { POSE_IDENTITY, rotationAboutZ, transformPoint } from '../../../src/engine/math/pose';
import { radians, radiansFromDegrees } from '../../../src/engine/units';
import { gripPose, partPose } from '../../../src/scene/maths/gripFrame';

const rotor = (torqueOffset: number, preconeDeg: number) => ({
  angularSpeed: 1000,
  torqueOffset,
  precone: radiansFromDegrees(preconeDeg),
});

function expectPoint(actual: readonly number[], expected: readonly number[]): void {
  actual.forEach((value, k) => expect(value).toBeCloseTo(expected[k], 12));
}

describe('the grip on the stage', () => {
  it('raises its leading edge with positive pitch', () => {
    expectPoint(transformPoint(gripPose(rotor(0, 0), 90), [0, 1, 0]), [0, 0, 1]);
    expectPoint(transformPoint(gripPose(rotor(0, 0), 30), [2, 1, 0]), [2, Math.sqrt(3) / 2, 0.5]);
  });
  it('has its feathering axis tilted up by the precone and moved along Y by the torque offset', () => {
    const c = Math.cos(Math.PI / 18);
    const s = Math.sin(Math.PI / 18);
    for (const pitch of [-40, 0, 25]) {
      expectPoint(transformPoint(gripPose(rotor(0.004, 10), pitch), [1, 0, 0]), [c, 0.004, s]);
    }
  });
  it('leaves a keep-out where it stands in the rotor frame, whatever the pitch', () => {
    const pose_G = { rotation: rotationAboutZ(radians(0.3)), translation: [0, 1, -2] as const };
    const X_RG = gripPose(rotor(0.003, 5), 40);
    for (const carriedBy of ['hub', 'case'] as const) {
      expect(partPose({ pose_G, carriedBy }, X_RG, [0, 0, -1])).toBe(pose_G);
    }
  });
  it('carries a rod at its ball, as at flat pitch where it does not reach the slider', () => {
    const X_RG = gripPose(rotor(0, 0), 40);
    const pose_G = { rotation: rotationAboutZ(radians(0.3)), translation: [0, 1, 0] as const };
    const rod = partPose({ pose_G, carriedBy: 'rod' }, X_RG, null);
    expect(rod.rotation).toBe(pose_G.rotation);
    expectPoint(rod.translation, transformPoint(X_RG, [0, 1, 0]));
    expect(partPose({ pose_G: POSE_IDENTITY, carriedBy: 'grip' }, X_RG, null)).toEqual(X_RG);
  });
});
