import { describe, expect, it } from 'vitest';
import { AT_HIGH, AT_LOW, AT_MIDDLE, GripMotion } from '../../../src/engine/clearance/motion';
import { RodMotion } from '../../../src/engine/clearance/rodMotion';
import type { RotorConditions } from '../../../src/engine/feathering/rotor';
import { createLinkState, type Linkage, linkState } from '../../../src/engine/linkage/linkage';
import { IDENTITY, type Vec3 } from '../../../src/engine/math/vector';
import { radians } from '../../../src/engine/units';
import { seeded } from '../../support/seeded';
import { gripMatrix, pointBy } from './bruteForce';

const ROTOR: RotorConditions = { angularSpeed: 0, torqueOffset: 0.003, precone: radians(0.2) };
const LINKAGE: Linkage = {
  ball_G: [0.02, 0.014, -0.002],
  side: -1,
  length: 0.024,
  sliderX: 0.019,
  sliderY: 0.012,
  rod: null,
};

describe('points that turn with the grip', () => {
  const out = new Float64Array(3);
  const random = seeded(21);
  const point = (): Vec3 => [
    random.between(-0.1, 0.1),
    random.between(-0.02, 0.02),
    random.between(-0.02, 0.02),
  ];
  const motion = new GripMotion(ROTOR);

  it('stand where three turned frames put them, at both ends and the middle', () => {
    for (let i = 0; i < 20; i++) {
      const [low, high] = [random.between(-1, 0), random.between(0, 1)];
      const p = point();
      motion.aim(low, high);
      for (const [where, pitch] of [
        [AT_LOW, low],
        [AT_MIDDLE, (low + high) / 2],
        [AT_HIGH, high],
      ] as const) {
        motion.place(where, ...p, out);
        const wanted = pointBy(gripMatrix(ROTOR, pitch, 0), p);
        for (let k = 0; k < 3; k++) expect(out[k]).toBeCloseTo(wanted[k], 15);
      }
    }
  });

  it('see a direction of the rotor turned back into their own frame', () => {
    motion.aim(0.2, 0.6);
    const n: Vec3 = [0.3, -0.5, 0.8];
    motion.face(...n, out);
    const facing: Vec3 = [out[0], out[1], out[2]];
    for (const p of [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ] as const) {
      const [a, b] = [p, [0, 0, 0] as const].map((one) => pointBy(gripMatrix(ROTOR, 0.4, 0), one));
      const along = n.reduce((sum, value, k) => sum + value * (a[k] - b[k]), 0);
      expect(facing.reduce((sum, value, k) => sum + value * p[k], 0)).toBeCloseTo(along, 14);
    }
  });

  it('gain exactly the least that a fine look along the interval finds', () => {
    for (let i = 0; i < 60; i++) {
      const low = random.between(-2, 1);
      const high = low + random.between(0, 1.5);
      const p = point();
      const n: Vec3 = [random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)];
      motion.aim(low, high);
      motion.face(...n, out);
      const told = motion.leastGain(...p);
      const at = (pitch: number) => {
        const [x, y, z] = pointBy(gripMatrix(ROTOR, pitch, 0), p);
        return n[0] * x + n[1] * y + n[2] * z;
      };
      const now = at((low + high) / 2);
      let least = Infinity;
      for (let k = 0; k <= 500; k++)
        least = Math.min(least, at(low + ((high - low) * k) / 500) - now);
      // Between looks 3 mrad apart a cosine of 0.05 m at most dips by 0.05 x 0.0015^2 / 2.
      expect(told).toBeLessThanOrEqual(least + 1e-15);
      expect(told).toBeGreaterThan(least - 6e-8);
    }
  });

  it('reach no farther than the arc of half the interval, and level no farther than its parts', () => {
    motion.aim(0.3, 0.5);
    expect(motion.reach(7, 0.03, 0.04)).toBeCloseTo(0.05 * 0.1, 15);
    // Without tilt, by hand: at 0.4 rad the point stands h across and k up; Y changes by k times 0.1 and h times 0.005.
    const flat = new GripMotion({ ...ROTOR, precone: radians(0) });
    flat.aim(-0.1, 0.1);
    expect(flat.levelReach(7, 0.03, 0.04)).toBeCloseTo(0.04 * 0.1 + 0.03 * 0.005, 15);
    flat.aim(0.3, 0.5);
    const [h, k] = [
      0.03 * Math.cos(0.4) - 0.04 * Math.sin(0.4),
      0.03 * Math.sin(0.4) + 0.04 * Math.cos(0.4),
    ];
    expect(flat.levelReach(7, 0.03, 0.04)).toBeCloseTo(k * 0.1 + h * 0.005, 15);
    // Tilted, X moves by the sine of the tilt times what Z would.
    expect(motion.levelReach(7, 0.03, 0.04)).toBeCloseTo(
      k * 0.1 + h * 0.005 + Math.sin(0.2) * (h * 0.1 + k * 0.005),
      15,
    );
  });

  it('lean by half the interval times the part of the direction that lies across the axis', () => {
    motion.aim(0.3, 0.5);
    motion.face(0, 1, 0, out);
    expect(motion.lean()).toBeCloseTo(0.1, 15);
    // Along the tilted axis nothing turns.
    motion.face(Math.cos(0.2), 0, Math.sin(0.2), out);
    expect(motion.lean()).toBeCloseTo(0, 15);
    motion.face(1, 0, 0, out);
    expect(motion.lean()).toBeCloseTo(0.1 * Math.sin(0.2), 15);
  });
});

describe('points that go with the push rod', () => {
  const out = new Float64Array(3);
  const state = createLinkState();
  const motion = new RodMotion(LINKAGE, ROTOR, IDENTITY);

  it('stand on both balls: the origin on the arm, one rod length along z on the slider', () => {
    motion.aim(-0.3, 0.5);
    for (const [where, pitch] of [
      [AT_LOW, -0.3],
      [AT_MIDDLE, 0.1],
      [AT_HIGH, 0.5],
    ] as const) {
      linkState(LINKAGE, ROTOR, radians(pitch), state);
      motion.place(where, 0, 0, 0, out);
      for (let k = 0; k < 3; k++) expect(out[k]).toBeCloseTo(state.ball[k], 15);
      motion.place(where, 0, 0, -0.024, out);
      expect(out[0]).toBeCloseTo(0.019, 14);
      expect(out[1]).toBeCloseTo(0.012, 14);
      expect(out[2]).toBeCloseTo(state.sliderZ, 14);
    }
  });

  it('see a direction in their own frame', () => {
    motion.aim(-0.3, 0.5);
    const n: Vec3 = [0.3, -0.5, 0.8];
    const facing = new Float64Array(3);
    motion.face(...n, facing);
    motion.place(AT_MIDDLE, 0, 0, 0, out);
    const origin = [...out];
    const axes: readonly Vec3[] = [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ];
    axes.forEach((axis, i) => {
      motion.place(AT_MIDDLE, ...axis, out);
      const along = n.reduce((sum, value, k) => sum + value * (out[k] - origin[k]), 0);
      expect(facing[i]).toBeCloseTo(along, 14);
    });
  });

  // The bound is worth something only if it closes in: on the rod's line it misses the truth by the bow of the circle alone.
  it('on its line gain what the balls say, but for the bow of the circle', () => {
    const probe = new RodMotion(LINKAGE, ROTOR, IDENTITY);
    const at = (pitch: number, n: Vec3, z: number) => {
      probe.aim(pitch, pitch);
      probe.place(AT_MIDDLE, 0, 0, z, out);
      return n[0] * out[0] + n[1] * out[1] + n[2] * out[2];
    };
    const random = seeded(8);
    for (let i = 0; i < 40; i++) {
      const low = random.between(-0.5, 0.4);
      const high = low + 0.05;
      const n: Vec3 = [random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)];
      // In the cups beyond both balls too.
      const z = random.between(-0.028, 0.004);
      motion.aim(low, high);
      motion.face(...n, new Float64Array(3));
      const told = motion.leastGain(0, 0, z);
      const now = at((low + high) / 2, n, z);
      let least = Infinity;
      for (let k = 0; k <= 20; k++) least = Math.min(least, at(low + (0.05 * k) / 20, n, z) - now);
      expect(told).toBeLessThanOrEqual(least + 1e-12);
      // Each ball by itself at its worst end: no more than both ways together, some 0.014 m x 0.05 each.
      expect(told).toBeGreaterThan(-2 * 0.0145 * 0.05 * Math.hypot(...n));
    }
  });

  it('reach as far as the ball, and turn by no more than both balls over the length', () => {
    // The ball's circle has the radius of (0.014, -0.002); root 2 allows for the twist.
    const radius = Math.hypot(0.014, 0.002);
    for (const [low, high] of [
      [-0.3, -0.2],
      [-0.02, 0.02],
      [0.1, 0.5],
    ]) {
      motion.aim(low, high);
      const slider = [low, (low + high) / 2, high].map(
        (pitch) => linkState(LINKAGE, ROTOR, radians(pitch), state).sliderZ,
      );
      const arc = (radius * (high - low)) / 2;
      const away = Math.max(Math.abs(slider[0] - slider[1]), Math.abs(slider[2] - slider[1]));
      const swing = (Math.SQRT2 * (arc + away)) / 0.024;
      expect(motion.lean()).toBeCloseTo(swing, 12);
      expect(motion.reach(0, 0, 0)).toBeCloseTo(arc, 14);
      expect(motion.reach(0.002, 0.003, -0.006)).toBeCloseTo(arc + 0.007 * swing, 12);
      expect(motion.levelReach(0.002, 0.003, -0.006)).toBe(motion.reach(0.002, 0.003, -0.006));
    }
  });

  it('on its line gain what both balls gain by shares, each at its worst end', () => {
    const random = seeded(18);
    for (let i = 0; i < 30; i++) {
      const low = random.between(-0.5, 0.2);
      const high = low + random.between(0.01, 0.4);
      const n: Vec3 = [random.between(-1, 1), random.between(-1, 1), random.between(-1, 1)];
      const along = (p: ArrayLike<number>) => n[0] * p[0] + n[1] * p[1] + n[2] * p[2];
      const ends = [low, (low + high) / 2, high].map((pitch) => {
        linkState(LINKAGE, ROTOR, radians(pitch), state);
        return [along(state.ball), along([0.019, 0.012, state.sliderZ])] as const;
      });
      // The ball goes round the axis at the radius of (0.014, -0.002); a circle leaves its chord by r (1 - cos).
      const bow = Math.hypot(0.014, 0.002) * (1 - Math.cos((high - low) / 2));
      const balls = ends.map(([ball]) => ball - ends[1][0]);
      const sliders = [ends[0], ends[2]].map(([, slider]) => slider - ends[1][1]);
      motion.aim(low, high);
      motion.face(...n, out);
      for (const share of [-0.2, 0, 0.3, 1, 1.2]) {
        const ball = share <= 1 ? Math.min(...balls) - bow : Math.max(...balls) + bow;
        const slider = share >= 0 ? Math.min(...sliders) : Math.max(...sliders);
        expect(motion.leastGain(0, 0, -0.024 * share)).toBeCloseTo(
          (1 - share) * ball + share * slider,
          13,
        );
      }
    }
  });

  it('are aimed anew where either end moves', () => {
    motion.aim(0.1, 0.2);
    const short = motion.reach(0, 0, 0);
    motion.aim(0.1, 0.4);
    expect(motion.reach(0, 0, 0)).toBeCloseTo(3 * short, 14);
    motion.aim(0.3, 0.4);
    expect(motion.reach(0, 0, 0)).toBeCloseTo(short, 14);
    motion.place(AT_HIGH, 0, 0, 0, out);
    linkState(LINKAGE, ROTOR, radians(0.4), state);
    for (let k = 0; k < 3; k++) expect(out[k]).toBeCloseTo(state.ball[k], 15);
  });

  it('off its line lose what turning may take besides', () => {
    motion.aim(0.1, 0.2);
    motion.face(0, 0, 1, out);
    const line = motion.leastGain(0, 0, -0.01);
    expect(motion.leastGain(0.003, 0.004, -0.01)).toBeCloseTo(line - 0.005 * motion.lean(), 14);
  });

  it('are the same whichever way the part was drawn: turned over, z runs the other way', () => {
    const over = new RodMotion(LINKAGE, ROTOR, [1, 0, 0, 0, -1, 0, 0, 0, -1]);
    for (const one of [motion, over]) {
      one.aim(0.1, 0.2);
      one.face(0.1, 0.2, 1, out);
    }
    expect(over.leastGain(0, 0, 0.01)).toBeCloseTo(motion.leastGain(0, 0, -0.01), 14);
    expect(over.leastGain(0, 0, -0.01)).toBeCloseTo(motion.leastGain(0, 0, 0.01), 14);
  });

  it('need a rod with a length', () => {
    expect(() => new RodMotion({ ...LINKAGE, length: null }, ROTOR, IDENTITY)).toThrow('length');
  });
});
