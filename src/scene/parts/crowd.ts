import { Box3, BufferAttribute, BufferGeometry, Group, LineSegments, Mesh, Sphere } from 'three';
import type { Pose } from '../../engine/math/pose';
import type { Finish, Finishes } from './finishes';

/** A body as a crowd takes it: its arrays in the part frame, in metres, and where that frame stands in its parent's. */
export interface CrowdBody {
  /** The finish under which it may be drawn together with others; null where it is drawn by itself. */
  readonly crowdFinish: Finish | null;
  readonly pose: Pose | null;
  readonly mesh: Mesh<BufferGeometry>;
  /** Ends of its sharp edges. */
  readonly edgePoints: Float32Array | null;
  /** Another number whenever its shape or its place is another. */
  readonly revision: number;
}

/** Where a body's numbers begin in the arrays of its crowd, in points. */
interface Member {
  readonly body: CrowdBody;
  readonly points: Float32Array;
  readonly triangles: ArrayLike<number>;
  readonly edges: Float32Array;
  readonly firstPoint: number;
  readonly firstIndex: number;
  readonly firstEdge: number;
  revision: number;
}

/**
 * The bodies of one finish that are not picked out, in two drawings: all surfaces, all edges. Their points are held in the
 * frame of the parent, so a body that changes or moves is written anew, and alone, and those that stand still cost nothing.
 */
class Crowd {
  readonly surface: Mesh<BufferGeometry>;
  readonly edges: LineSegments<BufferGeometry>;
  private members: readonly Member[] = [];

  constructor(finish: Finish, finishes: Finishes) {
    this.surface = new Mesh(new BufferGeometry(), finishes.surface(finish, 'plain'));
    this.edges = new LineSegments(new BufferGeometry(), finishes.edge(finish, 'plain'));
    for (const object of [this.surface, this.edges]) {
      object.matrixAutoUpdate = false;
      object.matrixWorldNeedsUpdate = true;
      object.frustumCulled = false;
      object.raycast = () => {};
    }
  }

  /** Draws just these. */
  take(bodies: readonly CrowdBody[]): void {
    const { members } = this;
    const same =
      bodies.length === members.length && bodies.every((body, i) => fits(body, members[i]));
    if (!same) this.gather(bodies);
    else
      for (const member of members)
        if (member.revision !== member.body.revision) this.write(member);
  }

  /** Box of what is drawn of a body in the parent's frame, by the arrays on the card; null where it is not here. */
  boxOf(body: CrowdBody): Box3 | null {
    const member = this.members.find((one) => one.body === body);
    if (!member) return null;
    const { array } = this.surface.geometry.getAttribute('position');
    const from = 3 * member.firstPoint;
    return new Box3().setFromArray(array.slice(from, from + member.points.length));
  }

  dispose(): void {
    this.surface.geometry.dispose();
    this.edges.geometry.dispose();
  }

  /** New buffers for other bodies, or for bodies of other sizes. */
  private gather(bodies: readonly CrowdBody[]): void {
    const at = { point: 0, index: 0, edge: 0 };
    this.members = bodies.flatMap((body): Member[] => {
      const arrays = arraysOf(body);
      if (!arrays) return [];
      const first = { firstPoint: at.point, firstIndex: at.index, firstEdge: at.edge };
      at.point += arrays.points.length / 3;
      at.index += arrays.triangles.length;
      at.edge += arrays.edges.length / 3;
      return [{ body, ...arrays, ...first, revision: Number.NaN }];
    });
    for (const object of [this.surface, this.edges]) {
      object.geometry.dispose();
      object.visible = this.members.length > 0;
      // Asked for by the renderer's sorting; where the middle of a crowd is makes no difference.
      object.geometry.boundingSphere = new Sphere();
    }
    const { geometry } = this.surface;
    geometry.setAttribute('position', new BufferAttribute(new Float32Array(3 * at.point), 3));
    geometry.setAttribute('normal', new BufferAttribute(new Float32Array(3 * at.point), 3));
    geometry.setIndex(new BufferAttribute(new Uint32Array(at.index), 1));
    const edges = new BufferAttribute(new Float32Array(3 * at.edge), 3);
    this.edges.geometry.setAttribute('position', edges);
    for (const member of this.members) this.write(member);
    // New buffers go to the card whole.
    for (const made of this.buffers()) made.clearUpdateRanges();
  }

  private buffers(): BufferAttribute[] {
    const { attributes, index } = this.surface.geometry;
    const { position } = this.edges.geometry.attributes;
    return [attributes.position, attributes.normal, index, position] as BufferAttribute[];
  }

  private write(member: Member): void {
    const { body, points, triangles, edges, firstPoint, firstIndex, firstEdge } = member;
    const { pose } = body;
    if (!pose) return;
    member.revision = body.revision;
    const { geometry } = this.surface;
    const position = geometry.getAttribute('position') as BufferAttribute;
    const normal = geometry.getAttribute('normal') as BufferAttribute;
    moved(position, points, 3 * firstPoint, pose, true);
    moved(normal, body.mesh.geometry.getAttribute('normal').array, 3 * firstPoint, pose, false);
    moved(
      this.edges.geometry.getAttribute('position') as BufferAttribute,
      edges,
      3 * firstEdge,
      pose,
      true,
    );
    const { index } = geometry;
    if (!index) return;
    let isNew = false;
    for (let k = 0; k < triangles.length; k++) {
      const point = firstPoint + triangles[k];
      if (index.array[firstIndex + k] === point) continue;
      index.array[firstIndex + k] = point;
      isNew = true;
    }
    if (!isNew) return;
    index.addUpdateRange(firstIndex, triangles.length);
    index.needsUpdate = true;
  }
}

/** Bodies of all finishes, a crowd for each. Hung into the frame in which the bodies stand. */
export class Crowds {
  readonly object = new Group();
  private readonly crowds = new Map<Finish, Crowd>();

  constructor(private readonly finishes: Finishes) {
    this.object.matrixAutoUpdate = false;
  }

  /** Before each drawn frame. Every other body draws itself. */
  take(bodies: Iterable<CrowdBody>): void {
    const by = new Map<Finish, CrowdBody[]>();
    for (const finish of this.crowds.keys()) by.set(finish, []);
    for (const body of bodies) {
      const finish = body.crowdFinish;
      body.mesh.visible = finish === null;
      if (finish === null) continue;
      const list = by.get(finish);
      if (list) list.push(body);
      else by.set(finish, [body]);
    }
    for (const [finish, list] of by) this.crowdOf(finish).take(list);
  }

  /** All bodies draw themselves until the next `take`. */
  scatter(bodies: Iterable<CrowdBody>): void {
    for (const body of bodies) body.mesh.visible = true;
    for (const crowd of this.crowds.values()) crowd.take([]);
  }

  boxOf(body: CrowdBody): Box3 | null {
    for (const crowd of this.crowds.values()) {
      const box = crowd.boxOf(body);
      if (box) return box.applyMatrix4(crowd.surface.matrixWorld);
    }
    return null;
  }

  dispose(): void {
    for (const crowd of this.crowds.values()) crowd.dispose();
  }

  private crowdOf(finish: Finish): Crowd {
    const found = this.crowds.get(finish);
    if (found) return found;
    const made = new Crowd(finish, this.finishes);
    this.crowds.set(finish, made);
    this.object.add(made.surface, made.edges);
    return made;
  }
}

/** Buffers of a body are written in place while their lengths stay: another array is another length. */
function fits(body: CrowdBody, member: Member): boolean {
  return (
    body === member.body &&
    body.mesh.geometry.getAttribute('position')?.array === member.points &&
    body.edgePoints === member.edges
  );
}

function arraysOf({ mesh: { geometry }, edgePoints, pose }: CrowdBody) {
  const points = geometry.getAttribute('position')?.array;
  if (!points || !geometry.index || !edgePoints || !pose) return null;
  return { points: points as Float32Array, triangles: geometry.index.array, edges: edgePoints };
}

/** Writes points (or, `asPoints` false, directions) into a buffer from `at` on, taken from the part's frame to the parent's. */
function moved(
  into: BufferAttribute,
  from: ArrayLike<number>,
  at: number,
  { rotation: R, translation: p }: Pose,
  asPoints: boolean,
): void {
  const { array } = into;
  const [px, py, pz] = asPoints ? p : [0, 0, 0];
  for (let i = 0; i < from.length; i += 3) {
    const x = from[i];
    const y = from[i + 1];
    const z = from[i + 2];
    array[at + i] = R[0] * x + R[1] * y + R[2] * z + px;
    array[at + i + 1] = R[3] * x + R[4] * y + R[5] * z + py;
    array[at + i + 2] = R[6] * x + R[7] * y + R[8] * z + pz;
  }
  into.addUpdateRange(at, from.length);
  into.needsUpdate = true;
}
