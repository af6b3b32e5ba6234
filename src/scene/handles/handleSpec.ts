import type { Vec3 } from '../../engine/math/vector';
import type { Refusal } from '../../state/refusal';
import type { FieldUnit } from '../../state/shownUnits';

/** How a handle moves, in its frame: metres, unit vectors. */
export type Motion =
  | {
      readonly kind: 'linear';
      readonly position: Vec3;
      readonly direction: Vec3;
      /** Change of the value for 1 mm of travel. */
      readonly perMm: number;
    }
  | {
      readonly kind: 'turn';
      readonly position: Vec3;
      readonly centre: Vec3;
      readonly axis: Vec3;
      /** The value, in degrees, grows with the right-hand turn times this. */
      readonly sense: 1 | -1;
    };

/** Steps of a key press, in the value's unit. */
export interface KeySteps {
  readonly plain: number;
  readonly shift: number;
  readonly alt: number;
  readonly page: number;
}

/**
 * Something that can be dragged: what it is called, what it sets and how it moves. Made from the selected part's type,
 * its mount or free pose, and the pitch pointer; nothing here knows a kind of part.
 */
export interface HandleSpec {
  /** `<part id>/<parameter>`, with `.0`, `.1`, `.2` for a component; `pitch/pitchDeg` for the pitch pointer. */
  readonly key: string;
  readonly partId: string | null;
  readonly parameter: string;
  readonly label: string;
  readonly unit: FieldUnit;
  readonly min: number;
  readonly max: number;
  readonly steps: KeySteps;
  readonly value: number;
  /** 'axis': the grip frame at flat pitch. */
  readonly frame: 'part' | 'grip' | 'axis' | 'rotor';
  readonly motion: Motion;
  /** 'part': an arrow on its dimension. 'move': an arrow that moves a whole part, farther out. 'pitch': the knob. */
  readonly look: 'part' | 'move' | 'pitch';
  write(value: number): Refusal | null;
}

export const PART_STEPS: KeySteps = { plain: 0.1, shift: 1, alt: 0.01, page: 1 };

/** The refusal of an action's outcome, or null when it was taken. */
export function refusalOf(
  outcome: { readonly ok: true } | { readonly ok: false; readonly error: Refusal },
): Refusal | null {
  return outcome.ok ? null : outcome.error;
}
