import type { HelpHead } from '../helpHead';
import type { Entries, Working } from '../topicTypes';
import { term, work } from '../worked';
import { leverAt } from './control';

/** Reading the gauge. */
export const BENCH = {
  gaugeStep: {
    symbol: 'u_step',
    work: stepLines,
    sources: ['gum', 'trade'],
    see: ['zeroOfGauge', 'residual', 'band95', 'dragAtRest'],
    also: 'resolution quantisation force gauge',
  },
  hysteresis: {
    work: hysteresisLines,
    sources: ['coulomb', 'trade'],
    see: ['friction', 'pushRodForce', 'loopWork'],
    also: 'push and pull pass mean half difference',
  },
  loopWork: {
    sources: ['mechanics'],
    see: ['hysteresis', 'friction', 'energy'],
    also: 'loop lost energy',
  },
  residual: {
    sources: ['statistics'],
    see: ['band95', 'gaugeStep', 'returningForce'],
    also: 'left over reading less fit',
  },
  band95: {
    sources: ['statistics', 'gum'],
    see: ['residual', 'tolerance95'],
    also: 'confidence interval nineteen times in twenty uncertainty',
  },
  zeroOfGauge: {
    sources: ['trade'],
    see: ['gaugeStep', 'residual'],
    also: 'offset zero shift',
  },
  returningForce: {
    sources: ['trade', 'ours'],
    see: ['airMoment', 'residual'],
    also: 'force comes back beyond twenty degrees aerodynamic',
  },
} as const satisfies Entries;

/** A reading that is rounded to a step lies anywhere within it: a uniform distribution. */
function stepLines({ design }: HelpHead): Working {
  const step = design.bench?.gaugeStepN;
  if (step === undefined) return { kind: 'none', why: 'help.none.gauge' };
  return {
    kind: 'worked',
    lines: [
      work(
        'u_step',
        'force',
        '{s} / \u221a12',
        { s: term('s', 'force', step) },
        ({ s }) => s / Math.sqrt(12),
      ),
    ],
  };
}

/** How far a pulled and a pushed reading at the push rod will lie apart. */
function hysteresisLines(head: HelpHead): Working {
  const { friction } = head.reading;
  if (!friction.counted || !friction.known) return { kind: 'none', why: 'help.none.friction' };
  const lever = leverAt(head);
  if (!lever) return { kind: 'none', why: 'help.none.arm' };
  return {
    kind: 'worked',
    lines: [
      work(
        'pull \u2212 push',
        'force',
        '2 \u00b7 {f} / |{h}|',
        { f: term('M_f', 'moment', friction.at(head.pitchDeg)), h: lever },
        ({ f, h }) => (2 * f) / Math.abs(h),
      ),
    ],
  };
}
