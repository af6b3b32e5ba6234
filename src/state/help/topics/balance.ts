import type { Balance } from '../../../design/forces/balanceTypes';
import type { HelpHead } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { term, type Worked, work, workSum } from '../worked';
import { spinTerm } from './turning';

/** Whether the grips match. */
export const BALANCE = {
  unbalance: {
    symbol: 'U',
    work: (head) => {
      const lines = unbalanceLines(head.reading.balance());
      return { kind: 'worked', lines };
    },
    sources: ['iso21940'],
    see: ['balanceGrade', 'shaftForce', 'matching'],
    also: 'static balance heavier grip',
  },
  balanceGrade: {
    symbol: 'G',
    work: gradeLines,
    sources: ['iso21940'],
    see: ['unbalance', 'speed'],
    also: 'quality grade',
  },
  shaftForce: {
    symbol: 'F_U',
    work: (head) => ({
      kind: 'worked',
      lines: [
        work(
          'F_U',
          'force',
          '{U} \u00b7 {W}\u00b2',
          { U: term('U', 'unbalance', head.reading.balance().unbalance), W: spinTerm(head) },
          ({ U, W }) => U * W ** 2,
        ),
      ],
    }),
    sources: ['mechanics'],
    see: ['unbalance', 'speed'],
    also: 'shakes vibration',
  },
} as const satisfies Entries;

/** The grips' moments m r, along the first grip's axis and across it, and the size of their sum. */
function unbalanceLines({ grips, unbalance }: Balance): readonly Worked[] {
  const shares = (along: boolean) =>
    grips.map(({ mass, station, ahead, angle, index }) => {
      const [s, c] = [Math.sin(angle), Math.cos(angle)];
      const place = along ? station * c - ahead * s : station * s + ahead * c;
      return term(`grip ${index + 1}`, 'unbalance', mass * place);
    });
  // Alike grips add up to nothing: what rounding leaves of the sums is not shown.
  const settled = (sum: Worked): Worked =>
    unbalance === 0 ? { ...sum, result: { ...sum.result, value: 0 } } : sum;
  const x = settled(workSum('U_x', 'unbalance', shares(true)));
  const y = settled(workSum('U_y', 'unbalance', shares(false)));
  return [
    x,
    y,
    work('U', 'unbalance', '\u221a( {x}\u00b2 + {y}\u00b2 )', { x: x.result, y: y.result }, (v) =>
      Math.hypot(v.x, v.y),
    ),
  ];
}

function gradeLines(head: HelpHead): Working {
  const { unbalance, rotorMass, grade } = head.reading.balance();
  if (rotorMass === null || grade === null) return { kind: 'none', why: 'help.none.hub' };
  return {
    kind: 'worked',
    lines: [
      work(
        'G',
        'grade',
        '{U} \u00b7 {W} / {m}',
        {
          U: term('U', 'unbalance', unbalance),
          W: spinTerm(head),
          m: term('m_rotor', 'mass', rotorMass),
        },
        ({ U, W, m }) => (U * W) / m,
      ),
    ],
  };
}
