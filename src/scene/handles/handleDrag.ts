import { Matrix4, Vector3 } from 'three';
import { cross, dot, scale, subtract, type Vec3 } from '../../engine/math/vector';
import type { Hold } from '../../state/gesture';
import type { Session } from '../../state/session';
import type { StageEye } from '../stageKit';
import {
  alongLine,
  alongScreen,
  type Ray,
  snapStep,
  snapTo,
  turnAbout,
  unwrapAngle,
} from './dragMaths';
import type { PosedHandle } from './handleBoard';
import { type Moved, moveValue } from './moveValue';
import { mmPerPixel, pixelOf, pointerRay, tuple } from './projection';

/** What a pointer event must tell. */
export interface DragPoint {
  /** Pixels from the host's upper left corner. */
  readonly x: number;
  readonly y: number;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

/** Pointer travel below this is a click, px. */
const SLOP = 3;

/**
 * One drag of one handle, from press to release. The handle's line is that of the moment of the press: it does not
 * wander while the part changes under it. The value is where it was plus what the pointer has travelled along the
 * line, snapped; it is written straight through the actions, and history takes the whole drag as one step. Where the
 * view changes meanwhile (the window, the wheel, a key), the value stays and the pointer goes on from where it is.
 */
export class HandleDrag {
  /** As it was pressed: what a drag that is called off goes back to. */
  private readonly pressedValue: number;
  private startValue: number;
  private startAlong: number | null = null;
  /** Pixels on the screen for one mm (or one radian) of the handle's motion. */
  private pixelsPerUnit: readonly [number, number] = [0, 0];
  private fallback = 1;
  private value: number;
  /** Before it is snapped and held within limits. */
  private unsnapped: number;
  private along = 0;
  private hold: Hold | null = null;
  private readonly seenFrom = new Matrix4();
  private readonly seenThrough = new Matrix4();
  private seenSize: readonly [width: number, height: number] = [0, 0];
  private last: DragPoint;

  constructor(
    private readonly session: Session,
    private readonly eye: StageEye,
    readonly handle: PosedHandle,
    private start: DragPoint,
  ) {
    this.pressedValue = handle.spec.value;
    this.startValue = this.pressedValue;
    this.value = this.pressedValue;
    this.unsnapped = this.pressedValue;
    this.last = start;
    this.takeHold(start);
  }

  /** From here on the pointer's travel counts from this point, as it is seen now. */
  private takeHold(point: DragPoint): void {
    const { eye, handle } = this;
    this.start = point;
    this.startValue = this.unsnapped;
    this.startAlong = this.travelOn(this.ray(point));
    this.along = this.startAlong ?? 0;
    this.pixelsPerUnit = this.screenMotion();
    this.fallback = 1 / mmPerPixel(eye.camera, handle.foot, this.height);
    if (handle.spec.motion.kind === 'turn') this.fallback *= Math.max(1, this.armLength());
    this.seenFrom.copy(eye.camera.matrixWorld);
    this.seenThrough.copy(eye.camera.projectionMatrix);
    this.seenSize = [this.width, this.height];
  }

  /** Where the view has changed since: in another window the pointer stands elsewhere, in this one it went on moving. */
  private followView(point: DragPoint): void {
    const { camera } = this.eye;
    const [width, height] = this.seenSize;
    if (width !== this.width || height !== this.height) return this.takeHold(point);
    const same = alike(this.seenFrom, camera.matrixWorld);
    if (!same || !alike(this.seenThrough, camera.projectionMatrix)) this.takeHold(this.last);
  }

  /** Follows the pointer; null while it has not really moved yet. */
  move(point: DragPoint): Moved | null {
    this.followView(point);
    this.last = point;
    const dx = point.x - this.start.x;
    const dy = point.y - this.start.y;
    if (!this.hold && Math.hypot(dx, dy) < SLOP) return null;
    // Undo in the middle of a drag has taken it back: the pointer no longer moves anything.
    if (this.hold && !this.hold.alive) return null;
    this.hold ??= this.session.actions.gesture.begin();
    const step = snapStep(point);
    this.unsnapped = this.startValue + this.change(point, dx, dy);
    const wanted = snapTo(this.unsnapped, step);
    const { spec } = this.handle;
    const kept = Math.min(spec.max, Math.max(spec.min, wanted));
    if (spec.look === 'pitch') {
      spec.write(kept);
      this.value = kept;
      return { value: kept, reason: null };
    }
    if (wanted === this.value) return { value: this.value, reason: null };
    const moved = moveValue(this.session, spec, this.value, wanted, step);
    this.value = moved.value;
    return moved;
  }

  end(): void {
    this.hold?.end();
  }

  /** Puts the value back. */
  cancel(): void {
    if (this.hold?.cancel() && this.handle.spec.look === 'pitch')
      this.handle.spec.write(this.pressedValue);
  }

  private get width(): number {
    return this.eye.host.clientWidth;
  }
  private get height(): number {
    return this.eye.host.clientHeight;
  }

  private ray({ x, y }: DragPoint): Ray {
    return pointerRay(this.eye.camera, x, y, this.width, this.height);
  }

  /** Change of the value since the press. */
  private change(point: DragPoint, dx: number, dy: number): number {
    const { motion } = this.handle.spec;
    const now = this.startAlong === null ? null : this.travelOn(this.ray(point));
    let travel: number;
    if (now === null || this.startAlong === null) {
      travel = alongScreen([dx, dy], this.pixelsPerUnit, this.fallback);
    } else {
      this.along = motion.kind === 'turn' ? unwrapAngle(now, this.along) : now;
      travel = this.along - this.startAlong;
    }
    return motion.kind === 'linear'
      ? travel * motion.perMm
      : ((travel * 180) / Math.PI) * motion.sense;
  }

  /** Where a ray meets the motion: mm along the line, or radians about it. */
  private travelOn(ray: Ray): number | null {
    const { line, spec } = this.handle;
    if (spec.motion.kind === 'linear') return alongLine(ray, line);
    return turnAbout(ray, line, this.arm());
  }

  /** From the axis of a turn to its knob, across the axis. */
  private arm(): Vec3 {
    const { line, foot } = this.handle;
    const out = subtract(tuple(foot), line.origin);
    return subtract(out, scale(line.direction, dot(out, line.direction)));
  }
  private armLength(): number {
    return Math.hypot(...this.arm());
  }

  private screenMotion(): readonly [number, number] {
    const { line, spec, foot } = this.handle;
    const way = spec.motion.kind === 'linear' ? line.direction : cross(line.direction, this.arm());
    const unit = spec.motion.kind === 'linear' ? 1 : 0.01;
    const ahead = new Vector3(...way).multiplyScalar(unit).add(foot);
    const a = pixelOf(this.eye.camera, foot, this.width, this.height);
    const b = pixelOf(this.eye.camera, ahead, this.width, this.height);
    return a && b ? [(b[0] - a[0]) / unit, (b[1] - a[1]) / unit] : [0, 0];
  }
}

/** But for the rounding of a camera that is set anew for every frame. */
function alike(a: Matrix4, b: Matrix4): boolean {
  return a.elements.every((element, i) => Math.abs(element - b.elements[i]) < 1e-6);
}
