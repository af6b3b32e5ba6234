import type { Design } from '../../../src/design/design';
import type { DesignFault } from '../../../src/design/fault';
import { designOf, mounted, partOf } from '../designs';

/** The way to a value. */
export type Steps = readonly (string | number)[];

const PARTS = [
  partOf('grip', 'grip'),
  mounted('bolt', 'bolt', 'grip', 'boltTop', {
    hidden: true,
    measured: {
      massGrams: 3,
      massStepGrams: 0.01,
      centreXMm: 0,
      centreYMm: 0,
      centreZMm: -9,
      centreStepMm: 0.5,
      swings: [
        {
          about: 'span',
          spacingMm: 40,
          stringLengthMm: 500,
          swings: 10,
          seconds: 12,
          spacingStepMm: 0.5,
          timeStepSeconds: 0.3,
          amplitudeDeg: 5,
          cradleGrams: 1,
          cradleMomentGMm2: 10,
        },
      ],
    },
  }),
  mounted('nut', 'nut', 'bolt', 'thread', {
    socket: { part: 'bolt', name: 'thread', offsetMm: 12, turnDeg: 30 },
  }),
  mounted('washer', 'washer', 'bolt', 'underHead', {
    catalogue: { standard: 'ISO 7089', size: 'M3' },
    densityKgM3: undefined,
    material: 'bar',
  }),
];
export const RUN = {
  id: 'r',
  name: 'Run',
  speedRpm: 9000,
  armMm: 17,
  gaugeStepN: 0.1,
  fitted: 'bolt',
  parts: ['bolt'],
  gauge: 'spring',
  date: 'today',
  note: 'calm',
  rows: [{ pitchDeg: 1, scaleMm: 2, forceN: 3, travel: 'pull', note: 'soft' }],
  steps: [{ from: 0, to: 10, pitchDeg: 5, travel: 'push' }],
  setAside: [0],
  uncounted: true,
  tryOut: 'one',
};
export const TABLE_RUN = {
  id: 't',
  name: 'Table',
  table: {
    encoding: 'utf-8',
    text: 'Pitch,Force\n1,2\n',
    delimiter: ',',
    decimal: '.',
    columns: [{ role: 'pitch', unit: 'deg', flipped: false, travel: null }],
  },
};

/** Everything that a design file may hold, each thing once and sound. */
export const WHOLE = {
  ...designOf(PARTS),
  note: 'Invented.',
  friction: {
    drag: [
      { travelMm: 0, forceN: 1 },
      { travelMm: 1, forceN: 2 },
    ],
  },
  air: { polar: { name: 'p', text: 'alpha,cl' } },
  tolerance: { own: [{ part: 'nut', field: 'heightMm', component: 1, plusMinus: 0.1 }] },
  materials: [
    {
      id: 'bar',
      name: 'Bar',
      densityKgM3: 7800,
      densityLowKgM3: 7700,
      densityHighKgM3: 7900,
      youngsModulusGPa: 200,
      tensileStrengthMPa: 500,
      yieldStrengthMPa: 300,
      source: 'weighed',
      note: 'n',
    },
  ],
  weighedTotal: { massGrams: 50, massStepGrams: 0.1 },
  otherGrips: [
    {
      name: 'B',
      massGrams: 50,
      stationMm: 30,
      partMassesGrams: { bolt: 3 },
      parts: [partOf('block', 'x')],
    },
  ],
  tryOuts: [
    { id: 'one', name: 'One', note: 'n', adopted: true },
    { id: 'two', name: 'Two', parts: [partOf('block', 'y')] },
  ],
  bench: {
    place: 'rod',
    pullsAlong: -1,
    gaugeStepN: 0.1,
    gaugeLimitN: 20,
    gaugeNoiseN: 0.05,
    calibration: { kind: 'line', scaleUnit: 'mm', pairs: [{ scale: 1, pitchDeg: 2 }] },
    fit: {
      friction: 'none',
      zeros: 'free',
      air: 'known',
      pitchSigmaDeg: 0.2,
      gainPercent: 1,
      leverPercent: 1,
      speedPercent: 1,
      pitchZeroDeg: 1,
    },
    plan: {
      pitchesDeg: [-10, 10],
      speedsRpm: [9000],
      senses: ['pull'],
      leftOut: ['bare'],
      settleSeconds: 5,
      ticked: ['a'],
      tickedOn: 'today',
    },
    runs: [RUN, TABLE_RUN],
  },
} as unknown as Design;

/** The same with a value put somewhere, or taken away. */
export function changed(steps: Steps, value: unknown): unknown {
  const copy = JSON.parse(JSON.stringify(WHOLE)) as Record<string | number, unknown>;
  let at = copy;
  for (const step of steps.slice(0, -1)) at = (at[step] ??= {}) as typeof at;
  const last = steps[steps.length - 1];
  if (value === undefined) delete at[last];
  else at[last] = value;
  return copy;
}
export function pathOf(steps: Steps): string {
  return steps
    .map((step, k) => (typeof step === 'number' ? `[${step}]` : k > 0 ? `.${step}` : step))
    .join('');
}
export function short(fault: DesignFault | null): string {
  return fault ? `${fault.path} ${fault.reason.code}` : 'sound';
}
