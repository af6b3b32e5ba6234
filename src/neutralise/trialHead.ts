import type { Design, Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import { HeadForces } from '../design/forces/headForces';
import { HeadModel } from '../design/headModel';
import { materialsOf } from '../design/resolve';
import { fail, type Result, succeed } from '../engine/result';
import { fillResiduals, type Goal, residualCount } from './goal';
import { type KnobRef, knobValue, withKnob } from './knobs';

/** A knob that a search turns, and others that go along by the same change (the same on the other side). */
export interface TurnedKnob {
  readonly ref: KnobRef;
  readonly also?: readonly KnobRef[];
}

/** What is wanted, and at which speeds, rpm. */
export interface Wanted {
  readonly goal: Goal;
  readonly speedsRpm: readonly number[];
}

/**
 * A head of its own whose knobs are turned in a search: the exact model, one for each speed, in which only the changed
 * parts are weighed again. The design it was made from is not touched.
 */
export class TrialHead {
  /** How often the knobs have been set. */
  evaluations = 0;
  /** Why the last setting was refused. */
  refused: DesignFault | null = null;
  private readonly starts: readonly (readonly number[])[];
  private readonly parts = new Map<string, Part>();

  private constructor(
    readonly design: Design,
    readonly wanted: Wanted,
    readonly knobs: readonly TurnedKnob[],
    private readonly heads: readonly HeadForces[],
  ) {
    this.starts = knobs.map(({ ref, also = [] }) =>
      [ref, ...also].map((one) => {
        const value = knobValue(design, one);
        if (value === undefined) throw new RangeError(`TrialHead: no such number: ${one.field}`);
        return value;
      }),
    );
    for (const part of design.parts) this.parts.set(part.id, part);
  }

  /** The fault of a design that breaks a rule. Throws where a knob names a number that is not there. */
  static of(
    design: Design,
    wanted: Wanted,
    knobs: readonly TurnedKnob[],
  ): Result<TrialHead, DesignFault> {
    const heads: HeadForces[] = [];
    for (const speedRpm of wanted.speedsRpm) {
      const model = new HeadModel();
      const outcome = model.load({ ...design, rotor: { ...design.rotor, speedRpm } });
      if (!outcome.ok) return fail(outcome.error);
      heads.push(new HeadForces(model));
    }
    return succeed(new TrialHead(design, wanted, knobs, heads));
  }

  /** The forces at the first speed. */
  get forces(): HeadForces {
    return this.heads[0];
  }
  get start(): number[] {
    return this.starts.map(([value]) => value);
  }
  get residualCount(): number {
    return this.heads.length * residualCount(this.wanted.goal);
  }

  /** The parts as they are set now, in list order. */
  get currentParts(): readonly Part[] {
    return this.design.parts.map((part) => this.parts.get(part.id) ?? part);
  }

  /** Sets all knobs; false where a rule refuses it (`refused` says which): the head is then partly set. */
  set(values: ArrayLike<number>): boolean {
    this.evaluations++;
    this.refused = null;
    const changed = new Map<string, Part>();
    const materials = materialsOf(this.design);
    this.knobs.forEach(({ ref, also = [] }, i) => {
      [ref, ...also].forEach((one, k) => {
        const change = values[i] - this.starts[i][0];
        const value = k === 0 ? values[i] : this.starts[i][k] + change;
        const part = changed.get(one.part) ?? this.parts.get(one.part);
        if (part) changed.set(one.part, withKnob(part, one, value, materials));
      });
    });
    for (const [id, part] of changed) this.parts.set(id, part);
    return this.heads.every((head) => this.put(head, changed));
  }

  /** Parts that hang together may refuse one another's order: a second round settles it. */
  private put({ model }: HeadForces, changed: ReadonlyMap<string, Part>): boolean {
    let open = [...changed.values()];
    for (let round = 0; round < 3 && open.length > 0; round++) {
      open = open.filter((part) => {
        const outcome = model.setPart(part);
        if (!outcome.ok) this.refused = outcome.error;
        return !outcome.ok;
      });
    }
    if (open.length === 0) this.refused = null;
    return open.length === 0;
  }

  /** Residuals of the goal at every speed, as the knobs are set; false where one cannot be had. */
  residuals(out: Float64Array): boolean {
    const each = residualCount(this.wanted.goal);
    return this.heads.every((head, i) => fillResiduals(this.wanted.goal, head, out, i * each));
  }
}
