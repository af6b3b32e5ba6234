import { expect, test } from 'vitest';
import { parseDesign } from '../../../src/design/file';
import { HeadForces } from '../../../src/design/forces/headForces';
import { HeadModel } from '../../../src/design/headModel';
import { PitchGrid } from '../../../src/engine/feathering/pitchGrid';
import { type Radians, radiansFromDegrees } from '../../../src/engine/units';
import { headOf } from '../../timing/page/heads';

/** The demo head with all that can be counted: drag of the linkage, a blade that swings, offset and precone. */
function everythingCounted() {
  const read = parseDesign(
    JSON.stringify({
      ...headOf(1),
      rotor: { speedRpm: 9000, bladeCount: 2, torqueOffsetMm: 2.5, preconeDeg: 3 },
      friction: {
        drag: [
          { travelMm: -2, forceN: 0.4 },
          { travelMm: 2, forceN: 0.7 },
        ],
      },
      bladeBolt: { hold: 'free' },
    }),
  );
  if (!read.ok) throw new Error(`everythingCounted(): ${read.error.path}`);
  const model = new HeadModel();
  model.load(read.value);
  return { design: read.value, model, forces: new HeadForces(model) };
}

const grid = new PitchGrid(
  Float64Array.from({ length: 241 }, (_, i) => radiansFromDegrees(-90 + 0.75 * i)),
);

/** Of each column the pitches at which it is another number than asked one by one. */
function different(forces: HeadForces): Record<string, number> {
  const links = forces.linksOn(grid);
  const columns: Record<string, [Float64Array, (pitch: Radians) => number]> = {
    moment: [forces.momentsOn(grid).slice(), (pitch) => forces.moment(pitch)],
    slope: [forces.slopesOn(grid).slice(), (pitch) => forces.slope(pitch)],
    energy: [forces.energiesOn(grid).slice(), (pitch) => forces.energy(pitch)],
    friction: [forces.frictionsOn(grid).slice(), (pitch) => forces.frictionAt(pitch)],
    travel: [links?.travel ?? new Float64Array(0), (pitch) => forces.travelAt(pitch)],
    forcePerMoment: [
      links?.forcePerMoment ?? new Float64Array(0),
      (pitch) => forces.forceOf(1, pitch) ?? Number.NaN,
    ],
  };
  const counts = Object.entries(columns).map(([name, [column, ask]]) => {
    const apart = grid.pitches.filter((pitch, i) => !Object.is(column[i], ask(pitch as Radians)));
    return [name, apart.length] as const;
  });
  return Object.fromEntries(counts.filter(([, count]) => count > 0));
}

test('moment, slope, energy, friction and push rod over a grid are the same to the bit as asked pitch by pitch', () => {
  const { forces } = everythingCounted();
  expect(forces.terms.map(({ id }) => id)).toEqual(['rod', 'air', 'lag']);
  expect(different(forces)).toEqual({});
});

test('a dragged bolt asks air, rod and lag for nothing over a grid, and the numbers are those of the changed head', () => {
  const { forces, model, design } = everythingCounted();
  different(forces);
  const bolt = design.parts.find(({ id }) => id === 'bolt');
  const lengthen = (extensionLengthMm: number) =>
    expect(model.setPart({ ...bolt, extensionLengthMm } as never).ok).toBe(true);
  // What the rod does is remembered from the second time on.
  lengthen(1);
  different(forces);
  const before = forces.momentsOn(grid)[40];
  const asked = forces.termSamples;
  lengthen(3);
  expect(different(forces)).toEqual({});
  expect(forces.termSamples).toBe(asked);
  expect(forces.momentsOn(grid)[40]).not.toBe(before);
});

test('columns follow a changed rod, rotor and count of terms', () => {
  const { forces, model, design } = everythingCounted();
  different(forces);
  const link = design.parts.find(({ kind }) => kind === 'pitchLink');
  expect(model.setPart({ ...link, lengthMm: 15 } as never).ok).toBe(true);
  expect(different(forces)).toEqual({});
  const { rotor } = design;
  expect(model.setSections({ ...design, rotor: { ...rotor, speedRpm: 5000 } }).ok).toBe(true);
  expect(different(forces)).toEqual({});
  const counted = { rodMass: false, air: true, friction: false };
  expect(model.setSections({ ...design, counted }).ok).toBe(true);
  expect(different(forces)).toEqual({});
});
