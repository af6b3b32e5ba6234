import { fixed } from '../../state/quantities';
import type { ReportInputs } from './inputs';
import {
  type Block,
  type ReportModel,
  type ReportTitle,
  SECTION_IDS,
  type SectionId,
} from './model';
import { revisionMark } from './revision';
import { t } from './roomText';
import { assumptionBlocks } from './sections/assumptions';
import { balanceBlocks } from './sections/balance';
import { changeBlocks } from './sections/changes';
import { clearanceBlocks } from './sections/clearance';
import { cautionBlocks, sourceBlocks } from './sections/closing';
import { conditionBlocks } from './sections/conditions';
import { figureBlocks } from './sections/figures';
import { loadBlocks } from './sections/loads';
import { partBlocks } from './sections/parts';
import { toleranceBlocks } from './sections/tolerances';
import { verdictBlocks } from './sections/verdict';

const BLOCKS: Readonly<Record<SectionId, (inputs: ReportInputs) => Block[]>> = {
  verdict: verdictBlocks,
  figures: figureBlocks,
  conditions: conditionBlocks,
  parts: partBlocks,
  changes: changeBlocks,
  loads: loadBlocks,
  tolerances: toleranceBlocks,
  clearance: clearanceBlocks,
  balance: balanceBlocks,
  assumptions: assumptionBlocks,
  cautions: cautionBlocks,
  source: sourceBlocks,
};

/**
 * A report for a customer or a file, as plain data: everything as the page shows it now, in the page's units. Computes
 * what the page computes only when asked (loads, clearance, try-outs). Nothing of it is kept or written.
 */
export function reportModel(inputs: ReportInputs): ReportModel {
  const sections = SECTION_IDS.filter((id) => inputs.sections.has(id)).map((id) => ({
    id,
    title: t(`report.section.${id}`),
    blocks: BLOCKS[id](inputs),
  }));
  return { title: titleOf(inputs), sections };
}

function titleOf({ design, reading, date, revision, remark }: ReportInputs): ReportTitle {
  const mark = revisionMark(design);
  const own = revision.trim();
  return {
    design: design.name,
    kind: t('report.kind'),
    fields: [
      { label: t('report.date'), value: date },
      {
        label: t('report.revision'),
        value:
          own === ''
            ? t('report.revisionMark', { mark })
            : t('report.revisionBoth', { revision: own, mark }),
      },
      {
        label: t('report.speedUsed'),
        value: t('report.speedUsedText', {
          rpm: fixed(design.rotor.speedRpm, 0),
          used: String(reading.usedPitchDeg),
        }),
      },
      { label: t('report.madeWith'), value: t('app.name') },
      ...(remark.trim() === '' ? [] : [{ label: t('report.remark'), value: remark.trim() }]),
    ],
    note: design.note ?? null,
    foot: t('report.foot'),
  };
}
