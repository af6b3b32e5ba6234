import { MODEL_SHARE } from '../../../design/massCard';
import { JYY, JZZ, M } from '../../../engine/mass/moments';
import { metresFromMm } from '../../../engine/units';
import { type HelpHead, partToShow } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { term, work } from '../worked';
import { differenceOf, jTerm } from './spread';

/** How far out along the bolt the lump of the example sits. */
const LUMP_AT_MM = 10;

/** What cancels, and how closely parts must be made. */
export const MAKING = {
  lumpToNeutral: {
    symbol: 'm_add',
    work: lumpLines,
    sources: ['propellerMoment', 'trade'],
    see: ['difference', 'neutralise', 'counterweight'],
    also: 'missing mass weight to add grams short of neutral past',
  },
  massTolerance: {
    symbol: '\u0394m',
    work: toleranceLines,
    sources: ['trade', 'ours'],
    see: ['mass', 'tolerance', 'matching'],
    also: 'mass window scale weigh allowance',
  },
  tolerance: {
    symbol: 's_i',
    sources: ['gum', 'ours'],
    see: ['massTolerance', 'tolerance95', 'chance'],
    also: 'slope sensitivity how closely per step dimension',
  },
  tolerance95: {
    symbol: '\u03c3_T',
    sources: ['gum', 'statistics'],
    see: ['tolerance', 'chance', 'band95'],
    also: 'standard deviation first order root sum square spread of heads',
  },
  chance: {
    sources: ['statistics'],
    see: ['tolerance95', 'tolerance'],
    also: 'share of heads within the target tolerance run',
  },
  matching: {
    sources: ['statistics', 'iso21940'],
    see: ['unbalance', 'massTolerance'],
    also: 'two grips differ same force both sides',
  },
  clearance: {
    sources: ['ours'],
    see: ['keepOut', 'pitchInUse'],
    also: 'gap nearest distance case interference',
  },
} as const satisfies Entries;

/** A small lump on the bolt's axis adds m z^2 to J_zz and nothing else. */
function lumpLines(head: HelpHead): Working {
  const A = differenceOf(head);
  return {
    kind: 'worked',
    lines: [
      A,
      work(
        'm_add',
        'mass',
        '{A} / {z}\u00b2',
        { A: A.result, z: term('z', 'length', metresFromMm(LUMP_AT_MM)) },
        (v) => v.A / v.z ** 2,
      ),
    ],
  };
}

/** What a mass that is only worked out may be off, and what that does to J_yy - J_zz. */
function toleranceLines(head: HelpHead): Working {
  const part = partToShow(head, ({ moments_G: J }) => Math.abs(J[JYY] - J[JZZ]));
  if (!part || !(part.moments_G[M] > 0)) return { kind: 'none', why: 'help.none.parts' };
  const J = part.moments_G;
  const window = work(
    '\u0394m',
    'mass',
    `${MODEL_SHARE} \u00b7 {m}`,
    { m: term('m_part', 'mass', J[M]) },
    ({ m }) => MODEL_SHARE * m,
  );
  return {
    kind: 'worked',
    lines: [
      window,
      work(
        '\u0394A',
        'secondMoment',
        '|{share}| \u00b7 {d} / {m}',
        {
          share: jTerm('A_part', J[JYY] - J[JZZ]),
          d: window.result,
          m: term('m_part', 'mass', J[M]),
        },
        ({ share, d, m }) => (Math.abs(share) * d) / m,
      ),
    ],
  };
}
