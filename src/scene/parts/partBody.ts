import {
  Box3,
  BufferAttribute,
  BufferGeometry,
  type LineBasicMaterial,
  LineSegments,
  Mesh,
  type Object3D,
  Sphere,
} from 'three';
import type { Part } from '../../design/design';
import { type PartValues, sameValues } from '../../design/values';
import type { Pose } from '../../engine/math/pose';
import { isKeepOut, type PartType } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { Mesher } from '../../parts/tessellate';
import type { LineBoard } from '../drawing/lineBoard';
import { MM, placeObject } from '../drawing/place';
import { Segments } from '../drawing/segments';
import type { Bounds } from '../maths/extent';
import type { CrowdBody } from './crowd';
import type { Finish, Finishes, Look } from './finishes';

/** Width of edges in pictures, CSS px. */
const EDGE_IN_PICTURES = 0.8;

/**
 * The drawn body of one part: its surface, its sharp edges, and a bold outline while it is selected. In the part
 * frame, in metres. Buffers are written in place while their sizes stay the same; otherwise the old ones are given
 * back here, where they were made.
 */
export class PartBody implements CrowdBody {
  /** Named by the part's id, which also stands in `userData.partId`. */
  readonly mesh = new Mesh<BufferGeometry>(new BufferGeometry());
  private readonly lines = new LineSegments<BufferGeometry>(new BufferGeometry());
  private readonly mesher = new Mesher();
  private readonly box = new Box3();
  private outline: Segments | null = null;
  private part: Part | null = null;
  private values: PartValues | null = null;
  private readonly type: PartType;
  private look: Look = 'plain';
  private clash = false;
  /** Its materials have been put on. */
  private worn = false;
  /** Where the part frame stands in its parent's; null before it was put there. */
  pose: Pose | null = null;
  /** Another number whenever shape or place are others. */
  revision = 0;
  private inCrowds = false;
  /** The last answer of `boxInParent`, and the revision that it was of. */
  private bounds: Bounds | null = null;
  private boundsOf = -1;

  constructor(
    id: string,
    kind: string,
    private readonly finishes: Finishes,
    private readonly board: LineBoard,
  ) {
    this.type = partType(kind);
    this.mesh.name = id;
    this.mesh.userData.partId = id;
    this.mesh.matrixAutoUpdate = false;
    this.mesh.add(this.lines);
    this.lines.matrixAutoUpdate = false;
    this.lines.raycast = () => {};
    this.wear('plain');
  }

  /** A space that must stay free, not a part. */
  get isSpace(): boolean {
    return isKeepOut(this.type);
  }

  /** Of a body that looks like all others of its finish, and stands where crowds do. */
  get crowdFinish(): Finish | null {
    const { look, isSpace, clash, inCrowds, values } = this;
    const apart = look !== 'plain' || isSpace || clash || !inCrowds || !values;
    return apart ? null : this.type.finish;
  }

  get edgePoints(): Float32Array | null {
    return (this.lines.geometry.getAttribute('position')?.array as Float32Array) ?? null;
  }

  /** Hangs it into a frame, at a pose; `inCrowds`: the crowds are drawn in that frame. */
  put(parent: Object3D, pose: Pose, inCrowds: boolean): void {
    if (this.mesh.parent !== parent) {
      parent.add(this.mesh);
      this.mesh.matrixWorldNeedsUpdate = true;
    }
    placeObject(this.mesh, pose);
    this.pose = pose;
    this.inCrowds = inCrowds;
    this.revision++;
  }

  get hidden(): boolean {
    return this.part?.hidden === true;
  }

  /** Box in the frame of its parent group, mm; null before it has been shaped. */
  boxInParent(): Bounds | null {
    const { boundingBox } = this.mesh.geometry;
    if (!boundingBox) return null;
    if (this.bounds && this.boundsOf === this.revision) return this.bounds;
    this.boundsOf = this.revision;
    const { min, max } = this.box.copy(boundingBox).applyMatrix4(this.mesh.matrix);
    this.bounds = {
      min: [min.x * MM, min.y * MM, min.z * MM],
      max: [max.x * MM, max.y * MM, max.z * MM],
    };
    return this.bounds;
  }

  /** Takes on the part's values. Does nothing when they are the ones drawn. */
  shape(part: Part, values: PartValues): void {
    const before = this.values;
    this.part = part;
    this.values = values;
    if (before && sameValues(this.type, before, values)) return;
    this.revision++;
    const { mesh: drawn, newTriangles } = this.mesher.take(this.type.solids(values));
    const { geometry } = this.mesh;
    if (geometry.getAttribute('position')?.array !== drawn.positions) {
      geometry.dispose();
      geometry.setAttribute('position', new BufferAttribute(drawn.positions, 3));
      geometry.setAttribute('normal', new BufferAttribute(drawn.normals, 3));
      geometry.setIndex(new BufferAttribute(drawn.triangles, 1));
    } else {
      geometry.getAttribute('position').needsUpdate = true;
      geometry.getAttribute('normal').needsUpdate = true;
      if (newTriangles && geometry.index) geometry.index.needsUpdate = true;
    }
    setBounds(geometry, drawn.positions);
    this.shapeEdges(drawn.edges);
  }

  /** A keep-out is seen through, selected or not. */
  wear(look: Look): void {
    if (look === this.look && this.worn) return;
    this.look = look;
    this.dress();
  }

  private dress(): void {
    const { look } = this;
    this.worn = true;
    const worn = this.isSpace && look !== 'ghost' ? (this.clash ? 'clash' : 'space') : look;
    this.mesh.material = this.finishes.surface(this.type.finish, worn);
    this.lines.material = this.finishes.edge(this.type.finish, worn);
    this.mesh.renderOrder = worn === 'ghost' || this.isSpace ? 2 : 0;
    if (this.isOutlined) this.showOutline();
    else if (this.outline) this.outline.object.visible = false;
    if (look === 'ghost') this.lines.computeLineDistances();
  }

  /** It enters a keep-out, or something enters it. */
  warn(clash: boolean): void {
    if (clash === this.clash) return;
    this.clash = clash;
    this.dress();
  }

  private get isOutlined(): boolean {
    return this.look === 'selected' || (this.clash && this.look !== 'ghost');
  }

  /** After the finishes have been painted anew. */
  paint(): void {
    if (this.isOutlined) this.showOutline();
  }

  /**
   * Not picked out, and its edges of a width that grows with the picture: a plain line is one pixel wide at any size.
   * Returns what undoes it.
   */
  dressForPicture(): () => void {
    const { look, lines } = this;
    if (look === 'selected') this.wear('plain');
    const edges = lines.geometry.getAttribute('position');
    if (this.look === 'ghost' || !edges) return () => this.wear(look);
    const { color, opacity } = lines.material as LineBasicMaterial;
    const wide = new Segments(this.board, EDGE_IN_PICTURES, { opacity });
    wide.paint(`#${color.getHexString()}`);
    wide.set(edges.array);
    this.mesh.add(wide.object);
    lines.visible = false;
    return () => {
      lines.visible = true;
      wide.dispose();
      this.wear(look);
    };
  }

  dispose(): void {
    this.mesh.removeFromParent();
    this.mesh.geometry.dispose();
    this.lines.geometry.dispose();
    this.outline?.dispose();
  }

  private shapeEdges(edges: Float32Array): void {
    const { geometry } = this.lines;
    if (geometry.getAttribute('position')?.array !== edges) {
      geometry.dispose();
      geometry.deleteAttribute('lineDistance');
      geometry.setAttribute('position', new BufferAttribute(edges, 3));
    } else geometry.getAttribute('position').needsUpdate = true;
    // They lie on the surface.
    geometry.boundingSphere = this.mesh.geometry.boundingSphere;
    if (this.look === 'ghost') this.lines.computeLineDistances();
    if (this.isOutlined) this.showOutline();
  }

  private showOutline(): void {
    const edges = this.lines.geometry.getAttribute('position');
    if (!edges) return;
    if (!this.outline) {
      this.outline = new Segments(this.board, 2);
      this.mesh.add(this.outline.object);
    }
    this.outline.paint(this.clash ? this.finishes.warning : this.finishes.accent);
    this.outline.set(edges.array);
    this.outline.object.visible = true;
  }
}

/** Box of the points, and the ball round it. */
function setBounds(geometry: BufferGeometry, positions: Float32Array): void {
  geometry.boundingBox ??= new Box3();
  geometry.boundingSphere ??= new Sphere();
  const { min, max } = geometry.boundingBox.makeEmpty();
  for (let i = 0; i < positions.length; i += 3) {
    const x = positions[i];
    const y = positions[i + 1];
    const z = positions[i + 2];
    if (x < min.x) min.x = x;
    if (x > max.x) max.x = x;
    if (y < min.y) min.y = y;
    if (y > max.y) max.y = y;
    if (z < min.z) min.z = z;
    if (z > max.z) max.z = z;
  }
  geometry.boundingBox.getBoundingSphere(geometry.boundingSphere);
}
