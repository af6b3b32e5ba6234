import { BufferAttribute, BufferGeometry, Group, LineSegments, Mesh, Vector3 } from 'three';
import type { Vec3 } from '../../engine/math/vector';
import { tessellate } from '../../parts/tessellate';
import { Arrows } from '../drawing/arrows';
import { LineBoard } from '../drawing/lineBoard';
import type { Palette } from '../drawing/palette';
import { MM } from '../drawing/place';
import { Segments } from '../drawing/segments';
import { dashPattern, dashPolyline } from '../maths/dashes';
import { Finishes } from '../parts/finishes';
import type { RacketBody } from './racketBody';
import type { RacketRun } from './racketRun';
import { type RacketThrow, SPIN } from './racketThrow';

/** Length of the arrows at the spin of the throw, mm. */
const ARROW = 95;
/** Radius of the ball on which the momentum's way in the body is drawn, mm. */
const BALL = 65;
const TRACE = 240;

/**
 * The racket in the air, mm, Z up: the body, its angular momentum (bold, stands still), its spin (pale, wanders), and in the
 * body the way that the momentum takes (the polhode, on a ball about the centre of mass).
 */
export class RacketScene {
  readonly root = new Group();
  private readonly lines = new LineBoard();
  private readonly body = new Group();
  private readonly shape: Mesh<BufferGeometry>;
  private readonly edges: LineSegments<BufferGeometry>;
  private readonly finishes = new Finishes();
  private readonly momentum = new Arrows(this.lines, 3.5, 1);
  private readonly spin = new Arrows(this.lines, 2, 0.7);
  private readonly trace = new Segments(this.lines, 2);
  private readonly axis = new Segments(this.lines, 1.25);
  private readonly point = new Vector3();
  private drawn: RacketThrow | null = null;

  constructor(private readonly racket: RacketBody) {
    const mesh = tessellate(racket.solids);
    const surface = new BufferGeometry();
    surface.setAttribute('position', new BufferAttribute(mesh.positions, 3));
    surface.setAttribute('normal', new BufferAttribute(mesh.normals, 3));
    surface.setIndex(new BufferAttribute(mesh.triangles, 1));
    const lines = new BufferGeometry();
    lines.setAttribute('position', new BufferAttribute(mesh.edges, 3));
    this.shape = new Mesh(surface, this.finishes.surface('neutral', 'plain'));
    this.edges = new LineSegments(lines, this.finishes.edge('neutral', 'plain'));
    const solid = new Group();
    solid.scale.setScalar(MM);
    solid.add(this.shape, this.edges);
    const [x, y, z] = racket.centre;
    solid.position.set(-x * MM, -y * MM, -z * MM);
    this.body.add(solid, this.trace.object, this.axis.object);
    // The lines last: they look where all others stand.
    this.root.add(this.body, this.momentum.object, this.spin.object, this.lines);
  }

  update({ thrown, motion }: RacketRun): void {
    if (thrown !== this.drawn) this.draw(thrown);
    const [w, x, y, z] = motion.attitude;
    this.body.quaternion.set(x, y, z, w);
    this.momentum.begin();
    this.momentum.add([0, 0, 0], [0, 0, 1], ARROW);
    this.momentum.end();
    this.spin.begin();
    this.spin.add([0, 0, 0], this.inSpace(motion.spin), ARROW / SPIN);
    this.spin.end();
  }

  paint(palette: Palette): void {
    this.finishes.paint(palette);
    this.momentum.paint(palette.ink);
    this.spin.paint(palette.pull);
    this.trace.paint(palette.accent);
    this.axis.paint(palette.inkQuiet);
  }

  dispose(): void {
    this.root.removeFromParent();
    this.shape.geometry.dispose();
    this.edges.geometry.dispose();
    this.finishes.dispose();
    this.lines.dispose();
    for (const made of [this.momentum, this.spin, this.trace, this.axis]) made.dispose();
  }

  /** The thrown axis, and the closed way of the momentum round it, in the body. */
  private draw(thrown: RacketThrow): void {
    this.drawn = thrown;
    const end = [0, 0, 0].map((_, k) => (k === thrown.index ? BALL * 1.35 : 0));
    const [x, y, z] = end;
    const strokes: number[] = [];
    dashPolyline(strokes, [[-x, -y, -z] as Vec3, [x, y, z] as Vec3], dashPattern(5));
    this.axis.set(strokes);
    this.trace.set(this.polhode(thrown));
  }

  private polhode({ free }: RacketThrow): number[] {
    if (free.period === null) return [];
    const { inertia } = this.racket;
    const out = new Float64Array(3);
    const size = Math.sqrt(free.momentumSquared);
    const points = Array.from({ length: TRACE + 1 }, (_, i) => {
      free.spinAt(((free.period ?? 0) * i) / TRACE, out);
      return inertia.map((I, k) => (BALL * I * out[k]) / size);
    });
    return points.slice(1).flatMap((point, i) => [...points[i], ...point]);
  }

  /** From the body's axes into space, by the attitude. */
  private inSpace(spin: ArrayLike<number>): Vec3 {
    this.point.fromArray(spin).applyQuaternion(this.body.quaternion);
    return [this.point.x, this.point.y, this.point.z];
  }
}
