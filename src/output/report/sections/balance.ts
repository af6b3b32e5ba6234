import { displayPosition, displayRailMass } from '../../../state/shownUnits';
import { balanceLines, gripName } from '../../../state/words/balanceText';
import type { ReportInputs } from '../inputs';
import { type Block, list, words } from '../model';
import { t } from '../roomText';

/** The grips of the rotor beside each other, and what is left over. */
export function balanceBlocks({ reading, units }: ReportInputs): Block[] {
  const balance = reading.balance();
  // Grips that are all alike need no table.
  const alike = balance.grips.every(({ from }) => from === 'drawn');
  const rows = balance.grips.map((grip) => [
    gripName(grip),
    displayRailMass(grip.mass, units),
    `${displayPosition(grip.station, units)}\u00a0${units.length}`,
    t(`balance.from.${grip.from}`),
  ]);
  const table: Block = {
    kind: 'table',
    caption: t('balance.about'),
    columns: [
      { title: t('balance.grip'), align: 'left', share: 2 },
      { title: t('balance.mass'), align: 'right', share: 1 },
      { title: t('balance.station'), align: 'right', share: 1.4 },
      { title: t('balance.from'), align: 'left', share: 1.4 },
    ],
    rows,
  };
  const drawn = balance.grips.some(({ from }) => from === 'drawn');
  return [
    list(balanceLines(balance, units)),
    ...(drawn ? [words(t('report.balanceDrawn'))] : []),
    ...(alike ? [] : [table]),
  ];
}
