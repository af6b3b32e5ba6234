/** One grip of the rotor in the balance. SI. */
export interface GripMass {
  /** 0: the grip that is drawn. */
  readonly index: number;
  readonly name: string;
  readonly mass: number;
  /** Centre of mass from the shaft, rotor plane, in the grip's own directions: out along its axis, and ahead. */
  readonly station: number;
  readonly ahead: number;
  /** Angle of its axis from grip 0, radians. */
  readonly angle: number;
  /** Where the numbers are from. */
  readonly from: 'drawn' | 'ownParts' | 'partMasses' | 'weighed';
}

export interface Correction {
  /** Grip on which to add, and how much at which station, kg and m. */
  readonly grip: number;
  readonly mass: number;
  readonly station: number;
}

export interface Balance {
  readonly grips: readonly GripMass[];
  /** Unbalance, kg m, and its angle from grip 0's axis, radians. */
  readonly unbalance: number;
  readonly angle: number;
  /** Force that it puts on the shaft at the design's speed, N. */
  readonly shaftForce: number;
  /** Grips and hub together, kg; null: the hub's mass is not given. */
  readonly rotorMass: number | null;
  /** Balance quality grade U W / m in mm/s (ISO 21940-11), and the next standard grade that allows it; null without a rotor mass. */
  readonly grade: { readonly value: number; readonly standard: number | null } | null;
  /** What to add where to cancel it; empty where there is nothing to cancel. */
  readonly corrections: readonly Correction[];
  /** What adding along the grips' axes leaves, kg m (two blades cannot cancel what lies across them). */
  readonly left: number;
}
