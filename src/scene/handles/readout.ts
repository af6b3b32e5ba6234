import { setText } from '../../ui/drawn/svg';
import type { Rectangle } from '../drawing/labels';
import { placeReadout, type Size, type Spot } from './placeReadout';

/** Of one line and the frame round it, pixels. */
const HEIGHT = 32;
type Look = 'value' | 'name';

/** What is under the pointer, by name; while it is dragged its value, and the reason when it goes no farther. */
export class Readout {
  readonly element = document.createElement('div');
  private readonly value = document.createElement('span');
  private readonly reason = document.createElement('span');
  private readonly sizes = new Sizes();
  private readonly held: Content = { look: 'value', text: '', said: '' };
  private hidden = true;

  constructor() {
    this.element.className = 'stage-readout';
    this.element.dataset.look = this.held.look;
    this.element.hidden = true;
    this.value.className = 'stage-readout-value';
    this.reason.className = 'stage-readout-reason';
    this.reason.hidden = true;
    this.element.append(this.value, this.reason);
  }

  /** `pointer`: pixels of the `room`. `keepClear`: see `placeReadout`. */
  show(
    pointer: Spot,
    room: Size,
    text: string,
    reason: string | null,
    keepClear: readonly Rectangle[],
  ): void {
    this.put('value', text, reason ?? '');
    this.place(pointer, room, keepClear);
  }

  /** A name alone, of what cannot be dragged. */
  name(pointer: Spot, room: Size, text: string): void {
    this.put('name', text, '');
    this.place(pointer, room, []);
  }

  private put(look: Look, text: string, said: string): void {
    const { held } = this;
    if (look !== held.look) this.element.dataset.look = look;
    if (text !== held.text) setText(this.value, text);
    if (said !== held.said) {
      setText(this.reason, said);
      this.reason.hidden = said === '';
    }
    Object.assign(held, { look, text, said });
    this.setHidden(false);
  }

  private place(pointer: Spot, room: Size, keepClear: readonly Rectangle[]): void {
    const own = this.sizes.of(this.element, this.value, this.held);
    const { left, top, before } = placeReadout(pointer, room, own, keepClear);
    const end = before ? ' translateX(-100%)' : '';
    this.element.style.transform = `translate(${left}px, ${top}px)${end}`;
  }

  hide(): void {
    this.setHidden(true);
  }

  private setHidden(hidden: boolean): void {
    if (hidden === this.hidden) return;
    this.hidden = hidden;
    this.element.hidden = hidden;
  }
}

/** What stands in the frame: asking the page for it would take longer. */
interface Content {
  look: Look;
  text: string;
  /** The reason; empty for none. */
  said: string;
}

/**
 * How large the frame is with a text in it. A line is measured on a canvas: in every step of a drag each look at the page would
 * cost a layout. A reason breaks into lines; the page alone knows how.
 */
class Sizes {
  private readonly pen = document.createElement('canvas').getContext('2d');
  /** By look and text, its digits taken for one another. */
  private readonly known = new Map<string, Size>();
  /** By look: the font, what is beside the text, and the most that it may have, px. */
  private readonly frames = new Map<Look, Frame>();

  of(element: HTMLElement, value: HTMLElement, { look, text, said }: Content): Size {
    const key = `${look} ${text.replace(/\d/g, '0')}\n${said}`;
    let size = this.known.get(key);
    if (size === undefined) {
      size = (said === '' ? this.ofLine(element, value, look, text) : null) ?? measured(element);
      this.known.set(key, size);
    }
    return size;
  }

  private ofLine(element: HTMLElement, value: HTMLElement, look: Look, text: string): Size | null {
    const { pen, frames } = this;
    if (!pen) return null;
    const frame = frames.get(look) ?? frameOf(element, value);
    frames.set(look, frame);
    pen.font = frame.font;
    const width = Math.ceil(pen.measureText(text).width + frame.beside);
    // One that is too long breaks into lines.
    return width > frame.most ? null : { width, height: HEIGHT };
  }
}

interface Frame {
  readonly font: string;
  readonly beside: number;
  readonly most: number;
}

function frameOf(element: HTMLElement, value: HTMLElement): Frame {
  const { font } = getComputedStyle(value);
  const { paddingLeft, paddingRight, borderLeftWidth, borderRightWidth, maxWidth } =
    getComputedStyle(element);
  const sides = [paddingLeft, paddingRight, borderLeftWidth, borderRightWidth];
  const beside = sides.reduce((sum, side) => sum + Number.parseFloat(side), 0);
  return { font, beside, most: Number.parseFloat(maxWidth) };
}

function measured({ offsetWidth: width, offsetHeight: height }: HTMLElement): Size {
  return { width, height };
}
