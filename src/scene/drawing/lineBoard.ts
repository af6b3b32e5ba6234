import {
  Float32BufferAttribute,
  Group,
  InstancedBufferGeometry,
  InstancedInterleavedBuffer,
  InterleavedBufferAttribute,
  Mesh,
  type Object3D,
  Sphere,
  Vector4,
} from 'three';
import { lineMaterial } from './lineMaterial';

/** Solid lines hide and are hidden, sheer ones are hidden, those laid over everything are not. */
export type LineKind = 'solid' | 'sheer' | 'over';

/** Lines of one look as the board takes them: segments in the frame of `object`, six numbers each. */
export interface LineFamily {
  readonly kind: LineKind;
  /** Stands where the lines belong; whether it and all above it are visible says whether they are drawn. */
  readonly object: Object3D;
  readonly points: Float32Array;
  readonly count: number;
  /** Red, green, blue (linear), opacity, and width in CSS pixels. */
  readonly look: readonly number[];
  /** Another number whenever points, count or look are others. */
  readonly version: number;
}

/** Start, end (world), colour with opacity, width. */
const STRIDE = 11;
const ORDER: Readonly<Record<LineKind, number>> = { solid: 0, sheer: 2.5, over: 9.5 };

/**
 * Draws all lines of a scene in one drawing for each kind, whatever their frames, colours and widths. What changed is worked
 * into the buffer when the matrices of the scene are brought up to date, so it has to come after everything that has lines.
 */
export class LineBoard extends Group {
  private readonly groups: Readonly<Record<LineKind, LineGroup>> = {
    solid: new LineGroup('solid'),
    sheer: new LineGroup('sheer'),
    over: new LineGroup('over'),
  };

  constructor() {
    super();
    this.matrixAutoUpdate = false;
    for (const { mesh } of Object.values(this.groups)) this.add(mesh);
  }

  /** Lines are drawn in the order in which they come. */
  take(family: LineFamily): void {
    this.groups[family.kind].families.push(family);
  }

  drop(family: LineFamily): void {
    const { families } = this.groups[family.kind];
    const at = families.indexOf(family);
    if (at >= 0) families.splice(at, 1);
  }

  override updateMatrixWorld(force?: boolean): void {
    super.updateMatrixWorld(force);
    for (const group of Object.values(this.groups)) group.gather();
  }

  override dispose(): void {
    super.dispose();
    for (const { mesh } of Object.values(this.groups)) {
      mesh.geometry.dispose();
      mesh.material.dispose();
    }
  }
}

/** What the buffer holds of a family, and from which segment on. */
interface Written {
  family: LineFamily | null;
  version: number;
  first: number;
  count: number;
  readonly matrix: Float64Array;
}

class LineGroup {
  readonly families: LineFamily[] = [];
  readonly mesh: Mesh<InstancedBufferGeometry, ReturnType<typeof lineMaterial>>;
  private buffer: InstancedInterleavedBuffer;
  private readonly written: Written[] = [];

  constructor(kind: LineKind) {
    const material = lineMaterial(kind);
    this.mesh = new Mesh(segmentShape(), material);
    this.mesh.frustumCulled = false;
    this.mesh.matrixAutoUpdate = false;
    this.mesh.renderOrder = ORDER[kind];
    this.mesh.raycast = () => {};
    const view = new Vector4();
    this.mesh.onBeforeRender = (renderer) => {
      renderer.getViewport(view);
      material.uniforms.resolution.value.set(view.z, view.w);
    };
    this.buffer = this.allocate(64);
  }

  /** Brings the buffer up to date with the lines that are shown; hands over one stretch that holds all that is new. */
  gather(): void {
    const shown = this.families.filter(({ count, object }) => count > 0 && isShown(object));
    const total = shown.reduce((sum, { count }) => sum + count, 0);
    if (total * STRIDE > this.buffer.array.length) this.buffer = this.allocate(total * 1.5);
    let first = 0;
    let [from, to] = [total, 0];
    shown.forEach((family, i) => {
      const { count } = family;
      this.written[i] ??= nothingWritten();
      if (!isWritten(this.written[i], family, first)) {
        this.write(this.written[i], family, first);
        from = Math.min(from, first);
        to = first + count;
      }
      first += count;
    });
    this.written.length = shown.length;
    this.mesh.visible = total > 0;
    this.mesh.geometry.instanceCount = total;
    if (to <= from) return;
    this.buffer.clearUpdateRanges();
    this.buffer.addUpdateRange(from * STRIDE, (to - from) * STRIDE);
    this.buffer.needsUpdate = true;
  }

  private write(into: Written, family: LineFamily, first: number): void {
    const { points, count, look, version, object } = family;
    const m = object.matrixWorld.elements;
    Object.assign(into, { family, version, first, count });
    into.matrix.set(m);
    const { array } = this.buffer;
    for (let i = 0; i < count; i++) {
      const at = (first + i) * STRIDE;
      for (let end = 0; end < 6; end += 3) {
        const x = points[6 * i + end];
        const y = points[6 * i + end + 1];
        const z = points[6 * i + end + 2];
        array[at + end] = m[0] * x + m[4] * y + m[8] * z + m[12];
        array[at + end + 1] = m[1] * x + m[5] * y + m[9] * z + m[13];
        array[at + end + 2] = m[2] * x + m[6] * y + m[10] * z + m[14];
      }
      for (let k = 0; k < 5; k++) array[at + 6 + k] = look[k];
    }
  }

  private allocate(segments: number): InstancedInterleavedBuffer {
    const { geometry } = this.mesh;
    // A new buffer on the same geometry would leave the old one on the card.
    geometry.dispose();
    this.written.length = 0;
    const array = new Float32Array(Math.ceil(segments) * STRIDE);
    const buffer = new InstancedInterleavedBuffer(array, STRIDE, 1);
    const columns = { segmentStart: 3, segmentEnd: 3, segmentColour: 4, segmentWidth: 1 };
    let at = 0;
    for (const [name, size] of Object.entries(columns)) {
      geometry.setAttribute(name, new InterleavedBufferAttribute(buffer, size, at));
      at += size;
    }
    return buffer;
  }
}

function nothingWritten(): Written {
  return { family: null, version: 0, first: 0, count: 0, matrix: new Float64Array(16) };
}

function isWritten({ matrix, ...held }: Written, family: LineFamily, first: number): boolean {
  if (held.family !== family || held.version !== family.version || held.first !== first) {
    return false;
  }
  const { elements } = family.object.matrixWorld;
  for (let k = 0; k < 16; k++) if (matrix[k] !== elements[k]) return false;
  return true;
}

function isShown(object: Object3D): boolean {
  for (let at: Object3D | null = object; at; at = at.parent) if (!at.visible) return false;
  return object.parent !== null;
}

/** A stretched square with a half square at either end, on which the ends are rounded. */
function segmentShape(): InstancedBufferGeometry {
  const shape = new InstancedBufferGeometry();
  const corners = [];
  for (const along of [-1, 0, 1, 2]) corners.push(-1, along, 0, 1, along, 0);
  shape.setAttribute('position', new Float32BufferAttribute(corners, 3));
  shape.setIndex([0, 1, 2, 2, 1, 3, 2, 3, 4, 4, 3, 5, 4, 5, 6, 6, 5, 7]);
  // Asked for by the renderer's sorting.
  shape.boundingSphere = new Sphere();
  return shape;
}
