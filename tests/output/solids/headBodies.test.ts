import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { materialsOf } from '../../../src/design/resolve';
import { gripPose } from '../../../src/engine/feathering/gripPose';
import { transformPoint } from '../../../src/engine/math/pose';
import type { Vec3 } from '../../../src/engine/math/vector';
import { radiansFromDegrees } from '../../../src/engine/units';
import { headBodies, partBodies } from '../../../src/output/solids/fileBodies';
import { partPose } from '../../../src/scene/maths/gripFrame';
import { createSession } from '../../../src/state/createSession';
import type { PartReading } from '../../../src/state/reading';
import { DEMOS, demo } from './heads';

function headAt(design: Design, pitchDeg: number) {
  const { reading } = createSession(design, () => {}).live;
  const parts = reading.order.map((id) => reading.part(id) as PartReading);
  const rodAxis = reading.linkage?.rodAxisAt(pitchDeg) ?? null;
  const stand = { rotor: reading.rotor, pitchDeg, rodAxis };
  return { reading, parts, rodAxis, ...headBodies(parts, stand, materialsOf(design)) };
}

function expectPoint(found: Vec3, wanted: readonly number[] | null | undefined): void {
  for (let k = 0; k < 3; k++) expect(found[k]).toBeCloseTo(wanted?.[k] ?? Number.NaN, 12);
}

describe('a head in a file', () => {
  it.each(DEMOS)('%s stands as the stage draws it', (file) => {
    for (const pitchDeg of [-15, 0, 20]) {
      const { bodies, parts, rodAxis, reading } = headAt(demo(file), pitchDeg);
      const X_RG = gripPose(reading.rotor, radiansFromDegrees(pitchDeg));
      expect(bodies.length).toBeGreaterThan(1);
      for (const { id, pose } of bodies) {
        const placed = parts.find(({ part }) => part.id === id) as PartReading;
        expect(pose).toEqual(partPose(placed, X_RG, rodAxis));
      }
    }
  });

  it('has its push rod from the ball on the arm to the ball on the slider, at every pitch', () => {
    for (const pitchDeg of [-20, -7, 0, 12, 20]) {
      const { bodies, reading, parts } = headAt(demo(DEMOS[2]), pitchDeg);
      const rod = parts.find(({ carriedBy }) => carriedBy === 'rod') as PartReading;
      const body = bodies.find(({ id }) => id === rod.part.id);
      if (!body) throw new Error('no rod');
      const X_RG = gripPose(reading.rotor, radiansFromDegrees(pitchDeg));
      const ball = transformPoint(X_RG, reading.linkage?.ball_G ?? [0, 0, 0]);
      const { lengthMm, slider } = rod.values as unknown as { lengthMm: number; slider: string };
      const far = ((slider === 'above' ? 1 : -1) * lengthMm) / 1000;
      expectPoint(transformPoint(body.pose, [0, 0, 0]), ball);
      expectPoint(transformPoint(body.pose, [0, 0, far]), reading.linkage?.sliderBallAt(pitchDeg));
    }
  });

  it('leaves out what is hidden and says so, and a part alone is in its own frame, hidden or not', () => {
    const design = demo(DEMOS[2]);
    const [first, ...rest] = design.parts;
    const { bodies, leftOut, parts } = headAt(
      { ...design, parts: [{ ...first, hidden: true }, ...rest] },
      0,
    );
    expect(bodies.map(({ id }) => id)).not.toContain(first.id);
    expect(leftOut).toContainEqual({ name: first.name, reason: 'hidden' });
    const hidden = parts.find(({ part }) => part.id === first.id) as PartReading;
    const alone = partBodies(hidden, materialsOf(design));
    expect(alone.bodies).toHaveLength(1);
    expectPoint(transformPoint(alone.bodies[0].pose, [1, 2, 3]), [1, 2, 3]);
  });

  it('names the material, the density where it is written, or that none is named', () => {
    const design = demo(DEMOS[2]);
    const { bodies } = headAt(design, 0);
    const of = (kind: string) =>
      bodies.filter((body) => body.kind === kind).map(({ material }) => material);
    expect(of('bolt')).toEqual(['Steel']);
    expect(of('grip')[0]).toMatch(/, 1350 kg\/m3$/);
    expect(of('blade')).toEqual(['Density 1550 kg/m3']);
    // Two of the bearings are known by their mass alone.
    expect(of('bearing')).toEqual(['No material named', 'Density 7850 kg/m3', 'No material named']);
  });
});
