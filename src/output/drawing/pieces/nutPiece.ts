import { threadMinorDiameter } from '../../../engine/mass/thread';
import type { ValuesByKind } from '../../../parts/registry';
import {
  CORNER,
  chamferCircle,
  type EndShape,
  insideOf,
  type MeridianPoint,
  type Piece,
  type Segment,
  type Size,
  segmentsOf,
  withoutRepeats,
} from '../piece';
import type { SizeWriter } from '../sizeWriter';
import { threadName } from '../threadName';
import { say } from '../words';

type Nut = ValuesByKind['nut'];

/** Places along a nut, mm from its clamped face, and radii. */
interface Places {
  readonly body: number;
  /** Where the thread ends, and with it collar and ring. */
  readonly thread: number;
  readonly ring: number;
  readonly end: number;
  readonly minor: number;
  readonly major: number;
  readonly closed: boolean;
  readonly side: number;
  readonly face: number;
  readonly farFace: number;
}

/** The nut with its clamped face, the datum, at the left. */
export function nutPiece(values: Nut, writer: SizeWriter): Piece {
  const at = placesOf(values);
  const outer = outerOf(values, at);
  const hole = holeOf(values, at);
  const ring = ringOf(values, at);
  const metal = at.closed
    ? [...outer.slice(1), ...hole.toReversed()]
    : [...outer.slice(1, -1), ...hole.toReversed()];
  return {
    outer,
    inside: ring
      ? [...insideOf(hole.slice(0, ring.boreFrom)), ...ring.lines, ...segmentsOf(hole)]
      : insideOf(hole),
    regions: [
      { points: metal, tilt: 1 },
      ...(ring ? [{ points: ring.outline, tilt: -1 } as const] : []),
    ],
    hexes: hexesOf(values, at),
    threads: [threadLine(values, at)],
    end: endOf(values, at),
    sizes: [
      ...lengths(values, at, writer),
      ...widths(values, at, writer),
      ...notes(values, at, writer),
    ],
    remarks: remarksOf(values),
  };
}

function placesOf(values: Nut): Places {
  const body = values.heightMm;
  const thread = body + values.collarHeightMm;
  const hexagon = values.form === 'hex';
  const half = values.acrossMm / 2;
  const chamfer = values.chamferMm;
  const side = hexagon ? half * CORNER : half;
  const face = hexagon ? chamferCircle(values.acrossMm, chamfer) : half - chamfer;
  const closed = values.closedEndMm > 0;
  return {
    body,
    thread,
    ring: thread - values.insertHeightMm,
    end: thread + values.closedEndMm,
    minor: threadMinorDiameter(values.threadDiameterMm, values.threadPitchMm) / 2,
    major: values.threadDiameterMm / 2,
    closed,
    side,
    face,
    farFace: hasUpperChamfer(values) ? face : side,
  };
}

/** A closed end right on the body leaves no chamfer there. */
function hasUpperChamfer(values: Nut): boolean {
  return values.chamferMm > 0 && (values.closedEndMm === 0 || values.collarHeightMm > 0);
}

function outerOf(values: Nut, at: Places): MeridianPoint[] {
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

function holeOf(values: Nut, at: Places): MeridianPoint[] {
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

function ringOf(values: Nut, at: Places) {
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

function hexesOf(values: Nut, at: Places): Piece['hexes'] {
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

function threadLine(values: Nut, at: Places): Piece['threads'][number] {
  const sunk = Math.max(0, values.countersinkDiameterMm / 2 - at.major);
  const far = !at.closed && values.insertHeightMm === 0 ? sunk : 0;
  return { from: [sunk, at.major], to: [at.ring - far, at.major], hidden: true };
}

function endOf(values: Nut, at: Places): EndShape[] {
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
  if (values.countersinkDiameterMm > 0) circle(values.countersinkDiameterMm / 2);
  circle(at.minor);
  const ring = values.insertInnerDiameterMm / 2;
  if (values.insertHeightMm > 0 && ring < at.minor) circle(ring);
  if (values.countersinkDiameterMm / 2 < at.major) shapes.push({ shape: 'thread', r: at.major });
  return shapes;
}

function lengths(values: Nut, at: Places, writer: SizeWriter): Size[] {
  const collar = values.collarDiameterMm / 2;
  const hasCollar = values.collarHeightMm > 0;
  const endSide = hasCollar ? collar : at.farFace;
  const sizes: Size[] = [];
  const add = (feature: string, from: number, to: number, radii: [number, number], text: string) =>
    sizes.push({ kind: 'length', feature, from, to, radii, text });
  const bodyRadii: [number, number] = [
    at.face,
    !hasCollar && at.closed ? at.side : Math.max(at.farFace, hasCollar ? collar : 0),
  ];
  add('heightMm', 0, at.body, bodyRadii, writer.size('heightMm', values.heightMm));
  if (hasCollar) {
    const alone = writer.hasOwn('collarHeightMm');
    add(
      alone ? 'collarHeightMm' : 'threadTotal',
      alone ? at.body : 0,
      at.thread,
      [alone ? Math.max(at.farFace, collar) : at.face, endSide],
      alone
        ? writer.size('collarHeightMm', values.collarHeightMm)
        : writer.size('threadTotal', at.thread),
    );
  }
  if (at.closed) {
    const alone = writer.hasOwn('closedEndMm');
    add(
      alone ? 'closedEndMm' : 'total',
      alone ? at.thread : 0,
      at.end,
      [alone ? endSide : at.face, endSide],
      alone ? writer.size('closedEndMm', values.closedEndMm) : writer.size('total', at.end),
    );
  }
  if (values.insertHeightMm > 0) {
    add(
      'insertHeightMm',
      at.ring,
      at.thread,
      [values.insertOuterDiameterMm / 2, endSide],
      writer.size('insertHeightMm', values.insertHeightMm),
    );
  }
  return sizes;
}

function widths(values: Nut, at: Places, writer: SizeWriter): Size[] {
  const sizes: Size[] = [];
  const width = writer.size('acrossMm', values.acrossMm);
  if (values.form === 'hex') {
    sizes.push({
      kind: 'flats',
      feature: 'acrossMm',
      across: values.acrossMm,
      text: say('drawing.flats', { size: width }),
    });
  } else {
    const to = values.collarHeightMm > 0 ? at.body : at.end;
    const upper = hasUpperChamfer(values) ? values.chamferMm : 0;
    sizes.push({
      kind: 'diameter',
      feature: 'acrossMm',
      r: values.acrossMm / 2,
      from: values.chamferMm,
      to: to - upper,
      text: `\u00d8${width}`,
    });
  }
  if (values.collarHeightMm > 0) {
    sizes.push({
      kind: 'diameter',
      feature: 'collarDiameterMm',
      r: values.collarDiameterMm / 2,
      from: at.body,
      to: at.end,
      text: `\u00d8${writer.size('collarDiameterMm', values.collarDiameterMm)}`,
    });
  }
  sizes.push({
    kind: 'diameter',
    feature: 'thread',
    r: at.major,
    from: 0,
    to: at.ring,
    hole: 'left',
    text: threadName(values.threadDiameterMm, values.threadPitchMm),
  });
  if (values.insertHeightMm > 0) {
    const right = at.closed ? 'left' : 'right';
    const hole = (feature: string, diameter: number, text: string): Size => ({
      kind: 'diameter',
      feature,
      r: diameter / 2,
      from: at.ring,
      to: at.thread,
      hole: right,
      text,
    });
    const bore = writer.size('insertInnerDiameterMm', values.insertInnerDiameterMm);
    const wide = writer.size('insertOuterDiameterMm', values.insertOuterDiameterMm);
    sizes.push(
      hole('insertInnerDiameterMm', values.insertInnerDiameterMm, `\u00d8${bore}`),
      hole('insertOuterDiameterMm', values.insertOuterDiameterMm, `\u00d8${wide}`),
    );
  }
  return sizes;
}

function notes(values: Nut, at: Places, writer: SizeWriter): Size[] {
  const sizes: Size[] = [];
  if (values.chamferMm > 0) {
    const both = hasUpperChamfer(values) ? 'Both' : '';
    const key =
      values.form === 'hex'
        ? (`drawing.chamferHex${both}` as const)
        : (`drawing.chamfer${both}` as const);
    sizes.push({
      kind: 'note',
      feature: 'chamferMm',
      at: [values.chamferMm / 2, (at.face + at.side) / 2],
      text: say(key, { size: writer.size('chamferMm', values.chamferMm) }),
    });
  }
  const sink = values.countersinkDiameterMm / 2;
  if (sink > 0) {
    const both = !at.closed && values.insertHeightMm === 0;
    const size = writer.size('countersinkDiameterMm', values.countersinkDiameterMm);
    sizes.push({
      kind: 'endNote',
      feature: 'countersinkDiameterMm',
      at: [sink * Math.cos(Math.PI / 4), sink * Math.sin(Math.PI / 4)],
      text: say(both ? 'drawing.sinkBoth' : 'drawing.sinkOne', { size }),
    });
  }
  return sizes;
}

function remarksOf(values: Nut): string[] {
  const remarks: string[] = [];
  if (values.insertHeightMm > 0) {
    remarks.push(say('drawing.remarkRing', { density: values.insertDensityKgM3 }));
  }
  if (values.collarHeightMm > 0 && values.collarGrip === 'squeezed') {
    remarks.push(say('drawing.remarkSqueezed'));
  }
  return remarks;
}
