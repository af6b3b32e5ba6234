import { MassLedger } from '../engine/mass/ledger';
import { createMoments, type Moments } from '../engine/mass/moments';
import { fail, type Result, succeed } from '../engine/result';
import type { Socket } from '../parts/contract';
import { partType } from '../parts/registry';
import { checkMount, checkPart } from './check';
import { checkParts, partPath } from './checkParts';
import type { Part } from './design';
import { type DesignFault, fault, within } from './fault';
import { HeadNode, type PlacedPart } from './headNode';
import { type Materials, NO_MATERIALS, valuesOf } from './resolve';
import type { PartValues } from './values';
import { weighPart } from './weighPart';

export type Outcome = Result<void, DesignFault>;
export const DONE: Outcome = succeed(undefined);

/**
 * The parts of a head in the tree of their mounts, with the sums of what they weigh, kept up to date by the least
 * work: a changed part is weighed once, it and what it moves are posed anew, and the sums change by those parts alone,
 * whatever the size of the head. `HeadModel` adds the rotor.
 */
export class HeadTree {
  /** Work done so far: parts weighed and poses computed. */
  readonly counters = { weighed: 0, posed: 0 };
  /** Grows with every accepted change. */
  revision = 0;

  private readonly nodes = new Map<string, HeadNode>();
  private order: HeadNode[] = [];
  private readonly sum = new MassLedger();
  /** Visible parts in the sum. */
  private heldCount = 0;
  private readonly scratch = createMoments();
  private readonly moved: HeadNode[] = [];
  private arms: readonly HeadNode[] | null = null;
  /** The design's own materials. */
  private materials: Materials = NO_MATERIALS;

  /** Additions to and subtractions from the sums so far. */
  get ledgerOperations(): number {
    return this.sum.operations;
  }

  /** All parts in list order. The array is replaced when parts come, go or change places. */
  get parts(): readonly PlacedPart[] {
    return this.order;
  }

  /** The design's own materials. */
  get ownMaterials(): Materials {
    return this.materials;
  }

  placed(id: string): PlacedPart | undefined {
    return this.nodes.get(id);
  }

  /** Moments of all visible parts that turn with the grip: a push rod does not, and is not in it. */
  totals(out: Moments): Moments {
    return this.sum.total(out);
  }

  /**
   * Parts that offer a ball for a rod, in list order; the first is the arm in use. Hidden ones where no other is there:
   * a part left out of the sum keeps its place, and the rod its ball.
   */
  protected get armNodes(): readonly HeadNode[] {
    if (this.arms === null) {
      const arms = this.order.filter((node) => node.hasBall);
      const visible = arms.filter((node) => !node.part.hidden);
      this.arms = visible.length > 0 ? visible : arms;
    }
    return this.arms;
  }

  /** Adds a part at `index` of the list, at its end by default. */
  addPart(part: Part, index = this.order.length): Outcome {
    const parts = this.order.map((node) => node.part);
    parts.splice(index, 0, part);
    return this.syncParts(parts);
  }

  /** Takes a part out. A part that carries others is refused: the fault names the first of them. */
  removePart(id: string): Outcome {
    if (!this.nodes.has(id)) throw new RangeError(`removePart(): id is not in the head: ${id}`);
    return this.syncParts(
      this.order.filter((node) => node.part.id !== id).map((node) => node.part),
    );
  }

  /** Replaces the part of the same id: the drag path. */
  setPart(part: Part): Outcome {
    const node = this.nodes.get(part.id);
    if (!node) throw new RangeError(`setPart(): id is not in the head: ${part.id}`);
    if (part === node.part) return DONE;
    const wrong = checkPart(part, this.materials);
    if (wrong) return fail(within(partPath(node.index), wrong));
    const values = valuesOf(part, this.materials);
    const weighs = node.differsFrom(part, values);
    const sockets = weighs ? partType(part.kind).sockets(values) : node.sockets;
    const parent = part.socket ? (this.nodes.get(part.socket.part) ?? null) : null;
    const unseated = this.checkSeats(node, part, parent, sockets, weighs);
    if (unseated) return fail(unseated);
    const hadBall = node.hasBall;
    const wasHidden = node.part.hidden;
    const seatBefore = node.part.socket?.name;
    const parentBefore = node.parent;
    const heightBefore = node.height;
    this.changeNode(node, part, values, sockets, weighs);
    if (hadBall !== node.hasBall || wasHidden !== part.hidden) this.arms = null;
    if (parent !== parentBefore) node.reseat(parent);
    // Whether a socket stacks may hang on its part's values.
    if (weighs) node.restack(this.moved);
    if (
      parent !== parentBefore ||
      seatBefore !== part.socket?.name ||
      heightBefore !== node.height
    ) {
      parentBefore?.restack(this.moved);
      if (parent !== parentBefore) parent?.restack(this.moved);
    }
    this.moved.push(node);
    this.settleMoved();
    return DONE;
  }

  /**
   * Takes on a list of parts by changing what differs: parts that are the same objects as before are left alone, unless
   * the design's own materials changed, which they may refer to.
   */
  protected syncParts(parts: readonly Part[], materials: Materials = this.materials): Outcome {
    const trusted = (part: Part) =>
      materials === this.materials && this.nodes.get(part.id)?.part === part;
    const found = checkParts(parts, materials, trusted);
    if (found) return fail(found);
    this.materials = materials;
    this.commitParts(parts);
    return DONE;
  }

  /** Takes on a list of parts that `checkParts` has passed, all of it weighed anew. */
  protected loadParts(parts: readonly Part[], materials: Materials): void {
    this.materials = materials;
    this.nodes.clear();
    this.order = [];
    this.heldCount = 0;
    this.sum.clear();
    this.commitParts(parts);
  }

  /** Whether a changed part still has its seat, its children theirs, and no circle is closed. */
  private checkSeats(
    node: HeadNode,
    part: Part,
    parent: HeadNode | null,
    sockets: readonly Socket[],
    socketsChanged: boolean,
  ): DesignFault | null {
    for (let above = parent; above; above = above.parent) {
      if (above === node) return circleOf(part, parent, node);
    }
    const seat = checkMount(part, parent?.sockets ?? null);
    if (seat) return within(partPath(node.index), seat);
    if (!socketsChanged) return null;
    for (const child of node.children) {
      const found = checkMount(child.part, sockets);
      if (found) return within(partPath(child.index), found);
    }
    return null;
  }

  /** Gives a node its new part; weighs it where its parameters differ. Sums are settled later. */
  private changeNode(
    node: HeadNode,
    part: Part,
    values: PartValues,
    sockets: readonly Socket[],
    weighs: boolean,
  ): void {
    if (weighs) {
      const weighed = weighPart(part, values, this.scratch);
      if (!weighed.ok) throw new Error(`changeNode(): part is not checked: ${part.id}`);
      this.counters.weighed++;
      node.adopt(part, values, sockets, this.scratch);
    } else {
      node.part = part;
      node.values = values;
      node.stale = true;
    }
  }

  /** Brings the tree to a list of parts that has passed `checkDesign`. */
  private commitParts(parts: readonly Part[]): void {
    const kept = new Set(parts.map((part) => part.id));
    for (const node of this.order) {
      if (kept.has(node.part.id)) continue;
      this.withdraw(node);
      this.nodes.delete(node.part.id);
    }
    this.order = parts.map((part, index) => this.nodeFor(part, index));
    for (const node of this.order) node.children.length = 0;
    for (const node of this.order) {
      const { socket } = node.part;
      node.parent = socket ? (this.nodes.get(socket.part) as HeadNode) : null;
      node.parent?.children.push(node);
    }
    for (const node of this.order) node.restack(this.moved);
    this.arms = null;
    this.settleMoved();
  }

  private nodeFor(part: Part, index: number): HeadNode {
    const known = this.nodes.get(part.id);
    const values = valuesOf(part, this.materials);
    const node = known ?? new HeadNode(part, values);
    node.index = index;
    if (known?.part === part && known.values === values) return node;
    const weighs = !known || known.differsFrom(part, values);
    const sockets = weighs ? partType(part.kind).sockets(values) : node.sockets;
    this.changeNode(node, part, values, sockets, weighs);
    this.nodes.set(part.id, node);
    this.moved.push(node);
    return node;
  }

  /** Poses and sums of everything that went stale, uppermost first, and of what hangs on it. */
  private settleMoved(): void {
    const { moved } = this;
    for (let i = 0; i < moved.length; i++) {
      while (moved[i].stale) this.settleTree(uppermostStale(moved[i]));
    }
    moved.length = 0;
    this.revision++;
  }

  private settleTree(top: HeadNode): void {
    const open = [top];
    for (let node = open.pop(); node; node = open.pop()) {
      this.counters.posed++;
      const movedOn = node.settlePose() || node.seatsChanged;
      this.withdraw(node);
      node.settleMoments();
      this.enter(node);
      node.stale = false;
      node.seatsChanged = false;
      if (movedOn) for (const child of node.children) open.push(child);
    }
  }

  private withdraw(node: HeadNode): void {
    if (node.heldBy === null) return;
    node.heldBy.remove(node.moments_G);
    node.heldBy = null;
    this.heldCount--;
    // An empty sum is exactly nothing: the last digits of what went in and out would make up an equilibrium.
    if (this.heldCount === 0) this.sum.clear();
  }

  private enter(node: HeadNode): void {
    if (node.part.hidden || node.carriedBy !== 'grip') return;
    this.heldCount++;
    node.heldBy = this.sum;
    node.heldBy.add(node.moments_G);
  }
}

/** The highest part above a node, itself included, that is out of date. */
function uppermostStale(node: HeadNode): HeadNode {
  let top = node;
  for (let above = node.parent; above; above = above.parent) if (above.stale) top = above;
  return top;
}

/** The circle that a part closes which would hang on `parent`, itself hanging on it. */
function circleOf(part: Part, parent: HeadNode | null, node: HeadNode): DesignFault {
  const ids = [part.id];
  for (let above = parent; above && above !== node; above = above.parent) ids.push(above.part.id);
  return fault(`${partPath(node.index)}.socket.part`, { code: 'cycle', ids });
}
