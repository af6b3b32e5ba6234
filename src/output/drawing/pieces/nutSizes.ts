import type { ValuesByKind } from '../../../parts/registry';
import { isUnified } from '../../../parts/threadTable';
import type { Size } from '../piece';
import { t } from '../roomText';
import type { SizeWriter } from '../sizeWriter';
import { threadName } from '../threadName';
import { hasUpperChamfer, type Places } from './nutPlaces';

type Nut = ValuesByKind['nut'];

export function lengths(values: Nut, at: Places, writer: SizeWriter): Size[] {
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

export function widths(values: Nut, at: Places, writer: SizeWriter): Size[] {
  const sizes: Size[] = [];
  const width = writer.size('acrossMm', values.acrossMm);
  if (values.form === 'hex') {
    sizes.push({
      kind: 'flats',
      feature: 'acrossMm',
      across: values.acrossMm,
      text: t('drawing.flats', { size: width }),
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

export function notes(values: Nut, at: Places, writer: SizeWriter): Size[] {
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
      text: t(key, { size: writer.size('chamferMm', values.chamferMm) }),
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
      text: t(both ? 'drawing.sinkBoth' : 'drawing.sinkOne', { size }),
    });
  }
  return sizes;
}

export function remarksOf(values: Nut, writer: SizeWriter): string[] {
  const remarks = [
    t(
      isUnified(values.threadDiameterMm, values.threadPitchMm)
        ? 'drawing.noteInchInside'
        : 'drawing.noteMetricInside',
    ),
  ];
  if (values.closedEndMm > 0) remarks.push(t('drawing.remarkBlind'));
  if (values.form === 'round' && !writer.bought) remarks.push(t('drawing.noteRound'));
  if (!writer.bought) remarks.push(t('drawing.remarkNutClass'));
  const locks = values.insertHeightMm > 0 || values.collarGrip === 'squeezed';
  if (!locks) remarks.push(t('drawing.noteNoLock'));
  if (values.insertHeightMm > 0) {
    remarks.push(t('drawing.remarkRing', { density: values.insertDensityKgM3 }));
  }
  if (values.collarHeightMm > 0 && values.collarGrip === 'squeezed') {
    remarks.push(t('drawing.remarkSqueezed'));
  }
  return remarks;
}
