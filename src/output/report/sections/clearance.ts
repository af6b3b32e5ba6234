import { CLEARANCE_SECTION } from '../../../design/sections/clearance';
import { overlapText, rangeText } from '../../../state/gapText';
import { clearanceRows } from '../../../state/words/clearanceRows';
import type { ReportInputs } from '../inputs';
import { type Block, words } from '../model';
import { t } from '../roomText';
import { sectionFact } from './conditions';

/** Pairs beyond this many are far apart and told by their number alone. */
const MOST_ROWS = 10;

/** The least gaps of turning parts to the keep-outs; that none was looked for, where there is no keep-out. */
export function clearanceBlocks(inputs: ReportInputs): Block[] {
  const { reading, units } = inputs;
  const found = reading.clearance();
  if (found.pairs.length === 0) return [words(t('report.noKeepOut'))];
  const nameOf = (id: string) => reading.part(id)?.part.name || id;
  const rows = clearanceRows(found, nameOf, (id) => reading.part(id)?.carriedBy, units);
  const overlap = overlapText(found.pairs, nameOf, units);
  const wanted = sectionFact('clearance', 'wantedGapMm', CLEARANCE_SECTION.wantedGapMm, inputs);
  const more = rows.length - MOST_ROWS;
  return [
    ...(overlap ? [words(overlap, 'warning')] : []),
    { kind: 'facts', title: null, facts: [wanted] },
    {
      kind: 'table',
      caption: t('report.clearanceTable'),
      columns: [
        { title: t('clearance.part'), align: 'left', share: 2 },
        { title: t('clearance.keepOut'), align: 'left', share: 2 },
        { title: t('clearance.gap'), align: 'right', share: 1 },
        { title: t('clearance.error'), align: 'right', share: 1 },
        { title: t('clearance.pitch'), align: 'right', share: 0.8 },
        { title: t('clearance.azimuth'), align: 'right', share: 1 },
        { title: t('clearance.state'), align: 'left', share: 1.2 },
      ],
      rows: rows
        .slice(0, MOST_ROWS)
        .map(({ partName, keepOutName, gap, error, pitch, azimuth, words: state }) => [
          partName,
          keepOutName,
          gap,
          error,
          pitch,
          azimuth,
          state,
        ]),
    },
    ...(more > 0 ? [words(t('clearance.more', { count: more }), 'quiet')] : []),
    words(`${rangeText(found.range)} ${t('clearance.notes')}`, 'quiet'),
  ];
}
