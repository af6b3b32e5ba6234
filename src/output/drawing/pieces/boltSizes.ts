import type { ValuesByKind } from '../../../parts/registry';
import { isUnified } from '../../../parts/threadTable';
import { CORNER, type Size } from '../piece';
import { t } from '../roomText';
import { lengthText, type SizeWriter } from '../sizeWriter';
import { threadName } from '../threadName';
import type { Places } from './boltPlaces';
import { headPoints } from './boltShape';

type Bolt = ValuesByKind['bolt'];

/** From the face under the head, which clamps; the thread from the end, as it is cut and measured. */
export function lengths(values: Bolt, at: Places, writer: SizeWriter): Size[] {
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
  if (at.headed && !at.merged) {
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

export function headSide(values: Bolt): number {
  if (values.headForm === 'none') return values.shankDiameterMm / 2;
  return (values.headDiameterMm / 2) * (values.headForm === 'hexagon' ? CORNER : 1);
}

/** Threaded up to the head, or from end to end. */
export function isFull(values: Bolt): boolean {
  return values.threadLengthMm >= values.lengthMm - 1e-9;
}

export function diameters(values: Bolt, at: Places, writer: SizeWriter): Size[] {
  const sizes: Size[] = [];
  if (at.extension > 0 && !at.merged) {
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
      text: t('drawing.flats', { size: writer.size('headDiameterMm', values.headDiameterMm) }),
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
      from: at.merged ? 0 : at.extension + rim,
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
    text: full ? t(at.headed ? 'drawing.threadFull' : 'drawing.threadAll', { thread: name }) : name,
  });
  return sizes;
}

export function notes(values: Bolt, at: Places, writer: SizeWriter): Size[] {
  const sizes: Size[] = [];
  const note = (feature: string, u: number, r: number, text: string) =>
    sizes.push({ kind: 'note', feature, at: [u, r], text });
  const plainTo = at.threadFrom - values.threadRunOutMm;
  if (plainTo > at.seat + 1e-6) {
    const size = writer.size('shankDiameterMm', values.shankDiameterMm);
    note(
      'shank',
      (at.seat + plainTo) / 2,
      at.radius,
      t(writer.hasOwn('shankDiameterMm') ? 'drawing.shank' : 'drawing.shankFit', { size }),
    );
  }
  if (values.threadRunOutMm > 0) {
    const size = writer.size('threadRunOutMm', values.threadRunOutMm);
    const u = at.threadFrom - values.threadRunOutMm / 2;
    note('threadRunOutMm', u, at.radius, t('drawing.runOut', { size }));
  }
  if (at.point > 0) {
    const size = writer.size('pointDiameterMm', values.pointDiameterMm);
    const half = (at.radius - at.point) / 2;
    note('pointDiameterMm', at.end - half, at.point + half, t('drawing.point', { size }));
  }
  if (at.headed && values.headForm !== 'button' && values.headChamferMm > 0) {
    const size = writer.size('headChamferMm', values.headChamferMm);
    const hexagon = values.headForm === 'hexagon';
    const points = headPoints(values, at);
    const [u, r] = [(points[0][0] + points[1][0]) / 2, (points[0][1] + points[1][1]) / 2];
    const key = hexagon ? 'drawing.chamferHex' : 'drawing.chamfer';
    note('headChamferMm', u, r, t(key, { size }));
  }
  if (values.headForm === 'button') {
    const size = writer.size('headTopDiameterMm', values.headTopDiameterMm);
    const r = values.headTopDiameterMm / 2;
    note('headTopDiameterMm', at.extension, r, t('drawing.flatTop', { size }));
  }
  if (values.socketDepthMm > 0) sizes.push(socketNote(values, writer));
  return sizes;
}

export function socketNote(values: Bolt, writer: SizeWriter): Size {
  const half = values.socketAcrossMm / 2;
  return {
    kind: 'endNote',
    feature: 'socket',
    at: [half * Math.cos(Math.PI / 3), half * Math.sin(Math.PI / 3)],
    text: t('drawing.socket', {
      across: writer.size('socketAcrossMm', values.socketAcrossMm),
      depth: writer.size('socketDepthMm', values.socketDepthMm),
    }),
  };
}

export function remarksOf(values: Bolt, writer: SizeWriter): string[] {
  const inch = isUnified(values.shankDiameterMm, values.threadPitchMm);
  const remarks = [t(inch ? 'drawing.noteInchOutside' : 'drawing.noteMetricOutside')];
  if (values.threadForm === 'rolled') remarks.push(t('drawing.remarkRolled'));
  if (values.propertyClass !== 'unknown') {
    const key = writer.bought ? 'drawing.remarkClass' : 'drawing.noteStrength';
    remarks.push(t(key, { name: values.propertyClass }));
  }
  if (values.headForm !== 'none' && !writer.bought) {
    const radius = lengthText(filletMm(values.shankDiameterMm), writer.unit);
    remarks.push(t('drawing.noteFillet', { radius }));
  }
  return remarks;
}

/** Least fillets under the head of ISO 4762 (from memory): up to this thread diameter, mm, this radius, mm. */
const FILLETS = [
  [3, 0.1],
  [5, 0.2],
  [6, 0.25],
  [10, 0.4],
  [16, 0.6],
  [24, 0.8],
  [36, 1],
] as const;

/** Beyond the table in the proportion of its end. */
function filletMm(diameterMm: number): number {
  return FILLETS.find(([upTo]) => diameterMm <= upTo)?.[1] ?? diameterMm / 36;
}
