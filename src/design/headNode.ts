import type { MassLedger } from '../engine/mass/ledger';
import { createMoments, type Moments, transformMoments } from '../engine/mass/moments';
import { POSE_IDENTITY, type Pose } from '../engine/math/pose';
import { type Carrier, carrierOf, type PartType, type Socket } from '../parts/contract';
import { partType } from '../parts/registry';
import { socketNamed } from './check';
import type { Part } from './design';
import { freePose, samePose, seatPose } from './placement';
import { type PartValues, sameValues } from './values';

/** A part as it stands in the head. Held and kept up by `HeadModel`; others read. */
export interface PlacedPart {
  readonly part: Part;
  /** Its parameters, all of them: written, from its catalogue row, its material, or by default. */
  readonly values: PartValues;
  /** Place in the design's list. */
  readonly index: number;
  /** X_GP, part frame in the grip frame (of a keep-out X_RP, in the rotor frame). A new object whenever, and only when, the part has moved. */
  readonly pose: Pose;
  /**
   * Its mass, first and second moments about the grip's origin, grip frame (kg, m); computed for hidden parts too. A
   * rod-carried part stands as at flat pitch. Written in place: copy it to keep it.
   */
  readonly moments_G: Moments;
  /** The same about the part's own origin in its own axes. */
  readonly moments_P: Moments;
  readonly sockets: readonly Socket[];
  /**
   * 'rod': hangs on its socket and runs to the slider: its share of the moment is the linkage's business. 'hub', 'case':
   * a keep-out, which weighs nothing and whose `pose` is in the rotor frame. Only 'grip' is in the head's sums.
   */
  readonly carriedBy: Carrier;
}

/** One part in the tree of mounts, with everything that is remembered between changes. */
export class HeadNode implements PlacedPart {
  index = 0;
  type: PartType;
  sockets: readonly Socket[] = [];
  /** Height it takes up on a stacking socket, m. */
  height = 0;
  /** What it stands on: parts before it on its socket, and parts it carries between it and its seat, m. */
  raise = 0;
  lift = 0;
  parent: HeadNode | null = null;
  /** Parts mounted on this one, in list order. */
  readonly children: HeadNode[] = [];
  pose: Pose = POSE_IDENTITY;
  /** What `pose` was worked out from: it is the same as long as all of these are. */
  private posedBy: Part['pose'] | Part['socket'];
  private posedOn: Pose | null = null;
  private posedSeat: Socket | null = null;
  private posedRaise = 0;
  readonly moments_P = createMoments();
  readonly moments_G = createMoments();
  /** Pose or moments are out of date. */
  stale = true;
  /** Children must look at their seats again. */
  seatsChanged = true;
  /** The sum that holds `moments_G` at present. */
  heldBy: MassLedger | null = null;

  constructor(
    public part: Part,
    public values: PartValues,
  ) {
    this.type = partType(part.kind);
  }

  /** Hangs this part on another, or on none; the other's list of children stays in list order. */
  reseat(parent: HeadNode | null): void {
    const old = this.parent?.children;
    if (old) old.splice(old.indexOf(this), 1);
    this.parent = parent;
    const next = parent?.children;
    if (!next) return;
    const after = next.findIndex((child) => child.index > this.index);
    next.splice(after < 0 ? next.length : after, 0, this);
  }

  get carriedBy(): Carrier {
    return carrierOf(this.type, this.values);
  }

  get hasBall(): boolean {
    return this.sockets.some((socket) => socket.mates === 'ball');
  }

  /** Whether taking on `part` with `values` needs a new weighing. */
  differsFrom(part: Part, values: PartValues): boolean {
    return (
      part.kind !== this.part.kind ||
      part.measured !== this.part.measured ||
      !sameValues(this.type, values, this.values)
    );
  }

  /** Takes on new values whose moments in the part frame are already known. */
  adopt(part: Part, values: PartValues, sockets: readonly Socket[], moments_P: Moments): void {
    this.part = part;
    this.values = values;
    this.type = partType(part.kind);
    this.sockets = sockets;
    this.height = this.type.stackHeight?.(values) ?? 0;
    this.moments_P.set(moments_P);
    this.stale = true;
    this.seatsChanged = true;
  }

  /** Brings the pose up to date with the parent's; true where it moved. */
  settlePose(): boolean {
    const { pose, socket } = this.part;
    const parentPose = this.parent?.pose ?? null;
    const seat = this.parent && socket ? socketNamed(this.parent.sockets, socket.name) : null;
    const raise = this.raise + this.lift;
    if (
      this.posedBy === (socket ?? pose) &&
      this.posedOn === parentPose &&
      this.posedSeat === seat &&
      this.posedRaise === raise
    ) {
      return false;
    }
    this.posedBy = socket ?? pose;
    this.posedOn = parentPose;
    this.posedSeat = seat;
    this.posedRaise = raise;
    const placed = this.placed(seat, raise);
    if (samePose(placed, this.pose)) return false;
    this.pose = placed;
    return true;
  }

  private placed(seat: Socket | null, raise: number): Pose {
    const { id, pose, socket } = this.part;
    if (!socket) return pose ? freePose(pose) : POSE_IDENTITY;
    if (!this.parent || !seat) throw new Error(`HeadNode.placed(): no seat for part ${id}`);
    return seatPose(this.parent.pose, seat, socket, raise);
  }

  /** Brings the grip-frame moments up to date with pose and part-frame moments. */
  settleMoments(): void {
    transformMoments(this.moments_P, this.pose, this.moments_G);
  }

  /**
   * Stacks the children on every stacking socket anew, and this part on those it carries itself. Those whose height
   * above their seat changed go stale and are put into `moved`.
   */
  restack(moved: HeadNode[]): void {
    for (const child of this.children) {
      const seat = socketNamed(this.sockets, child.part.socket?.name ?? '');
      if (!seat?.stacks) child.raiseTo(0, moved);
    }
    let lift = 0;
    for (const { name, stacks } of this.sockets) {
      if (!stacks) continue;
      let height = 0;
      for (const child of this.children) {
        if (child.part.socket?.name !== name) continue;
        child.raiseTo(height, moved);
        height += child.height;
      }
      if (name === this.type.raisedBy) lift = height;
    }
    if (this.lift !== lift) {
      this.lift = lift;
      this.stale = true;
      moved.push(this);
    }
  }

  private raiseTo(raise: number, moved: HeadNode[]): void {
    if (this.raise === raise) return;
    this.raise = raise;
    this.stale = true;
    moved.push(this);
  }
}
