import { threadRootDiameter } from '../../../engine/mass/thread';
import type { ValuesByKind } from '../../../parts/registry';
import {
  CORNER,
  chamferCircle,
  type EndShape,
  insideOf,
  type MeridianPoint,
  type Piece,
  type Size,
  withoutRepeats,
} from '../piece';
import type { SizeWriter } from '../sizeWriter';
import { threadName } from '../threadName';
import { say } from '../words';

type Bolt = ValuesByKind['bolt'];

/** Places along a bolt, mm from the top of its head or extension, and its thread's radii. */
interface Places {
  readonly extension: number;
  readonly seat: number;
  readonly threadFrom: number;
  readonly end: number;
  readonly radius: number;
  readonly root: number;
  readonly point: number;
  readonly headed: boolean;
}

/** The bolt with its head at the left: u = 0 on top, the datum under the head. */
export function boltPiece(values: Bolt, writer: SizeWriter): Piece {
  const at = placesOf(values);
  const outer = outerOf(values, at);
  const { inside, hole } = socketOf(values);
  return {
    outer,
    inside,
    regions: [{ points: [...outer.slice(hole.length > 0 ? 1 : 0), ...hole.toReversed()], tilt: 1 }],
    hexes: hexesOf(values, at),
    threads: threadLines(values, at),
    end: endOf(values, at),
    sizes: [
      ...lengths(values, at, writer),
      ...diameters(values, at, writer),
      ...notes(values, at, writer),
    ],
    remarks: remarksOf(values),
  };
}

function placesOf(values: Bolt): Places {
  const headed = values.headForm !== 'none';
  const extension = values.extensionLengthMm;
  const seat = extension + (headed ? values.headHeightMm : 0);
  const end = seat + values.lengthMm;
  const radius = values.shankDiameterMm / 2;
  return {
    extension,
    seat,
    end,
    threadFrom: end - values.threadLengthMm,
    radius,
    root: threadRootDiameter(values.shankDiameterMm, values.threadPitchMm) / 2,
    point: values.pointDiameterMm / 2,
    headed,
  };
}

function outerOf(values: Bolt, at: Places): MeridianPoint[] {
  const points: MeridianPoint[] = [[0, 0]];
  const add = (u: number, r: number, bulge = 0) => points.push([u, r, bulge]);
  const wide = values.extensionDiameterMm / 2;
  if (at.extension > 0) {
    add(0, wide);
    add(at.extension, wide);
  }
  if (at.headed) points.push(...headPoints(values, at));
  add(at.seat, at.radius);
  add(at.threadFrom, at.radius);
  const chamfer = at.point > 0 ? at.radius - at.point : 0;
  add(at.end - chamfer, at.radius);
  add(at.end, at.radius - chamfer);
  add(at.end, 0);
  return withoutRepeats(points);
}

function headPoints(values: Bolt, { extension, seat }: Places): MeridianPoint[] {
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

function socketOf({ socketDepthMm, socketAcrossMm }: Bolt) {
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

function hexesOf(values: Bolt, { extension, seat }: Places): Piece['hexes'] {
  if (values.headForm !== 'hexagon') return [];
  const { headDiameterMm: across, headChamferMm: chamferLeft } = values;
  return [{ from: extension, to: seat, across, chamferLeft, chamferRight: 0 }];
}

function threadLines(values: Bolt, at: Places): Piece['threads'] {
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

function endOf(values: Bolt, at: Places): EndShape[] {
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

/** From the face under the head, which clamps; the thread from the end, as it is cut and measured. */
function lengths(values: Bolt, at: Places, writer: SizeWriter): Size[] {
  const head = headSide(values);
  const sizes: Size[] = [
    {
      kind: 'length',
      feature: 'lengthMm',
      from: at.seat,
      to: at.end,
      radii: [head, at.point > 0 ? at.point : at.radius],
      text: writer.size('lengthMm', values.lengthMm),
    },
  ];
  if (!isFull(values)) {
    sizes.push({
      kind: 'length',
      feature: 'threadLengthMm',
      from: at.threadFrom,
      to: at.end,
      radii: [at.radius, at.radius],
      text: writer.size('threadLengthMm', values.threadLengthMm),
    });
  }
  if (at.headed) {
    sizes.push({
      kind: 'length',
      feature: 'headHeightMm',
      from: at.extension,
      to: at.seat,
      radii: [head, head],
      text: writer.size('headHeightMm', values.headHeightMm),
    });
    if (values.headForm === 'button' && values.headRimHeightMm > 0) {
      sizes.push({
        kind: 'length',
        feature: 'headRimHeightMm',
        from: at.seat - values.headRimHeightMm,
        to: at.seat,
        radii: [head, head],
        text: writer.size('headRimHeightMm', values.headRimHeightMm),
      });
    }
  }
  if (at.extension > 0) {
    const alone = writer.hasOwn('extensionLengthMm') || !at.headed;
    sizes.push({
      kind: 'length',
      feature: alone ? 'extensionLengthMm' : 'headTotal',
      from: 0,
      to: alone ? at.extension : at.seat,
      radii: [
        values.extensionDiameterMm / 2,
        alone ? Math.max(values.extensionDiameterMm / 2, at.headed ? head : at.radius) : head,
      ],
      text: alone
        ? writer.size('extensionLengthMm', values.extensionLengthMm)
        : writer.size('headTotal', at.seat),
    });
  }
  return sizes;
}

function headSide(values: Bolt): number {
  if (values.headForm === 'none') return values.shankDiameterMm / 2;
  return (values.headDiameterMm / 2) * (values.headForm === 'hexagon' ? CORNER : 1);
}

/** Threaded up to the head, or from end to end. */
function isFull(values: Bolt): boolean {
  return values.threadLengthMm >= values.lengthMm - 1e-9;
}

function diameters(values: Bolt, at: Places, writer: SizeWriter): Size[] {
  const sizes: Size[] = [];
  if (at.extension > 0) {
    sizes.push({
      kind: 'diameter',
      feature: 'extensionDiameterMm',
      r: values.extensionDiameterMm / 2,
      from: 0,
      to: at.extension,
      text: `\u00d8${writer.size('extensionDiameterMm', values.extensionDiameterMm)}`,
    });
  }
  if (values.headForm === 'hexagon') {
    sizes.push({
      kind: 'flats',
      feature: 'headDiameterMm',
      across: values.headDiameterMm,
      text: say('drawing.flats', { size: writer.size('headDiameterMm', values.headDiameterMm) }),
    });
  } else if (at.headed) {
    const r = values.headDiameterMm / 2;
    const chamfer = values.headForm === 'cap' ? values.headChamferMm : 0;
    const rim =
      values.headForm === 'button' ? values.headHeightMm - values.headRimHeightMm : chamfer;
    sizes.push({
      kind: 'diameter',
      feature: 'headDiameterMm',
      r,
      from: at.extension + rim,
      to: at.seat,
      text: `\u00d8${writer.size('headDiameterMm', values.headDiameterMm)}`,
    });
  }
  const chamfer = at.point > 0 ? at.radius - at.point : 0;
  const name = threadName(values.shankDiameterMm, values.threadPitchMm);
  const full = isFull(values);
  sizes.push({
    kind: 'diameter',
    feature: 'thread',
    r: at.radius,
    from: at.threadFrom,
    to: at.end - chamfer,
    text: full
      ? say(at.headed ? 'drawing.threadFull' : 'drawing.threadAll', { thread: name })
      : name,
  });
  return sizes;
}

function notes(values: Bolt, at: Places, writer: SizeWriter): Size[] {
  const sizes: Size[] = [];
  const note = (feature: string, u: number, r: number, text: string) =>
    sizes.push({ kind: 'note', feature, at: [u, r], text });
  const plainTo = at.threadFrom - values.threadRunOutMm;
  if (plainTo > at.seat + 1e-6) {
    const size = writer.size('shankDiameterMm', values.shankDiameterMm);
    note('shank', (at.seat + plainTo) / 2, at.radius, say('drawing.shank', { size }));
  }
  if (values.threadRunOutMm > 0) {
    const size = writer.size('threadRunOutMm', values.threadRunOutMm);
    const u = at.threadFrom - values.threadRunOutMm / 2;
    note('threadRunOutMm', u, at.radius, say('drawing.runOut', { size }));
  }
  if (at.point > 0) {
    const size = writer.size('pointDiameterMm', values.pointDiameterMm);
    const half = (at.radius - at.point) / 2;
    note('pointDiameterMm', at.end - half, at.point + half, say('drawing.point', { size }));
  }
  if (at.headed && values.headForm !== 'button' && values.headChamferMm > 0) {
    const size = writer.size('headChamferMm', values.headChamferMm);
    const hexagon = values.headForm === 'hexagon';
    const points = headPoints(values, at);
    const [u, r] = [(points[0][0] + points[1][0]) / 2, (points[0][1] + points[1][1]) / 2];
    const key = hexagon ? 'drawing.chamferHex' : 'drawing.chamfer';
    note('headChamferMm', u, r, say(key, { size }));
  }
  if (values.headForm === 'button') {
    const size = writer.size('headTopDiameterMm', values.headTopDiameterMm);
    const r = values.headTopDiameterMm / 2;
    note('headTopDiameterMm', at.extension, r, say('drawing.flatTop', { size }));
  }
  if (values.socketDepthMm > 0) sizes.push(socketNote(values, writer));
  return sizes;
}

function socketNote(values: Bolt, writer: SizeWriter): Size {
  const half = values.socketAcrossMm / 2;
  return {
    kind: 'endNote',
    feature: 'socket',
    at: [half * Math.cos(Math.PI / 3), half * Math.sin(Math.PI / 3)],
    text: say('drawing.socket', {
      across: writer.size('socketAcrossMm', values.socketAcrossMm),
      depth: writer.size('socketDepthMm', values.socketDepthMm),
    }),
  };
}

function remarksOf(values: Bolt): string[] {
  const remarks: string[] = [];
  if (values.threadForm === 'rolled') remarks.push(say('drawing.remarkRolled'));
  if (values.propertyClass !== 'unknown') {
    remarks.push(say('drawing.remarkClass', { name: values.propertyClass }));
  }
  return remarks;
}
