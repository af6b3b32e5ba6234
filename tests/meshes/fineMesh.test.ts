import { describe, expect, it } from 'vitest';
import { JXX, M } from '../../src/engine/mass/moments';
import { volumeMoments } from '../../src/engine/mass/weigh';
import { writeStl } from '../../src/meshes/writeStl';
import { momentsDeviation } from '../support/closeness';
import { ballMesh } from '../support/meshes';
import { ballShape, volumeOf } from '../support/shapes';
import { importOf } from './files';

describe('a fine mesh', () => {
  const fine = ballMesh(10, 200);
  it('is weighed whole and drawn with at most 20 000 triangles', async () => {
    const { report, volumeMoments: moments } = await importOf('a.stl', writeStl([fine], 1, 'x'));
    expect(report.triangles).toBeGreaterThan(40_000);
    expect(report.picture.triangles).toBeLessThanOrEqual(20_000);
    expect(report.picture.reduced).toBe(true);
    expect(report.picture.volumeRatio).toBeCloseTo(1, 2);
    const whole = volumeMoments({ shape: 'mesh', ...fine }, new Float64Array(10));
    // float32: 6e-8 of the radius, three times over in volume.
    expect((moments as number[])[M] / whole[M]).toBeCloseTo(1, 6);
    const exact = volumeOf(ballShape(10));
    expect(momentsDeviation(Float64Array.from(moments as number[]), exact)).toBeLessThan(1e-3);
    expect((moments as number[])[JXX]).toBeLessThan(exact[JXX]);
  });
});
