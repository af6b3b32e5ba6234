import { type MessageKey, t } from '../../../messages';
import type { ReportInputs } from '../inputs';
import { type Block, list } from '../model';
import { revisionMark } from '../revision';

const CAUTIONS: readonly MessageKey[] = [
  'app.cautionGuard',
  'app.cautionPlane',
  'app.cautionSlow',
  'app.cautionBolt',
  'app.cautionEstimate',
  'app.cautionMaker',
  'app.cautionStrength',
];

export function cautionBlocks(): Block[] {
  return [
    list(
      CAUTIONS.map((key) => t(key)),
      2,
    ),
  ];
}

/** How to get from the paper back to the design. */
export function sourceBlocks({ design, fileName, link }: ReportInputs): Block[] {
  return [
    list([
      t('report.fileLine', { file: fileName }),
      link === null ? t('report.linkNone') : t('report.linkLine', { link }),
      t('report.markLine', { mark: revisionMark(design) }),
    ]),
  ];
}
