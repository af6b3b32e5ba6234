import { describe, expect, it } from 'vitest';
import { createMoments, M, SZ } from '../../src/engine/mass/moments';
import { solidMoments } from '../../src/engine/mass/weigh';
import { add, scale, type Vec3 } from '../../src/engine/math/vector';
import { PART_TYPES, type PartKind, partType } from '../../src/parts/registry';
import { standardNamed, standardPart } from './catalogueRows';
import { contains } from './contains';
import { defaults, type Values } from './sample';

const mm = 1e-3;

function lerp3(a: Vec3, b: Vec3, t: number): Vec3 {
  return add(scale(a, 1 - t), scale(b, t));
}

function typed(kind: PartKind, changes: Values = {}) {
  return { type: partType(kind), values: { ...defaults(kind), ...changes } as never };
}

describe('what a part says it is', () => {
  it('is said by those parts only that are it', () => {
    const kindsWith = (fact: string) =>
      PART_TYPES.map((type) => type.kind).filter((kind) => fact in partType(kind));
    expect(kindsWith('rod')).toEqual(['pitchLink']);
    expect(kindsWith('lifting')).toEqual(['blade']);
    expect(kindsWith('hinged')).toEqual(['blade']);
    expect(kindsWith('bladeRoot')).toEqual(['blade']);
    expect(kindsWith('fastener')).toEqual(['bolt']);
    expect(kindsWith('retention')).toEqual(['nut', 'weight']);
    expect(kindsWith('fork')).toEqual(['grip']);
    expect(kindsWith('bearing')).toEqual(['bearing']);
  });

  it.each(['below', 'above'])('a rod with the slider %s has its far cup there', (slider) => {
    const { type, values } = typed('pitchLink', { slider, lengthMm: 31 });
    const facts = type.rod?.(values);
    const cup = type.solids(values).find((solid) => solid.name === 'cup on the slider');
    if (!facts || !cup) throw new Error('no rod');
    const moments = solidMoments(cup, createMoments());
    expect(moments[SZ] / moments[M]).toBeCloseTo(facts.side * facts.length, 15);
    expect(facts).toEqual({ side: slider === 'below' ? -1 : 1, length: 0.031 });
    expect(type.rodDirection?.(values)).toBe(facts.side);
  });

  it('a fork is as wide, open and thick as its cheeks are drawn', () => {
    const { type, values } = typed('grip');
    const fork = type.fork?.(values);
    if (!fork) throw new Error('no fork');
    const [upper] = type.solids(values).filter((solid) => solid.name === 'upper cheek');
    const { boltStation: x, width, slotHeight, cheekThickness, holeDiameter } = fork;
    const at = (dx: number, y: number, z: number) => contains(upper, [x + dx, y, z]);
    const inside = slotHeight / 2 + 1e-6;
    const e = 1e-6;
    expect(at(-1e-4, width / 2 - e, inside)).toBe(true);
    expect(at(-1e-4, width / 2 + e, inside)).toBe(false);
    // On a slant of 3 : 4 : 5 from the hole's middle.
    const hole = (radius: number) => at(-0.6 * radius, 0.8 * radius, inside);
    expect(hole(holeDiameter / 2 + e)).toBe(true);
    expect(hole(holeDiameter / 2 - e)).toBe(false);
    expect(at(-1e-4, width / 3, slotHeight / 2 - e)).toBe(false);
    expect(at(-1e-4, width / 3, slotHeight / 2 + cheekThickness - e)).toBe(true);
    expect(at(-1e-4, width / 3, slotHeight / 2 + cheekThickness + e)).toBe(false);
  });
});

describe('where a blade lifts', () => {
  const planform = {
    lagDeg: 17,
    tipChordMm: 19,
    sweepMm: 6,
    rootSweepMm: -1.5,
    tipThicknessPercent: 8,
  };

  it('is from edge to edge of the solid that is weighed, all along the span', () => {
    const { type, values } = typed('blade', planform);
    const stations = type.lifting?.(values) ?? [];
    const airfoil = type.solids(values).find((solid) => solid.name === 'airfoil');
    if (!airfoil || stations.length !== 2) throw new Error('no airfoil');
    const [root, tip] = stations;
    for (const share of [0.01, 0.3, 0.77, 0.99]) {
      const leading = lerp3(root.leadingEdge, tip.leadingEdge, share);
      const trailing = lerp3(root.trailingEdge, tip.trailingEdge, share);
      const along = (t: number): Vec3 => lerp3(leading, trailing, t);
      expect(contains(airfoil, along(1e-4)), `nose at ${share}`).toBe(true);
      expect(contains(airfoil, along(-1e-4)), `before the nose at ${share}`).toBe(false);
      expect(contains(airfoil, along(0.9999)), `tail at ${share}`).toBe(true);
      expect(contains(airfoil, along(1.0001)), `behind the tail at ${share}`).toBe(false);
    }
    expect([root.thicknessRatio, tip.thicknessRatio]).toEqual([
      expect.closeTo(0.1, 14),
      expect.closeTo(0.08, 14),
    ]);
    expect(root.camberRatio).toBe(0);
  });

  it('turns with the lag toward the trailing edge', () => {
    const { type, values } = typed('blade', { lagDeg: 90 });
    const tip = type.lifting?.(values)[1];
    // At 90 degrees straight back: the tip lies at -y, the leading edge (0.3 chord ahead, 8.4 mm) at +x.
    expect(tip?.leadingEdge[0]).toBeCloseTo(8.4 * mm, 12);
    expect(tip?.leadingEdge[1]).toBeCloseTo(-92 * mm, 12);
  });

  it('tells the camber of a four-digit section, bent up or down', () => {
    for (const camberPercent of [4, -4]) {
      const { type, values } = typed('blade', { camberPercent });
      expect(type.lifting?.(values)[0].camberRatio).toBeCloseTo(0.04, 14);
    }
  });

  it('measures the camber of own coordinates from their chord line', () => {
    // Middle 0.03 x 4 s (1 - s), height 0.12 x 4 s (1 - s) (0.12 = thickness, so no stretch at 12 %), on a line that rises by 0.02.
    const upper = Array.from({ length: 41 }, (_, k) => 1 - k / 40);
    const side = (s: number, sign: number) => [
      s,
      0.02 * s + (0.03 + sign * 0.06) * 4 * s * (1 - s),
    ];
    const sectionCoordinates = [
      ...upper.flatMap((s) => side(s, 1)),
      ...upper
        .toReversed()
        .slice(1, -1)
        .flatMap((s) => side(s, -1)),
    ];
    const { type, values } = typed('blade', { sectionCoordinates, rootThicknessPercent: 12 });
    const root = type.lifting?.(values)[0];
    expect(root?.camberRatio).toBeCloseTo(0.03, 12);
    const rise = (root?.trailingEdge[2] ?? 0) - (root?.leadingEdge[2] ?? 0);
    expect(rise).toBeCloseTo(0.02 * 28 * mm, 12);
    expect(root?.leadingEdge).toEqual([
      expect.closeTo(12 * mm, 12),
      expect.closeTo(8.4 * mm, 12),
      0,
    ]);
  });
});

describe('what a bolt is loaded by', () => {
  const boltOf = (standard: string, size: string, length: number, changes: Values = {}) => {
    const { values } = standardPart('bolt', standardNamed('bolt', standard), size, length);
    const facts = partType('bolt').fastener?.({ ...values, ...changes } as never);
    if (!facts) throw new Error('no facts');
    return facts;
  };

  it.each([
    // ISO 898-1, table of nominal stress areas, mm^2.
    ['ISO 4762', 'M3', 20, 5.03, 0.005],
    ['ISO 4762', 'M4', 20, 8.78, 0.005],
    ['ISO 4762', 'M5', 20, 14.2, 0.05],
    // ASME B1.1, tensile stress areas 0.00604 and 0.0364 in^2 (memory). The tables start from the pitch diameter rounded
    // to 0.0001 in, which moves the area of #4-40 by up to pi x 0.0438 x 0.00005 = 0.0000069 in^2 more.
    ['ASME B18.3', '#4-40', 12.7, 0.00604 * 645.16, 0.0000119 * 645.16],
    ['ASME B18.3', '1/4-28', 25.4, 0.0364 * 645.16, 0.00005 * 645.16],
  ])('%s %s x %d is counted on the printed stress area', (standard, size, length, area, half) => {
    const { stressArea } = boltOf(standard, size, length);
    expect(Math.abs(stressArea * 1e6 - area)).toBeLessThanOrEqual(half * 1.0001);
  });

  it('an M3 x 22 of ISO 4762 is plain for what 18 mm of thread and the run-out leave', () => {
    const facts = boltOf('ISO 4762', 'M3', 22);
    // Run-out 2.5 pitches (ISO 3508, memory): 22 - 18 - 1.25 mm.
    expect(facts.threadFrom).toBeCloseTo(2.75 * mm, 15);
    expect(facts.end).toBeCloseTo(22 * mm, 15);
    expect(facts.headHeight).toBeCloseTo(3 * mm, 15);
    // d3 of M3 (ISO 724): 2.387 mm.
    expect(Math.abs(facts.rootDiameter - 2.387 * mm)).toBeLessThan(0.5e-6);
    expect(boltOf('ISO 4762', 'M3', 20).threadFrom).toBe(0);
  });

  it('a plain cylinder of a head has its centre half way up, an extension raises it', () => {
    const { type, values } = typed('bolt', { socketDepthMm: 0 });
    const plain = type.fastener?.(values);
    expect(plain?.headCentre).toBeCloseTo(1.5 * mm, 15);
    expect(plain?.headMass).toBeCloseTo(7850 * (Math.PI / 4) * 0.0055 ** 2 * 0.003, 15);
    const long = typed('bolt', { socketDepthMm: 0, extensionLengthMm: 12 });
    expect(long.type.fastener?.(long.values).headCentre).toBeCloseTo(7.5 * mm, 15);
    expect(long.type.fastener?.(long.values).headHeight).toBeCloseTo(15 * mm, 15);
  });

  it('a set screw has no head', () => {
    expect(boltOf('ISO 4026', 'M3', 10)).toMatchObject({
      headHeight: 0,
      headMass: 0,
      headCentre: 0,
    });
  });

  it('has no class unless someone read it off the head', () => {
    expect(boltOf('ISO 4762', 'M3', 20).strengthClass).toBeNull();
    expect(boltOf('ISO 4762', 'M3', 20, { propertyClass: '12.9' }).strengthClass).toBe('12.9');
  });
});

describe('what keeps a nut', () => {
  it.each([
    // The titles of the standards say which are prevailing torque nuts.
    ['ISO 4032', 'plain'],
    ['ISO 4035', 'plain'],
    ['ISO 7040', 'prevailing'],
    ['ISO 10511', 'prevailing'],
  ])('of %s is %s', (standard, kept) => {
    const { values } = standardPart('nut', standardNamed('nut', standard), 'M3');
    expect(partType('nut').retention?.(values as never)).toBe(kept);
  });

  it('is a collar only when it is squeezed', () => {
    const collar = { collarHeightMm: 1.5 };
    const kept = (changes: Values) => {
      const { type, values } = typed('nut', changes);
      return type.retention?.(values);
    };
    expect(kept(collar)).toBe('plain');
    expect(kept({ ...collar, collarGrip: 'squeezed' })).toBe('prevailing');
    expect(kept({ collarGrip: 'squeezed' })).toBe('plain');
  });
});
