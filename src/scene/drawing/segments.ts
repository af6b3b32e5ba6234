import { Color, Object3D } from 'three';
import type { LineBoard, LineFamily, LineKind } from './lineBoard';

const colourRead = new Color();
/** A list as single precision makes it, to be compared with what is drawn. */
let scratch = new Float32Array(1024);

/**
 * Line segments of one colour and a width in screen pixels, whose points are rewritten in place: the array is kept and only
 * remade when more segments are asked for than it holds. They are drawn by a board, together with all other lines.
 */
export class Segments implements LineFamily {
  /** Stands where the lines belong: hung into their frame. */
  readonly object = new Object3D();
  readonly kind: LineKind;
  readonly look: number[];
  points = new Float32Array(6 * 16);
  count = 0;
  version = 0;
  private colour = '';

  constructor(
    private readonly board: LineBoard,
    width: number,
    options: { readonly opacity?: number; readonly overlay?: boolean } = {},
  ) {
    const { opacity = 1, overlay = false } = options;
    this.kind = overlay ? 'over' : opacity < 1 ? 'sheer' : 'solid';
    this.look = [0, 0, 0, opacity, width];
    // It stays where its parent is.
    this.object.matrixAutoUpdate = false;
    this.object.matrixWorldNeedsUpdate = true;
    board.take(this);
  }

  /** The array to fill, six numbers a segment, with room for `count` of them; then call `show`. */
  room(count: number): Float32Array {
    if (count * 6 > this.points.length) this.points = new Float32Array(6 * Math.ceil(count * 1.5));
    return this.points;
  }

  /** Draws the first `count` segments of the array. */
  show(count: number): void {
    this.count = count;
    this.version++;
  }

  /** Takes over a list of segments; does nothing where it is the one that is drawn. */
  set(points: ArrayLike<number>): void {
    const count = points.length / 6;
    if (scratch.length < points.length) scratch = new Float32Array(2 * points.length);
    scratch.set(points);
    if (this.isDrawn(count)) return;
    const room = this.room(count);
    for (let i = 0; i < points.length; i++) room[i] = scratch[i];
    this.show(count);
  }

  private isDrawn(count: number): boolean {
    const { points } = this;
    if (this.count !== count) return false;
    for (let i = 0; i < 6 * count; i++) if (points[i] !== scratch[i]) return false;
    return true;
  }

  paint(colour: string): void {
    if (colour === this.colour) return;
    this.colour = colour;
    colourRead.set(colour).toArray(this.look);
    this.version++;
  }

  dispose(): void {
    this.board.drop(this);
    this.object.removeFromParent();
  }
}
