import type { ValuesByKind } from '../../../parts/registry';
import {
  type EndShape,
  insideOf,
  type MeridianPoint,
  type Piece,
  type Size,
  withoutRepeats,
} from '../piece';
import type { SizeWriter } from '../sizeWriter';

/** A weight: its seat, the datum, at the left. */
export function weightPiece(values: ValuesByKind['weight'], writer: SizeWriter): Piece {
  const { stalkLengthMm: seat, boreMm } = values;
  const end = seat + values.lengthMm;
  const [radius, stalk] = [values.diameterMm / 2, values.stalkDiameterMm / 2];
  const hasStalk = seat > 0;
  const outer = withoutRepeats([
    [0, 0],
    ...(hasStalk
      ? ([
          [0, stalk],
          [seat, stalk],
        ] as const)
      : []),
    [seat, radius],
    [end, radius],
    [end, 0],
  ]);
  const sizes: Size[] = [];
  const length = (feature: string, from: number, to: number, radii: [number, number], mm: number) =>
    sizes.push({ kind: 'length', feature, from, to, radii, text: writer.size(feature, mm) });
  const left = hasStalk ? stalk : radius;
  if (!hasStalk || writer.hasOwn('lengthMm')) {
    const near = Math.max(radius, left);
    length('lengthMm', seat, end, [near, radius], values.lengthMm);
  } else length('total', 0, end, [left, radius], end);
  if (hasStalk) length('stalkLengthMm', 0, seat, [left, Math.max(stalk, radius)], seat);
  const diameter = (feature: string, r: number, from: number, to: number) =>
    sizes.push({
      kind: 'diameter',
      feature,
      r,
      from,
      to,
      text: `\u00d8${writer.size(feature, 2 * r)}`,
    });
  diameter('diameterMm', radius, seat, end);
  if (hasStalk) diameter('stalkDiameterMm', stalk, 0, seat);
  // Seen from the seat, a stalk as wide as the weight hides it.
  const circles = !hasStalk ? [radius] : stalk < radius ? [radius, stalk] : [stalk];
  return bored(outer, boreMm / 2, end, 'boreMm', circles, sizes, writer);
}

/** A washer: the face that it sits on, the datum, at the left. */
export function washerPiece(values: ValuesByKind['washer'], writer: SizeWriter): Piece {
  const radius = values.outerDiameterMm / 2;
  const { thicknessMm } = values;
  const outer: MeridianPoint[] = [
    [0, 0],
    [0, radius],
    [thicknessMm, radius],
    [thicknessMm, 0],
  ];
  const sizes: Size[] = [
    {
      kind: 'length',
      feature: 'thicknessMm',
      from: 0,
      to: thicknessMm,
      radii: [radius, radius],
      text: writer.size('thicknessMm', thicknessMm),
    },
    {
      kind: 'diameter',
      feature: 'outerDiameterMm',
      r: radius,
      from: 0,
      to: thicknessMm,
      text: `\u00d8${writer.size('outerDiameterMm', values.outerDiameterMm)}`,
    },
  ];
  const inner = values.innerDiameterMm / 2;
  return bored(outer, inner, thicknessMm, 'innerDiameterMm', [radius], sizes, writer);
}

/** A turned piece with a bore right through it, or none. */
function bored(
  outer: readonly MeridianPoint[],
  bore: number,
  end: number,
  feature: string,
  radii: readonly number[],
  sizes: readonly Size[],
  writer: SizeWriter,
): Piece {
  const circles = radii.map((r): EndShape => ({ shape: 'circle', r }));
  const solid = { outer, hexes: [], threads: [], remarks: [] };
  if (bore === 0) {
    return { ...solid, inside: [], regions: [{ points: outer, tilt: 1 }], end: circles, sizes };
  }
  const hole: MeridianPoint[] = [
    [0, bore],
    [end, bore],
  ];
  const size: Size = {
    kind: 'diameter',
    feature,
    r: bore,
    from: 0,
    to: end,
    hole: 'left',
    text: `\u00d8${writer.size(feature, 2 * bore)}`,
  };
  return {
    ...solid,
    inside: insideOf(hole),
    regions: [{ points: [...outer.slice(1, -1), ...hole.toReversed()], tilt: 1 }],
    end: [...circles, { shape: 'circle', r: bore }],
    sizes: [...sizes, size],
  };
}
