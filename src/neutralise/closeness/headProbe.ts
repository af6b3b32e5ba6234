import type { Design, Part } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { HeadForces } from '../../design/forces/headForces';
import { headLinkage } from '../../design/forces/headLinkage';
import { type HeadDesign, HeadModel } from '../../design/headModel';
import { featheringMoment } from '../../engine/feathering/harmonics';
import { createLinkState, linkState, pushRodForce } from '../../engine/linkage/linkage';
import { rodMoment } from '../../engine/linkage/rodMass';
import { createMoments, JXX, M, MOMENT_COUNT, SX } from '../../engine/mass/moments';
import { fail, type Result, succeed } from '../../engine/result';
import { type Radians, radiansFromDegrees } from '../../engine/units';

/**
 * Air and a swinging blade: 'anew' solves them for every head asked about, which is exact and, where the blade changes,
 * costs a table of the air; 'nominal' keeps their moment at each pitch as it is in the design. The push rod's own mass and
 * the linkage are always those of the head asked about.
 */
export type TermsChoice = 'anew' | 'nominal';

/** Whether a design counts any of what 'nominal' keeps: else the two are the same. */
export function hasKeptTerms({ counted, bladeBolt }: Design): boolean {
  return counted?.air === true || bladeBolt?.hold === 'free';
}

/** Where the numbers of one head stand in the row that `HeadProbe.read` fills. */
export interface ProbeLayout {
  /** Of the ten totals (kg, m; grip frame about the shaft), from 0 on. */
  readonly count: number;
  momentAt(pitch: number): number;
  /** Of the push-rod force at the i-th pitch, N, tension positive; NaN over centre, out of reach and without an arm. */
  forceAt(pitch: number): number;
}

export function probeLayout(pitchCount: number): ProbeLayout {
  return {
    count: MOMENT_COUNT + 2 * pitchCount,
    momentAt: (i) => MOMENT_COUNT + i,
    forceAt: (i) => MOMENT_COUNT + pitchCount + i,
  };
}

/**
 * One head of its own, asked for its totals, its feathering moment and its push-rod force at set pitches while numbers of
 * its parts are changed. The exact model: only a changed part is weighed again.
 */
export class HeadProbe {
  readonly layout: ProbeLayout;
  private readonly forces: HeadForces;
  private readonly pitches: readonly Radians[];
  /** Air and lag at each pitch as in the design; null: solved anew. */
  private readonly kept: Float64Array | null;
  private readonly totals = createMoments();
  private readonly link = createLinkState();

  private constructor(
    readonly model: HeadModel,
    private readonly design: Design,
    pitchesDeg: ArrayLike<number>,
    terms: TermsChoice,
  ) {
    this.forces = new HeadForces(model);
    this.pitches = Array.from(pitchesDeg, radiansFromDegrees);
    this.layout = probeLayout(this.pitches.length);
    this.kept = terms === 'anew' ? null : this.termsNow();
  }

  /** The fault of a design that breaks a rule. */
  static of(
    design: Design,
    pitchesDeg: ArrayLike<number>,
    terms: TermsChoice,
  ): Result<HeadProbe, DesignFault> {
    const model = new HeadModel();
    const outcome = model.load(design);
    return outcome.ok
      ? succeed(new HeadProbe(model, design, pitchesDeg, terms))
      : fail(outcome.error);
  }

  /** Puts one changed part in; the fault where a rule refuses it, and the head is as it was. */
  setPart(part: Part): DesignFault | null {
    const outcome = this.model.setPart(part);
    return outcome.ok ? null : outcome.error;
  }

  /** Puts a whole list of parts in at once, the same ids in the same order. */
  setParts(parts: readonly Part[]): DesignFault | null {
    const head: HeadDesign = { ...this.design, parts };
    const outcome = this.model.sync(head);
    return outcome.ok ? null : outcome.error;
  }

  /** Fills a row with the numbers of the head as it is now. Allocates next to nothing where terms are kept. */
  read(out: Float64Array): Float64Array {
    const { model, layout, pitches, kept } = this;
    out.set(model.totals(this.totals));
    const linkage = headLinkage(model)?.linkage;
    const { harmonics, rotor } = model;
    for (let i = 0; i < pitches.length; i++) {
      const pitch = pitches[i];
      const rod = linkage?.rod ? rodMoment(linkage, rotor, pitch) : 0;
      const moment = kept
        ? featheringMoment(harmonics, pitch) + rod + kept[i]
        : this.forces.moment(pitch);
      out[layout.momentAt(i)] = moment;
      const force = linkage
        ? pushRodForce(moment, linkState(linkage, rotor, pitch, this.link))
        : null;
      out[layout.forceAt(i)] = force ?? Number.NaN;
    }
    return out;
  }

  /**
   * The size that each number of a row is rounded at: that of the largest of its kind; of a moment W^2 times the largest
   * second moment, whose differences it is made of; of a force the same over the lever.
   */
  sizes(row: Float64Array): Float64Array {
    const { layout, pitches, model } = this;
    const out = new Float64Array(layout.count);
    const largest = (from: number, to: number) => {
      let size = 0;
      for (let i = from; i < to; i++) size = Math.max(size, Math.abs(row[i]) || 0);
      return size;
    };
    const second = largest(JXX, MOMENT_COUNT);
    out[M] = Math.abs(row[M]);
    out.fill(Math.max(largest(SX, JXX), Math.sqrt(Math.abs(row[M]) * second)), SX, JXX);
    out.fill(second, JXX, MOMENT_COUNT);
    const first = layout.momentAt(0);
    const moment = Math.max(
      second * model.rotor.angularSpeed ** 2,
      largest(first, first + pitches.length),
    );
    for (let i = 0; i < pitches.length; i++) {
      const perMoment = Math.abs(row[layout.forceAt(i)] / row[layout.momentAt(i)]);
      out[layout.momentAt(i)] = moment;
      out[layout.forceAt(i)] = moment * (perMoment || 0);
    }
    return out;
  }

  private termsNow(): Float64Array {
    return Float64Array.from(this.pitches, (pitch) =>
      this.forces.terms.reduce(
        (sum, term) => sum + (term.id === 'rod' ? 0 : term.moment(pitch)),
        0,
      ),
    );
  }
}
