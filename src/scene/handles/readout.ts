/** Name, value and unit beside the pointer while something is dragged, and the reason when it goes no farther. */
export class Readout {
  readonly element = document.createElement('div');
  private readonly value = document.createElement('span');
  private readonly reason = document.createElement('span');
  /** Measured when the texts have become longer or shorter: in every step of a drag it would cost a layout. */
  private width = 0;
  private letters = '';

  constructor() {
    this.element.className = 'stage-readout';
    this.element.hidden = true;
    this.value.className = 'stage-readout-value';
    this.reason.className = 'stage-readout-reason';
    this.element.append(this.value, this.reason);
  }

  /** `x`, `y`: the pointer, in pixels of the parent of `width`. */
  show(x: number, y: number, width: number, text: string, reason: string | null): void {
    if (this.value.textContent !== text) this.value.textContent = text;
    const said = reason ?? '';
    if (this.reason.textContent !== said) this.reason.textContent = said;
    if (this.reason.hidden !== (reason === null)) this.reason.hidden = reason === null;
    if (this.element.hidden) this.element.hidden = false;
    const letters = `${text.length} ${said.length}`;
    if (letters !== this.letters) {
      this.letters = letters;
      this.width = this.element.offsetWidth;
    }
    const own = this.width;
    const left = x + 18 + own > width ? x - 18 - own : x + 18;
    const top = Math.max(4, y - 36);
    this.element.style.transform = `translate(${Math.max(4, left)}px, ${top}px)`;
  }

  hide(): void {
    this.element.hidden = true;
  }
}
