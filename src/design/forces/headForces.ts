import type { Equilibria } from '../../engine/feathering/equilibria';
import { inertialEquilibria } from '../../engine/feathering/equilibria';
import {
  featheringBound,
  featheringEnergy,
  featheringMoment,
  featheringSlope,
} from '../../engine/feathering/harmonics';
import { gridOfRange, type PitchGrid } from '../../engine/feathering/pitchGrid';
import { equilibriumCells, sampledEquilibria } from '../../engine/feathering/sampledEquilibria';
import { bandKnots, holdingBands } from '../../engine/friction/holdingBands';
import {
  createLinkState,
  type LinkState,
  linkState,
  pushRodForce,
} from '../../engine/linkage/linkage';
import { createMoments } from '../../engine/mass/moments';
import { type Radians, radiansFromDegrees } from '../../engine/units';
import { ClearanceDesk } from '../clearance/clearanceDesk';
import type { HeadClearance } from '../clearance/clearanceTypes';
import { momentScale } from '../curve';
import type { HeadModel } from '../headModel';
import { BearingDesk } from './bearingDesk';
import { AirDesk, type HeadAir } from './headAir';
import { type HeadFriction, headFriction } from './headFriction';
import { type HeadLag, LagDesk } from './headLag';
import type { HeadLinkage } from './headLinkage';
import { LinkageDesk, type Travel } from './linkageDesk';
import { LinkColumnDesk, type LinkColumns } from './linkColumns';
import type { MomentTerm } from './momentTerm';
import { RodDesk } from './rodDesk';
import { Samples } from './samples';

/** Holding bands wider than this are not missed; narrower ones are found where they hold a rest or flee angle. */
const BAND_STEP = radiansFromDegrees(0.5);
const knotsOf = gridOfRange((from, to) => bandKnots(from, to, BAND_STEP));
const cellsOf = gridOfRange(equilibriumCells);

/**
 * Everything that turns one grip about its feathering axis or holds it: the inertial moment of what turns with the
 * grip, as four harmonics, and a list of further terms, each counted or not as the design says (the rod's own mass, the
 * air, a blade that swings on its bolt); and the friction that all of it has to overcome. Kept up to date with its
 * model: whatever is asked after a change is computed anew once. One total moment serves force, energy, equilibria and
 * verdict.
 */
export class HeadForces {
  private revision = -1;
  /** Height of the slider's ball at flat pitch, m. */
  private flatSlider = Number.NaN;
  private readonly airDesk = new AirDesk();
  private readonly lagDesk = new LagDesk();
  private readonly clearanceDesk = new ClearanceDesk();
  private readonly rodDesk = new RodDesk();
  private readonly linkageDesk = new LinkageDesk();
  private readonly linkColumnDesk = new LinkColumnDesk();
  private readonly bearingDesk = new BearingDesk();
  private readonly samples = new Samples();
  private heldAirTerm: MomentTerm | null = null;
  private readonly state = createLinkState();
  private heldTerms: readonly MomentTerm[] = [];
  private heldLinkage: HeadLinkage | null = null;
  private heldAir: HeadAir = { kind: 'off' };
  private heldLag: HeadLag | null = null;
  private heldFriction: HeadFriction | null = null;
  private heldClearance: HeadClearance | null = null;

  constructor(readonly model: HeadModel) {}

  /** The counted terms beside the grip's own inertial moment. */
  get terms(): readonly MomentTerm[] {
    this.settle();
    return this.heldTerms;
  }
  get linkage(): HeadLinkage | null {
    this.settle();
    return this.heldLinkage;
  }
  get air(): HeadAir {
    this.settle();
    return this.heldAir;
  }
  /** The blade on its bolt; null where no part hinges there. */
  get lag(): HeadLag | null {
    this.settle();
    return this.heldLag;
  }
  /** Null where friction is not counted. */
  get friction(): HeadFriction | null {
    this.settle();
    return this.heldFriction;
  }
  /** Gaps to the keep-outs through the whole travel: worked out when asked for, once a change. */
  get clearance(): HeadClearance {
    this.settle();
    this.heldClearance ??= this.clearanceDesk.clearance(this);
    return this.heldClearance;
  }
  /** The height on the shaft under which no turning part comes, m; null without parts. */
  get lowestTurning(): number | null {
    this.settle();
    return this.clearanceDesk.lowest(this);
  }
  /** How often a part has been searched against a keep-out. */
  get clearanceSearched(): number {
    return this.clearanceDesk.searched;
  }
  /** How often the air has been solved. */
  get airSolved(): number {
    return this.airDesk.solved;
  }

  /** How often a counted term has been asked for its share at the pitch of a grid. */
  get termSamples(): number {
    return this.samples.asked;
  }

  /** How far the push rod goes within [from, to]; null without an arm. */
  travel(from: Radians, to: Radians): Travel | null {
    this.settle();
    return this.linkageDesk.travel(this.model, from, to);
  }

  /** `moment` at every pitch of a grid, to the bit. This array and those below are written anew by the next change. */
  momentsOn(grid: PitchGrid): Float64Array {
    this.settle();
    return this.samples.moments(grid, this.model.harmonics, this.heldTerms);
  }

  /** The share of a counted term at every pitch of a grid; undefined for one that is not counted. Read only. */
  shareOn(grid: PitchGrid, term: MomentTerm): Float64Array | undefined {
    this.settle();
    return this.samples.share(grid, term, this.heldTerms);
  }

  slopesOn(grid: PitchGrid): Float64Array {
    this.settle();
    return this.samples.slopes(grid, this.model.harmonics, this.heldTerms);
  }

  energiesOn(grid: PitchGrid): Float64Array {
    this.settle();
    return this.samples.energies(grid, this.model.harmonics, this.heldTerms);
  }

  /** `frictionAt` at every pitch of a grid. */
  frictionsOn(grid: PitchGrid): Float64Array {
    this.settle();
    return this.samples.frictions(grid, this.heldFriction, this.linksOn(grid));
  }

  /** What the push rod makes of a moment at every pitch of a grid; null without an arm. */
  linksOn(grid: PitchGrid): LinkColumns | null {
    this.settle();
    if (!this.heldLinkage) return null;
    const { linkage } = this.heldLinkage;
    const { flatSlider, model } = this;
    return this.linkColumnDesk.columns(grid, { linkage, flatSlider, model });
  }

  /** Total feathering moment, N m; NaN where a counted term has no value. */
  moment(pitch: Radians): number {
    this.settle();
    let sum = featheringMoment(this.model.harmonics, pitch);
    for (const term of this.heldTerms) sum += term.moment(pitch);
    return sum;
  }

  /** dM/dt, N m/rad. */
  slope(pitch: Radians): number {
    this.settle();
    let sum = featheringSlope(this.model.harmonics, pitch);
    for (const term of this.heldTerms) sum += term.slope(pitch);
    return sum;
  }

  /** Potential of the total moment, J, zero at flat pitch. */
  energy(pitch: Radians): number {
    this.settle();
    let sum = featheringEnergy(this.model.harmonics, pitch);
    for (const term of this.heldTerms) sum += term.energy(pitch);
    return sum;
  }

  /** The linkage at a pitch; the object is written anew by the next call. Null without an arm. */
  linkAt(pitch: Radians): LinkState | null {
    this.settle();
    if (!this.heldLinkage) return null;
    return linkState(this.heldLinkage.linkage, this.model.rotor, pitch, this.state);
  }

  /** Slider travel of a linkage that `linkAt` has placed, m; NaN out of reach. */
  travelOf(link: LinkState): number {
    return link.sliderZ - this.flatSlider;
  }

  /** Push-rod force for one N m of moment, tension positive; NaN over centre, out of reach and for a ball on the axis. */
  forcePerMoment(link: LinkState): number {
    return pushRodForce(1, link) ?? Number.NaN;
  }

  /** Push-rod force that a moment of the grip makes at a pitch, N; null where there is none. */
  forceOf(moment: number, pitch: Radians): number | null {
    const link = this.linkAt(pitch);
    const force = link === null ? Number.NaN : moment * this.forcePerMoment(link);
    return Number.isNaN(force) ? null : force;
  }

  /** Force on the slider along +Z, all grips, N; null where there is none. */
  sliderForce(pitch: Radians): number | null {
    const force = this.forceOf(this.moment(pitch), pitch);
    const link = this.linkAt(pitch);
    return force === null || link === null
      ? null
      : this.model.sections.rotor.bladeCount * link.axis[2] * force;
  }

  /** Slider travel from its place at flat pitch, m; NaN without an arm and out of reach. */
  travelAt(pitch: Radians): number {
    this.settle();
    const link = this.linkAt(pitch);
    return link === null ? Number.NaN : this.travelOf(link);
  }

  /**
   * Friction that holds the grip at a pitch, N m; zero where none is counted. `loadFactor` scales what the bearings carry:
   * the square of another speed over the design's.
   */
  frictionAt(pitch: Radians, loadFactor = 1): number {
    return this.frictionOf(pitch, this.linkAt(pitch), loadFactor);
  }

  /** The same with the linkage that `linkAt` has placed at the pitch. */
  frictionOf(pitch: Radians, link: LinkState | null, loadFactor = 1): number {
    return this.heldFriction?.momentAt(pitch, link, loadFactor) ?? 0;
  }

  /**
   * Rest and flee angles in [from, to], or that the head is neutral at every pitch. Exact where only the inertial moment
   * counts, else by samples (see `sampledEquilibria` for what they may miss).
   */
  equilibria(from: Radians, to: Radians): Equilibria {
    this.settle();
    const scale = momentScale(this.model.totals(createMoments()), this.model.rotor);
    if (this.heldTerms.length === 0) {
      return inertialEquilibria(this.model.harmonics, from, to, scale);
    }
    const cells = cellsOf(from, to);
    return sampledEquilibria(
      {
        value: (pitch) => this.moment(pitch as Radians),
        slope: (pitch) => this.slope(pitch as Radians),
        atCells: {
          ends: cells.pitches,
          values: this.momentsOn(cells),
          slopes: this.slopesOn(cells),
        },
      },
      from,
      to,
      Math.max(scale, featheringBound(this.model.harmonics)),
    );
  }

  /** Pitch intervals where friction holds the grip, ascending; none where there is no friction. */
  bands(
    from: Radians,
    to: Radians,
    equilibria: Equilibria,
  ): readonly (readonly [Radians, Radians])[] {
    this.settle();
    if (!this.heldFriction?.known || this.model.rotor.angularSpeed === 0) return [];
    const known = equilibria.kind === 'found' ? equilibria.roots.map((root) => root.pitch) : [];
    const knots = knotsOf(from, to);
    return holdingBands(
      (pitch) => this.moment(pitch as Radians),
      (pitch) => this.frictionAt(pitch as Radians),
      from,
      to,
      BAND_STEP,
      known,
      { knots: knots.pitches, moments: this.momentsOn(knots), frictions: this.frictionsOn(knots) },
    );
  }

  private settle(): void {
    if (this.revision === this.model.revision) return;
    this.revision = this.model.revision;
    this.heldClearance = null;
    const { model } = this;
    this.heldLinkage = this.linkageDesk.linkage(model);
    const flat = radiansFromDegrees(0);
    this.flatSlider = this.heldLinkage
      ? linkState(this.heldLinkage.linkage, model.rotor, flat, this.state).sliderZ
      : Number.NaN;
    const air = this.airDesk.air(model);
    if (air !== this.heldAir) this.heldAirTerm = airTerm(air);
    this.heldAir = air;
    this.heldLag = this.lagDesk.lag(model, this.heldAir);
    this.heldTerms = [
      this.rodDesk.term(this.heldLinkage, model.rotor),
      this.heldAirTerm,
      this.heldLag?.term,
    ].filter((term) => term !== undefined && term !== null);
    this.heldFriction = headFriction(this, this.heldAir, this.bearingDesk);
  }
}

function airTerm(air: HeadAir): MomentTerm | null {
  if (air.kind !== 'estimated') return null;
  const { table } = air;
  return {
    id: 'air',
    moment: (pitch) => table.moment(pitch),
    slope: (pitch) => table.slope(pitch),
    energy: (pitch) => table.energy(pitch),
  };
}
