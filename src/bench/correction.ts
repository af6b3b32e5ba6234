import type { Design, Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import { freshIdAmong } from '../design/freshName';
import { HeadModel } from '../design/headModel';
import { MEASURED_LIMITS } from '../design/measured';
import { addTryOut, showTryOut, tryOutsOf } from '../design/tryOuts';
import { withMeasured } from '../design/writeValue';
import { DOUBT, squaresAbove } from '../engine/identify/distributions';
import { JYY, JYZ, JZZ, M } from '../engine/mass/moments';
import { fail, type Result, succeed } from '../engine/result';
import { gramsFromKilograms, metresFromMm, mmFromMetres } from '../engine/units';
import { digits } from './digits';
import type { Estimated } from './fitRung';
import type { SpreadAndProduct } from './gaugeHead';
import { quadratic } from './ladder';
import { absurdLump, absurdMass, type NotSensible } from './sensible';

/** Why a correction cannot be had; nothing is clamped. */
export type CorrectionFault =
  | { readonly kind: 'design'; readonly fault: DesignFault }
  /** Hidden, on the push rod, or so placed that its mass makes neither J_yy - J_zz nor J_yz. */
  | { readonly kind: 'noShare'; readonly part: string }
  /** Its mass would have to be nothing or less: this part is not what is wrong. */
  | { readonly kind: 'impossibleMass'; readonly massGrams: number }
  /** Mass would have to be taken away at this place, or there is nothing to add. */
  | { readonly kind: 'wrongPlace'; readonly massGrams: number }
  | NotSensible
  /** Beyond what a design may hold, g. */
  | { readonly kind: 'massLimit'; readonly massGrams: number; readonly limit: number };

export interface ScaledMass {
  readonly kind: 'scaledMass';
  readonly part: string;
  /** What its mass has to be times, and what it then weighs; standard uncertainties. */
  readonly factor: number;
  readonly factorSigma: number;
  readonly massGrams: number;
  readonly massSigmaGrams: number;
  readonly design: Design;
  /** The deficit that is left, and whether it is nothing beyond doubt's 5 %: whether this part alone can be the reason. */
  readonly left: Estimated;
  readonly pValue: number;
  readonly explains: boolean;
}

export interface Lump {
  readonly kind: 'lump';
  readonly id: string;
  readonly massGrams: number;
  readonly massSigmaGrams: number;
  /** Grip frame. */
  readonly positionMm: readonly [number, number, number];
  readonly design: Design;
  readonly left: Estimated;
  readonly pValue: number;
  readonly explains: boolean;
}

/**
 * The mass of one part that explains a deficit best: both its J_yy - J_zz and its J_yz go with the mass, weighted by the
 * deficit's covariance. Written as the part's mass from the scale, which scales everything of it.
 */
export function scaleMass(
  design: Design,
  part: string,
  deficit: Estimated,
): Result<ScaledMass, CorrectionFault> {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) return fail({ kind: 'design', fault: loaded.error });
  const placed = model.placed(part);
  if (!placed || placed.part.hidden || placed.carriedBy !== 'grip')
    return fail({ kind: 'noShare', part });
  const own = {
    spread: placed.moments_G[JYY] - placed.moments_G[JZZ],
    product: placed.moments_G[JYZ],
  };
  const best = bestShare(deficit, own);
  if (best === null) return fail({ kind: 'noShare', part });
  const factor = 1 + best.share;
  const mass = gramsFromKilograms(placed.moments_G[M]);
  const massGrams = factor * mass;
  if (!(factor > 0)) return fail({ kind: 'impossibleMass', massGrams });
  const { min, max } = MEASURED_LIMITS.massGrams;
  if (massGrams < min) return fail({ kind: 'impossibleMass', massGrams });
  if (massGrams > max) return fail({ kind: 'massLimit', massGrams, limit: max });
  const absurd = absurdMass(placed.part, mass, massGrams);
  if (absurd) return fail(absurd);
  const parts = design.parts.map((one) =>
    one.id === part ? withMeasured(one, { ...one.measured, massGrams: digits(massGrams) }) : one,
  );
  const corrected = { ...design, parts };
  const sound = new HeadModel().load(corrected);
  if (!sound.ok) return fail({ kind: 'design', fault: sound.error });
  return succeed({
    kind: 'scaledMass',
    part,
    factor,
    factorSigma: best.sigma,
    massGrams,
    massSigmaGrams: best.sigma * mass,
    design: corrected,
    ...leftOver(deficit, own, best.share),
  });
}

/** The mass of a lump at a stated place (mm, grip frame) that explains a deficit best; only where it is positive. */
export function lumpAt(
  design: Design,
  positionMm: readonly [number, number, number],
  deficit: Estimated,
  name: string,
): Result<Lump, CorrectionFault> {
  const [y, z] = [metresFromMm(positionMm[1]), metresFromMm(positionMm[2])];
  const own = { spread: y * y - z * z, product: y * z };
  const best = bestShare(deficit, own);
  const massGrams = best ? gramsFromKilograms(best.share) : 0;
  if (!best || !(best.share > 0)) return fail({ kind: 'wrongPlace', massGrams });
  const added = withLump(design, massGrams, positionMm, name);
  if (!added.ok) return added;
  return succeed({
    kind: 'lump',
    id: added.value.id,
    massGrams,
    massSigmaGrams: gramsFromKilograms(best.sigma),
    positionMm,
    design: added.value.design,
    ...leftOver(deficit, own, best.share),
  });
}

/**
 * The lump at a distance from the feathering axis that explains a deficit wholly: m r^2 cos 2f = J_yy - J_zz and
 * m r^2 sin 2f = 2 J_yz give its mass and the side f on which it sits (of the two opposite ones that nearer +y or +z).
 * `stationMm` along the axis says nothing to the moment without precone; with torque offset or precone its first moment
 * adds to it.
 */
export function lumpAtRadius(
  design: Design,
  { stationMm, radiusMm }: { readonly stationMm: number; readonly radiusMm: number },
  deficit: Estimated,
  name: string,
): Result<Lump, CorrectionFault> {
  const radius = metresFromMm(radiusMm);
  const { spread, product, covariance } = deficit;
  const size = Math.hypot(spread, 2 * product);
  const mass = size / radius ** 2;
  const turn = Math.atan2(2 * product, spread) / 2;
  const positionMm = [
    stationMm,
    digits(mmFromMetres(radius * Math.cos(turn))),
    digits(mmFromMetres(radius * Math.sin(turn))),
  ] as const;
  const massGrams = gramsFromKilograms(mass);
  const added = withLump(design, massGrams, positionMm, name);
  if (!added.ok) return added;
  const [a, p] = [spread / size, (4 * product) / size];
  const variance = a * a * covariance[0] + 2 * a * p * covariance[1] + p * p * covariance[3];
  return succeed({
    kind: 'lump',
    id: added.value.id,
    massGrams,
    massSigmaGrams: gramsFromKilograms(Math.sqrt(variance) / radius ** 2),
    positionMm,
    design: added.value.design,
    left: { ...deficit, spread: 0, product: 0 },
    pValue: 1,
    explains: true,
  });
}

function withLump(
  design: Design,
  massGrams: number,
  positionMm: readonly [number, number, number],
  name: string,
): Result<{ readonly design: Design; readonly id: string }, CorrectionFault> {
  const { min, max } = MEASURED_LIMITS.massGrams;
  // A point mass has these limits too but for a smaller greatest one, which the model's own check tells.
  if (massGrams < min) return fail({ kind: 'wrongPlace', massGrams });
  if (massGrams > max) return fail({ kind: 'massLimit', massGrams, limit: max });
  const absurd = absurdLump(design, massGrams);
  if (absurd) return fail(absurd);
  const id = freshIdAmong(new Set(design.parts.map((part) => part.id)), 'correction');
  const lump = {
    id,
    kind: 'pointMass',
    name,
    massGrams: digits(massGrams),
    pose: { positionMm, rotationDeg: [0, 0, 0] },
  } as const satisfies Part;
  const corrected = { ...design, parts: [...design.parts, lump] };
  const sound = new HeadModel().load(corrected);
  if (!sound.ok) return fail({ kind: 'design', fault: sound.error });
  return succeed({ design: corrected, id });
}

/** What multiple of `own` a deficit is, by least squares in its covariance; null where `own` is nothing. */
function bestShare(
  { spread, product, covariance }: Estimated,
  own: SpreadAndProduct,
): { readonly share: number; readonly sigma: number } | null {
  const square = quadratic(covariance, own.spread, own.product);
  if (!(square > 0) || !Number.isFinite(square)) return null;
  const sum = quadratic(covariance, own.spread + spread, own.product + product);
  const cross = (sum - square - quadratic(covariance, spread, product)) / 2;
  return { share: cross / square, sigma: 1 / Math.sqrt(square) };
}

/** What is left of a deficit when a share of `own` is taken off, on its one degree of freedom. */
function leftOver(deficit: Estimated, own: SpreadAndProduct, share: number) {
  const spread = deficit.spread - share * own.spread;
  const product = deficit.product - share * own.product;
  const { covariance, freedom } = deficit;
  const pValue = squaresAbove(quadratic(covariance, spread, product), 1, freedom);
  return { left: { ...deficit, spread, product }, pValue, explains: !(pValue < DOUBT) };
}

/** A corrected design's parts as a try-out of the design that it was made from; `show` puts it on the stage. */
export function asTryOut(
  design: Design,
  corrected: Pick<Design, 'parts'>,
  name: string,
  { note = '', show = false }: { readonly note?: string; readonly show?: boolean } = {},
): Design {
  const added = addTryOut(design, corrected.parts, name, note);
  const last = tryOutsOf(added).at(-1);
  return show && last ? showTryOut(added, last.id) : added;
}
