import { describe, expect, it } from 'vitest';
import { boxMesh, joinedMesh } from '../../support/meshes';
import { along, checked, over } from './checked';

const block = boxMesh(2, 10, 6);

describe('the report of bodies that overlap or not', () => {
  it('calls crossing what is counted twice or negatively, and tells how much', async () => {
    const twice = await checked(joinedMesh(block, along(boxMesh(1, 2, 2), 0.25)));
    expect(twice.report).toMatchObject({
      verdict: 'crossing',
      weighable: true,
      crossing: { pairs: 0 },
    });
    // Inner walls at whole rays of the grid or beside them: to a spacing of its outline.
    expect(Math.abs((twice.report.crossing.countedTwice ?? 0) / 4 - 1)).toBeLessThan(
      10 / 256 / 2 + 6 / 256 / 2,
    );
    const through = await checked(joinedMesh(block, along(block, 0.5)));
    expect(through.report.verdict).toBe('crossing');
    expect(through.report.crossing.countedTwice).toBeCloseTo(90, 9);
    // A cavity in a cavity.
    const negative = await checked(
      joinedMesh(boxMesh(20, 20, 20), over(boxMesh(6, 6, 6)), over(boxMesh(4, 4, 4))),
    );
    expect(negative.report).toMatchObject({
      verdict: 'crossing',
      cavities: 2,
      crossing: { pairs: 0 },
    });
    expect((negative.report.crossing.countedNegative ?? 0) / 64).toBeCloseTo(1, 1);
  });

  it('calls sound what only touches, and a cavity', async () => {
    const touching = await checked(joinedMesh(block, along(block, 2)));
    expect(touching.report).toMatchObject({
      verdict: 'sound',
      volume: expect.closeTo(240, 9),
      shells: 1,
    });
    const hollow = await checked(joinedMesh(block, over(boxMesh(1, 1, 1))));
    expect(hollow.report).toMatchObject({
      verdict: 'sound',
      cavities: 1,
      volume: expect.closeTo(119, 9),
    });
  });
});
