/** Name, value and unit beside the pointer while something is dragged, and the reason when it goes no farther. */
export class Readout {
  readonly element = document.createElement('div');
  private readonly value = document.createElement('span');
  private readonly reason = document.createElement('span');

  constructor() {
    this.element.className = 'stage-readout';
    this.element.hidden = true;
    this.value.className = 'stage-readout-value';
    this.reason.className = 'stage-readout-reason';
    this.element.append(this.value, this.reason);
  }

  /** `x`, `y`: the pointer, in pixels of the parent of `width`. */
  show(x: number, y: number, width: number, text: string, reason: string | null): void {
    this.value.textContent = text;
    this.reason.textContent = reason ?? '';
    this.reason.hidden = reason === null;
    this.element.hidden = false;
    const own = this.element.offsetWidth;
    const left = x + 18 + own > width ? x - 18 - own : x + 18;
    const top = Math.max(4, y - 36);
    this.element.style.transform = `translate(${Math.max(4, left)}px, ${top}px)`;
  }

  hide(): void {
    this.element.hidden = true;
  }
}
