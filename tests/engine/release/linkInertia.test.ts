import { expect, test } from 'vitest';
import type { RotorConditions } from '../../../src/engine/feathering/rotor';
import { createLinkState, type Linkage, linkState } from '../../../src/engine/linkage/linkage';
import { addInertia, linkInertia } from '../../../src/engine/release/linkInertia';
import { radians } from '../../../src/engine/units';
import { type Seeded, seeded } from '../../support/seeded';

/** Lumps along an even thin rod: Gauss points would do, many equal ones are plainer. */
const LUMPS = 400;

function randomLinkage(random: Seeded): Linkage {
  const length = random.between(0.02, 0.05);
  const mass = random.between(1e-4, 2e-3);
  return {
    ball_G: [random.between(0, 0.02), random.between(0.008, 0.02), random.between(-0.004, 0.004)],
    side: random.pick([-1, 1]),
    length,
    sliderX: random.between(0, 0.02),
    sliderY: random.between(0.005, 0.015),
    rod: {
      mass,
      first: (mass * length) / 2,
      second: (mass * length ** 2) / 3,
      transverse: 0,
    },
  };
}

function randomRotor(random: Seeded): RotorConditions {
  return {
    angularSpeed: 1000,
    torqueOffset: random.between(-0.005, 0.005),
    precone: radians(random.between(-0.2, 0.2)),
  };
}

/** Points of the rod (and the slider's ball last) at a pitch. */
function points(linkage: Linkage, rotor: RotorConditions, pitch: number) {
  const { ball, axis, sliderZ } = linkState(linkage, rotor, radians(pitch), createLinkState());
  const along = Array.from({ length: LUMPS }, (_, i) => {
    const s = ((linkage.length ?? 0) * (i + 0.5)) / LUMPS;
    return [0, 1, 2].map((k) => ball[k] + s * axis[k]);
  });
  return [...along, [linkage.sliderX, linkage.sliderY, sliderZ]];
}

/** sum m |dr/dt|^2 over the lumps by central differences of where they stand. */
function bruteForce(linkage: Linkage, rotor: RotorConditions, slider: number, pitch: number) {
  const h = 1e-5;
  const [low, high] = [pitch - h, pitch + h].map((t) => points(linkage, rotor, t));
  const each = (linkage.rod?.mass ?? 0) / LUMPS;
  return low.reduce((sum, from, i) => {
    const square = from.reduce((total, v, k) => total + ((high[i][k] - v) / (2 * h)) ** 2, 0);
    return sum + (i === LUMPS ? slider : each) * square;
  }, 0);
}

test('rod and slider add twice their kinetic energy at a rate of one: 100 random linkages, lump by lump', () => {
  const random = seeded(33);
  let compared = 0;
  for (let i = 0; i < 100; i++) {
    const linkage = randomLinkage(random);
    const rotor = randomRotor(random);
    const slider = random.pick([0, random.between(1e-4, 5e-3)]);
    const pitch = random.between(-0.6, 0.6);
    const { axis } = linkState(linkage, rotor, radians(pitch), createLinkState());
    if (!(Math.abs(axis[2]) > 0.3)) continue;
    const inertia = linkInertia(linkage, rotor, slider);
    const expected = bruteForce(linkage, rotor, slider, pitch);
    // Midpoint lumps lack 1 / (4 n^2) of the second moment; central differences h^2 times a few / e_z^4.
    expect(Math.abs(inertia.value(radians(pitch)) / expected - 1)).toBeLessThan(1e-5);
    compared++;
  }
  expect(compared).toBeGreaterThan(60);
});

test('a thick rod adds what its surface does, turned with the axis and not about it', () => {
  // A thin tube of radius 4 mm: each lump is four, offset along two directions p, q square to the axis e and carried along
  // as d - e (e . d), which turns about no axis but e x e'. Its transverse moment is m rho^2 / 2 in either direction.
  const random = seeded(35);
  const radius = 4e-3;
  let compared = 0;
  for (let i = 0; i < 60; i++) {
    const thin = randomLinkage(random);
    const rotor = randomRotor(random);
    const pitch = random.between(-0.6, 0.6);
    const rod = { ...(thin.rod ?? { mass: 0, first: 0, second: 0 }), transverse: 0 };
    const linkage = { ...thin, rod: { ...rod, transverse: (rod.mass * radius ** 2) / 2 } };
    const { axis } = linkState(linkage, rotor, radians(pitch), createLinkState());
    if (!(Math.abs(axis[2]) > 0.3)) continue;
    const h = 1e-5;
    const [low, high] = [pitch - h, pitch + h].map(
      (t) => linkState(linkage, rotor, radians(t), createLinkState()).axis,
    );
    const own = [...crossed(axis, [1, 0, 0]), ...crossed(axis, crossed(axis, [1, 0, 0]))];
    const size = Math.hypot(own[0], own[1], own[2]);
    let extra = 0;
    for (const from of [0, 3]) {
      const d = own.slice(from, from + 3).map((v) => (v * radius) / size);
      const [before, after] = [low, high].map((e) => {
        const along = d.reduce((sum, v, k) => sum + v * e[k], 0);
        return d.map((v, k) => v - e[k] * along);
      });
      const square = before.reduce((sum, v, k) => sum + ((after[k] - v) / (2 * h)) ** 2, 0);
      // Half of the mass lies along each direction, on both sides.
      extra += (rod.mass / 2) * square;
    }
    const found =
      linkInertia(linkage, rotor).value(radians(pitch)) -
      linkInertia(thin, rotor).value(radians(pitch));
    // Central differences: h^2 times a few / e_z^4; the difference of two inertias loses a few figures.
    expect(Math.abs(found / extra - 1)).toBeLessThan(1e-5);
    compared++;
  }
  expect(compared).toBeGreaterThan(30);
});

function crossed(a: ArrayLike<number>, b: ArrayLike<number>): readonly [number, number, number] {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

test('its slope is the derivative of its value', () => {
  const random = seeded(34);
  let compared = 0;
  for (let i = 0; i < 100; i++) {
    const base = randomLinkage(random);
    const linkage = i % 5 ? base : { ...base, length: null };
    const rotor = randomRotor(random);
    const inertia = linkInertia(linkage, rotor, 2e-3);
    const pitch = random.between(-0.5, 0.5);
    const { axis } = linkState(linkage, rotor, radians(pitch), createLinkState());
    if (!(Math.abs(axis[2]) > 0.4)) continue;
    const h = 1e-5;
    const [low, high] = [pitch - h, pitch + h].map((t) => inertia.value(radians(t)));
    const size = inertia.value(radians(pitch));
    // h^2 of the third derivative over e_z^6, and rounding 1e-16 / h, as shares of the inertia.
    const error = Math.abs(inertia.slope(radians(pitch)) - (high - low) / (2 * h));
    expect(error / size).toBeLessThan(1e-6);
    compared++;
  }
  expect(compared).toBeGreaterThan(60);
});

test('a rod parallel to the shaft is a lump at its ball; a weightless link adds nothing', () => {
  const rotor = { angularSpeed: 900, torqueOffset: 0, precone: radians(0) };
  const linkage: Linkage = {
    ball_G: [0.01, 0.012, 0.005],
    side: 1,
    length: null,
    sliderX: 0,
    sliderY: 0,
    rod: { mass: 1e-3, first: 2e-5, second: 5e-7, transverse: 1e-9 },
  };
  expect(linkInertia(linkage, rotor).value(radians(0.4))).toBeCloseTo(1e-3 * 0.013 ** 2, 18);
  expect(linkInertia({ ...linkage, rod: null }, rotor).value(radians(0.4))).toBe(0);
});

test('out of reach there is no inertia, and no sum with it', () => {
  const rotor = { angularSpeed: 900, torqueOffset: 0, precone: radians(0) };
  const linkage: Linkage = {
    ball_G: [0, 0.012, 0],
    side: 1,
    length: 0.005,
    sliderX: 0,
    sliderY: 0.002,
    rod: null,
  };
  expect(linkInertia(linkage, rotor, 1e-3).value(radians(0))).toBeNaN();
  expect(addInertia(1e-6, [linkInertia(linkage, rotor, 1e-3)]).slope(radians(0))).toBeNaN();
});
