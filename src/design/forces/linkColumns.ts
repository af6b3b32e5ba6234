import type { PitchGrid } from '../../engine/feathering/pitchGrid';
import {
  createLinkState,
  type Linkage,
  linkState,
  pushRodForce,
} from '../../engine/linkage/linkage';
import type { ServoGeometry } from '../../engine/linkage/servo';
import { radians } from '../../engine/units';
import type { HeadModel } from '../headModel';
import { servoGeometry, servoTorquePerForce } from './servo';

/** What the push rod makes of a moment at the pitches of a grid; NaN over centre and out of reach. Read only. */
export interface LinkColumns {
  /** Slider travel from its place at flat pitch, m, and travel per radian. */
  readonly travel: Float64Array;
  readonly ratio: Float64Array;
  /** Push-rod force, force on the slider and servo torque (all grips) for one N m of each grip's moment. */
  readonly forcePerMoment: Float64Array;
  readonly sliderPerMoment: Float64Array;
  readonly servoPerMoment: Float64Array;
}

/** What of the model they come from beside the linkage. */
export interface LinkSource {
  readonly linkage: Linkage;
  /** Height of the slider's ball at flat pitch, m. */
  readonly flatSlider: number;
  readonly model: HeadModel;
}

/** Columns of each grid, kept until linkage, rotor or control are other objects: a dragged bolt changes none of them. */
export class LinkColumnDesk {
  private readonly held = new WeakMap<PitchGrid, Held>();

  columns(grid: PitchGrid, source: LinkSource): LinkColumns {
    const { linkage, model } = source;
    const { rotor, control } = model.sections;
    const known = this.held.get(grid);
    if (known?.linkage === linkage && known.rotor === rotor && known.control === control) {
      return known.columns;
    }
    const columns = linkColumns(grid, source, servoGeometry(control));
    this.held.set(grid, { linkage, rotor, control, columns });
    return columns;
  }
}

interface Held {
  readonly linkage: unknown;
  readonly rotor: unknown;
  readonly control: unknown;
  readonly columns: LinkColumns;
}

function linkColumns(
  { pitches }: PitchGrid,
  { linkage, flatSlider, model }: LinkSource,
  servo: ServoGeometry | null,
): LinkColumns {
  const column = () => new Float64Array(pitches.length);
  const out = {
    travel: column(),
    ratio: column(),
    forcePerMoment: column(),
    sliderPerMoment: column(),
    servoPerMoment: column(),
  };
  const { bladeCount } = model.sections.rotor;
  const state = createLinkState();
  for (let i = 0; i < pitches.length; i++) {
    linkState(linkage, model.rotor, radians(pitches[i]), state);
    const perMoment = pushRodForce(1, state) ?? Number.NaN;
    const slider = bladeCount * state.axis[2] * perMoment;
    out.travel[i] = state.sliderZ - flatSlider;
    out.ratio[i] = state.ratio;
    out.forcePerMoment[i] = perMoment;
    out.sliderPerMoment[i] = slider;
    out.servoPerMoment[i] = slider * servoTorquePerForce(servo, out.travel[i]);
  }
  return out;
}
