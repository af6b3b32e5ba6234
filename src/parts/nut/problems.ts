import { threadMeanRadius } from '../../engine/mass/thread';
import { DEEPEST_CHAMFER } from '../chamferedHexagon';
import type { Problem } from '../contract';
import { demand, requirePitch } from '../rules';
import { HEXAGON_CORNERS } from '../shapes';
import type { NutValues } from './parameters';

export function nutProblems(values: NutValues): Problem[] {
  const { threadDiameterMm, collarHeightMm } = values;
  const wider = (field: 'acrossMm' | 'collarDiameterMm') =>
    demand(field, values[field], 'above', threadDiameterMm, 'threadDiameterMm');
  const problems: Problem[] = [
    ...wider('acrossMm'),
    ...(collarHeightMm > 0 ? wider('collarDiameterMm') : []),
    ...requirePitch(values.threadPitchMm, threadDiameterMm),
  ];
  // What follows is worked out from a nut that is sound so far.
  if (problems.length > 0) return problems;
  return [...insertProblems(values), ...countersinkProblems(values), ...chamferProblems(values)];
}

/** Ring and countersink over the outside round them, at most: some wall is left. */
const WIDEST_BORE = 0.97;

/** Narrowest outside that a bore of body and collar has to leave standing, mm, and the field that sets it. */
function narrowest(values: NutValues): readonly ['acrossMm' | 'collarDiameterMm', number] {
  const { acrossMm, collarDiameterMm, collarHeightMm } = values;
  return collarHeightMm > 0 && collarDiameterMm < acrossMm
    ? ['collarDiameterMm', collarDiameterMm]
    : ['acrossMm', acrossMm];
}

function thinWall(field: 'acrossMm' | 'collarDiameterMm'): string {
  return field === 'acrossMm' ? 'the body, less a thin wall' : 'the collar, less a thin wall';
}

function insertProblems(values: NutValues): Problem[] {
  const { insertHeightMm, insertOuterDiameterMm, insertInnerDiameterMm } = values;
  if (insertHeightMm === 0) return [];
  const height = values.heightMm + values.collarHeightMm;
  const [field, outside] = narrowest(values);
  const widest = WIDEST_BORE * outside;
  return [
    ...demand('insertHeightMm', insertHeightMm, 'below', height, 'the height of body and collar'),
    ...demand('insertOuterDiameterMm', insertOuterDiameterMm, 'atMost', widest, thinWall(field)),
    ...demand(
      'insertOuterDiameterMm',
      insertOuterDiameterMm,
      'atLeast',
      values.threadDiameterMm,
      'threadDiameterMm',
    ),
    ...demand(
      'insertInnerDiameterMm',
      insertInnerDiameterMm,
      'below',
      insertOuterDiameterMm,
      'insertOuterDiameterMm',
    ),
  ];
}

function boreMm(values: NutValues): number {
  return 2 * threadMeanRadius(values.threadDiameterMm, values.threadPitchMm);
}

/** Wider than the thread, narrower than the nut, and no deeper than the thread is long. */
function countersinkProblems(values: NutValues): Problem[] {
  const { countersinkDiameterMm, insertHeightMm } = values;
  if (countersinkDiameterMm === 0) return [];
  const bore = boreMm(values);
  const length = values.heightMm + values.collarHeightMm - insertHeightMm;
  const deepest = bore + (countersunkEnds(values) === 2 ? length : 2 * length);
  const [field, outside] = narrowest(values);
  const check = (rule: 'above' | 'below' | 'atMost', bound: number, against: string) =>
    demand('countersinkDiameterMm', countersinkDiameterMm, rule, bound, against);
  return [
    ...check('above', bore, 'the mean bore of the thread'),
    ...check('atMost', WIDEST_BORE * outside, thinWall(field)),
    ...check('below', deepest, 'what the length of the thread leaves'),
  ];
}

/** The clamped face is always open; the far end only without ring and closed end. */
export function countersunkEnds(values: NutValues): 1 | 2 {
  return values.insertHeightMm > 0 || values.closedEndMm > 0 ? 1 : 2;
}

/** The chamfer's circle on the face lies outside every bore, and the two chamfers fit on the body. */
function chamferProblems(values: NutValues): Problem[] {
  const { chamferMm, acrossMm, form, heightMm } = values;
  if (chamferMm === 0) return [];
  const check = (limit: number, against: string) =>
    demand('chamferMm', chamferMm, 'atMost', limit, against);
  const holes = [boreMm(values), values.countersinkDiameterMm];
  if (values.insertHeightMm > 0) holes.push(values.insertOuterDiameterMm);
  const hole = Math.max(...holes);
  const hex = form === 'hex';
  const wall = hex
    ? (acrossMm * HEXAGON_CORNERS - hole) / (2 * Math.sqrt(3))
    : (acrossMm - hole) / 2;
  return [
    ...check(heightMm / 2, 'half the height'),
    ...check(0.9 * wall, 'nine tenths of what the bore leaves'),
    ...(hex ? check(DEEPEST_CHAMFER * acrossMm, 'eight hundredths of the width') : []),
  ];
}
