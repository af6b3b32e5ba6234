import {
  ConeGeometry,
  Group,
  InstancedMesh,
  Matrix4,
  MeshBasicMaterial,
  Quaternion,
  Vector3,
} from 'three';
import type { Vec3 } from '../../engine/math/vector';
import type { LineBoard } from './lineBoard';
import { MM } from './place';
import { Segments } from './segments';

const UP = new Vector3(0, 1, 0);
const direction = new Vector3();
const place = new Vector3();
const size = new Vector3();
const turn = new Quaternion();
const matrix = new Matrix4();

/** Arrowheads are this long at most, mm; short arrows get shorter heads. */
const HEAD = 2.6;

/**
 * Any number of arrows of one colour and width: shafts as screen-wide lines, heads as cones. Add them one by one
 * between `begin` and `end`; buffers are reused. Positions in metres, lengths in millimetres.
 * They are drawn over the parts that they start in.
 */
export class Arrows {
  readonly object = new Group();
  private readonly shafts: Segments;
  private readonly material: MeshBasicMaterial;
  private readonly cone = new ConeGeometry(0.3, 1, 12).translate(0, -0.5, 0);
  private heads: InstancedMesh;
  private count = 0;

  constructor(
    lines: LineBoard,
    width: number,
    private readonly opacity: number,
  ) {
    this.shafts = new Segments(lines, width, { opacity, overlay: true });
    this.material = new MeshBasicMaterial({
      transparent: true,
      opacity,
      depthTest: false,
      depthWrite: false,
    });
    this.heads = this.allocate(32);
    this.object.add(this.shafts.object);
    this.object.matrixAutoUpdate = false;
  }

  begin(): void {
    this.count = 0;
  }

  /** An arrow from `from` along `vector`, which is scaled by `mmPerUnit`. Nothing is drawn below a tenth of a mm. */
  add(from: Vec3, vector: Vec3, mmPerUnit: number): void {
    const length = Math.hypot(vector[0], vector[1], vector[2]) * mmPerUnit;
    if (!(length > 0.1)) return;
    if (this.count === this.heads.instanceMatrix.count) this.grow();
    const head = Math.min(HEAD, length * 0.6);
    direction.set(vector[0], vector[1], vector[2]).normalize();
    place.set(from[0] * MM, from[1] * MM, from[2] * MM);
    const shaft = this.shafts.room(this.count + 1);
    place.toArray(shaft, 6 * this.count);
    place.addScaledVector(direction, length - head * 0.8).toArray(shaft, 6 * this.count + 3);
    place.addScaledVector(direction, head * 0.8);
    matrix.compose(place, turn.setFromUnitVectors(UP, direction), size.setScalar(head));
    this.heads.setMatrixAt(this.count, matrix);
    this.count++;
  }

  end(): void {
    this.shafts.show(this.count);
    const { heads, count } = this;
    heads.count = count;
    heads.visible = count > 0;
    if (count === 0) return;
    heads.instanceMatrix.clearUpdateRanges();
    heads.instanceMatrix.addUpdateRange(0, 16 * count);
    heads.instanceMatrix.needsUpdate = true;
  }

  paint(colour: string): void {
    this.shafts.paint(colour);
    this.material.color.set(colour);
  }

  dispose(): void {
    this.shafts.dispose();
    this.heads.dispose();
    this.cone.dispose();
    this.material.dispose();
  }

  private grow(): void {
    const old = this.heads;
    this.heads = this.allocate(old.instanceMatrix.count * 2);
    this.heads.instanceMatrix.array.set(old.instanceMatrix.array);
    this.object.remove(old);
    old.dispose();
  }

  private allocate(count: number): InstancedMesh {
    const heads = new InstancedMesh(this.cone, this.material, count);
    heads.frustumCulled = false;
    heads.matrixAutoUpdate = false;
    heads.count = 0;
    heads.renderOrder = 10;
    this.object.add(heads);
    return heads;
  }
}
