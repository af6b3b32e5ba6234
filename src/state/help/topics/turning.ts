import { JXY, JXZ, JYY, JYZ, JZZ, SY, SZ } from '../../../engine/mass/moments';
import { radians } from '../../../engine/units';
import { turningParts } from '../../turningParts';
import type { HelpHead } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { type Term, term, type Worked, work, workSum } from '../worked';
import { jTerm, partTerms } from './spread';

/** What turns the grip about its feathering axis. */
export const TURNING = {
  speed: {
    symbol: '\u03a9',
    work: ({ design: { rotor } }) => ({
      kind: 'worked',
      lines: [
        work(
          '\u03a9',
          'spin',
          '2\u03c0 \u00b7 {n} / 60 s',
          { n: term('n', 'rpm', rotor.speedRpm) },
          ({ n }) => (n * Math.PI) / 30,
        ),
      ],
    }),
    sources: ['definition'],
    see: ['featheringMoment', 'pull', 'firstLimit'],
    also: 'rpm revolutions square law overspeed',
  },
  pitch: {
    symbol: '\u03b8',
    sources: ['definition'],
    see: ['pitchInUse', 'restAngle', 'pitchDial', 'collective'],
    also: 'angle of the grip feathering',
  },
  pitchInUse: {
    sources: ['ours', 'trade'],
    see: ['pitch', 'overCentre', 'holdingBand'],
    also: 'range used travel',
  },
  featheringMoment: {
    symbol: 'M',
    work: momentLines,
    sources: ['propellerMoment', 'mechanics'],
    see: ['difference', 'product', 'pushRodForce', 'energy', 'propellerMoment'],
    also: 'centrifugal twisting moment turning torque',
  },
  partMoment: {
    symbol: 'M_part',
    work: partMomentLines,
    sources: ['propellerMoment'],
    see: ['share', 'featheringMoment', 'pull'],
    also: 'shares lump by lump',
  },
  torqueOffset: {
    symbol: 'a',
    work: offsetLines,
    sources: ['propellerMoment'],
    see: ['precone', 'featheringMoment', 'featheringAxis'],
    also: 'displaced axis once per turn',
  },
  precone: {
    symbol: '\u03b2',
    work: preconeLines,
    sources: ['propellerMoment'],
    see: ['torqueOffset', 'featheringMoment', 'flapMoment'],
    also: 'coning tilt of the axis',
  },
  rodMoment: {
    symbol: 'M_rod',
    work: (head) => valueOnly(head, 'M_rod', rodShare(head), 'help.none.rod'),
    sources: ['mechanics', 'virtualWork'],
    see: ['featheringMoment', 'pushRod'],
    also: 'own mass of the push rod link',
  },
  airMoment: {
    symbol: 'M_air',
    work: (head) => valueOnly(head, 'M_air', shareOf(head, 'air'), 'help.none.air'),
    sources: ['momentum', 'flatPlate'],
    see: ['featheringMoment', 'thrust', 'quarterChord'],
    also: 'aerodynamic air takes over estimate',
  },
  bladeSwing: {
    symbol: 'M_lag',
    work: (head) => valueOnly(head, 'M_lag', shareOf(head, 'lag'), 'help.none.lag'),
    sources: ['mechanics'],
    see: ['leadLag', 'bladeBolt', 'featheringMoment'],
    also: 'lag angle blade on its bolt swings',
  },
} as const satisfies Entries;

export function spinTerm({ reading: { rotor } }: HelpHead): Term {
  return term('\u03a9', 'spin', rotor.angularSpeed);
}

export function pitchTerm({ pitch }: HelpHead): Term {
  return term('\u03b8', 'angle', pitch);
}

const MASS_FORMULA =
  '\u2212{W}\u00b2 \u00b7 ( \u00bd \u00b7 {A} \u00b7 sin 2{t} + {P} \u00b7 cos 2{t} )';
const CONED =
  '\u2212{W}\u00b2 \u00b7 cos\u00b2 {b} \u00b7 ( \u00bd \u00b7 {A} \u00b7 sin 2{t} + {P} \u00b7 cos 2{t} )';

/** What J of the head, or of a part, makes of the moment: the share twice a turn. */
function spreadMoment(head: HelpHead, symbol: string, J: Float64Array): Worked {
  const { precone } = head.reading.rotor;
  return work(
    symbol,
    'moment',
    precone === 0 ? MASS_FORMULA : CONED,
    {
      W: spinTerm(head),
      A: jTerm('A', J[JYY] - J[JZZ]),
      P: jTerm('J_yz', J[JYZ]),
      t: pitchTerm(head),
      ...(precone === 0 ? {} : { b: term('\u03b2', 'angle', precone) }),
    } as Record<'W' | 'A' | 'P' | 't' | 'b', Term>,
    ({ W, A, P, t, b = 0 }) =>
      -(W ** 2) * Math.cos(b) ** 2 * ((A / 2) * Math.sin(2 * t) + P * Math.cos(2 * t)),
  );
}

/** What torque offset adds, once a turn. */
function offsetMoment(head: HelpHead, J: Float64Array): Worked {
  return work(
    'M_a',
    'moment',
    '\u2212{W}\u00b2 \u00b7 {a} \u00b7 ( {Sy} \u00b7 sin {t} + {Sz} \u00b7 cos {t} )',
    {
      W: spinTerm(head),
      a: term('a', 'length', head.reading.rotor.torqueOffset),
      Sy: term('S_y', 'firstMoment', J[SY]),
      Sz: term('S_z', 'firstMoment', J[SZ]),
      t: pitchTerm(head),
    },
    ({ W, a, Sy, Sz, t }) => -(W ** 2) * a * (Sy * Math.sin(t) + Sz * Math.cos(t)),
  );
}

function preconeMoment(head: HelpHead, J: Float64Array): Worked {
  return work(
    'M_\u03b2',
    'moment',
    '\u2212{W}\u00b2 \u00b7 sin {b} \u00b7 cos {b} \u00b7 ( {xy} \u00b7 cos {t} \u2212 {xz} \u00b7 sin {t} )',
    {
      W: spinTerm(head),
      b: term('\u03b2', 'angle', head.reading.rotor.precone),
      xy: jTerm('J_xy', J[JXY]),
      xz: jTerm('J_xz', J[JXZ]),
      t: pitchTerm(head),
    },
    ({ W, b, xy, xz, t }) =>
      -(W ** 2) * Math.sin(b) * Math.cos(b) * (xy * Math.cos(t) - xz * Math.sin(t)),
  );
}

/** The shares of the mass, each by its formula: of its spread, and of offset and precone where there is any. */
function massLines(head: HelpHead, J: Float64Array): readonly Worked[] {
  const { torqueOffset, precone } = head.reading.rotor;
  return [
    spreadMoment(head, 'M_mass', J),
    ...(torqueOffset === 0 ? [] : [offsetMoment(head, J)]),
    ...(precone === 0 ? [] : [preconeMoment(head, J)]),
  ];
}

/** The moment of the mass by formula, and with what else the design counts the total. */
export function momentLines(head: HelpHead): Working {
  const mass = massLines(head, head.reading.totals);
  const rest = [
    ['M_rod', rodShare(head)] as const,
    ['M_air', shareOf(head, 'air')] as const,
    ['M_lag', shareOf(head, 'lag')] as const,
  ].flatMap(([symbol, value]) => (value === null ? [] : [term(symbol, 'moment', value)]));
  const all = [...mass.map(({ result }) => result), ...rest];
  if (all.some(({ value }) => Number.isNaN(value))) return { kind: 'none', why: 'help.none.reach' };
  return { kind: 'worked', lines: [...mass, workSum('M', 'moment', all)] };
}

function partMomentLines(head: HelpHead): Working {
  const parts = turningParts(head.reading);
  if (parts.length === 0) return { kind: 'none', why: 'help.none.parts' };
  const { selected } = head;
  if (selected) return { kind: 'worked', lines: massLines(head, selected.moments_G) };
  const terms = partTerms(parts, 'moment', (part) => part.momentAt(head.pitchDeg));
  return { kind: 'worked', lines: [workSum('M_mass', 'moment', terms)] };
}

function offsetLines(head: HelpHead): Working {
  const set = term('a', 'length', head.reading.rotor.torqueOffset);
  return {
    kind: 'worked',
    lines: [asSet(set), offsetMoment(head, head.reading.totals)],
  };
}

function preconeLines(head: HelpHead): Working {
  const set = term('\u03b2', 'angle', head.reading.rotor.precone);
  return {
    kind: 'worked',
    lines: [asSet(set), preconeMoment(head, head.reading.totals)],
  };
}

/** A number of the design as it stands there. */
function asSet(set: Term): Worked {
  return { result: set, formula: '', terms: {}, note: 'help.asSet' };
}

/** The moment of the whole head, N m; NaN where there is none. */
export function totalMoment(head: HelpHead): Term {
  return term('M', 'moment', head.reading.momentAt(head.pitchDeg));
}

/** Of the push rod's own mass, N m; null where it is not counted. */
function rodShare({ reading, pitchDeg, design }: HelpHead): number | null {
  const id = reading.linkage?.rodPart;
  if (!id || design.counted?.rodMass === false) return null;
  return reading.part(id)?.momentAt(pitchDeg) ?? null;
}

function shareOf({ reading, pitchDeg }: HelpHead, id: 'air' | 'lag'): number | null {
  return reading.terms.find((one) => one.id === id)?.momentAt(pitchDeg) ?? null;
}

/** A number that no short formula gives: its value alone. */
function valueOnly(
  head: HelpHead,
  symbol: string,
  value: number | null,
  why: Extract<Working, { kind: 'none' }>['why'],
): Working {
  if (value === null) return { kind: 'none', why };
  if (Number.isNaN(value)) return { kind: 'none', why: 'help.none.reach' };
  return {
    kind: 'worked',
    lines: [
      {
        result: term(symbol, 'moment', value),
        formula: '',
        terms: { t: term('\u03b8', 'angle', radians(head.pitch)) },
      },
    ],
  };
}
