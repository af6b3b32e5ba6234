import type { TryOut } from '../../design/design';
import { t } from '../../messages';
import type { ChartData } from './chartData';
import { COMPARED_DASHES, SHARE_DASHES } from './chartTheme';
import type { ComparedLines } from './comparedLines';
import type { NamedLine } from './lineNames';

/**
 * The lines of the chart in the order in which their names are kept where there is no room for all: the total (beside
 * other try-outs under the name of the one on the stage), the try-outs laid over, the shares.
 */
export function namedLines(
  data: ChartData,
  compared: ComparedLines,
  stage: TryOut | null,
): NamedLine[] {
  const plain = { main: false, part: null, tryOut: null };
  const total = stage && compared.any ? stage.name : t('chart.total');
  const lines: NamedLine[] = [
    { ...plain, main: true, name: total, look: 'total', dash: null, values: data.total },
  ];
  compared.lines.forEach((line, k) => {
    if (!line) return;
    const look = { look: 'try-out', dash: COMPARED_DASHES[k] };
    lines.push({
      ...plain,
      ...look,
      name: line.name,
      tryOut: line.id,
      values: compared.values[k],
    });
  });
  data.shares.forEach((share, k) => {
    if (!share) return;
    const look = { look: String(k + 1), dash: SHARE_DASHES[k] };
    lines.push({
      ...plain,
      ...look,
      name: share.name,
      part: share.id,
      values: data.shareValues[k],
    });
  });
  return lines;
}
