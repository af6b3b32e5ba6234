import { setText } from '../../ui/drawn/svg';
import type { Rectangle } from '../drawing/labels';

/** Of one line and the frame round it, pixels. */
const HEIGHT = 32;

/** What is under the pointer, by name; while it is dragged its value, and the reason when it goes no farther. */
export class Readout {
  readonly element = document.createElement('div');
  private readonly value = document.createElement('span');
  private readonly reason = document.createElement('span');
  /** Measured once for texts of a length, as long as it is shown: in every step of a drag it would cost a layout. */
  private readonly widths = new Map<string, number>();
  /** The reason that stands there; empty for none. */
  private said = '';

  constructor() {
    this.element.className = 'stage-readout';
    this.element.hidden = true;
    this.value.className = 'stage-readout-value';
    this.reason.className = 'stage-readout-reason';
    this.reason.hidden = true;
    this.element.append(this.value, this.reason);
  }

  /**
   * `x`, `y`: the pointer, in pixels of the parent of `width`. It stands to the pointer's right, or to the left where there is no
   * room or it would lie on what is to be kept clear.
   */
  show(
    x: number,
    y: number,
    width: number,
    text: string,
    reason: string | null,
    keepClear: readonly Rectangle[],
  ): void {
    this.put('value', x, y, width, text, reason ?? '', keepClear);
  }

  /** A name alone, of what cannot be dragged. */
  name(x: number, y: number, width: number, text: string): void {
    this.put('name', x, y, width, text, '', []);
  }

  private put(
    look: 'value' | 'name',
    x: number,
    y: number,
    width: number,
    text: string,
    said: string,
    keepClear: readonly Rectangle[],
  ): void {
    if (this.element.dataset.look !== look) this.element.dataset.look = look;
    setText(this.value, text);
    if (said !== this.said) {
      this.said = said;
      setText(this.reason, said);
      this.reason.hidden = said === '';
    }
    if (this.element.hidden) this.element.hidden = false;
    const letters = `${text.length} ${said.length}`;
    let own = this.widths.get(letters);
    if (own === undefined) {
      own = this.element.offsetWidth;
      this.widths.set(letters, own);
    }
    const top = Math.max(4, y - 36);
    const [right, before] = [x + 18, x - 18 - own];
    const lies = (at: number) =>
      keepClear.some(
        (box) =>
          at < box.right && box.left < at + own && top < box.bottom && box.top < top + HEIGHT,
      );
    const left =
      right + own > width || (lies(right) && before >= 4 && !lies(before)) ? before : right;
    this.element.style.transform = `translate(${Math.max(4, left)}px, ${top}px)`;
  }

  hide(): void {
    this.widths.clear();
    this.element.hidden = true;
  }
}
