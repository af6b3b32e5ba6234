import { InstancedInterleavedBuffer, InterleavedBufferAttribute } from 'three';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';

/**
 * Line segments of a width in screen pixels whose points are rewritten in place: the buffer is kept and only remade
 * when more segments are asked for than it holds.
 */
export class Segments {
  readonly object: LineSegments2;
  private readonly material: LineMaterial;
  private buffer: InstancedInterleavedBuffer;

  constructor(
    width: number,
    options: { readonly opacity?: number; readonly overlay?: boolean } = {},
  ) {
    const opacity = options.opacity ?? 1;
    this.material = new LineMaterial({
      linewidth: width,
      transparent: opacity < 1,
      opacity,
      depthWrite: opacity === 1,
    });
    if (options.overlay) {
      this.material.depthTest = false;
      this.material.depthWrite = false;
      this.material.transparent = true;
    }
    this.object = new LineSegments2(new LineSegmentsGeometry(), this.material);
    this.object.frustumCulled = false;
    // It stays where its parent is.
    this.object.matrixAutoUpdate = false;
    if (options.overlay) this.object.renderOrder = 10;
    this.buffer = this.allocate(16);
    this.object.geometry.instanceCount = 0;
    this.object.layers.disableAll();
  }

  /** The array to fill, six numbers a segment, with room for `count` of them; then call `show`. */
  room(count: number): Float32Array {
    if (count * 6 > this.buffer.array.length) this.buffer = this.allocate(Math.ceil(count * 1.5));
    return this.buffer.array as Float32Array;
  }

  /** Draws the first `count` segments of the array, which alone are handed to the card. */
  show(count: number): void {
    this.object.geometry.instanceCount = count;
    // None are passed over by the renderer; `visible` is the owner's.
    if (count === 0) {
      this.object.layers.disableAll();
      return;
    }
    this.object.layers.set(0);
    this.buffer.clearUpdateRanges();
    this.buffer.addUpdateRange(0, count * 6);
    this.buffer.needsUpdate = true;
  }

  /** Takes over a list of segments; does nothing where it is the one that is drawn. */
  set(points: ArrayLike<number>): void {
    if (this.isDrawn(points)) return;
    this.room(points.length / 6).set(points);
    this.show(points.length / 6);
  }

  private isDrawn(points: ArrayLike<number>): boolean {
    const { array } = this.buffer;
    if (this.object.geometry.instanceCount !== points.length / 6) return false;
    for (let i = 0; i < points.length; i++) if (array[i] !== Math.fround(points[i])) return false;
    return true;
  }

  get width(): number {
    return this.material.linewidth;
  }
  set width(pixels: number) {
    this.material.linewidth = pixels;
  }

  paint(colour: string): void {
    this.material.color.set(colour);
  }

  dispose(): void {
    this.object.geometry.dispose();
    this.material.dispose();
  }

  private allocate(count: number): InstancedInterleavedBuffer {
    const { geometry } = this.object;
    // A new buffer on the same geometry would leave the old one on the card.
    geometry.dispose();
    const buffer = new InstancedInterleavedBuffer(new Float32Array(count * 6), 6, 1);
    geometry.setAttribute('instanceStart', new InterleavedBufferAttribute(buffer, 3, 0));
    geometry.setAttribute('instanceEnd', new InterleavedBufferAttribute(buffer, 3, 3));
    return buffer;
  }
}
