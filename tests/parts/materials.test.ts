import { describe, expect, test } from 'vitest';
import { findMaterial, MATERIALS } from '../../src/parts/materials';
import type { Material, OwnMaterial } from '../../src/parts/materials/material';

function material(id: string): Material {
  const found = MATERIALS.find((one) => one.id === id);
  if (!found) throw new Error(`no material ${id}`);
  return found;
}

/** The range of bought material; the density itself where an end is not known. */
function range({ densityKgM3, densityLowKgM3, densityHighKgM3 }: Material): [number, number] {
  return [densityLowKgM3 ?? densityKgM3, densityHighKgM3 ?? densityKgM3];
}

describe('the table of materials', () => {
  test('names each once, in small letters, digits and single dashes, groups together', () => {
    const ids = MATERIALS.map((one) => one.id);
    expect(ids.length).toBeGreaterThan(30);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z][a-z0-9]*(-[a-z0-9]+)*$/);
    const names = MATERIALS.map((one) => one.name);
    expect(new Set(names).size).toBe(names.length);
    const groups = MATERIALS.map((one) => one.group);
    const changes = groups.filter((group, k) => group !== groups[k - 1]);
    expect(changes).toEqual(['metal', 'heavy', 'plastic', 'laminate', 'wood', 'foam']);
  });

  test('has the density of each inside its range, between aerogel and the densest metal', () => {
    for (const one of MATERIALS) {
      const [low, high] = range(one);
      expect(low, one.id).toBeLessThanOrEqual(one.densityKgM3);
      expect(one.densityKgM3, one.id).toBeLessThanOrEqual(high);
      expect(low, one.id).toBeGreaterThan(1);
      expect(high, one.id).toBeLessThan(22_600);
    }
  });

  test('says where each figure is from, and counts none as read whose density was recalled', () => {
    for (const one of MATERIALS) {
      expect(one.source.length, one.id).toBeGreaterThan(5);
      if (one.source.startsWith('recalled')) expect(one.fromMemory, one.id).toBe(true);
      expect(`${one.source} ${one.note ?? ''}`, one.id).not.toMatch(/https?:|github|\/work/i);
      if (one.fromMemory) {
        expect(`${one.source} ${one.note ?? ''}`, one.id).toMatch(/recalled/);
      }
    }
    const recalled = MATERIALS.filter((one) => one.fromMemory).map((one) => one.id);
    expect(recalled).toEqual([
      'tungsten-alloy-1',
      'tungsten-alloy-2',
      'tungsten-alloy-3',
      'tungsten-alloy-4',
      'tungsten-carbide',
      'lead',
      'nylon-pa6-gf30',
      'nylon-pa66-gf30',
      'carbon-laminate',
      'beech',
      'birch-plywood',
      'foam-pmi-32',
      'foam-pmi-52',
      'foam-pmi-75',
      'foam-pmi-110',
      'foam-expanded',
    ]);
  });

  test('has a yield below the tensile strength wherever both are given', () => {
    const both = MATERIALS.filter((one) => one.yieldStrengthMPa && one.tensileStrengthMPa);
    expect(both.length).toBeGreaterThan(7);
    for (const { id, yieldStrengthMPa = 0, tensileStrengthMPa = 0 } of both) {
      expect(yieldStrengthMPa, id).toBeLessThan(tensileStrengthMPa);
    }
  });
});

describe('figures of the table against something else', () => {
  // Density of a crystal: atoms per cell x molar mass / (Avogadro x a^3). Cell edges and molar masses from memory;
  // cell edges are good to 1e-4, handbook densities are rounded to three or four figures: 0.3 %.
  test.each([
    ['tungsten', 2, 183.84, 3.1652],
    ['lead', 4, 207.2, 4.9508],
  ])('the density of %s is that of its crystal', (id, atoms, molarGrams, edgeAngstrom) => {
    const density = (atoms * molarGrams * 1e-3) / (6.02214076e23 * (edgeAngstrom * 1e-10) ** 3);
    expect(Math.abs(material(id).densityKgM3 / density - 1)).toBeLessThan(3e-3);
  });

  /** Density of a mixture by mass without change of volume: 1 / sum(w / rho). */
  function mixed(...parts: readonly (readonly [share: number, densityKgM3: number])[]): number {
    return 1 / parts.reduce((sum, [share, density]) => sum + share / density, 0);
  }

  // Nickel and iron 7 : 3 as the binder (common practice), 8908 and 7874 (memory).
  test.each([
    ['tungsten-alloy-1', 0.9],
    ['tungsten-alloy-2', 0.925],
    ['tungsten-alloy-3', 0.95],
    ['tungsten-alloy-4', 0.97],
  ])('the range of %s holds the mixture of its tungsten with nickel and iron', (id, tungsten) => {
    const density = mixed(
      [tungsten, 19_300],
      [(1 - tungsten) * 0.7, 8908],
      [(1 - tungsten) * 0.3, 7874],
    );
    const [low, high] = range(material(id));
    expect(density).toBeGreaterThan(low);
    expect(density).toBeLessThan(high);
  });

  // Tungsten carbide 15,630, cobalt 8,900 (memory); cutting and wear grades have 6 to 15 % (common practice).
  test('the range of cemented carbide holds 6 to 15 % of cobalt, and its value is that of 6 %', () => {
    const of = (cobalt: number) => mixed([1 - cobalt, 15_630], [cobalt, 8900]);
    const carbide = material('tungsten-carbide');
    const [low, high] = range(carbide);
    expect(low).toBeLessThan(of(0.15));
    expect(high).toBeGreaterThan(of(0.06));
    expect(Math.abs(carbide.densityKgM3 / of(0.06) - 1)).toBeLessThan(0.005);
  });

  // E-glass 2540 (table of constituents at avdweb.nl), PA 6 1130 (memory), PA 66 1140 (engineersedge.com).
  test.each([
    ['nylon-pa6-gf30', 1130],
    ['nylon-pa66-gf30', 1140],
  ])('%s is 30 %% by mass of glass in nylon, within 0.5 %%', (id, nylon) => {
    const density = mixed([0.3, 2540], [0.7, nylon]);
    expect(Math.abs(material(id).densityKgM3 / density - 1)).toBeLessThan(0.005);
  });

  // The designation of ISO 898-1: "x.y" is a nominal 100 x MPa, of which y tenths are yield; least values are no lower.
  test.each(['8.8', '10.9', '12.9'])('class %s is at least as strong as its name says', (name) => {
    const [x, y] = name.split('.').map(Number);
    const { tensileStrengthMPa = 0, yieldStrengthMPa = 0 } = material(`steel-${x}-${y}`);
    expect(tensileStrengthMPa).toBeGreaterThanOrEqual(100 * x);
    expect(tensileStrengthMPa).toBeLessThan(105 * x);
    expect(yieldStrengthMPa).toBeGreaterThanOrEqual(10 * x * y);
    expect(yieldStrengthMPa).toBeLessThan(10.5 * x * y);
  });

  // ISO 898-1, minimum ultimate loads of M3 (5.03 mm^2), printed to 10 N: half of that and half of 0.01 mm^2 x MPa.
  test.each([
    ['steel-8-8', 4020],
    ['steel-10-9', 5230],
    ['steel-12-9', 6140],
  ])('%s carries the printed minimum ultimate load of an M3 thread', (id, load) => {
    const { tensileStrengthMPa = 0 } = material(id);
    expect(Math.abs(tensileStrengthMPa * 5.03 - load)).toBeLessThan(5 + 0.005 * tensileStrengthMPa);
  });

  // Speed of sound in a thin rod, sqrt(E / density), m/s (handbook tables, memory; alloys differ by 3 %). Catches a slip
  // of unit in either.
  test.each([
    ['steel', 5100],
    ['aluminium-6061', 5060],
    ['titanium', 5080],
    ['brass', 3450],
    ['tungsten', 4600],
  ])('sound runs along a rod of %s at %i m/s', (id, speed) => {
    const { youngsModulusGPa = 0, densityKgM3 } = material(id);
    expect(Math.abs(Math.sqrt((youngsModulusGPa * 1e9) / densityKgM3) / speed - 1)).toBeLessThan(
      0.03,
    );
  });

  // Handbook values, memory: g/cm^3.
  test.each([
    ['steel', 7.85],
    ['aluminium-7075', 2.81],
    ['magnesium-az91', 1.81],
    ['titanium', 4.43],
    ['pom', 1.41],
    ['nylon', 1.14],
  ])('%s is %d times as dense as water', (id, relative) => {
    expect(material(id).densityKgM3).toBe(Math.round(relative * 1000));
  });
});

describe('looking a material up', () => {
  const own: readonly OwnMaterial[] = [
    { id: 'steel', name: 'My bar', densityKgM3: 7812 },
    { id: 'oak', name: 'Oak', densityKgM3: 690 },
  ];

  test("finds the table's, and the design's own before it", () => {
    expect(findMaterial('steel', [])?.densityKgM3).toBe(7850);
    expect(findMaterial('steel', own)).toBe(own[0]);
    expect(findMaterial('oak', own)).toBe(own[1]);
    for (const one of MATERIALS) expect(findMaterial(one.id, [])).toBe(one);
  });

  test('finds nothing under an unknown id, nor under a name of the language', () => {
    for (const id of ['', 'Steel', 'oak', 'constructor', '__proto__']) {
      expect(findMaterial(id, []), id).toBeUndefined();
    }
  });
});
