import { BufferAttribute, BufferGeometry, DoubleSide, Group, Mesh, MeshBasicMaterial } from 'three';
import type { LineBoard } from '../drawing/lineBoard';
import { Segments } from '../drawing/segments';
import { type FanSize, fillFanEdge, fillFanStrip, stripTriangles } from '../maths/fan';

/** One side of the force fan: a translucent strip between base arc and curve, and the curve's edge. */
export class FanStrip {
  readonly object = new Group();
  private readonly edge: Segments;
  private readonly geometry = new BufferGeometry();
  private readonly material = new MeshBasicMaterial({
    transparent: true,
    opacity: 0.3,
    depthWrite: false,
    side: DoubleSide,
    // Flat: both sides at once look the same, and cost one drawing.
    forceSinglePass: true,
  });
  private samples = 0;

  constructor(
    lines: LineBoard,
    private readonly side: 1 | -1,
  ) {
    this.edge = new Segments(lines, 2.25);
    const strip = new Mesh(this.geometry, this.material);
    strip.frustumCulled = false;
    strip.matrixAutoUpdate = false;
    this.object.matrixAutoUpdate = false;
    strip.renderOrder = 4;
    this.object.add(strip, this.edge.object);
  }

  draw(angles: Float64Array, excursions: Float64Array, size: FanSize): void {
    if (angles.length !== this.samples) this.allocate(angles.length);
    const positions = this.geometry.getAttribute('position');
    fillFanStrip(positions.array as Float32Array, angles, excursions, size, this.side);
    positions.needsUpdate = true;
    const room = this.edge.room(angles.length);
    this.edge.show(fillFanEdge(room, angles, excursions, size, this.side));
  }

  paint(colour: string): void {
    this.material.color.set(colour);
    this.edge.paint(colour);
  }

  dispose(): void {
    this.object.removeFromParent();
    this.geometry.dispose();
    this.material.dispose();
    this.edge.dispose();
  }

  private allocate(samples: number): void {
    this.samples = samples;
    this.geometry.dispose();
    this.geometry.setAttribute('position', new BufferAttribute(new Float32Array(6 * samples), 3));
    this.geometry.setIndex(new BufferAttribute(stripTriangles(samples), 1));
  }
}
