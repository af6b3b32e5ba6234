import { CHAMFERED_CORE, DEEPEST_CHAMFER } from '../chamferedHexagon';
import { atMost, type Problem } from '../contract';
import { demand, requirePitch } from '../rules';
import { HEXAGON_CORNERS } from '../shapes';
import { type BoltValues, threadRadiusMm } from './parameters';

/** Corners of the key socket over the diameter around it, at most: some wall is left, also when drawn with 12 chords. */
const WIDEST_SOCKET = 0.95;

/** Deepest chamfer of a cap head over its diameter. */
const DEEPEST_CAP_CHAMFER = 0.25;

export function boltProblems(values: BoltValues): Problem[] {
  const pitch = requirePitch(values.threadPitchMm, values.shankDiameterMm);
  const length = atMost(values, 'threadLengthMm', 'lengthMm');
  // What follows is worked out from a thread that exists.
  if (pitch.length + length.length > 0) return [...length, ...pitch];
  return [...threadProblems(values), ...headProblems(values), ...socketProblems(values)];
}

/** Length left for a plain shank and run-out, mm; without the last digits of a difference of typed numbers. */
export function unthreadedMm(values: BoltValues): number {
  return Number((values.lengthMm - values.threadLengthMm).toFixed(9));
}

function threadProblems(values: BoltValues): Problem[] {
  const { threadRunOutMm, pointDiameterMm, threadLengthMm } = values;
  const problems: Problem[] = demand(
    'threadRunOutMm',
    threadRunOutMm,
    'atMost',
    unthreadedMm(values),
    'the length without thread',
  );
  if (pointDiameterMm > 0) {
    const radius = threadRadiusMm(values);
    const shortest = 2 * (radius - threadLengthMm);
    problems.push(
      ...demand(
        'pointDiameterMm',
        pointDiameterMm,
        'below',
        2 * radius,
        'the mean thread diameter',
      ),
      ...demand(
        'pointDiameterMm',
        pointDiameterMm,
        'above',
        shortest,
        'what the thread length leaves',
      ),
    );
  }
  return problems;
}

function headProblems(values: BoltValues): Problem[] {
  const { headForm, headDiameterMm, headHeightMm, headChamferMm, shankDiameterMm } = values;
  if (headForm === 'none') return [];
  const problems: Problem[] = demand(
    'headDiameterMm',
    headDiameterMm,
    'above',
    shankDiameterMm,
    'shankDiameterMm',
  );
  if (headForm === 'button') return [...problems, ...buttonProblems(values)];
  const share = headForm === 'cap' ? DEEPEST_CAP_CHAMFER : DEEPEST_CHAMFER;
  const deepest = share * headDiameterMm;
  problems.push(
    ...demand(
      'headChamferMm',
      headChamferMm,
      'atMost',
      deepest,
      'what the width of the head leaves',
    ),
    ...demand('headChamferMm', headChamferMm, 'below', headHeightMm, 'headHeightMm'),
  );
  return problems;
}

/** A flat narrower than the head, a rim lower than it, and a dome that does not bulge beyond its rim. */
function buttonProblems(values: BoltValues): Problem[] {
  const { headDiameterMm, headHeightMm, headTopDiameterMm, headRimHeightMm } = values;
  const flat = demand(
    'headTopDiameterMm',
    headTopDiameterMm,
    'below',
    headDiameterMm,
    'headDiameterMm',
  );
  if (flat.length > 0) return flat;
  const tallest = Math.sqrt(headDiameterMm ** 2 - headTopDiameterMm ** 2) / 2;
  const lowest = headHeightMm - tallest;
  return [
    ...demand('headRimHeightMm', headRimHeightMm, 'below', headHeightMm, 'headHeightMm'),
    ...demand(
      'headRimHeightMm',
      headRimHeightMm,
      'atLeast',
      lowest,
      'what a dome within the rim reaches',
    ),
  ];
}

/** The socket stays within what it is cut into, in depth and with its corners. */
function socketProblems(values: BoltValues): Problem[] {
  const { headForm, headHeightMm, extensionLengthMm, socketDepthMm } = values;
  if (socketDepthMm === 0) return [];
  const problems: Problem[] = [];
  const limitDepth = (limit: number, against: string) =>
    problems.push(...demand('socketDepthMm', socketDepthMm, 'below', limit, against));
  const limitAcross = (diameterMm: number, around: string) => {
    const limit = (WIDEST_SOCKET * diameterMm) / HEXAGON_CORNERS;
    const against = `${around}, less a thin wall round the corners`;
    problems.push(...demand('socketAcrossMm', values.socketAcrossMm, 'atMost', limit, against));
  };
  if (headForm === 'none') {
    const { pointDiameterMm, lengthMm } = values;
    const point = pointDiameterMm > 0 ? threadRadiusMm(values) - pointDiameterMm / 2 : 0;
    limitDepth(extensionLengthMm + lengthMm - point, 'the length above the point');
  } else {
    limitDepth(headHeightMm + extensionLengthMm, 'the height of the head');
  }
  if (extensionLengthMm > 0) limitAcross(values.extensionDiameterMm, 'the extension');
  if (socketDepthMm <= extensionLengthMm) return problems;
  if (headForm === 'none') {
    const { threadLengthMm, lengthMm } = values;
    problems.push(...demand('threadLengthMm', threadLengthMm, 'atLeast', lengthMm, 'lengthMm'));
    limitAcross(2 * threadRadiusMm(values), 'the thread');
  } else {
    limitAcross(socketWallMm(values), 'the head');
  }
  return problems;
}

/** Diameter of the round that the socket of a head is cut into, mm. */
function socketWallMm(values: BoltValues): number {
  const { headForm, headDiameterMm } = values;
  if (headForm === 'button') return values.headTopDiameterMm;
  if (headForm === 'cap') return headDiameterMm - 2 * values.headChamferMm;
  return values.headChamferMm > 0 ? CHAMFERED_CORE * headDiameterMm : headDiameterMm;
}
