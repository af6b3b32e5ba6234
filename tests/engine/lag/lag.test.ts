import { beforeAll, describe, expect, test } from 'vitest';
import { gripPose } from '../../../src/engine/feathering/gripPose';
import {
  boltFrictionTorque,
  featheringChange,
  freeLag,
  type HingedBody,
  hingedBody,
  lagBand,
  laggedMoments,
  lagTorque,
} from '../../../src/engine/lag/lag';
import {
  createMoments,
  JXX,
  JXY,
  JXZ,
  JYY,
  JYZ,
  JZZ,
  M,
  type Moments,
  SX,
  SY,
  SZ,
} from '../../../src/engine/mass/moments';
import { type Pose, rotationAboutZ, transformPoint } from '../../../src/engine/math/pose';
import type { Vec3 } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { randomRotor } from '../../support/linkages';
import { type MultibodyEngine, startMultibodyEngine } from '../../support/multibody';
import { type Seeded, seeded } from '../../support/seeded';

interface Lump {
  readonly mass: number;
  readonly at: Vec3;
}

const BOLT: Pose = { rotation: rotationAboutZ(radians(0)), translation: [0.038, 0.001, 0.0005] };

function momentsOf(lumps: readonly Lump[]): Moments {
  const out = createMoments();
  for (const { mass, at } of lumps) {
    const [x, y, z] = at;
    out[M] += mass;
    out[SX] += mass * x;
    out[SY] += mass * y;
    out[SZ] += mass * z;
    out[JXX] += mass * x * x;
    out[JYY] += mass * y * y;
    out[JZZ] += mass * z * z;
    out[JXY] += mass * x * y;
    out[JXZ] += mass * x * z;
    out[JYZ] += mass * y * z;
  }
  return out;
}

function randomLumps(random: Seeded): Lump[] {
  return Array.from({ length: 6 }, () => ({
    mass: random.between(0.0005, 0.003),
    at: [random.between(0.04, 0.13), random.between(-0.02, 0.012), random.between(-0.003, 0.003)],
  }));
}

/** Turned about the bolt by hand, in the grip frame. */
function lagged({ mass, at }: Lump, lag: number): Lump {
  const [hx, hy] = BOLT.translation;
  const [x, y, z] = at;
  const [s, c] = [Math.sin(lag), Math.cos(lag)];
  return { mass, at: [hx + (x - hx) * c - (y - hy) * s, hy + (x - hx) * s + (y - hy) * c, z] };
}

let oracle: MultibodyEngine;
beforeAll(async () => {
  oracle = await startMultibodyEngine();
});

describe('a blade on its bolt', () => {
  test('is turned about it by the spin as an independent multibody engine says', () => {
    const random = seeded(31);
    let worst = 0;
    for (let i = 0; i < 60; i++) {
      const rotor = randomRotor(random);
      const lumps = randomLumps(random);
      const body = hingedBody(momentsOf(lumps), BOLT);
      const pitch = random.between(-0.7, 0.7);
      const lag = random.between(-0.5, 0.5);
      const half = -rotor.precone / 2;
      const [hx, hy, hz] = BOLT.translation;
      const geoms = lumps
        .map(({ mass, at: [x, y, z] }) => {
          const place = `${x - hx} ${y - hy} ${z - hz}`;
          return `<body pos="${place}"><geom type="sphere" size="1e-3" mass="${mass}"/></body>`;
        })
        .join('');
      const content = `<body pos="0 ${rotor.torqueOffset} 0" quat="${Math.cos(half)} 0 ${Math.sin(half)} 0">
        <joint type="hinge" axis="1 0 0"/><geom type="sphere" size="1e-3" mass="1e-6"/>
        <body pos="${hx} ${hy} ${hz}"><joint type="hinge" axis="0 0 1"/><geom type="sphere" size="1e-3" mass="1e-6"/>${geoms}</body></body>`;
      const [, torque] = oracle.spinForces(content, rotor.angularSpeed, [pitch, lag]);
      const own = lagTorque(body, rotor, radians(pitch), radians(lag));
      const scale = rotor.angularSpeed ** 2 * body.moments_H[M] * 0.1 * 0.1;
      worst = Math.max(worst, Math.abs(own - torque) / scale);
    }
    // Sums of a few hundred products of doubles.
    expect(worst).toBeLessThan(1e-12);
  });

  test('has the moments of its lumps turned by hand', () => {
    const random = seeded(32);
    const lumps = randomLumps(random);
    const moments = laggedMoments(
      hingedBody(momentsOf(lumps), BOLT),
      radians(0.3),
      createMoments(),
    );
    const hand = momentsOf(lumps.map((lump) => lagged(lump, 0.3)));
    moments.forEach((value, i) => expect(Math.abs(value - hand[i])).toBeLessThan(1e-17));
  });

  test('at flat pitch it lies with its centre on the line from the shaft through the bolt, at any speed', () => {
    for (const angularSpeed of [10, 1000]) {
      const rotor = { angularSpeed, torqueOffset: 0, precone: radians(0) };
      const lump: Lump = { mass: 0.007, at: [0.08, -0.006, 0] };
      const body = hingedBody(momentsOf([lump]), BOLT);
      const free = freeLag(body, rotor, radians(0));
      const [x, y] = lagged(lump, free ?? NaN).at;
      expect(Math.abs(y / x - BOLT.translation[1] / BOLT.translation[0])).toBeLessThan(1e-12);
    }
  });

  test('its free angle is one of no torque, stable, and moved by drag', () => {
    const random = seeded(33);
    for (let i = 0; i < 100; i++) {
      const rotor = randomRotor(random);
      const body = hingedBody(momentsOf(randomLumps(random)), BOLT);
      const pitch = radians(random.between(-0.7, 0.7));
      const size = rotor.angularSpeed ** 2 * body.moments_H[M] * 0.1 * 0.04;
      const drive = random.between(-0.05, 0.05) * size;
      const free = freeLag(body, rotor, pitch, drive);
      if (free === null) throw new Error('no stable angle');
      const at = (lag: number) => lagTorque(body, rotor, pitch, radians(lag)) + drive;
      expect(Math.abs(at(free))).toBeLessThan(1e-12 * size);
      expect(at(free + 1e-3)).toBeLessThan(0);
      expect(at(free - 1e-3)).toBeGreaterThan(0);
      const more = freeLag(body, rotor, pitch, drive + 0.01 * size) ?? NaN;
      expect(more).toBeGreaterThan(free);
    }
  });

  test('friction holds it as far as the torque does not exceed it', () => {
    const rotor = { angularSpeed: 1000, torqueOffset: 0, precone: radians(0) };
    const body = hingedBody(momentsOf(randomLumps(seeded(34))), BOLT);
    const free = freeLag(body, rotor, radians(0.2)) ?? radians(NaN);
    const friction = 0.05;
    const [low, high] = lagBand(body, rotor, radians(0.2), free, 0, friction);
    expect(low).toBeLessThan(free);
    expect(high).toBeGreaterThan(free);
    for (const end of [low, high]) {
      expect(Math.abs(lagTorque(body, rotor, radians(0.2), radians(end)))).toBeCloseTo(
        friction,
        12,
      );
    }
    expect(lagBand(body, rotor, radians(0.2), free, 0, 1e9)).toEqual([-Infinity, Infinity]);
    expect(lagBand(body, rotor, radians(0.2), free, 0, 0)).toEqual([free, free]);
    // mu (F d/2 + 2 N r): 0.15 (600 x 1.5 mm + 2 x 100 x 3 mm) = 0.225 N m, by hand.
    const torque = boltFrictionTorque({
      coefficient: 0.15,
      pull: 600,
      boltDiameter: 0.003,
      clampForce: 100,
      faceRadius: 0.003,
    });
    expect(torque).toBeCloseTo(0.225, 12);
  });

  // Envelope theorem: V(t, d*(t)) changes with t by its partial derivative alone, because dV/dd is zero at d*.
  test('the moment of a free blade is minus the whole slope of the energy', () => {
    const rotor = { angularSpeed: 1000, torqueOffset: 0.002, precone: radians(0.03) };
    const lumps = randomLumps(seeded(35));
    const body: HingedBody = hingedBody(momentsOf(lumps), BOLT);
    const energy = (pitch: number, lag: number) => {
      const X_RG = gripPose(rotor, radians(pitch));
      return lumps.reduce((sum, lump) => {
        const [X, Y] = transformPoint(X_RG, lagged(lump, lag).at);
        return sum - (rotor.angularSpeed ** 2 / 2) * lump.mass * (X * X + Y * Y);
      }, 0);
    };
    const free = (pitch: number) => freeLag(body, rotor, radians(pitch)) ?? NaN;
    const h = 1e-4;
    for (const pitch of [-0.4, 0.1, 0.5]) {
      const whole =
        -(energy(pitch + h, free(pitch + h)) - energy(pitch - h, free(pitch - h))) / (2 * h);
      const fixed = -(energy(pitch + h, 0) - energy(pitch - h, 0)) / (2 * h);
      const change = featheringChange(body, rotor, radians(pitch), radians(free(pitch)));
      // h^2 / 6 of third derivatives of moments of about 1 N m.
      expect(Math.abs(whole - fixed - change)).toBeLessThan(1e-7);
    }
  });
});
