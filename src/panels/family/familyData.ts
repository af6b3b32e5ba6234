import { t } from '../../messages';
import { type Family, type FamilyRequest, FORBIDDEN } from '../../neutralise/family';
import type { PlotData } from '../../ui/drawn/plotLayout';
import { type FamilyTexts, lookOf } from './familyPlot';

/** A family as a plot that leaves the page: length against diameter of each material, and where it is forbidden. */
export function familyData(
  { diametersMm, lengthsMm }: FamilyRequest,
  { curves, map }: Family,
  { names, perShown, xTitle, yTitle }: FamilyTexts,
): PlotData {
  const [low, high] = diametersMm;
  const count = curves[0]?.points.length ?? 2;
  return {
    x: Array.from({ length: count }, (_, i) => (low + ((high - low) * i) / (count - 1)) / perShown),
    lines: curves.map(({ points }, i) => ({
      name: names[i],
      look: String(lookOf(i)),
      values: points.map((point) => (point ? point.lengthMm / perShown : Number.NaN)),
    })),
    yRange: [lengthsMm[0] / perShown, lengthsMm[1] / perShown],
    cells: {
      ...map,
      kinds: (Object.keys(FORBIDDEN) as (keyof typeof FORBIDDEN)[]).map((kind) => ({
        name: t(`family.forbidden.${kind}`),
        bit: FORBIDDEN[kind],
      })),
    },
    xTitle,
    yTitle,
  };
}
