import type { ValuesByKind } from '../../../parts/registry';
import {
  CORNER,
  chamferCircle,
  type EndShape,
  insideOf,
  type MeridianPoint,
  type Piece,
  withoutRepeats,
} from '../piece';

import type { Places } from './boltPlaces';

type Bolt = ValuesByKind['bolt'];

export function outerOf(values: Bolt, at: Places): MeridianPoint[] {
  const points: MeridianPoint[] = [[0, 0]];
  const add = (u: number, r: number, bulge = 0) => points.push([u, r, bulge]);
  const wide = values.extensionDiameterMm / 2;
  if (at.merged) {
    add(0, wide);
    add(at.seat, wide);
  } else if (at.extension > 0) {
    add(0, wide);
    add(at.extension, wide);
  }
  if (at.headed && !at.merged) points.push(...headPoints(values, at));
  add(at.seat, at.radius);
  add(at.threadFrom, at.radius);
  const chamfer = at.point > 0 ? at.radius - at.point : 0;
  add(at.end - chamfer, at.radius);
  add(at.end, at.radius - chamfer);
  add(at.end, 0);
  return withoutRepeats(points);
}

export function headPoints(values: Bolt, { extension, seat }: Places): MeridianPoint[] {
  const radius = values.headDiameterMm / 2;
  if (values.headForm === 'button') {
    const flat = values.headTopDiameterMm / 2;
    const rim = values.headRimHeightMm;
    const rise = seat - extension - rim;
    // Sphere about the axis through the flat's rim and the top of the straight one.
    const centre = (rise * rise + radius * radius - flat * flat) / (2 * rise);
    const sweep = Math.atan2(radius, rise - centre) - Math.atan2(flat, -centre);
    return [
      [extension, flat, Math.tan(sweep / 4)],
      [extension + rise, radius],
      [seat, radius],
    ];
  }
  const chamfer = values.headChamferMm;
  const hexagon = values.headForm === 'hexagon';
  const side = hexagon ? radius * CORNER : radius;
  const face = hexagon ? chamferCircle(values.headDiameterMm, chamfer) : radius - chamfer;
  return [
    [extension, face],
    [extension + chamfer, side],
    [seat, side],
  ];
}

export function socketOf({ socketDepthMm, socketAcrossMm }: Bolt) {
  if (socketDepthMm === 0) return { hole: [] as MeridianPoint[], inside: [] };
  const corner = (socketAcrossMm / 2) * CORNER;
  const hole: MeridianPoint[] = [
    [0, corner],
    [socketDepthMm, corner],
    [socketDepthMm, 0],
  ];
  const edge = { from: [0, corner / 2], to: [socketDepthMm, corner / 2] } as const;
  return { hole, inside: [...insideOf(hole), edge] };
}

export function hexesOf(values: Bolt, { extension, seat }: Places): Piece['hexes'] {
  if (values.headForm !== 'hexagon') return [];
  const { headDiameterMm: across, headChamferMm: chamferLeft } = values;
  return [{ from: extension, to: seat, across, chamferLeft, chamferRight: 0 }];
}

export function threadLines(values: Bolt, at: Places): Piece['threads'] {
  const cut = at.point > 0 ? Math.max(0, at.root - at.point) : 0;
  const thread = {
    from: [at.threadFrom, at.root],
    to: [at.end - cut, at.root],
    hidden: false,
  } as const;
  if (values.threadRunOutMm === 0) return [thread];
  const fade = {
    from: [at.threadFrom - values.threadRunOutMm, at.radius],
    to: [at.threadFrom, at.root],
    hidden: false,
  } as const;
  return [thread, fade];
}

export function endOf(values: Bolt, at: Places): EndShape[] {
  const shapes: EndShape[] = [];
  const circle = (diameter: number) => shapes.push({ shape: 'circle', r: diameter / 2 });
  if (at.extension > 0) circle(values.extensionDiameterMm);
  const covers = at.extension > 0 ? values.extensionDiameterMm : 0;
  if (at.headed) {
    const across = values.headDiameterMm;
    const chamfer = values.headChamferMm;
    if (values.headForm === 'hexagon') {
      if (covers < across * CORNER) shapes.push({ shape: 'hexagon', across });
      const r = chamferCircle(across, chamfer);
      if (chamfer > 0 && r < across / 2 && 2 * r > covers) shapes.push({ shape: 'circle', r });
    } else {
      if (covers < across) circle(across);
      const top = values.headForm === 'button' ? values.headTopDiameterMm : across - 2 * chamfer;
      if (top < across && top > covers) circle(top);
    }
  } else if (covers < 2 * at.radius) {
    circle(2 * at.radius);
    if (at.threadFrom <= at.seat + 1e-9 && 2 * at.root > covers) {
      shapes.push({ shape: 'thread', r: at.root });
    }
  }
  if (values.socketDepthMm > 0) shapes.push({ shape: 'hexagon', across: values.socketAcrossMm });
  return shapes;
}
