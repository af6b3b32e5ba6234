import { useId, useState } from 'react';
import { shownUnit } from '../../../state/shownUnits';
import { readTyped } from '../../../state/typed/readTyped';
import { useAppState } from '../../../ui/session';
import type { LessonRun } from '../desk';
import type { ChooseStep, EstimateStep } from '../lesson';
import { quantityUnit } from '../quantity';
import { say } from '../say';
import { useLessonDesk } from '../useLessons';
import { LessonText } from './LessonText';

/** A question with answers; what is true is shown only after one was chosen. */
export function ChooseBody(props: { readonly run: LessonRun; readonly step: ChooseStep }) {
  const { run, step } = props;
  const desk = useLessonDesk();
  const name = useId();
  const [chosen, setChosen] = useState<number | null>(run.answer);
  const [isAsked, setAsked] = useState(false);
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        setAsked(chosen === null);
        if (chosen !== null) desk.answer(chosen);
      }}
    >
      <fieldset className="lessons-choices" disabled={run.told}>
        <legend className="lessons-ask">
          <LessonText text={step.question} />
        </legend>
        {step.choices.map(({ text }, at) => (
          <label key={text}>
            <input
              type="radio"
              name={name}
              checked={chosen === at}
              data-testid={`choice-${at}`}
              onChange={() => setChosen(at)}
            />
            <span>
              <LessonText text={text} />
            </span>
          </label>
        ))}
      </fieldset>
      {!run.told && <AnswerButton />}
      {isAsked && chosen === null && (
        <p className="lessons-fault" role="alert">
          {say('lessonRoom.choose')}
        </p>
      )}
    </form>
  );
}

/** A question for a number, in the units on screen. */
export function EstimateBody(props: { readonly run: LessonRun; readonly step: EstimateStep }) {
  const { run, step } = props;
  const desk = useLessonDesk();
  const id = useId();
  const [text, setText] = useState('');
  const [fault, setFault] = useState('');
  const units = useAppState((state) => state.settings.units);
  const unit = quantityUnit(run.lesson.scene.design, step.answer);
  const shown = shownUnit(unit, units);
  const label = say('lessonRoom.yourNumber');
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        const read = readTyped(text, { label, unit }, shown, null);
        if (!read.ok) setFault(read.reason);
        else if (read.value !== undefined) desk.answer(read.value);
      }}
    >
      <p className="lessons-ask">
        <LessonText text={step.question} />
      </p>
      {!run.told && (
        <>
          <div className="lessons-knob">
            <label htmlFor={id}>{label}</label>
            <span className="lessons-entry-box">
              <input
                id={id}
                className="lessons-input"
                inputMode="decimal"
                autoComplete="off"
                value={text}
                aria-invalid={fault !== ''}
                aria-describedby={fault === '' ? undefined : `${id}-fault`}
                data-testid="lesson-number"
                onChange={(event) => {
                  setText(event.target.value);
                  setFault('');
                }}
              />
              <span className="lessons-unit">{shown.name}</span>
            </span>
            {fault !== '' && (
              <p className="lessons-fault" id={`${id}-fault`} role="alert">
                {fault}
              </p>
            )}
          </div>
          <AnswerButton />
        </>
      )}
    </form>
  );
}

function AnswerButton() {
  return (
    <button type="submit" className="ui-button ui-button-main" data-testid="lesson-answer">
      {say('lessonRoom.answer')}
    </button>
  );
}
