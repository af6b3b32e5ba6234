import type { Design } from '../../../design/design';
import { TOLERANCE_SECTION } from '../../../design/sections/tolerance';
import { tolerancesOf } from '../../../neutralise/closeness/tolerances';
import type { ToleranceResult } from '../../../neutralise/closeness/toleranceTypes';
import { sameKnob } from '../../../neutralise/knobs';
import { sameHeadAndTolerances } from '../../../state/closeness';
import { knobText, knobValueText } from '../../../state/words/planText';
import { chanceLines, faultText, matchingLines, percentText } from '../../../state/words/runText';
import type { ReportInputs } from '../inputs';
import { type Block, type FactsBlock, list, type TableBlock, words } from '../model';
import { t } from '../roomText';
import { sectionFact } from './conditions';

/** How closely it is to be made, and what the last run of this session found. */
export function toleranceBlocks(inputs: ReportInputs): Block[] {
  const facts: FactsBlock = {
    kind: 'facts',
    title: null,
    facts: [
      ...Object.entries(TOLERANCE_SECTION).map(([key, field]) =>
        sectionFact('tolerance', key, field, inputs),
      ),
      ...ownFacts(inputs),
    ],
  };
  return [facts, ...runBlocks(inputs)];
}

function ownFacts({ design, units }: ReportInputs) {
  const own = tolerancesOf(design)
    .filter(({ source }) => source === 'own')
    .map(({ ref, unit, plusMinus }) =>
      t('report.toleranceFact', {
        name: knobText(design, ref),
        value: knobValueText(plusMinus, unit, units),
      }),
    );
  return own.length === 0 ? [] : [{ label: t('report.toleranceOwn'), value: own.join('; ') }];
}

function runBlocks({ tolerance, design, units }: ReportInputs): Block[] {
  if (!tolerance) return [words(t('report.noRun'))];
  const { outcome } = tolerance.answer;
  if (!outcome.ok) return [words(faultText(outcome.error), 'warning')];
  const result = outcome.value;
  const stale = !sameHeadAndTolerances(tolerance.design, design);
  return [
    ...(stale ? [words(t('closely.stale'), 'warning')] : []),
    list([...chanceLines(result, units), ...matchingLines(result, tolerance.design, units)]),
    ...tightenTable(result, tolerance.design, units),
    words(t('closely.runNote'), 'quiet'),
  ];
}

function tightenTable(
  { shares, tighten }: ToleranceResult,
  design: Design,
  units: ReportInputs['units'],
): TableBlock[] {
  if (tighten.length === 0) return [];
  const rows = shares.slice(0, tighten.length).map((share) => {
    const found = tighten.find(({ ref }) => sameKnob(ref, share.ref));
    return [
      knobText(design, share.ref),
      `\u00b1${knobValueText(share.plusMinus, share.unit, units)}`,
      percentText(share.share),
      found
        ? t('closely.halvedTo', { from: percentText(found.from), to: percentText(found.to) })
        : '',
    ];
  });
  return [
    {
      kind: 'table',
      caption: t('report.tighten'),
      columns: [
        { title: t('report.number'), align: 'left', share: 3 },
        { title: t('report.tolerance'), align: 'right', share: 1 },
        { title: t('report.variance'), align: 'right', share: 1 },
        { title: t('report.halved'), align: 'right', share: 1.5 },
      ],
      rows,
    },
  ];
}
