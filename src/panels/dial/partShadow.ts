import { type PartValues, sameValues } from '../../design/values';
import type { Solid } from '../../engine/mass/solid';
import type { Mat3 } from '../../engine/math/vector';
import { ZERO } from '../../engine/math/vector';
import { mmFromMetres } from '../../engine/units';
import type { PartType } from '../../parts/contract';
import { partType } from '../../parts/registry';
import { sameData } from '../../parts/sameData';
import { type Silhouette, seenAlongX, shadowPoints } from '../../parts/silhouette';
import type { PartReading } from '../../state/reading';
import { setValues, svgElement } from '../marks/svg';

/**
 * One part's shadow on the dial: a group with one path, in mm about the part's own origin, y right and z up. The
 * outline is worked out anew only when the part's own numbers or its orientation changed; a part that merely moves
 * gets another translation.
 */
export class PartShadow {
  readonly element = svgElement('g', null, { class: 'dial-part' });
  private readonly path = svgElement('path', this.element);
  private readonly title = svgElement('title', this.element);
  private type: PartType | null = null;
  private values: PartValues | null = null;
  private rotation: Mat3 | null = null;
  private shapes: readonly Shadow[] = [];
  /** Extent of the outline, for drawing small parts over large ones. */
  extent = 0;
  private outline: readonly (readonly [number, number])[] = [];
  private at: readonly [number, number] = [Number.NaN, Number.NaN];
  private looks = -1;
  /** The last answer of `reach`. */
  private reached = { outline: this.outline, y: Number.NaN, z: Number.NaN, furthest: 0 };

  constructor(id: string) {
    this.element.dataset.part = id;
  }

  /** Takes on a reading; `rotation` turns the part's own axes. True where the outline changed. */
  update(reading: PartReading, rotation: Mat3): boolean {
    const { part, values } = reading;
    if (this.title.textContent !== part.name) this.title.textContent = part.name;
    const type = partType(part.kind);
    const turned = !sameRotation(rotation, this.rotation);
    const own = type === this.type && this.values !== null && sameValues(type, values, this.values);
    if (own && !turned) return false;
    this.type = type;
    this.values = values;
    if (turned) this.rotation = rotation;
    // A rod turns with every step of the pitch: then its points are the same, seen from elsewhere.
    if (own) this.shapes = this.shapes.map((shape) => shadow(shape, rotation));
    else {
      // A negative solid is a hole: it casts no shadow.
      const whole = type
        .solids(values)
        .filter((solid) => !('density' in solid) || solid.density > 0);
      this.shapes = whole.map((solid, i) => {
        const before = this.shapes[i];
        const same = before !== undefined && sameData(before.solid, solid);
        if (same && !turned) return before;
        return shadow(same ? before : { solid, points: shadowPoints(solid) }, rotation);
      });
    }
    this.outline = this.shapes.flatMap((shape) => shape.outline);
    this.extent = this.shapes.reduce((most, shape) => Math.max(most, shape.extent), 0);
    setValues(this.path, { d: this.shapes.map((shape) => shape.path).join('') });
    return true;
  }

  /** Puts the part's origin at (y, z), mm. */
  place(y: number, z: number): void {
    if (y === this.at[0] && z === this.at[1]) return;
    this.at = [y, z];
    setValues(this.element, { transform: `translate(${y.toFixed(4)} ${z.toFixed(4)})` });
  }

  look(selected: boolean, hidden: boolean, keepOut: boolean): void {
    const looks = Number(selected) + 2 * Number(hidden) + 4 * Number(keepOut);
    if (looks === this.looks) return;
    this.looks = looks;
    const state = `${keepOut ? ' dial-part-keep-out' : ''}${selected ? ' dial-part-selected' : ''}${hidden ? ' dial-part-hidden' : ''}`;
    setValues(this.element, { class: `dial-part${state}` });
  }

  /** Greatest distance of the outline from the point (-y, -z) of the part's own frame, metres. */
  reach(y: number, z: number): number {
    const { reached } = this;
    if (reached.outline === this.outline && reached.y === y && reached.z === z) {
      return reached.furthest;
    }
    let furthest = 0;
    for (const [py, pz] of this.outline) furthest = Math.max(furthest, Math.hypot(py + y, pz + z));
    this.reached = { outline: this.outline, y, z, furthest };
    return furthest;
  }
}

/** The shadow of one solid. */
interface Shadow {
  readonly solid: Solid;
  readonly points: Float64Array;
  readonly outline: Silhouette['outline'];
  readonly path: string;
  readonly extent: number;
}

function shadow({ solid, points }: Pick<Shadow, 'solid' | 'points'>, rotation: Mat3): Shadow {
  const outline = seenAlongX(points, { rotation, translation: ZERO });
  return { solid, points, outline, path: pathOf(outline), extent: extentOf(outline) };
}

function extentOf(outline: Silhouette['outline']): number {
  return outline.reduce((most, [y, z]) => Math.max(most, Math.hypot(y, z)), 0);
}

function sameRotation(a: Mat3, b: Mat3 | null): boolean {
  return b !== null && a.every((value, i) => Math.abs(value - b[i]) < 1e-12);
}

function pathOf(outline: readonly (readonly [number, number])[]): string {
  if (outline.length === 0) return '';
  const points = outline.map(([y, z]) => {
    return `${mmFromMetres(y).toFixed(3)} ${mmFromMetres(z).toFixed(3)}`;
  });
  return `M${points.join('L')}Z`;
}
