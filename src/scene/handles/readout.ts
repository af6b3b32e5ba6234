import { setText } from '../../ui/drawn/svg';

/** What is under the pointer, by name; while it is dragged its value, and the reason when it goes no farther. */
export class Readout {
  readonly element = document.createElement('div');
  private readonly value = document.createElement('span');
  private readonly reason = document.createElement('span');
  /** Measured once for texts of a length, as long as it is shown: in every step of a drag it would cost a layout. */
  private readonly widths = new Map<string, number>();

  constructor() {
    this.element.className = 'stage-readout';
    this.element.hidden = true;
    this.value.className = 'stage-readout-value';
    this.reason.className = 'stage-readout-reason';
    this.element.append(this.value, this.reason);
  }

  /** `x`, `y`: the pointer, in pixels of the parent of `width`. */
  show(x: number, y: number, width: number, text: string, reason: string | null): void {
    const said = reason ?? '';
    delete this.element.dataset.look;
    setText(this.value, text);
    setText(this.reason, said);
    if (this.reason.hidden !== (reason === null)) this.reason.hidden = reason === null;
    if (this.element.hidden) this.element.hidden = false;
    const letters = `${text.length} ${said.length}`;
    let own = this.widths.get(letters);
    if (own === undefined) {
      own = this.element.offsetWidth;
      this.widths.set(letters, own);
    }
    const left = x + 18 + own > width ? x - 18 - own : x + 18;
    const top = Math.max(4, y - 36);
    this.element.style.transform = `translate(${Math.max(4, left)}px, ${top}px)`;
  }

  /** A name alone, of what cannot be dragged. */
  name(x: number, y: number, width: number, text: string): void {
    this.show(x, y, width, text, null);
    this.element.dataset.look = 'name';
  }

  hide(): void {
    this.widths.clear();
    this.element.hidden = true;
  }
}
