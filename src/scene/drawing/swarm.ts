import {
  BufferAttribute,
  BufferGeometry,
  Group,
  InstancedMesh,
  type Material,
  type Matrix4,
} from 'three';

/**
 * Any number of copies of one shape in one colour, each where its matrix says, in a single drawing. Add them one by one
 * between `begin` and `end`; the buffer is kept and only remade when there are more than it holds.
 */
export class Swarm {
  readonly object = new Group();
  private mesh: InstancedMesh;
  private count = 0;

  /** Shape and material are the caller's to give back. */
  constructor(
    private readonly shape: BufferGeometry,
    private readonly material: Material,
    private readonly renderOrder: number,
  ) {
    this.object.matrixAutoUpdate = false;
    this.mesh = this.allocate(16);
  }

  begin(): void {
    this.count = 0;
  }

  add(matrix: Matrix4): void {
    if (this.count === this.mesh.instanceMatrix.count) this.grow();
    this.mesh.setMatrixAt(this.count++, matrix);
  }

  end(): void {
    this.mesh.count = this.count;
    this.mesh.visible = this.count > 0;
    if (this.count > 0) this.mesh.instanceMatrix.needsUpdate = true;
  }

  dispose(): void {
    this.object.removeFromParent();
    this.mesh.dispose();
  }

  private grow(): void {
    const old = this.mesh;
    this.mesh = this.allocate(old.instanceMatrix.count * 2);
    this.mesh.instanceMatrix.array.set(old.instanceMatrix.array);
    this.object.remove(old);
    old.dispose();
  }

  private allocate(count: number): InstancedMesh {
    const mesh = new InstancedMesh(this.shape, this.material, count);
    mesh.frustumCulled = false;
    mesh.matrixAutoUpdate = false;
    mesh.renderOrder = this.renderOrder;
    mesh.raycast = () => {};
    mesh.count = 0;
    this.object.add(mesh);
    return mesh;
  }
}

/** Points and triangles of some shapes as one shape; the shapes are given back. */
export function joined(shapes: readonly BufferGeometry[]): BufferGeometry {
  const points: number[] = [];
  const triangles: number[] = [];
  for (const shape of shapes) {
    const first = points.length / 3;
    points.push(...shape.getAttribute('position').array);
    for (const index of shape.index?.array ?? []) triangles.push(first + index);
    shape.dispose();
  }
  const whole = new BufferGeometry();
  whole.setAttribute('position', new BufferAttribute(new Float32Array(points), 3));
  whole.setIndex(triangles);
  return whole;
}
