import { CONTROL_SECTION } from '../../../design/sections/control';
import { sectionValues } from '../../../design/sections/section';
import { metresFromMm, radiansFromDegrees } from '../../../engine/units';
import type { LinkageReading } from '../../reading';
import type { HelpHead } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { type Term, term, type Worked, work } from '../worked';
import { pitchTerm, totalMoment } from './turning';

/** From the moment to the servo. */
export const CONTROL = {
  pushRodForce: {
    symbol: 'T',
    work: (head) => withLever(head, (lever) => [...leverLines(head, lever), rodForce(head, lever)]),
    sources: ['virtualWork'],
    see: ['featheringMoment', 'pitchArm', 'sliderForce', 'friction', 'hysteresis'],
    also: 'pitch link load control force tension compression hold',
  },
  sliderForce: {
    symbol: 'F_s',
    work: (head) => withLever(head, (lever) => [rodForce(head, lever), sliderForceOf(head, lever)]),
    sources: ['virtualWork'],
    see: ['pushRodForce', 'servoTorque', 'sliderTravel'],
    also: 'all grips control force collective',
  },
  servoTorque: {
    symbol: 'Q',
    work: servoLines,
    sources: ['virtualWork'],
    see: ['sliderForce', 'sliderTravel', 'friction'],
    also: 'servo force torque bell crank rated margin',
  },
  pitchArm: {
    symbol: 'h',
    work: (head) =>
      withLever(head, (lever) => [armLength(lever.linkage), ...leverLines(head, lever)]),
    sources: ['mechanics'],
    see: ['pushRodForce', 'overCentre', 'ball'],
    also: 'lever arm ball distance',
  },
  sliderTravel: {
    symbol: 'dZ_s/d\u03b8',
    work: (head) => withLever(head, (lever) => [...leverLines(head, lever), ratioOf(lever)]),
    sources: ['mechanics'],
    see: ['sliderForce', 'slider', 'overCentre', 'dragAtRest'],
    also: 'ratio millimetres per degree stops',
  },
  overCentre: {
    symbol: '\u03b8_oc',
    work: overCentreLines,
    sources: ['mechanics', 'virtualWork'],
    see: ['pitchArm', 'sliderTravel', 'pitchInUse', 'fleeAngle'],
    also: 'dead centre jam toggle lock reach',
  },
} as const satisfies Entries;

/** Ball and rod at the pitch, in the plane square to the feathering axis. */
interface Lever {
  readonly linkage: LinkageReading;
  /** Ball from the axis, forward and up. */
  readonly forward: number;
  readonly up: number;
  /** The rod's direction from the arm's ball to the slider's: forward, up square to the axis, and up the shaft. */
  readonly eForward: number;
  readonly eUp: number;
  readonly eShaft: number;
}

function withLever(head: HelpHead, lines: (lever: Lever) => readonly Worked[]): Working {
  const { reading, pitch, pitchDeg } = head;
  const { linkage } = reading;
  if (!linkage) return { kind: 'none', why: 'help.none.arm' };
  const axis = linkage.rodAxisAt(pitchDeg);
  if (!axis) return { kind: 'none', why: 'help.none.reach' };
  if (reading.forceOf(1, pitchDeg) === null) return { kind: 'none', why: 'help.none.overCentre' };
  const [, y, z] = linkage.ball_G;
  const { precone } = reading.rotor;
  return {
    kind: 'worked',
    lines: lines({
      linkage,
      forward: y * Math.cos(pitch) - z * Math.sin(pitch),
      up: y * Math.sin(pitch) + z * Math.cos(pitch),
      eForward: axis[1],
      eUp: Math.cos(precone) * axis[2] - Math.sin(precone) * axis[0],
      eShaft: axis[2],
    }),
  };
}

function armLength({ ball_G }: LinkageReading): Worked {
  return work(
    'r_arm',
    'length',
    '\u221a( {y}\u00b2 + {z}\u00b2 )',
    { y: term('y_ball', 'length', ball_G[1]), z: term('z_ball', 'length', ball_G[2]) },
    ({ y, z }) => Math.hypot(y, z),
  );
}

function turned(
  symbol: string,
  formula: string,
  head: HelpHead,
  lever: Lever,
  up: boolean,
): Worked {
  const { ball_G } = lever.linkage;
  return work(
    symbol,
    'length',
    formula,
    {
      y: term('y_ball', 'length', ball_G[1]),
      z: term('z_ball', 'length', ball_G[2]),
      t: pitchTerm(head),
    },
    up
      ? ({ y, z, t }) => y * Math.sin(t) + z * Math.cos(t)
      : ({ y, z, t }) => y * Math.cos(t) - z * Math.sin(t),
  );
}

/** The ball turned by the pitch, and the lever at which the rod's line passes the axis. */
function leverLines(head: HelpHead, lever: Lever): readonly Worked[] {
  return [
    turned('y_p', '{y} \u00b7 cos {t} \u2212 {z} \u00b7 sin {t}', head, lever, false),
    turned('z_p', '{y} \u00b7 sin {t} + {z} \u00b7 cos {t}', head, lever, true),
    leverOf(lever),
  ];
}

function leverOf({ forward, up, eForward, eUp }: Lever): Worked {
  return work(
    'h',
    'length',
    '{y} \u00b7 {ez} \u2212 {z} \u00b7 {ey}',
    {
      y: term('y_p', 'length', forward),
      ez: term('e_z', 'ratio', eUp),
      z: term('z_p', 'length', up),
      ey: term('e_y', 'ratio', eForward),
    },
    ({ y, ez, z, ey }) => y * ez - z * ey,
  );
}

function rodForce(head: HelpHead, lever: Lever): Worked {
  return work(
    'T',
    'force',
    '\u2212{M} / {h}',
    { M: totalMoment(head), h: leverOf(lever).result },
    ({ M, h }) => -M / h,
  );
}

function sliderForceOf(head: HelpHead, lever: Lever): Worked {
  return work(
    'F_s',
    'force',
    '{n} \u00b7 {e} \u00b7 {T}',
    {
      n: term('n', 'count', head.design.rotor.bladeCount),
      e: term('e_Z', 'ratio', lever.eShaft),
      T: rodForce(head, lever).result,
    },
    ({ n, e, T }) => n * e * T,
  );
}

/** By virtual work: the slider's travel for a turn of the grip. */
function ratioOf(lever: Lever): Worked {
  return work(
    'dZ_s/d\u03b8',
    'travelPerAngle',
    '{h} / {e}',
    { h: leverOf(lever).result, e: term('e_Z', 'ratio', lever.eShaft) },
    ({ h, e }) => h / e,
  );
}

/** Slider travel per radian; null where there is none. */
export function travelRatio(head: HelpHead): Term | null {
  const { linkage } = head.reading;
  const ratio = linkage?.ratioAt(head.pitchDeg) ?? Number.NaN;
  return Number.isNaN(ratio) ? null : term('dZ_s/d\u03b8', 'travelPerAngle', ratio);
}

/** The lever at the pitch; null without one. */
export function leverAt(head: HelpHead): Term | null {
  let found: Term | null = null;
  withLever(head, (lever) => {
    found = leverOf(lever).result;
    return [];
  });
  return found;
}

function servoLines(head: HelpHead): Working {
  const servo = head.reading.servoAt(head.pitchDeg);
  if (!head.reading.linkage?.hasServo) return { kind: 'none', why: 'help.none.servo' };
  if (servo.kind !== 'holds') return { kind: 'none', why: 'help.none.servoReach' };
  const { crankOutputMm, crankInputMm, servoArmMm } = sectionValues(
    CONTROL_SECTION,
    head.design.control,
  );
  const arm = (symbol: string, lengthMm: number | null) =>
    term(symbol, 'length', metresFromMm(lengthMm ?? Number.NaN));
  return withLever(head, (lever) => [
    sliderForceOf(head, lever),
    work(
      'Q',
      'moment',
      '{F} \u00b7 {s} \u00b7 {out} / {in} \u00b7 cos {angle}',
      {
        F: sliderForceOf(head, lever).result,
        s: arm('l_servo', servoArmMm),
        out: arm('l_out', crankOutputMm),
        in: arm('l_in', crankInputMm),
        angle: term('\u03c6_servo', 'angle', radiansFromDegrees(servo.angleDeg)),
      },
      (v) => ((v.F * v.s * v.out) / v.in) * Math.cos(v.angle),
    ),
  ]);
}

/** How far the nearest over-centre lies from the pitch in use. */
function overCentreLines({ reading }: HelpHead): Working {
  if (!reading.linkage) return { kind: 'none', why: 'help.none.arm' };
  const nearest = reading.overCentreDeg.reduce<number | null>(
    (best, deg) => (best === null || Math.abs(deg) < Math.abs(best) ? deg : best),
    null,
  );
  if (nearest === null) return { kind: 'none', why: 'help.none.neverOverCentre' };
  return {
    kind: 'worked',
    lines: [
      {
        result: term('\u03b8_oc', 'angle', radiansFromDegrees(nearest)),
        formula: '',
        terms: {},
        note: 'help.foundByLever',
      },
      work(
        'margin',
        'angle',
        '|{oc}| \u2212 {used}',
        {
          oc: term('\u03b8_oc', 'angle', radiansFromDegrees(nearest)),
          used: term('\u03b8_used', 'angle', radiansFromDegrees(reading.usedPitchDeg)),
        },
        ({ oc, used }) => Math.abs(oc) - used,
      ),
    ],
  };
}
