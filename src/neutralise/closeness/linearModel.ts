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

/** On a probe that holds the design with its terms kept; it holds it again afterwards. In steps: one slope each. */
export function* linearModelSteps(
  design: Design,
  probe: HeadProbe,
  list: readonly Toleranced[],
  pitchesDeg: ArrayLike<number>,
  values: ToleranceValues,
): Generator<void, LinearModel, void> {
  const count = pitchesDeg.length;
  const first = probe.layout.forceAt(0);
  const nominal = probe.read(new Float64Array(probe.layout.count)).slice(first, first + count);
  const anew = hasKeptTerms(design) ? HeadProbe.of(design, pitchesDeg, 'anew') : null;
  const forcesOf = (found: Derivative | null) =>
    found?.outcome.kind === 'found' ? found.outcome.slopes.slice(first, first + count) : null;
  function* slopesOn(one: HeadProbe): Generator<void, (Float64Array | null)[], void> {
    const found: (Float64Array | null)[] = [];
    for (const { ref } of list) {
      found.push(forcesOf(derivativeOf(design, one, ref)));
      yield;
    }
    return found;
  }
  const kept = yield* slopesOn(probe);
  const whole = anew?.ok ? yield* slopesOn(anew.value) : kept;
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
