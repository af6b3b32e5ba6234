import { setText } from '../../ui/drawn/svg';
import type { Rectangle } from '../drawing/labels';

/** Of one line and the frame round it, pixels. */
const HEIGHT = 32;

/** What is under the pointer, by name; while it is dragged its value, and the reason when it goes no farther. */
export class Readout {
  readonly element = document.createElement('div');
  private readonly value = document.createElement('span');
  private readonly reason = document.createElement('span');
  private readonly widths = new Widths();
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
    const own = this.widths.of(this.element, this.value, said);
    const top = Math.max(4, y - 36);
    const [right, edge] = [x + 18, x - 18];
    const before = edge - own;
    const lies = (at: number) =>
      keepClear.some(
        (box) =>
          at < box.right && box.left < at + own && top < box.bottom && box.top < top + HEIGHT,
      );
    const isBefore = right + own > width || (lies(right) && before >= 4 && !lies(before));
    const end = isBefore && before >= 4 ? ' translateX(-100%)' : '';
    const left = !isBefore ? right : end ? edge : 4;
    this.element.style.transform = `translate(${Math.max(4, left)}px, ${top}px)${end}`;
  }

  hide(): void {
    this.element.hidden = true;
  }
}

/**
 * How wide the frame is with a text in it. A line is measured on a canvas: in every step of a drag each look at the page would
 * cost a layout. A reason breaks into lines; the page alone knows how.
 */
class Widths {
  private readonly pen = document.createElement('canvas').getContext('2d');
  /** By the text, its digits taken for one another. */
  private readonly known = new Map<string, number>();
  /** Of the frame: what is beside the text and the most that it may have, px. */
  private frame: { readonly beside: number; readonly most: number } | null = null;

  of(element: HTMLElement, value: HTMLElement, said: string): number {
    const text = value.textContent ?? '';
    const key = `${text.replace(/\d/g, '0')}\n${said}`;
    let width = this.known.get(key);
    if (width === undefined) {
      width = (said === '' ? this.ofLine(element, value, text) : null) ?? element.offsetWidth;
      this.known.set(key, width);
    }
    return width;
  }

  private ofLine(element: HTMLElement, value: HTMLElement, text: string): number | null {
    const { pen } = this;
    if (!pen) return null;
    if (!this.frame) {
      pen.font = getComputedStyle(value).font;
      const { paddingLeft, paddingRight, borderLeftWidth, borderRightWidth, maxWidth } =
        getComputedStyle(element);
      const sides = [paddingLeft, paddingRight, borderLeftWidth, borderRightWidth];
      const beside = sides.reduce((sum, side) => sum + Number.parseFloat(side), 0);
      this.frame = { beside, most: Number.parseFloat(maxWidth) };
    }
    const { beside, most } = this.frame;
    return Math.min(most, Math.ceil(pen.measureText(text).width + beside));
  }
}
