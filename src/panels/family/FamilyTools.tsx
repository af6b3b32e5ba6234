import { t } from '../../messages';
import type { Family, FamilyRequest } from '../../neutralise/family';
import { PlotTools } from '../../ui/plots/PlotTools';
import { familyData } from './familyData';
import { forbiddenKinds } from './familyPlot';
import { useFamilyTexts } from './useFamilyTexts';

/** Takes the family off the page, or shows it in numbers. */
export function FamilyTools(props: {
  readonly request: FamilyRequest;
  /** What the family is of. */
  readonly about: string;
  readonly asTable: boolean;
  readonly onTable: (asTable: boolean) => void;
}) {
  const { request, about } = props;
  const { family, texts, summary } = useFamilyTexts(request);
  return (
    <PlotTools
      testId="family"
      plot={() =>
        family && {
          data: familyData(request, family, texts),
          design: request.design,
          lines: [`${t('lower.family')}: ${about}.`, forbiddenText(family, texts.names[0] ?? '')],
          summary,
          name: 'family',
        }
      }
      asTable={props.asTable}
      onTable={props.onTable}
    />
  );
}

/** What is hatched, in words. */
function forbiddenText(family: Family, material: string): string {
  const kinds = forbiddenKinds(family).map((kind) => t(`family.forbidden.${kind}`));
  if (kinds.length === 0) return t('family.forbiddenNone');
  return `${t('family.forbidden', { material })} ${kinds.join(', ')}.`;
}
