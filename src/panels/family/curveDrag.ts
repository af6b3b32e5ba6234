import type { Gesture, Hold } from '../../state/gesture';

/** The pointer that drags along the curves. One drag is one undo step; another finger put down meanwhile is none of its business. */
export class CurveDrag {
  private held: { readonly pointer: number; readonly hold: Hold } | null = null;

  constructor(private readonly gesture: Pick<Gesture, 'begin'>) {}

  /** False where another pointer drags. */
  press(pointer: number): boolean {
    if (this.held?.hold.alive) return false;
    this.held = { pointer, hold: this.gesture.begin() };
    return true;
  }

  /** Whether what this pointer does moves the head; not after an undo in the middle. */
  isMoving(pointer: number): boolean {
    return this.held?.pointer === pointer && this.held.hold.alive;
  }

  /** Lifted, or lost from sight. */
  lift(pointer: number): void {
    if (this.held?.pointer === pointer) this.end();
  }

  /** The browser has taken the finger for something else. */
  takeBack(pointer: number): void {
    if (this.held?.pointer === pointer) this.cancel();
  }

  /** Puts the head back; false where nothing was dragged. */
  cancel(): boolean {
    const hold = this.held?.hold;
    this.held = null;
    return hold?.cancel() ?? false;
  }

  /** Keeps what was reached. */
  end(): void {
    this.held?.hold.end();
    this.held = null;
  }
}
