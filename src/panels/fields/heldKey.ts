import type { Gesture, Hold } from '../../state/gesture';

/**
 * An arrow key held in a field: one undo step. It remembers what it wrote last, for the page shows the steps of a gesture when
 * there is time, and the next step goes on from the last one, not from what is shown.
 */
export class HeldKey {
  private hold: Hold | null = null;
  private last: { readonly value: number | undefined } | null = null;

  constructor(private readonly gesture: Pick<Gesture, 'begin'>) {}

  /** Begins unless it is held already; an undo meanwhile has ended it. */
  press(): void {
    if (this.hold?.alive) return;
    this.hold = this.gesture.begin();
    this.last = null;
  }

  /** From where the next step goes: from the last one, else from what is shown. */
  from(shown: number | undefined): number | undefined {
    return this.hold?.alive && this.last ? this.last.value : shown;
  }

  wrote(value: number | undefined): void {
    this.last = { value };
  }

  release(): void {
    this.hold?.end();
    this.hold = null;
  }
}
