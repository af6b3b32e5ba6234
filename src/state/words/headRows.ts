import type { VariantFigures } from '../../design/variantOutlook';
import { JYY, JYZ, JZZ, M } from '../../engine/mass/moments';
import { type MessageKey, t } from '../../messages';
import {
  displayForce,
  displayMass,
  displayMoment,
  fixed,
  show,
  signedQuantity,
} from '../quantities';
import type { DisplayUnits } from '../settings';
import { grouped, secondMomentText } from '../shownUnits';
import type { Cell, DifferenceRow } from './differences';
import { signedDegrees } from './pitchText';
import { verdictText } from './verdictText';

/** A variant as the rows of the head need it: its figures, or why there are none, and its parts' names. */
export interface FiguresColumn {
  readonly figures: VariantFigures | null;
  /** Null while the figures are on their way. */
  readonly fault: string | null;
  nameOf(part: string): string;
}

/**
 * What each head does, the first column the one on the stage: mass, spread, forces at the set pitches, holding band, rest
 * angles, verdict, first limit. Numbers carry their difference from the first column in brackets.
 */
export function headRows(
  columns: readonly FiguresColumn[],
  units: DisplayUnits,
): readonly DifferenceRow[] {
  const mass = (value: number) => show(displayMass(value, units), 4);
  const massDelta = (value: number) => show(displayMass(value, units));
  const second = (value: number) => secondMomentText(value, units);
  return [
    numberRow('mass', t('tryOuts.rowMass'), columns, ({ totals }) => totals[M], mass, massDelta),
    numberRow('share', t('tryOuts.rowShare'), columns, shareOf, second),
    numberRow('product', t('tryOuts.rowProduct'), columns, ({ totals }) => totals[JYZ], second),
    ...loadRows(columns, units),
    textRow('band', 'tryOuts.rowBand', columns, bandText),
    textRow('rests', 'tryOuts.rowRests', columns, ({ verdict, restsDeg }) => {
      return verdictText(verdict, restsDeg, units).rest;
    }),
    textRow('verdict', 'tryOuts.rowVerdict', columns, ({ verdict, restsDeg }) => {
      return verdictText(verdict, restsDeg, units).line;
    }),
    textRow('limit', 'tryOuts.rowLimit', columns, limitText),
  ];
}

function shareOf({ totals }: VariantFigures): number {
  return totals[JYY] - totals[JZZ];
}

/** Push-rod forces at the set pitches; moments where one of the heads has no arm, so that a row holds one quantity. */
function loadRows(columns: readonly FiguresColumn[], units: DisplayUnits): DifferenceRow[] {
  const known = columns.flatMap(({ figures }) => figures ?? []);
  const asForce = known.every(({ forces }) => forces !== null);
  const display = asForce ? displayForce : displayMoment;
  const text = (value: number) => signedQuantity(display(value, units));
  const [{ pitchesDeg = [] } = {}] = known;
  return pitchesDeg.map((pitchDeg, i) => {
    const pitch = signedDegrees(pitchDeg, Number.isInteger(pitchDeg) ? 0 : 1);
    const label = t(asForce ? 'tryOuts.rowForce' : 'tryOuts.rowMoment', { pitch });
    const value = ({ forces, moments }: VariantFigures) =>
      asForce ? (forces?.[i] ?? null) : Number.isNaN(moments[i]) ? null : moments[i];
    return numberRow(`load ${i}`, label, columns, value, text);
  });
}

function numberRow(
  key: string,
  label: string,
  columns: readonly FiguresColumn[],
  valueOf: (figures: VariantFigures) => number | null,
  text: (value: number) => string,
  deltaText = text,
): DifferenceRow {
  const values = columns.map(({ figures }) => figures && valueOf(figures));
  const [shown] = values;
  const cells = columns.map((column, i): Cell => {
    const value = values[i];
    if (!column.figures) return missing(column);
    if (value === null) return { text: t('shelf.overCentre'), differs: shown !== null };
    const own = text(value);
    if (i === 0 || shown === null || own === text(shown)) {
      return { text: own, differs: i > 0 && shown === null };
    }
    const delta = value - shown;
    const change = deltaText(delta);
    const sign = delta > 0 && !change.startsWith('+') ? '+' : '';
    return { text: t('tryOuts.delta', { value: own, delta: sign + change }), differs: true };
  });
  return { key, label, part: null, cells };
}

function textRow(
  key: string,
  label: MessageKey,
  columns: readonly FiguresColumn[],
  textOf: (figures: VariantFigures, column: FiguresColumn) => string,
): DifferenceRow {
  const texts = columns.map((column) => column.figures && textOf(column.figures, column));
  const cells = columns.map((column, i): Cell => {
    const text = texts[i];
    return text === null ? missing(column) : { text, differs: text !== texts[0] };
  });
  return { key, label: t(label), part: null, cells };
}

function missing({ fault }: FiguresColumn): Cell {
  const text = fault === null ? t('tryOuts.waiting') : t('tryOuts.cannot', { reason: fault });
  return { text, differs: false };
}

function bandText({ bandsDeg, frictionCounted }: VariantFigures): string {
  if (!frictionCounted) return t('tryOuts.bandNotCounted');
  if (bandsDeg === null) return t('tryOuts.bandUnknown');
  if (bandsDeg.length === 0) return t('tryOuts.bandNone');
  return bandsDeg
    .map(([from, to]) => t('tryOuts.band', { from: signedDegrees(from), to: signedDegrees(to) }))
    .join('; ');
}

function limitText({ limit }: VariantFigures, { nameOf }: FiguresColumn): string {
  if (!limit) return t('tryOuts.limitNone');
  return t('tryOuts.limit', {
    name: nameOf(limit.id),
    what: limit.what === 'bearing' ? t('loads.rating') : t(`loads.check.${limit.what}`),
    rpm: grouped(fixed(limit.limitRpm, 0)),
  });
}
