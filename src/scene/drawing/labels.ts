import { type Camera, Vector3 } from 'three';
import type { Vec3 } from '../../engine/math/vector';
import { setText } from '../../ui/drawn/svg';

/**
 * Words and marks over the 3D view: plain elements, placed at projected points once a drawn frame. Text in the DOM is
 * crisp, follows the page's font and needs nothing from the network.
 */
export class StageLabel {
  /** Where it belongs, world, mm. */
  readonly at = new Vector3();
  visible = true;
  /** Pixels from the projected point to the label's middle. */
  offset: readonly [x: number, y: number] = [0, 0];
  private shown = '';
  private width = 0;
  private height = 0;
  private left = Number.NaN;
  private top = Number.NaN;

  constructor(
    readonly element: HTMLElement,
    /** Labels of a higher rank keep their place; one that would lie on them is moved or left out. 0: always shown. */
    readonly rank: number,
  ) {}

  set text(text: string) {
    if (text === this.shown) return;
    this.shown = text;
    setText(this.element, text);
    this.width = 0;
  }

  put(position: Vec3): void {
    this.at.set(position[0], position[1], position[2]);
  }

  /** Puts its upper left corner there; null: not shown. Writes only what is different. */
  show(spot: readonly [number, number] | null): void {
    const { element } = this;
    if (element.hidden !== (spot === null)) element.hidden = spot === null;
    if (!spot || (spot[0] === this.left && spot[1] === this.top)) return;
    [this.left, this.top] = spot;
    element.style.transform = `translate(${spot[0]}px, ${spot[1]}px)`;
  }

  /** It is measured anew when it is next placed. */
  forgetSize(): void {
    this.width = 0;
  }

  size(): readonly [width: number, height: number] {
    if (this.width === 0) {
      const { element } = this;
      // Digits are of one width: a number that changes with every frame of a drag is not measured again.
      const key = `${element.className} ${this.shown.replace(/\d/g, '0')}`;
      const known = sizes.get(key) ?? measured(element);
      if (known[0] > 0 && document.fonts.status === 'loaded') sizes.set(key, known);
      [this.width, this.height] = known;
    }
    return [this.width, this.height];
  }
}

/** An element that is not shown has no size. */
function measured(element: HTMLElement): readonly [width: number, height: number] {
  if (element.hidden) element.hidden = false;
  return [element.offsetWidth, element.offsetHeight];
}

/** Asking the page for a size costs a layout of all that was written since the last. */
const sizes = new Map<string, readonly [width: number, height: number]>();

export interface Rectangle {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A label in a picture, CSS pixels from its upper left corner. */
export interface PlacedLabel {
  readonly element: HTMLElement;
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

const projected = new Vector3();
/** Where a crowded label may go instead, in its own heights. */
const DODGES = [0, -1.1, 1.1, -2.2, 2.2];

export class LabelBoard {
  readonly element = document.createElement('div');
  private readonly labels: StageLabel[] = [];
  /** Boxes over the view that ranked labels keep clear of: lists and keys in its corners. */
  reserved: readonly Rectangle[] = [];
  /** Words of a lower rank are left out, marks are not: for a head so far away that they would hide it. */
  lowestRank = 0;
  private letters = '';

  constructor() {
    this.element.className = 'stage-labels';
    this.element.setAttribute('aria-hidden', 'true');
  }

  /** The size of its letters as the page has it now: with another one, what was measured holds no more. */
  set letterSize(size: string) {
    if (size === this.letters) return;
    this.letters = size;
    sizes.clear();
    for (const label of this.labels) label.forgetSize();
  }

  /** A new label; ranked ones (rank > 0) make room for each other. */
  add(className: string, rank: number): StageLabel {
    const element = document.createElement('span');
    element.className = className;
    element.hidden = true;
    const label = new StageLabel(element, rank);
    this.element.append(element);
    this.labels.push(label);
    this.labels.sort((a, b) => order(a) - order(b));
    return label;
  }

  remove(label: StageLabel): void {
    label.element.remove();
    this.labels.splice(this.labels.indexOf(label), 1);
  }

  /** Puts every label where its point is seen (`camera` up to date); ranked ones keep off the boxes in `clear`. */
  place(camera: Camera, width: number, height: number, clear: readonly Rectangle[]): void {
    const taken: Rectangle[] = [...this.reserved, ...clear];
    for (const label of this.labels) {
      const spot = this.shows(label) ? this.spot(label, camera, width, height, taken) : null;
      label.show(spot);
    }
  }

  /** Where every label stands in a picture of that size by that camera; those over the view stay where they are. */
  arranged(camera: Camera, width: number, height: number): PlacedLabel[] {
    const taken: Rectangle[] = [];
    return this.labels.flatMap((label) => {
      const { element } = label;
      const { hidden } = element;
      const spot = this.shows(label) ? this.spot(label, camera, width, height, taken) : null;
      const [labelWidth, labelHeight] = label.size();
      element.hidden = hidden;
      if (!spot) return [];
      return [{ element, left: spot[0], top: spot[1], width: labelWidth, height: labelHeight }];
    });
  }

  private shows({ visible, rank }: StageLabel): boolean {
    return visible && (rank === 0 || rank >= this.lowestRank);
  }

  private spot(
    label: StageLabel,
    camera: Camera,
    width: number,
    height: number,
    taken: Rectangle[],
  ): readonly [number, number] | null {
    projected.copy(label.at).project(camera);
    if (projected.z > 1 || projected.z < -1) return null;
    if (Math.abs(projected.x) > 1 || Math.abs(projected.y) > 1) return null;
    const x = ((projected.x + 1) / 2) * width + label.offset[0];
    const y = ((1 - projected.y) / 2) * height + label.offset[1];
    const [w, h] = label.size();
    if (label.rank === 0) {
      const left = Math.round(x - w / 2);
      const top = Math.round(y - h / 2);
      taken.push({ left, top, right: left + w, bottom: top + h });
      return [left, top];
    }
    // Words stay inside the picture as long as their point does.
    const left = Math.round(Math.max(2, Math.min(width - w - 2, x - w / 2)));
    const top = Math.max(2, Math.min(height - h - 2, y - h / 2));
    for (const dodge of DODGES) {
      const high = top + dodge * h;
      if (high < 0 || high + h > height || !isFree(taken, left, high, left + w, high + h)) continue;
      taken.push({ left, top: high, right: left + w, bottom: high + h });
      return [left, Math.round(high)];
    }
    return null;
  }
}

/** Marks first, for they do not give way; then words by falling rank. */
function order({ rank }: StageLabel): number {
  return rank === 0 ? -1000 : -rank;
}

/** Asked several times a label in every picture: without an object for each try. */
function isFree(
  taken: readonly Rectangle[],
  left: number,
  top: number,
  right: number,
  bottom: number,
): boolean {
  for (const box of taken) {
    if (left < box.right && box.left < right && top < box.bottom && box.top < bottom) return false;
  }
  return true;
}
