import { materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import type { Family, FamilyRequest } from '../../neutralise/family';
import { fieldLabel } from '../../state/refusalText';
import { shownText, shownUnit } from '../../state/shownUnits';
import { materialName } from '../../state/words/materialText';
import { useAppState, useRestingDesign } from '../../ui/session';
import { useFamily } from '../goal/usePlan';
import type { FamilyTexts } from './familyPlot';
import { sameFamily } from './familyRequest';

/** What is known of a requested family, and what its chart says. */
export function useFamilyTexts(request: FamilyRequest) {
  const state = useFamily();
  const units = useAppState((app) => app.settings.units);
  const design = useRestingDesign();
  const family = state.kind === 'done' && sameFamily(state.request, request) ? state.result : null;
  const mm = shownUnit('mm', units);
  const part = design.parts.find((one) => one.id === request.length.part);

  function curveName(material: string | null): string {
    if (material === null) return t('family.asItIs');
    // What comes after a comma or in brackets is for the list of materials.
    return materialName(material, materialsOf(design)).split(/,| \(/)[0];
  }
  const texts: FamilyTexts = {
    xTitle: t('family.axisX', { unit: mm.name }),
    yTitle: t('family.axisY', { length: fieldLabel(part, request.length.field), unit: mm.name }),
    names: (family?.curves ?? []).map(({ material }) => curveName(material)),
    perShown: mm.perShown,
  };
  const text = (valueMm: number) => shownText(Number(valueMm.toFixed(2)), mm);
  return { family, texts, curveName, summary: family ? summary(family, texts.names, text) : '' };
}

/** Every fourth place of each curve. */
function summary(
  { curves }: Family,
  names: readonly string[],
  text: (valueMm: number) => string,
): string {
  return curves
    .map(({ points }, i) =>
      t('family.summary', {
        material: names[i],
        points: points
          .flatMap((point, k) =>
            point && k % 4 === 0
              ? [
                  t('family.summaryPoint', {
                    diameter: text(point.diameterMm),
                    length: text(point.lengthMm),
                  }),
                ]
              : [],
          )
          .join(', '),
      }),
    )
    .join(' ');
}
