import type { BoltLoads, HeadLoads } from '../../../design/forces/loadTypes';
import { speedRange } from '../../../design/forces/speedSweep';
import { ROTOR_SECTION } from '../../../design/sections/rotor';
import { fixed } from '../../../state/quantities';
import type { DisplayUnits } from '../../../state/settings';
import { firstLimitText, limitName } from '../../../state/words/firstLimit';
import { type LoadRow, loadRows } from '../../../state/words/loadRows';
import { signedDegrees } from '../../../state/words/pitchText';
import type { ReportInputs } from '../inputs';
import { type Block, type TableBlock, words } from '../model';
import { t } from '../roomText';

/** Everything that is carried, at overspeed and the pitch where the first limit is met, and how near it is to what it may be. */
export function loadBlocks({ reading, design, units }: ReportInputs): Block[] {
  const { overspeedRpm, highestRpm } = speedRange(design.rotor);
  const limit = reading.limitInUse(overspeedRpm);
  const pitchDeg = limit?.pitchDeg ?? reading.usedPitchDeg;
  const loads = reading.loadsAt(pitchDeg, overspeedRpm);
  const nameOf = (id: string) => reading.part(id)?.part.name || id;
  if (overspeedRpm === 0) return [words(t('loads.still'))];
  const percent = design.rotor.overspeedPercent ?? ROTOR_SECTION.overspeedPercent.default;
  const which =
    overspeedRpm > highestRpm
      ? t('report.overspeed', { percent: percent ?? 0 })
      : t('report.designSpeed');
  const at = t('report.loadsAt', {
    rpm: fixed(overspeedRpm, 0),
    which,
    pitch: signedDegrees(pitchDeg),
  });
  return [
    words(`${at} ${firstLimitText(limit, loads, nameOf)}`),
    ...loadBlocksOf(loads, nameOf, units),
    words(t('loads.caution'), 'quiet'),
  ];
}

/** That something carries more than it may within the pitch in use, at the speed that loads are judged at; else null. */
export function beyondLimitText({ reading, design }: ReportInputs): string | null {
  const { overspeedRpm } = speedRange(design.rotor);
  const limit = reading.limitInUse(overspeedRpm);
  if (!limit || limit.limitRpm >= overspeedRpm) return null;
  return t('report.beyondLimit', {
    name: reading.part(limit.id)?.part.name || limit.id,
    what: limitName(limit),
    rpm: fixed(limit.limitRpm, 0),
    pitch: signedDegrees(limit.pitchDeg, 0),
    judged: fixed(overspeedRpm, 0),
  });
}

/** Bolts beyond these, those nearest to their limits, are counted and not listed. */
const MOST_BOLTS = 3;

/** One table of grip and bearings, one of each bolt: no table is long. */
function loadBlocksOf(
  loads: HeadLoads,
  nameOf: (id: string) => string,
  units: DisplayUnits,
): Block[] {
  const rows = loadRows(loads, nameOf, units);
  const all = new Set(loads.bolts.map(({ id }) => id));
  const listed = loads.bolts
    .toSorted((a, b) => greatestUse(b) - greatestUse(a))
    .slice(0, MOST_BOLTS);
  const onGrip = rows.filter(({ part }) => part === null || !all.has(part));
  const more = all.size - listed.length;
  return [
    loadTable(t('report.loadsGrip'), onGrip, ''),
    ...listed.map(({ id }) =>
      loadTable(
        nameOf(id),
        rows.filter(({ part }) => part === id),
        `${nameOf(id)}: `,
      ),
    ),
    ...(more > 0 ? [words(t('report.moreBolts', { count: more }), 'quiet')] : []),
  ];
}

function greatestUse({ checks }: BoltLoads): number {
  return Math.max(0, ...checks.map(({ margin }) => (margin.kind === 'known' ? margin.use : 0)));
}

/** `prefix`: what the caption has said already. */
function loadTable(caption: string, rows: readonly LoadRow[], prefix: string): TableBlock {
  return {
    kind: 'table',
    caption,
    columns: [
      { title: t('loads.what'), align: 'left', share: 2.3 },
      { title: t('loads.value'), align: 'right', share: 1 },
      { title: t('loads.limit'), align: 'left', share: 2.2 },
      { title: t('loads.use'), align: 'right', share: 0.65 },
      { title: t('loads.words'), align: 'left', share: 3 },
    ],
    rows: rows.map(({ what, value, limit, use, words: said }) => [
      what.startsWith(prefix) ? upperFirst(what.slice(prefix.length)) : what,
      value,
      limit,
      use === null ? '' : `${fixed(100 * use, 0)}\u00a0%`,
      said,
    ]),
  };
}

function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
