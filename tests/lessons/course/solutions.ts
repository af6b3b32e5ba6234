import type { Happening } from '../../../src/state/happenings';

/**
 * How each lesson is finished, step by step: an answer (any will do: here the true one), or numbers typed into the lesson's
 * own fields. Worked out by hand from the formulas beside them.
 */
export type Solved =
  | { readonly choose: number }
  | { readonly number: string }
  /** Buttons of the page pressed one after the other, and what that makes happen. */
  | { readonly press: readonly string[]; readonly tells: Happening }
  /** Place of the field in the lesson's list, and what is typed there. */
  | { readonly turn: readonly (readonly [number, string])[] };

export const SOLUTIONS: Readonly<Record<string, readonly Solved[]>> = {
  'two-lumps': [
    { choose: 0 },
    { press: ['lower-pulls', 'pulls-all'], tells: { kind: 'pulls', added: 3, of: 3 } },
    // sin 2t is greatest at 45 degrees.
    { turn: [[0, '45']] },
    { choose: 1 },
    // Half the distance wants four times the mass.
    {
      turn: [
        [1, '20'],
        [2, '20'],
      ],
    },
  ],
  'blade-lies-flat': [
    { choose: 1 },
    { choose: 1 },
    { number: '1' },
    // (c^2 - t^2)/(c^2 + t^2) = 0.81 at t = 9.07 mm for c = 28 mm.
    { turn: [[2, '9.2']] },
  ],
  'bolt-stands-up': [{ choose: 1 }, { choose: 0 }, { turn: [[1, '4.763']] }],
  'round-ellipse': [{ choose: 2 }, { turn: [[1, '34.6']] }, { turn: [[0, '45']] }],
  'off-the-plane': [{ choose: 0 }, { number: '-109' }, { turn: [[1, '8']] }],
  'holding-bands': [
    { choose: 2 },
    {
      press: ['dial-let-go'],
      tells: { kind: 'letGo', fromDeg: 15, endDeg: -0.5, outcome: 'settles' },
    },
    { choose: 1 },
    { turn: [[0, '1500']] },
  ],
  'over-centre': [{ choose: 2 }, { turn: [[0, '-52.6']] }, { turn: [[1, '23']] }],
  'air-takes-over': [{ choose: 2 }, { turn: [[0, '21.4']] }, { choose: 1 }],
  'one-side-or-two': [{ choose: 2 }, { turn: [[1, '16.25']] }, { choose: 2 }],
  'how-close': [{ choose: 1 }, { turn: [[0, '6.415']] }, { turn: [[0, '6.155']] }],
};
