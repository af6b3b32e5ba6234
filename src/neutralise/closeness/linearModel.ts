import type { Design } from '../../design/design';
import { type Derivative, derivativeOf } from './derivatives';
import { spreadOf } from './draws';
import { HeadProbe, hasKeptTerms } from './headProbe';
import type { Toleranced, ToleranceValues } from './tolerances';

/** The push-rod force at each pitch as a sum of what each tolerance adds. */
export interface LinearModel {
  readonly nominal: Float64Array;
  /** dF/dx by tolerance and pitch, N per unit; zeros where a number cannot be varied alone. */
  readonly slopes: readonly Float64Array[];
  /** What of that goes through the air and a swinging blade; null where nothing worth naming does. */
  readonly termSlopes: readonly (Float64Array | null)[];
  /** Whether it can be varied alone. */
  readonly varied: readonly boolean[];
  /** Standard deviation at each pitch, N: root of the sum of squares. */
  readonly sigma: Float64Array;
}

/** On a probe that holds the design with its terms kept; it holds it again afterwards. */
export function linearModel(
  design: Design,
  probe: HeadProbe,
  list: readonly Toleranced[],
  pitchesDeg: ArrayLike<number>,
  values: ToleranceValues,
): LinearModel {
  const count = pitchesDeg.length;
  const first = probe.layout.forceAt(0);
  const nominal = probe.read(new Float64Array(probe.layout.count)).slice(first, first + count);
  const anew = hasKeptTerms(design) ? HeadProbe.of(design, pitchesDeg, 'anew') : null;
  const forcesOf = (found: Derivative | null) =>
    found?.outcome.kind === 'found' ? found.outcome.slopes.slice(first, first + count) : null;
  const kept = list.map(({ ref }) => forcesOf(derivativeOf(design, probe, ref)));
  const whole = anew?.ok
    ? list.map(({ ref }) => forcesOf(derivativeOf(design, anew.value, ref)))
    : kept;
  const slopes = whole.map((own, j) => own ?? kept[j] ?? new Float64Array(count));
  const termSlopes = slopes.map((own, j) => (kept[j] ? differenceOf(own, kept[j]) : null));
  const unit = spreadOf(values);
  const sigma = new Float64Array(count);
  for (let i = 0; i < count; i++) {
    let square = 0;
    for (let j = 0; j < list.length; j++) square += (slopes[j][i] * list[j].plusMinus * unit) ** 2;
    sigma[i] = Math.sqrt(square);
  }
  return { nominal, slopes, termSlopes, varied: kept.map((own) => own !== null), sigma };
}

/** What two slopes differ by; null where it is rounding. */
function differenceOf(whole: Float64Array, kept: Float64Array): Float64Array | null {
  const difference = whole.map((one, i) => one - kept[i]);
  const differs = difference.some((one, i) => Math.abs(one) > 1e-9 * Math.abs(whole[i]));
  return differs ? difference : null;
}
