import type { ValuesByKind } from '../../../parts/registry';
import {
  type EndShape,
  type MeridianPoint,
  type Piece,
  type Segment,
  withoutRepeats,
} from '../piece';

import { hasUpperChamfer, type Places } from './nutPlaces';

type Nut = ValuesByKind['nut'];

export function outerOf(values: Nut, at: Places): MeridianPoint[] {
  const upper = hasUpperChamfer(values) ? values.chamferMm : 0;
  const collar = values.collarHeightMm > 0 ? values.collarDiameterMm / 2 : null;
  const bodyEnd = collar === null ? at.end : at.body;
  return withoutRepeats([
    [0, 0],
    [0, at.face],
    [values.chamferMm, at.side],
    [bodyEnd - upper, at.side],
    [bodyEnd, at.farFace],
    ...(collar === null
      ? []
      : ([
          [at.body, collar],
          [at.end, collar],
        ] as const)),
    [at.end, 0],
  ]);
}

export function holeOf(values: Nut, at: Places): MeridianPoint[] {
  const sink = values.countersinkDiameterMm / 2;
  const far = sink > 0 && !at.closed && values.insertHeightMm === 0;
  const length = at.ring;
  const depth = sink > 0 ? Math.min(sink - at.minor, far ? length / 2 : length) : 0;
  const points: MeridianPoint[] = [
    [0, at.minor + depth],
    [depth, at.minor],
    [at.ring - (far ? depth : 0), at.minor],
  ];
  if (far) points.push([at.ring, at.minor + depth]);
  if (values.insertHeightMm > 0) {
    const wide = values.insertOuterDiameterMm / 2;
    points.push([at.ring, wide], [at.thread, wide]);
  }
  if (at.closed) points.push([at.thread, 0]);
  return withoutRepeats(points);
}

export function ringOf(values: Nut, at: Places) {
  if (values.insertHeightMm === 0) return null;
  const [inner, wide] = [values.insertInnerDiameterMm / 2, values.insertOuterDiameterMm / 2];
  const outline: MeridianPoint[] = [
    [at.ring, inner],
    [at.thread, inner],
    [at.thread, wide],
    [at.ring, wide],
  ];
  const across = (u: number): Segment => ({ from: [u, 0], to: [u, wide] });
  const lines: Segment[] = [
    { from: [at.ring, inner], to: [at.thread, inner] },
    across(at.ring),
    across(at.thread),
  ];
  // What lies before the ring: the thread with its countersink.
  const boreFrom = values.countersinkDiameterMm > 0 ? 2 : 1;
  return { outline, lines, boreFrom };
}

export function hexesOf(values: Nut, at: Places): Piece['hexes'] {
  if (values.form !== 'hex') return [];
  const to = values.collarHeightMm > 0 ? at.body : at.end;
  return [
    {
      from: 0,
      to,
      across: values.acrossMm,
      chamferLeft: values.chamferMm,
      chamferRight: hasUpperChamfer(values) ? values.chamferMm : 0,
    },
  ];
}

export function threadLine(values: Nut, at: Places): Piece['threads'][number] {
  const sunk = Math.max(0, values.countersinkDiameterMm / 2 - at.major);
  const far = !at.closed && values.insertHeightMm === 0 ? sunk : 0;
  return { from: [sunk, at.major], to: [at.ring - far, at.major], hidden: true };
}

export function endOf(values: Nut, at: Places): EndShape[] {
  const shapes: EndShape[] = [];
  const circle = (r: number) => shapes.push({ shape: 'circle', r });
  const collar = values.collarHeightMm > 0 ? values.collarDiameterMm / 2 : 0;
  if (values.form === 'hex') {
    shapes.push({ shape: 'hexagon', across: values.acrossMm });
    if (values.chamferMm > 0 && at.face < values.acrossMm / 2) circle(at.face);
    if (collar > at.side) circle(collar);
  } else {
    circle(Math.max(at.side, collar));
    if (collar > at.side) circle(at.side);
    if (values.chamferMm > 0) circle(at.face);
  }
  const sink = values.countersinkDiameterMm / 2;
  if (sink > 0) circle(sink);
  circle(at.minor);
  const ring = values.insertInnerDiameterMm / 2;
  if (values.insertHeightMm > 0 && ring < at.minor) circle(ring);
  if (Math.abs(sink - at.major) > 1e-6) shapes.push({ shape: 'thread', r: at.major });
  return shapes;
}
