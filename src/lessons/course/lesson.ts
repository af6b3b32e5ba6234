import type { Design } from '../../design/design';
import type { ChartQuantity, Layer, LearnView } from '../../state/settings';
import type { Condition, HeadCondition } from './condition';
import type { QuantityRef } from './quantity';

export const LESSON_FORMAT = 'stillgrip-lesson';
export const LESSON_VERSION = 1;

/** One number, choice or switch put to another value, or the pitch pointer: what a step does to the head. */
export type Change =
  | {
      readonly part: string;
      readonly field: string;
      readonly component?: 0 | 1 | 2;
      readonly value: number | string | boolean;
    }
  | {
      readonly section: string;
      readonly field: string;
      readonly value: number | string | boolean;
    }
  | { readonly pitchDeg: number };

/** A number that the pupil may turn in the lesson's own panel. */
export type LessonKnob = (
  | { readonly part: string; readonly field: string; readonly component?: 0 | 1 | 2 }
  | { readonly section: string; readonly field: string }
  | { readonly pointer: 'pitch' }
) & {
  readonly label: string;
  readonly step: number;
};

interface Watched extends QuantityRef {
  readonly label: string;
}

interface StepBase {
  /** The head is put so: before a `do`, and after the answer to a question, which is about the head so changed. */
  readonly change?: readonly Change[];
  /** What is to be learnt from it, shown afterwards. */
  readonly because: string;
}

/** A question with answers to choose from; the one whose conditions hold of the changed head is true. */
export interface ChooseStep extends StepBase {
  readonly kind: 'choose';
  readonly question: string;
  readonly choices: readonly {
    readonly text: string;
    readonly when: readonly HeadCondition[];
  }[];
}

/** A question for a number; the truth is the quantity of the changed head. */
export interface EstimateStep extends StepBase {
  readonly kind: 'estimate';
  readonly question: string;
  readonly answer: QuantityRef;
  /** An answer so near, in percent of the truth, is called close. */
  readonly withinPercent: number;
}

/** Something to do to the head, and how it is known that it was done. */
interface DoStep extends StepBase {
  readonly kind: 'do';
  readonly instruction: string;
  readonly hint?: string;
  readonly until: readonly Condition[];
}

export type LessonStep = ChooseStep | EstimateStep | DoStep;

export interface Lesson {
  readonly format: typeof LESSON_FORMAT;
  readonly version: typeof LESSON_VERSION;
  readonly id: string;
  readonly title: string;
  readonly sentences: readonly string[];
  readonly scene: {
    readonly design: Design;
    readonly pitchDeg?: number;
    readonly select?: string;
    readonly tab?: LearnView;
    readonly chart?: ChartQuantity;
    readonly layers?: readonly Layer[];
    readonly knobs: readonly LessonKnob[];
    readonly watch: readonly Watched[];
  };
  readonly steps: readonly LessonStep[];
  readonly teacher: {
    readonly minutes: number;
    readonly notes: readonly string[];
  };
  readonly sources: readonly string[];
}
