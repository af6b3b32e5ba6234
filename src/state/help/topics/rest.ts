import { headLinkage } from '../../../design/forces/headLinkage';
import { JYY, JYZ, JZZ } from '../../../engine/mass/moments';
import { linkInertia } from '../../../engine/release/linkInertia';
import {
  degreesFromRadians,
  type Radians,
  radians,
  radiansFromDegrees,
} from '../../../engine/units';
import type { HelpHead } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { type Term, term, type Worked, work } from '../worked';
import { jTerm } from './spread';
import { pitchTerm, spinTerm } from './turning';

/** Where the grip goes by itself, and how hard. */
export const REST = {
  restAngle: {
    symbol: '\u03b8_rest',
    work: (head) => angleLines(head, 'stable'),
    sources: ['propellerMoment', 'ours'],
    see: ['fleeAngle', 'product', 'stiffness', 'holdingBand', 'equilibrium'],
    also: 'stable equilibrium rests at filled circle',
  },
  fleeAngle: {
    symbol: '\u03b8_flee',
    work: (head) => angleLines(head, 'unstable'),
    sources: ['propellerMoment', 'ours'],
    see: ['restAngle', 'overCentre', 'equilibrium'],
    also: 'unstable equilibrium flees hollow circle',
  },
  stiffness: {
    symbol: 'k',
    work: stiffnessLines,
    sources: ['dynamics'],
    see: ['restAngle', 'frequency', 'holdingBand'],
    also: 'slope at rest spring',
  },
  frequency: {
    symbol: 'f',
    work: frequencyLines,
    sources: ['dynamics', 'plate'],
    see: ['stiffness', 'featheringInertia', 'letGo'],
    also: 'oscillation period natural per revolution',
  },
  energy: {
    symbol: 'V',
    work: energyLines,
    sources: ['mechanics'],
    see: ['featheringMoment', 'restAngle', 'fleeAngle'],
    also: 'potential wells hills hollows',
  },
} as const satisfies Entries;

/** Only the spread of mass turns the grip: no offset, no precone, no further term. */
function massAlone({ reading, design }: HelpHead): boolean {
  const rod = reading.linkage?.rodPart && design.counted?.rodMass !== false;
  return reading.offAxisMoment === 0 && reading.terms.length === 0 && !rod;
}

/**
 * By the spread of mass alone the angle is a formula. With anything else counted it is where the total vanishes: then the
 * angle of the page stands below, with the moment there.
 */
function angleLines(head: HelpHead, kind: 'stable' | 'unstable'): Working {
  const { reading } = head;
  if (reading.rotor.angularSpeed === 0) return { kind: 'none', why: 'help.none.still' };
  if (reading.equilibria.kind === 'neutral') return { kind: 'none', why: 'help.none.neutral' };
  const found = nearestRoot(head, kind);
  const symbol = kind === 'stable' ? '\u03b8_rest' : '\u03b8_flee';
  const lines: Worked[] = [spreadAngle(head, massAlone(head) ? symbol : '\u03b8_mass', kind)];
  if (massAlone(head)) return { kind: 'worked', lines };
  if (found === null) {
    return { kind: 'none', why: kind === 'stable' ? 'help.none.rest' : 'help.none.flee' };
  }
  lines.push({ result: term(symbol, 'angle', found), formula: '', terms: {} });
  return { kind: 'worked', lines };
}

/** The long axis of the spread seeks the plane of rotation; square to it the grip flees. */
function spreadAngle({ reading }: HelpHead, symbol: string, kind: 'stable' | 'unstable'): Worked {
  const { totals } = reading;
  const stable = kind === 'stable';
  return work(
    symbol,
    'angle',
    stable
      ? '\u2212\u00bd \u00b7 atan2( 2 \u00b7 {P}, {A} )'
      : '\u2212\u00bd \u00b7 atan2( \u22122 \u00b7 {P}, \u2212{A} )',
    { P: jTerm('J_yz', totals[JYZ]), A: jTerm('A', totals[JYY] - totals[JZZ]) },
    stable ? ({ P, A }) => -Math.atan2(2 * P, A) / 2 : ({ P, A }) => -Math.atan2(-2 * P, -A) / 2,
  );
}

/** The rest or flee angle nearest to flat, radians; null: none within a quarter turn. */
function nearestRoot({ reading }: HelpHead, kind: 'stable' | 'unstable'): number | null {
  if (reading.equilibria.kind === 'neutral') return null;
  return reading.equilibria.roots.reduce<number | null>((best, root) => {
    if (root.kind !== kind) return best;
    return best === null || Math.abs(root.pitch) < Math.abs(best) ? root.pitch : best;
  }, null);
}

/** Half the width of the difference that takes the place of a derivative, degrees. */
const HALF_STEP_DEG = 0.05;

/** k of the whole at the rest angle: by the formula where mass alone counts, by a difference of the total elsewhere. */
function stiffnessAt(head: HelpHead, rest: number): Worked {
  const { reading } = head;
  const { totals } = reading;
  if (massAlone(head)) {
    return work(
      'k',
      'stiffness',
      '{W}\u00b2 \u00b7 ( {A} \u00b7 cos 2{t} \u2212 2 \u00b7 {P} \u00b7 sin 2{t} )',
      {
        W: spinTerm(head),
        A: jTerm('A', totals[JYY] - totals[JZZ]),
        P: jTerm('J_yz', totals[JYZ]),
        t: term('\u03b8_rest', 'angle', rest),
      },
      ({ W, A, P, t }) => W ** 2 * (A * Math.cos(2 * t) - 2 * P * Math.sin(2 * t)),
    );
  }
  const restDeg = degreesFromRadians(radians(rest));
  const at = (symbol: string, deg: number): Term => term(symbol, 'moment', reading.momentAt(deg));
  return work(
    'k',
    'stiffness',
    '( {low} \u2212 {high} ) / {step}',
    {
      low: at('M_below', restDeg - HALF_STEP_DEG),
      high: at('M_above', restDeg + HALF_STEP_DEG),
      step: term('\u0394\u03b8', 'angle', radiansFromDegrees(2 * HALF_STEP_DEG)),
    },
    ({ low, high, step }) => (low - high) / step,
  );
}

function stiffnessLines(head: HelpHead): Working {
  const rest = nearestRoot(head, 'stable');
  if (rest === null) return { kind: 'none', why: 'help.none.rest' };
  return { kind: 'worked', lines: [stiffnessAt(head, rest)] };
}

function frequencyLines(head: HelpHead): Working {
  const rest = nearestRoot(head, 'stable');
  if (rest === null) return { kind: 'none', why: 'help.none.rest' };
  const k = stiffnessAt(head, rest);
  if (!(k.result.value > 0)) return { kind: 'none', why: 'help.none.rest' };
  const { totals, rotor } = head.reading;
  const spin = (symbol: string, value: number) => term(symbol, 'spin', value);
  const inertia = jTerm('I_f', totals[JYY] + totals[JZZ]);
  const rod = rodInertia(head, radians(rest));
  const rate =
    rod === null
      ? work('\u03c9', 'spin', '\u221a( {k} / {I} )', { k: k.result, I: inertia }, (v) =>
          Math.sqrt(v.k / v.I),
        )
      : work(
          '\u03c9',
          'spin',
          '\u221a( {k} / ({I} + {R}) )',
          { k: k.result, I: inertia, R: rod },
          (v) => Math.sqrt(v.k / (v.I + v.R)),
        );
  return {
    kind: 'worked',
    lines: [
      k,
      rate,
      work('f', 'frequency', '{w} / 2\u03c0', { w: rate.result }, ({ w }) => w / (2 * Math.PI)),
      work(
        '\u03c9/\u03a9',
        'ratio',
        '{w} / {W}',
        { w: rate.result, W: spin('\u03a9', rotor.angularSpeed) },
        ({ w, W }) => w / W,
      ),
    ],
  };
}

/** What the push rod's mass adds to the inertia there, as a grip that is let go has it; null without a counted rod. */
function rodInertia({ model, reading }: HelpHead, rest: Radians): Term | null {
  const linkage = headLinkage(model)?.linkage;
  if (!linkage?.rod) return null;
  const value = linkInertia(linkage, reading.rotor).value(rest);
  return Number.isNaN(value) ? null : jTerm('I_rod', value);
}

/** Zero at flat pitch. By formula where mass alone counts; else the page's value, and how far above that at rest it lies. */
function energyLines(head: HelpHead): Working {
  const { reading, pitchDeg } = head;
  const whole = reading.energyAt(pitchDeg);
  if (Number.isNaN(whole)) return { kind: 'none', why: 'help.none.reach' };
  const { totals } = reading;
  if (!massAlone(head)) {
    const here: Worked = { result: term('V', 'energy', whole), formula: '', terms: {} };
    const rest = restEnergy(head);
    if (Number.isNaN(rest)) return { kind: 'worked', lines: [here] };
    const above = work(
      'above rest',
      'energy',
      '{here} \u2212 {rest}',
      { here: here.result, rest: term('V_rest', 'energy', rest) },
      (v) => v.here - v.rest,
    );
    return { kind: 'worked', lines: [here, above] };
  }
  return {
    kind: 'worked',
    lines: [
      work(
        'V',
        'energy',
        '\u00bd \u00b7 {W}\u00b2 \u00b7 ( {A} \u00b7 sin\u00b2 {t} + {P} \u00b7 sin 2{t} )',
        {
          W: spinTerm(head),
          A: jTerm('A', totals[JYY] - totals[JZZ]),
          P: jTerm('J_yz', totals[JYZ]),
          t: pitchTerm(head),
        },
        ({ W, A, P, t }) => (W ** 2 / 2) * (A * Math.sin(t) ** 2 + P * Math.sin(2 * t)),
      ),
    ],
  };
}

/** At the rest angle nearest to flat; NaN without one. */
function restEnergy(head: HelpHead): number {
  const rest = nearestRoot(head, 'stable');
  return rest === null ? Number.NaN : head.reading.energyAt(degreesFromRadians(radians(rest)));
}
