import { describe, expect, it } from 'vitest';
import { createMoments, JYZ, M } from '../../src/engine/mass/moments';
import { solidMoments, sumSolids } from '../../src/engine/mass/weigh';
import { compose, transformPoint, translation } from '../../src/engine/math/pose';
import { blade } from '../../src/parts/blade';
import { bolt } from '../../src/parts/bolt';
import type { Socket } from '../../src/parts/contract';
import { grip } from '../../src/parts/grip';
import { nut } from '../../src/parts/nut';
import { pitchArm } from '../../src/parts/pitchArm';
import { pitchLink } from '../../src/parts/pitchLink';
import { type PartKind, partType, type ValuesByKind } from '../../src/parts/registry';
import { washer } from '../../src/parts/washer';
import { weight } from '../../src/parts/weight';
import { contains } from './contains';
import { defaults } from './sample';

function standard<K extends PartKind>(kind: K): ValuesByKind[K] {
  return defaults(kind) as ValuesByKind[K];
}
function socket(sockets: readonly Socket[], name: string): Socket {
  const found = sockets.find((one) => one.name === name);
  if (!found) throw new Error(`no socket ${name}`);
  return found;
}
const mm = 1e-3;

describe('parts fit one another', () => {
  it('a longer head raises what sits on it, a longer bolt lowers what sits on its end', () => {
    const values = standard('bolt');
    const top = socket(bolt.sockets({ ...values, extensionLengthMm: 12 }), 'headTop');
    expect(top.pose.translation[2]).toBeCloseTo(15 * mm, 15);
    const end = socket(bolt.sockets({ ...values, lengthMm: 20 }), 'boltEnd');
    expect(end.pose.translation[2]).toBeCloseTo(-20 * mm, 15);
    expect(transformPoint(end.pose, [0, 0, 1 * mm])[2]).toBeCloseTo(-21 * mm, 15);
  });

  it('a nut goes from where the thread begins to one turn from the end', () => {
    const thread = socket(bolt.sockets(standard('bolt')), 'thread');
    expect(thread.offsetRangeMm).toEqual([6, 13.5]);
    const child = compose(thread.pose, translation(0, 0, 10 * mm));
    expect(transformPoint(child, [0, 0, 2 * mm])[2]).toBeCloseTo(-12 * mm, 15);
  });

  it('a new nut closes on the default fork and leaves two turns of thread', () => {
    const { slotHeightMm, cheekThicknessMm } = standard('grip');
    const offset = socket(bolt.sockets(standard('bolt')), 'thread').defaultOffsetMm;
    expect(offset).toBeCloseTo(slotHeightMm + 2 * cheekThicknessMm, 12);
  });

  it('thicker cheeks lift the bolt, from above and from below alike', () => {
    const sockets = grip.sockets({ ...standard('grip'), cheekThicknessMm: 4 });
    expect(socket(sockets, 'boltTop').pose.translation).toEqual([0.038, 0, 0.0065]);
    const below = socket(sockets, 'boltBottom').pose;
    expect(transformPoint(below, [0, 0, 1 * mm])[2]).toBeCloseTo(-7.5 * mm, 15);
  });

  it('a washer under the head lies between bearing face and fork', () => {
    const seat = socket(bolt.sockets(standard('bolt')), 'underHead');
    expect(seat.stacks).toBe(true);
    expect(transformPoint(seat.pose, [0, 0, 0.5 * mm])[2]).toBeCloseTo(-0.5 * mm, 15);
    expect(washer.stackHeight?.(standard('washer'))).toBeCloseTo(0.5 * mm, 15);
    const face = socket(nut.sockets(standard('nut')), 'nutFace');
    expect(transformPoint(face.pose, [0, 0, 0.5 * mm])[2]).toBeCloseTo(-0.5 * mm, 15);
  });

  it.each(['span', 'shaft'] as const)(
    'the ball is where it is asked for, stud along %s',
    (studAlong) => {
      for (const side of ['leading', 'trailing'] as const) {
        for (const [ballStationMm, ballHeightMm] of [
          [5, 6],
          [-5, 6],
          [5, -6],
        ]) {
          const values = { ...standard('pitchArm'), studAlong, side, ballStationMm, ballHeightMm };
          expect(pitchArm.problems(values)).toEqual([]);
          const [centre] = pitchArm.sockets(values).map((one) => one.pose.translation);
          expect(centre).toEqual([
            ballStationMm * mm,
            (side === 'leading' ? 17 : -17) * mm,
            ballHeightMm * mm,
          ]);
          const stud = pitchArm.solids(values)[1];
          const reach = 2.39 * mm;
          for (const axis of [0, 1, 2]) {
            for (const way of [-1, 1]) {
              const point = centre.map((value, i) => value + (i === axis ? way * reach : 0));
              expect(contains(stud, point as unknown as typeof centre)).toBe(true);
            }
          }
        }
      }
    },
  );

  it('a steel ball at 17 mm reach and 4 mm height brings its own product of inertia', () => {
    const [, stud] = pitchArm.solids(standard('pitchArm'));
    const J = solidMoments(stud, createMoments())[JYZ];
    expect(J / solidMoments(stud, createMoments())[M]).toBeCloseTo(17 * 4 * mm * mm, 12);
  });

  it.each([
    ['below', -1],
    ['above', 1],
  ] as const)('a pitch link to a slider %s ends there', (slider, sign) => {
    const values = { ...standard('pitchLink'), slider };
    const moments = sumSolids(pitchLink.solids(values), createMoments());
    // Two equal cups and a rod between them: the centre is half way.
    expect(moments[3] / moments[M]).toBeCloseTo(sign * 12 * mm, 12);
    expect(partType('pitchLink').carriedBy).toBe('rod');
  });

  it('a blade lags toward the trailing edge', () => {
    const straight = sumSolids(blade.solids(standard('blade')), createMoments());
    const lagging = sumSolids(blade.solids({ ...standard('blade'), lagDeg: 90 }), createMoments());
    // A quarter turn takes x to -y and y to x.
    expect(lagging[2]).toBeCloseTo(-straight[1], 12);
    expect(lagging[1]).toBeCloseTo(straight[2], 12);
  });

  it('a blade root clears the bottom of the slot and the cheeks of the default grip', () => {
    const { rootWidthMm, rootBlockThicknessMm, boltHoleMm } = standard('blade');
    const fork = standard('grip');
    const slotBottom = fork.barrelEndMm + fork.webThicknessMm;
    expect(rootWidthMm / 2).toBeLessThan(fork.boltStationMm - slotBottom);
    expect(rootBlockThicknessMm).toBeLessThan(fork.slotHeightMm);
    expect(boltHoleMm).toBeGreaterThan(standard('bolt').shankDiameterMm);
  });

  it('a key socket takes its hexagon away, in head and extension', () => {
    const values = { ...standard('bolt'), extensionLengthMm: 2, socketDepthMm: 3 };
    const mass = sumSolids(bolt.solids(values), createMoments())[M];
    const plain = sumSolids(bolt.solids({ ...values, socketDepthMm: 0 }), createMoments())[M];
    const hexagonPrism = (Math.sqrt(3) / 2) * (2.5 * mm) ** 2 * 3 * mm * 7850;
    expect((plain - mass) / hexagonPrism).toBeCloseTo(1, 10);
    expect(bolt.solids(values).map((solid) => solid.name)).toEqual([
      'thread',
      'shank',
      'head',
      'head round the key socket',
      'extension round the key socket',
    ]);
  });

  it('what has no length is left out', () => {
    const threaded = { ...standard('bolt'), threadLengthMm: 14, socketDepthMm: 0 };
    expect(bolt.solids(threaded).map((solid) => solid.name)).toEqual(['thread', 'head']);
    expect(nut.solids(standard('nut')).map((solid) => solid.name)).toEqual(['body']);
    expect(weight.solids(standard('weight')).map((solid) => solid.name)).toEqual(['weight']);
  });
});
