import {
  createHarmonics,
  featheringHarmonics,
  type Harmonics,
} from '../engine/feathering/harmonics';
import type { RotorConditions } from '../engine/feathering/rotor';
import { createMoments } from '../engine/mass/moments';
import { fail } from '../engine/result';
import { angularSpeedFromRpm, metresFromMm, radians, radiansFromDegrees } from '../engine/units';
import { checkParts } from './checkParts';
import { checkSections } from './checkSections';
import type { Design, DesignSections, Rotor } from './design';
import type { PlacedPart } from './headNode';
import { DONE, HeadTree, type Outcome } from './headTree';
import { materialsOf } from './resolve';

/** What of a design the model needs. */
export type HeadDesign = DesignSections & Pick<Design, 'parts' | 'materials'>;

/**
 * The head as it is being worked on: every part's pose, moments and share, kept up to date by the least work. A
 * changed part is weighed once, it and what it moves are posed anew, and the sums change by those parts alone,
 * whatever the size of the head.
 *
 * Everything is about the grip's origin in the grip frame, SI. A change that breaks a rule is refused with a fault
 * and leaves the model as it was. Hidden parts keep their place (children stay put) and weigh nothing. A part with
 * `carriedBy: 'rod'` is not in the grip's sums: `HeadForces` adds what it does to the grip. Nor is a keep-out.
 *
 * Tested against a model loaded afresh after a thousand random edits, and for its counted cost in heads of 12,
 * 1,000 and 9,999 parts.
 */
export class HeadModel extends HeadTree {
  private readonly coefficients = createHarmonics();
  private readonly sums = createMoments();
  private harmonicsRevision = -1;
  private held: DesignSections = {
    rotor: { speedRpm: 0, bladeCount: 1, torqueOffsetMm: 0, preconeDeg: 0 },
  };
  private conditions: RotorConditions = {
    angularSpeed: 0,
    torqueOffset: 0,
    precone: radians(0),
  };

  get rotor(): RotorConditions {
    return this.conditions;
  }

  /** Rotor, control, friction and the rest as the design has them; each section the same object until it changes. */
  get sections(): DesignSections {
    return this.held;
  }

  /** Coefficients of the inertial feathering moment of all that turns with the grip, N m. Written in place. */
  get harmonics(): Harmonics {
    this.settleHarmonics();
    return this.coefficients;
  }

  /** Parts that offer a ball for a rod, in list order (hidden ones only where no other is there); the first is in use. */
  get armParts(): readonly PlacedPart[] {
    return this.armNodes;
  }

  /** The arm in use and what hangs on its ball, hidden or not. */
  get arm(): { readonly arm: PlacedPart; readonly rod: PlacedPart | null } | null {
    const [arm] = this.armNodes;
    if (!arm) return null;
    const ball = arm.sockets.find((socket) => socket.mates === 'ball');
    const rod = arm.children.find(
      (node) => node.carriedBy === 'rod' && node.part.socket?.name === ball?.name,
    );
    return { arm, rod: rod ?? null };
  }

  /** Takes on a whole design, all of it weighed anew. */
  load(design: HeadDesign): Outcome {
    const materials = materialsOf(design);
    const found = checkSections(design) ?? checkParts(design.parts, materials);
    if (found) return fail(found);
    this.takeSections(design);
    this.loadParts(design.parts, materials);
    return DONE;
  }

  /** Takes on a design by changing what differs: parts that are the same objects as before are left alone. */
  sync(design: HeadDesign): Outcome {
    const found = checkSections(design);
    if (found) return fail(found);
    const outcome = this.syncParts(design.parts, materialsOf(design));
    if (outcome.ok) this.takeSections(design);
    return outcome;
  }

  /** Takes on other sections and leaves the parts alone. */
  setSections(sections: DesignSections): Outcome {
    const found = checkSections(sections);
    if (found) return fail(found);
    this.takeSections(sections);
    this.revision++;
    return DONE;
  }

  private takeSections({
    rotor,
    counted,
    control,
    friction,
    air,
    bladeBolt,
    clearance,
    tolerance,
  }: DesignSections): void {
    if (rotor !== this.held.rotor) this.conditions = rotorConditions(rotor);
    this.held = {
      rotor,
      ...(counted ? { counted } : {}),
      ...(control ? { control } : {}),
      ...(friction ? { friction } : {}),
      ...(air ? { air } : {}),
      ...(bladeBolt ? { bladeBolt } : {}),
      ...(clearance ? { clearance } : {}),
      ...(tolerance ? { tolerance } : {}),
    };
  }

  private settleHarmonics(): void {
    if (this.harmonicsRevision === this.revision) return;
    featheringHarmonics(this.totals(this.sums), this.conditions, this.coefficients);
    this.harmonicsRevision = this.revision;
  }
}

/** The rotor in SI; at `speedRpm` where it is given. */
export function rotorConditions(rotor: Rotor, speedRpm = rotor.speedRpm): RotorConditions {
  return {
    angularSpeed: angularSpeedFromRpm(speedRpm),
    torqueOffset: metresFromMm(rotor.torqueOffsetMm),
    precone: radiansFromDegrees(rotor.preconeDeg),
  };
}
