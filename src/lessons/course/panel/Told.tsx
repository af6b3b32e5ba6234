import { useMemo } from 'react';
import { useAppState } from '../../../ui/session';
import type { LessonRun } from '../desk';
import type { LessonStep } from '../lesson';
import { say } from '../say';
import { truthOf } from '../truth';
import { LessonText } from './LessonText';

/** After an answer or a deed: how it is, and why. */
export function Told(props: { readonly run: LessonRun; readonly step: LessonStep }) {
  const { run, step } = props;
  return (
    <div className="lessons-told" data-testid="lesson-told">
      <p className="lessons-verdict">
        {step.kind === 'do' ? say('lessonRoom.didIt') : <Verdict run={run} step={step} />}
      </p>
      <p>
        <LessonText text={step.because} />
      </p>
    </div>
  );
}

function Verdict(props: {
  readonly run: LessonRun;
  readonly step: Exclude<LessonStep, { readonly kind: 'do' }>;
}) {
  const { run, step } = props;
  const units = useAppState((state) => state.settings.units);
  const truth = useMemo(
    () => truthOf(run.lesson, run.step, step, units),
    [run.lesson, run.step, step, units],
  );
  const answer = run.answer ?? Number.NaN;
  const fits = truth.fits(answer);
  const key =
    step.kind === 'choose'
      ? fits
        ? 'lessonRoom.right'
        : 'lessonRoom.wrong'
      : fits
        ? 'lessonRoom.close'
        : 'lessonRoom.far';
  return (
    <>
      {say(key, { truth: truth.text, answer: truth.said(answer) })}{' '}
      {step.change && say('lessonRoom.shown')}
    </>
  );
}
