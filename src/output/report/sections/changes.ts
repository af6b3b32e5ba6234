import type { Part, TryOut } from '../../../design/design';
import { describeFault } from '../../../design/faultText';
import { materialsOf } from '../../../design/resolve';
import { shownTryOut, tryOutsOf } from '../../../design/tryOuts';
import { variantOutlook } from '../../../design/variantOutlook';
import { type DifferenceRow, partRows } from '../../../state/words/differences';
import { type FiguresColumn, headRows } from '../../../state/words/headRows';
import type { ReportInputs } from '../inputs';
import { type Block, type TableBlock, words } from '../model';
import { t } from '../roomText';
import { type ComparedPair, comparedPair } from './comparedPair';

/** Differences in dimensions beyond this are counted, not listed. */
const MOST_ROWS = 16;

/** The adopted try-out against the head as it was: notes, parts that differ, what the heads do. */
export function changeBlocks(inputs: ReportInputs): Block[] {
  const { design, units } = inputs;
  const pair = comparedPair(design);
  if (!pair) {
    const one = tryOutsOf(design).length === 1;
    return [words(t(one ? 'report.oneTryOut' : 'report.noTryOuts'))];
  }
  const { before, after, beforeParts, afterParts } = pair;
  const parts = partRows([beforeParts, afterParts], materialsOf(design), units);
  const figures = [beforeParts, afterParts].map((list) => figuresColumn(inputs, list));
  const listed = parts.slice(0, MOST_ROWS).map(cellsOf);
  const more = parts.length - listed.length;
  return [
    words(
      [
        after.adopted
          ? t('report.adoptedSays', { name: after.name })
          : t('report.notAdopted', { name: shownTryOut(design)?.name ?? after.name }),
        t('report.changeFrom', { after: after.name, before: before.name }),
        ...(parts.length === 0 ? [t('report.sameParts')] : []),
      ].join(' '),
    ),
    ...noteBlocks([before, after]),
    ...(listed.length > 0
      ? [
          table('report.changeParts', pair, [
            ...listed,
            ...(more > 0 ? [[t('report.moreRows', { count: more }), '', '']] : []),
          ]),
        ]
      : []),
    table('report.changeHead', pair, headRows(figures, units).map(cellsOf)),
  ];
}

/** The why: what the maker noted. */
function noteBlocks(entries: readonly TryOut[]): Block[] {
  const noted = entries.filter(({ note }) => note !== undefined && note !== '');
  if (noted.length === 0) return [words(t('report.noWhy'), 'quiet')];
  return noted.map(({ name, note = '' }) => words(t('report.why', { name, note })));
}

function table(
  caption: 'report.changeParts' | 'report.changeHead',
  { before, after }: ComparedPair,
  rows: readonly string[][],
): TableBlock {
  return {
    kind: 'table',
    caption: t(caption),
    columns: [
      { title: t('report.what'), align: 'left', share: 1.4 },
      { title: before.name, align: 'left', share: 1.5 },
      { title: after.name, align: 'left', share: 1.5 },
    ],
    rows,
  };
}

function cellsOf({ label, cells }: DifferenceRow): string[] {
  return [label, ...cells.map(({ text }) => text)];
}

/** From a model of its own, remembered by the list's identity; equal to what the page shows of the one on the stage. */
function figuresColumn({ design, reading }: ReportInputs, parts: readonly Part[]): FiguresColumn {
  const outlook = variantOutlook(design, parts, reading.curve.pitchDeg);
  return {
    figures: outlook.ok ? outlook.value : null,
    fault: outlook.ok ? null : describeFault(outlook.error),
    nameOf: (id) => parts.find((part) => part.id === id)?.name || id,
  };
}
