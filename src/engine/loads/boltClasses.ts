/** Strength of a bolt's material, Pa: least tensile strength, least yield (or 0.2 % proof) strength, proof stress. */
export interface BoltClass {
  readonly name: string;
  readonly standard: 'ISO 898-1' | 'ISO 3506-1';
  readonly tensile: number;
  readonly yield: number;
  /** The nominal ones, which EN 1993-1-8 counts with (Table 3.1, from memory). */
  readonly nominalTensile: number;
  readonly nominalYield: number;
  /** Null where the standard gives none. */
  readonly proof: number | null;
  /**
   * Shear factor with the thread in the plane, EN 1993-1-8 Table 3.4: 0.6 for 8.8, 0.5 for 10.9. Classes that the table
   * does not name take the cautious 0.5.
   */
  readonly threadShear: number;
  readonly inShearTable: boolean;
}

const MPA = 1e6;

/** ISO 898-1 (8.8 up to 16 mm) and ISO 3506-1 as printed in public fastener tables (seen). */
export const BOLT_CLASSES: readonly BoltClass[] = [
  made('8.8', 'ISO 898-1', [800, 640, 580], [800, 640], 0.6, true),
  made('10.9', 'ISO 898-1', [1040, 940, 830], [1000, 900], 0.5, true),
  made('12.9', 'ISO 898-1', [1220, 1100, 970], [1200, 1080], 0.5, false),
  made('A2-50', 'ISO 3506-1', [500, 210, null], [500, 210], 0.5, false),
  made('A2-70', 'ISO 3506-1', [700, 450, null], [700, 450], 0.5, false),
  made('A4-80', 'ISO 3506-1', [800, 600, null], [800, 600], 0.5, false),
];

function made(
  name: string,
  standard: BoltClass['standard'],
  [tensile, yieldStress, proof]: readonly [number, number, number | null],
  [nominalTensile, nominalYield]: readonly [number, number],
  threadShear: number,
  inShearTable: boolean,
): BoltClass {
  return {
    name,
    standard,
    tensile: tensile * MPA,
    yield: yieldStress * MPA,
    nominalTensile: nominalTensile * MPA,
    nominalYield: nominalYield * MPA,
    proof: proof === null ? null : proof * MPA,
    threadShear,
    inShearTable,
  };
}

export function boltClass(name: string | null): BoltClass | null {
  return BOLT_CLASSES.find((one) => one.name === name) ?? null;
}
