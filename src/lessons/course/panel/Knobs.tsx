import { Minus, Plus } from 'lucide-react';
import { type KeyboardEvent, useId, useRef, useState } from 'react';
import { shownNumber, shownText, shownUnit } from '../../../state/shownUnits';
import { readTyped } from '../../../state/typed/readTyped';
import { useAppState, useSession } from '../../../ui/session';
import { useLive } from '../../../ui/useLive';
import type { Lesson, LessonKnob } from '../lesson';
import { say } from '../say';
import { knobLimits, knobNow, setKnob } from './knobValues';

/** What the lesson is about turning, each with keys, buttons and a number to type. Everything else may be turned as well. */
export function Knobs({ lesson }: { readonly lesson: Lesson }) {
  const heading = useId();
  const { knobs } = lesson.scene;
  if (knobs.length === 0) return null;
  return (
    <section className="lessons-part" aria-labelledby={heading}>
      <h3 className="ui-heading" id={heading}>
        {say('lessonRoom.knobs')}
      </h3>
      {knobs.map((knob, at) => (
        <KnobField key={knob.label} knob={knob} name={`knob-${at}`} />
      ))}
    </section>
  );
}

function KnobField({ knob, name }: { readonly knob: LessonKnob; readonly name: string }) {
  const session = useSession();
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [isTyped, setTyped] = useState(false);
  const [fault, setFault] = useState('');
  const units = useAppState((state) => state.settings.units);
  const limits = knobLimits(session, knob);
  const unit = shownUnit(limits.unit, units);
  const { label } = knob;

  function show(): void {
    const field = input.current;
    const value = knobNow(session, knob);
    if (!field || isTyped || value === null) return;
    const text = shownNumber(Number(value.toPrecision(10)), unit);
    if (field.value !== text) field.value = text;
    field.setAttribute('aria-valuenow', String(value));
    field.setAttribute('aria-valuetext', shownText(Number(value.toPrecision(10)), unit));
  }
  useLive(show);

  function put(value: number): void {
    const { min, max } = limits;
    const reason =
      value < min || value > max
        ? say('lessonRoom.range', {
            label,
            min: shownText(min, unit),
            max: shownText(max, unit),
          })
        : setKnob(session, knob, value);
    setFault(reason ?? '');
    if (reason === null) setTyped(false);
  }

  function settle(): void {
    if (!isTyped || !input.current) return;
    const read = readTyped(input.current.value, { label, unit: limits.unit }, unit, null);
    if (!read.ok) setFault(read.reason);
    else if (read.value !== undefined) put(read.value);
  }

  function step(sign: 1 | -1, event: { readonly shiftKey: boolean; readonly altKey: boolean }) {
    const now = knobNow(session, knob);
    if (now === null) return;
    const size = knob.step * (event.shiftKey ? 10 : event.altKey ? 0.1 : 1);
    put(Number((now + sign * size).toPrecision(10)));
  }

  function onKeyDown(event: KeyboardEvent): void {
    if (event.key === 'ArrowUp' || event.key === 'ArrowDown') {
      event.preventDefault();
      setTyped(false);
      step(event.key === 'ArrowUp' ? 1 : -1, event);
    } else if (event.key === 'Enter') settle();
    else if (event.key === 'Escape' && isTyped) {
      event.preventDefault();
      event.stopPropagation();
      setTyped(false);
      setFault('');
      if (input.current) input.current.value = shownNumber(knobNow(session, knob) ?? 0, unit);
    }
  }

  return (
    <div className="lessons-knob">
      <label htmlFor={id}>{label}</label>
      <span className="lessons-entry-box">
        <button
          type="button"
          className="ui-button ui-button-icon"
          aria-label={say('lessonRoom.less', { label })}
          onClick={(event) => step(-1, event)}
        >
          <Minus aria-hidden="true" />
        </button>
        <input
          ref={input}
          id={id}
          className="lessons-input"
          role="spinbutton"
          inputMode="decimal"
          autoComplete="off"
          aria-invalid={fault !== ''}
          aria-describedby={fault === '' ? undefined : `${id}-fault`}
          data-testid={name}
          onChange={() => setTyped(true)}
          onFocus={(event) => event.target.select()}
          onBlur={settle}
          onKeyDown={onKeyDown}
        />
        <span className="lessons-unit">{unit.name}</span>
        <button
          type="button"
          className="ui-button ui-button-icon"
          aria-label={say('lessonRoom.more', { label })}
          onClick={(event) => step(1, event)}
        >
          <Plus aria-hidden="true" />
        </button>
      </span>
      {fault !== '' && (
        <p className="lessons-fault" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}
