import { insetLimit } from '../../engine/mass/sectionInset';
import { mmFromMetres } from '../../engine/units';
import { below, type Problem } from '../contract';
import { demand } from '../rules';
import { airfoilEnds, coreLoft, sectionOf } from './airfoilShape';
import { readOwnSection } from './ownSection';
import type { BladeValues } from './parameters';
import { rodProblems } from './rodProblems';

/** Rules in the order in which they need one another: what comes later is only looked at where the earlier hold. */
export function bladeProblems(values: BladeValues): Problem[] {
  for (const rules of [rootProblems, sectionProblems, skinProblems, rodProblems]) {
    const found = rules(values);
    if (found.length > 0) return found;
  }
  return [];
}

function rootProblems(values: BladeValues): Problem[] {
  return [
    ...below(values, 'boltHoleMm', 'rootWidthMm'),
    ...demand(
      'rootLengthMm',
      values.rootLengthMm,
      'above',
      values.boltHoleMm / 2,
      'half the bolt hole',
    ),
    ...below(values, 'rootLengthMm', 'lengthMm'),
    ...bushProblems(values),
  ];
}

/** A bushing must leave some of the block's width beside it. */
const MOST_BUSH = 0.95;

function bushProblems(values: BladeValues): Problem[] {
  const { bushDiameterMm, boltHoleMm, rootWidthMm, rootLengthMm } = values;
  if (bushDiameterMm === 0) return [];
  return [
    ...demand('bushDiameterMm', bushDiameterMm, 'above', boltHoleMm, 'boltHoleMm'),
    ...demand(
      'bushDiameterMm',
      bushDiameterMm,
      'atMost',
      MOST_BUSH * rootWidthMm,
      'nineteen twentieths of the width of the root block',
    ),
    ...demand(
      'bushDiameterMm',
      bushDiameterMm,
      'below',
      2 * rootLengthMm,
      'twice the length of the root block',
    ),
  ];
}

/**
 * A section must have an outline that does not cross itself. Thickness is laid off square to the camber line, whose
 * parabolas bend by at most 2 m / q^2 (q the shorter part of the chord beside the highest point): the side within the
 * bend folds over where half the thickness exceeds the bend's radius, t / 2 > q^2 / (2 m).
 */
function sectionProblems(values: BladeValues): Problem[] {
  if (values.sectionCoordinates.length > 0) {
    const own = readOwnSection(values.sectionCoordinates);
    return own.ok ? [] : [{ field: 'sectionCoordinates', rule: 'unsound', detail: own.error }];
  }
  const thickest = Math.max(values.rootThicknessPercent, values.tipThicknessPercent);
  const shorter = Math.min(values.camberPositionPercent, 100 - values.camberPositionPercent);
  const limit = (shorter * shorter) / thickest;
  const against = 'what its place and the thickness leave room for';
  return [
    ...demand('camberPercent', values.camberPercent, 'atMost', limit, against),
    ...demand('camberPercent', values.camberPercent, 'atLeast', -limit, against),
  ];
}

function skinProblems(values: BladeValues): Problem[] {
  if (values.build === 'solid') return [];
  const { root, tip } = airfoilEnds(values);
  const limits = [root, tip].map((end) => insetLimit(sectionOf(values, end)));
  const thin = demand(
    'skinThicknessMm',
    values.skinThicknessMm,
    'below',
    mmFromMetres(Math.min(...limits)),
    'half the thickness of the thinner end',
  );
  if (thin.length > 0 || coreLoft(values)) return thin;
  const field = values.sectionCoordinates.length > 0 ? 'sectionCoordinates' : 'camberPercent';
  const detail = 'has a side that turns back along the chord, on which no even skin can be laid';
  return [{ field, rule: 'unsound', detail }];
}
