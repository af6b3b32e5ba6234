import { type MessageKey } from '../../../messages';
import type { ReportInputs } from '../inputs';
import { type Block, list } from '../model';
import { revisionMark } from '../revision';
import { t } from '../roomText';

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

/** Links longer than this, characters, would fill the paper: a third of a sheet in small type. */
const LONGEST_PRINTED = 4000;

/** How to get from the paper back to the design. */
export function sourceBlocks({ design, fileName, link }: ReportInputs): Block[] {
  const { address, length } = link;
  const printed = address !== null && length <= LONGEST_PRINTED;
  return [
    list([
      t('report.fileLine', { file: fileName }),
      t('report.markLine', { mark: revisionMark(design) }),
      printed ? t('report.linkLine') : t('report.linkNone', { length, limit: LONGEST_PRINTED }),
    ]),
    ...(printed ? [{ kind: 'link', address } as const] : []),
  ];
}
