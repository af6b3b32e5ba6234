import type { Margin } from '../../../design/forces/loadTypes';
import { M, SX, SY, SZ } from '../../../engine/mass/moments';
import { turningParts } from '../../turningParts';
import { type HelpHead, partToShow } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { type Measure, type Term, term, type Worked, work, workSum } from '../worked';
import { partTerms } from './spread';
import { pitchTerm, spinTerm } from './turning';

/** What bearings, blade and bolt carry, at the design's speed. */
export const LOADS = {
  pull: {
    symbol: 'F',
    work: pullLines,
    sources: ['mechanics'],
    see: ['axialPull', 'partMoment', 'bearingLoad', 'boltPull'],
    also: 'centrifugal force of a part arrows',
  },
  axialPull: {
    symbol: 'F_x',
    work: axialLines,
    sources: ['mechanics'],
    see: ['pull', 'bearingLoad', 'thrustBearing'],
    also: 'along the feathering axis thrust bearing',
  },
  bearingLoad: {
    symbol: 'P_0',
    work: bearingLines,
    sources: ['iso76'],
    see: ['axialPull', 'flapMoment', 'bearingFriction', 'firstLimit'],
    also: 'radial axial equivalent static load rating',
  },
  flapMoment: {
    symbol: 'M_flap',
    work: flapLines,
    sources: ['mechanics', 'trade'],
    see: ['thrust', 'bearingLoad', 'flapwise', 'counterweight'],
    also: 'bends the tip up one side or two',
  },
  thrust: {
    symbol: 'F_T',
    work: thrustLines,
    sources: ['momentum'],
    see: ['flapMoment', 'airMoment', 'collective'],
    also: 'lift of a blade hover',
  },
  boltPull: {
    symbol: 'F_bolt',
    work: boltLines,
    sources: ['mechanics', 'en1993', 'iso898'],
    see: ['boltStrength', 'pull', 'bladeBolt'],
    also: 'bolt load shear plane shank thread',
  },
  boltStrength: {
    work: strengthLines,
    sources: ['en1993', 'iso898'],
    see: ['boltPull', 'firstLimit', 'prevailingNut'],
    also: 'bending cheek pressure class margin use of limit',
  },
  firstLimit: {
    symbol: 'n_limit',
    work: limitLines,
    sources: ['ours', 'mechanics'],
    see: ['boltStrength', 'bearingLoad', 'speed'],
    also: 'speed at which a limit is met rpm',
  },
} as const satisfies Entries;

/** W^2 m r: the part's mass at the distance of its centre from the shaft. */
function pullLines(head: HelpHead): Working {
  const part = partToShow(head, (one) => Math.abs(one.moments_G[SX]));
  if (!part || !(part.moments_G[M] > 0)) return { kind: 'none', why: 'help.none.parts' };
  return {
    kind: 'worked',
    lines: [
      work(
        part.part.name || part.part.id,
        'force',
        '{W}\u00b2 \u00b7 {m} \u00b7 {r}',
        {
          W: spinTerm(head),
          m: term('m', 'mass', part.moments_G[M]),
          r: term('r', 'length', distanceFromShaft(head, part.moments_G)),
        },
        ({ W, m, r }) => W ** 2 * m * r,
      ),
    ],
  };
}

/** Of a body's centre from the shaft axis at the pitch, m. */
function distanceFromShaft({ reading, pitch }: HelpHead, J: Float64Array): number {
  const { torqueOffset, precone } = reading.rotor;
  const [x, y, z] = [J[SX] / J[M], J[SY] / J[M], J[SZ] / J[M]];
  const [s, c] = [Math.sin(pitch), Math.cos(pitch)];
  const up = y * s + z * c;
  return Math.hypot(x * Math.cos(precone) - up * Math.sin(precone), torqueOffset + y * c - z * s);
}

/** What the parts pull along the axis, and what the push rod adds. */
function axialLines(head: HelpHead): Working {
  const { reading, pitchDeg, pitch } = head;
  const parts = turningParts(head.reading);
  if (parts.length === 0) return { kind: 'none', why: 'help.none.parts' };
  const { angularSpeed, precone } = reading.rotor;
  const [s, c] = [Math.sin(pitch), Math.cos(pitch)];
  const terms = partTerms(parts, 'force', ({ moments_G: J }) => {
    const up = J[SY] * s + J[SZ] * c;
    const out = J[SX] * Math.cos(precone) - up * Math.sin(precone);
    return angularSpeed ** 2 * Math.cos(precone) * out;
  });
  const whole = reading.loadsAt(pitchDeg).axialPull;
  const rest = whole - terms.reduce((sum, { value }) => sum + value, 0);
  const more = Math.abs(rest) > 1e-9 * Math.abs(whole) ? [term('rod and air', 'force', rest)] : [];
  return { kind: 'worked', lines: [workSum('F_x', 'force', [...terms, ...more])] };
}

function bearingLines(head: HelpHead): Working {
  const loads = head.reading.loadsAt(head.pitchDeg);
  if (loads.bearings.length === 0) return { kind: 'none', why: 'help.none.bearings' };
  const name = (id: string) => head.reading.part(id)?.part.name || id;
  return {
    kind: 'worked',
    lines: loads.bearings.map(({ id, carries, radial, axial }) =>
      carries === 'thrust'
        ? work(name(id), 'force', '|{a}|', { a: term('F_a', 'force', axial) }, ({ a }) =>
            Math.abs(a),
          )
        : work(
            name(id),
            'force',
            'max( {r}, 0.6 \u00b7 {r} + 0.5 \u00b7 |{a}| )',
            { r: term('F_r', 'force', radial), a: term('F_a', 'force', axial) },
            ({ r, a }) => Math.max(r, 0.6 * r + 0.5 * Math.abs(a)),
          ),
    ),
  };
}

function flapLines(head: HelpHead): Working {
  const { flap } = head.reading.loadsAt(head.pitchDeg);
  const terms = [term('M_flap,mass', 'moment', flap.fromMass)];
  if (flap.fromThrust !== null) terms.push(term('M_flap,air', 'moment', flap.fromThrust));
  return { kind: 'worked', lines: [workSum('M_flap', 'moment', terms)] };
}

function thrustLines(head: HelpHead): Working {
  const { thrust } = head.reading.loadsAt(head.pitchDeg);
  if (!thrust) return { kind: 'none', why: 'help.none.air' };
  return {
    kind: 'worked',
    lines: [
      { result: term('F_T', 'force', thrust.force), formula: '', terms: { t: pitchTerm(head) } },
      work(
        'M_root',
        'moment',
        '{F} \u00b7 {r}',
        { F: term('F_T', 'force', thrust.force), r: term('r_T', 'length', thrust.radius) },
        ({ F, r }) => F * r,
      ),
    ],
  };
}

/** Half the pull in each shear plane. */
function boltLines(head: HelpHead): Working {
  const [bolt] = head.reading.loadsAt(head.pitchDeg).bolts;
  if (!bolt) return { kind: 'none', why: 'help.none.bolt' };
  return {
    kind: 'worked',
    lines: [
      work(
        'F_plane',
        'force',
        '\u00bd \u00b7 {F}',
        { F: term('F_bolt', 'force', bolt.pull) },
        ({ F }) => F / 2,
      ),
    ],
  };
}

const CHECK_MEASURE = {
  shear: 'force',
  bending: 'moment',
  shearAndBending: 'ratio',
  cheekPressure: 'pressure',
  rootPressure: 'pressure',
  headPull: 'pressure',
  thread: 'force',
} as const satisfies Readonly<Record<string, Measure>>;

const CHECK_SYMBOL = {
  shear: 'shear',
  bending: 'bending',
  shearAndBending: 'both',
  cheekPressure: 'cheeks',
  rootPressure: 'root',
  headPull: 'overhang',
  thread: 'thread',
} as const;

/** Every check of the first bolt as the share of its limit. */
function strengthLines(head: HelpHead): Working {
  const [bolt] = head.reading.loadsAt(head.pitchDeg).bolts;
  if (!bolt) return { kind: 'none', why: 'help.none.bolt' };
  const lines = bolt.checks.flatMap(({ name, margin }) =>
    useLine(`use_${CHECK_SYMBOL[name]}`, CHECK_MEASURE[name], margin),
  );
  if (lines.length === 0) return { kind: 'none', why: 'help.none.limit' };
  return { kind: 'worked', lines };
}

function useLine(symbol: string, measure: Measure, margin: Margin): readonly Worked[] {
  if (margin.kind === 'unknown') return [];
  const own = (name: string, value: number): Term => term(name, measure, value);
  return [
    work(
      symbol,
      'ratio',
      '{load} / {limit}',
      { load: own('load', margin.value), limit: own('limit', margin.limit) },
      ({ load, limit }) => load / limit,
    ),
  ];
}

function limitLines(head: HelpHead): Working {
  const { first, speedRpm } = head.reading.loadsAt(head.pitchDeg);
  if (!first) return { kind: 'none', why: 'help.none.limit' };
  return {
    kind: 'worked',
    lines: [
      work(
        'n_limit',
        'rpm',
        '{n} / \u221a{use}',
        { n: term('n', 'rpm', speedRpm), use: term('use', 'ratio', first.use) },
        ({ n, use }) => n / Math.sqrt(use),
      ),
    ],
  };
}
