import { principalInertia, spreadEllipse } from '../../../engine/mass/inertia';
import { JXX, JYY, JYZ, JZZ, M, SX, SY, SZ } from '../../../engine/mass/moments';
import type { PartReading } from '../../reading';
import { turningParts } from '../../turningParts';
import { type HelpHead, partToShow } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { type Measure, type Term, term, type Worked, work, workSum } from '../worked';

/** Parts of a sum that are named; the rest are one term. */
const NAMED = 4;

/** What the mass of the head is like, whatever it does. */
export const SPREAD = {
  mass: {
    symbol: 'm',
    work: (head) => sumOfParts(head, 'm', 'mass', M),
    sources: ['definition'],
    see: ['centreOfMass', 'massTolerance', 'pull', 'unbalance'],
    also: 'weight grams',
  },
  centreOfMass: {
    symbol: 'x_c, y_c, z_c',
    work: centreLines,
    sources: ['definition'],
    see: ['mass', 'station', 'unbalance'],
  },
  jxx: {
    symbol: 'J_xx',
    work: (head) => sumOfParts(head, 'J_xx', 'secondMoment', JXX),
    sources: ['definition'],
    see: ['jyy', 'jzz', 'principalAxes'],
    also: 'second moment of mass span',
  },
  jyy: {
    symbol: 'J_yy',
    work: (head) => sumOfParts(head, 'J_yy', 'secondMoment', JYY),
    sources: ['definition'],
    see: ['jzz', 'difference', 'spreadEllipse'],
    also: 'second moment of mass chord',
  },
  jzz: {
    symbol: 'J_zz',
    work: (head) => sumOfParts(head, 'J_zz', 'secondMoment', JZZ),
    sources: ['definition'],
    see: ['jyy', 'difference', 'counterweight'],
    also: 'second moment of mass bolt thickness',
  },
  product: {
    symbol: 'J_yz',
    work: (head) => sumOfParts(head, 'J_yz', 'secondMoment', JYZ),
    sources: ['definition', 'propellerMoment'],
    see: ['restAngle', 'principalAxes', 'difference'],
    also: 'product of inertia tilt',
  },
  difference: {
    symbol: 'A',
    work: (head) => ({ kind: 'worked', lines: [differenceOf(head)] }),
    sources: ['propellerMoment'],
    see: ['jyy', 'jzz', 'share', 'featheringMoment', 'lumpToNeutral', 'neutral'],
    also: 'spread short of neutral',
  },
  share: {
    symbol: 'A_part',
    work: shareLines,
    sources: ['propellerMoment'],
    see: ['difference', 'featheringMoment', 'pull'],
    also: 'centres flees rail who pulls which way',
  },
  spreadEllipse: {
    work: ellipseLines,
    sources: ['ellipse'],
    see: ['difference', 'product', 'restAngle', 'neutral'],
    also: 'round long axis',
  },
  principalAxes: {
    symbol: 'I_1, I_2, I_3',
    work: principalLines,
    sources: ['definition', 'racketEffect'],
    see: ['spreadEllipse', 'racketEffect', 'product', 'jxx'],
    also: 'principal moments least middle greatest inertia tensor',
  },
  featheringInertia: {
    symbol: 'I_f',
    work: ({ reading: { totals } }) => ({
      kind: 'worked',
      lines: [
        work(
          'I_f',
          'secondMoment',
          '{yy} + {zz}',
          { yy: jTerm('J_yy', totals[JYY]), zz: jTerm('J_zz', totals[JZZ]) },
          ({ yy, zz }) => yy + zz,
        ),
      ],
    }),
    sources: ['definition'],
    see: ['frequency', 'letGo', 'jyy', 'jzz'],
    also: 'moment of inertia about the feathering axis',
  },
} as const satisfies Entries;

export function jTerm(symbol: string, value: number): Term {
  return term(symbol, 'secondMoment', value);
}

/** A = J_yy - J_zz of the head. */
export function differenceOf({ reading: { totals } }: HelpHead): Worked {
  return work(
    'A',
    'secondMoment',
    '{yy} \u2212 {zz}',
    { yy: jTerm('J_yy', totals[JYY]), zz: jTerm('J_zz', totals[JZZ]) },
    ({ yy, zz }) => yy - zz,
  );
}

function sumOfParts(head: HelpHead, symbol: string, measure: Measure, at: number): Working {
  const parts = turningParts(head.reading);
  if (parts.length === 0) return { kind: 'none', why: 'help.none.parts' };
  return {
    kind: 'worked',
    lines: [
      workSum(
        symbol,
        measure,
        partTerms(parts, measure, (part) => part.moments_G[at]),
      ),
    ],
  };
}

/** The largest shares by name, the others as one. */
export function partTerms(
  parts: readonly PartReading[],
  measure: Measure,
  valueOf: (part: PartReading) => number,
): readonly Term[] {
  const shares = parts
    .map((part) => term(part.part.name || part.part.id, measure, valueOf(part)))
    .toSorted((a, b) => Math.abs(b.value) - Math.abs(a.value));
  const left = shares.slice(NAMED);
  const others = left.reduce((sum, { value }) => sum + value, 0);
  if (left.length < 2) return shares;
  return [...shares.slice(0, NAMED), term('others', measure, others)];
}

function centreLines({ reading: { totals } }: HelpHead): Working {
  if (!(totals[M] > 0)) return { kind: 'none', why: 'help.none.parts' };
  const line = (axis: string, at: number) =>
    work(
      `${axis}_c`,
      'length',
      '{S} / {m}',
      {
        S: term(`S_${axis}`, 'firstMoment', totals[at]),
        m: term('m', 'mass', totals[M]),
      },
      ({ S, m }) => S / m,
    );
  return { kind: 'worked', lines: [line('x', SX), line('y', SY), line('z', SZ)] };
}

function shareLines(head: HelpHead): Working {
  const part = partToShow(head, ({ moments_G: J }) => Math.abs(J[JYY] - J[JZZ]));
  if (!part) return { kind: 'none', why: 'help.none.parts' };
  const J = part.moments_G;
  return {
    kind: 'worked',
    lines: [
      work(
        part.part.name || part.part.id,
        'secondMoment',
        '{yy} \u2212 {zz}',
        { yy: jTerm('J_yy', J[JYY]), zz: jTerm('J_zz', J[JZZ]) },
        ({ yy, zz }) => yy - zz,
      ),
    ],
  };
}

/** Half axes of the ellipse as root-mean-square distances, and which way its long axis lies. */
function ellipseLines({ reading: { totals } }: HelpHead): Working {
  if (!spreadEllipse(totals)) return { kind: 'none', why: 'help.none.parts' };
  const terms = {
    yy: jTerm('J_yy', totals[JYY]),
    zz: jTerm('J_zz', totals[JZZ]),
    yz: jTerm('J_yz', totals[JYZ]),
    m: term('m', 'mass', totals[M]),
  };
  const axis = (symbol: string, sign: 1 | -1) =>
    work(
      symbol,
      'length',
      `\u221a( [ \u00bd \u00b7 ({yy} + {zz}) ${sign > 0 ? '+' : '\u2212'} \u221a( (\u00bd \u00b7 ({yy} \u2212 {zz}))\u00b2 + {yz}\u00b2 ) ] / {m} )`,
      terms,
      ({ yy, zz, yz, m }) =>
        Math.sqrt(Math.max(0, (yy + zz) / 2 + sign * Math.hypot((yy - zz) / 2, yz)) / m),
    );
  return {
    kind: 'worked',
    lines: [
      axis('r_long', 1),
      axis('r_short', -1),
      work(
        '\u03c6_long',
        'angle',
        '\u00bd \u00b7 atan2( 2 \u00b7 {yz}, {yy} \u2212 {zz} )',
        { yy: terms.yy, zz: terms.zz, yz: terms.yz },
        ({ yy, zz, yz }) => Math.atan2(2 * yz + 0, yy - zz) / 2,
      ),
    ],
  };
}

/** The three principal moments are eigenvalues: shown with the check that their sum gives. */
function principalLines({ reading: { totals } }: HelpHead): Working {
  const found = principalInertia(totals);
  if (!found) return { kind: 'none', why: 'help.none.parts' };
  const [least, middle, greatest] = found.values;
  return {
    kind: 'worked',
    lines: [
      work(
        '2 tr J_c',
        'secondMoment',
        '{one} + {two} + {three}',
        {
          one: jTerm('I_1', least),
          two: jTerm('I_2', middle),
          three: jTerm('I_3', greatest),
        },
        ({ one, two, three }) => one + two + three,
      ),
    ],
  };
}
