import { useEffect, useId, useRef, useState } from 'react';
import { radiansFromDegrees } from '../../engine/units';
import { t } from '../../messages';
import { fixed, significant } from '../../state/quantities';
import { wantsNoMotion } from '../../state/wantsNoMotion';
import { ChoiceRow } from '../../ui/ChoiceRow';
import { RACKET_AXES, type RacketAxis } from './racketBody';
import type { RacketRun } from './racketRun';
import { DURATION } from './racketThrow';

/** The slider of the error goes by tenths of a decade, from a thousandth of a degree to ten. */
const DECADES = { from: -3, to: 1 };
const STEPS = 10;

const besideOf = (step: number) => Number((10 ** (step / STEPS)).toPrecision(2));
const stepOf = (besideDeg: number) => Math.round(STEPS * Math.log10(besideDeg));

export function RacketControls(props: { readonly run: RacketRun; readonly firstDeg: number }) {
  const { run, firstDeg } = props;
  const [axis, setAxis] = useState<RacketAxis>('middle');
  const [playing, setPlaying] = useState(false);
  const beside = useRef<HTMLInputElement>(null);
  const besideText = useRef<HTMLOutputElement>(null);
  const time = useRef<HTMLInputElement>(null);
  const id = useId();

  useEffect(() => {
    let wasPlaying = false;
    function show(): void {
      if (run.playing !== wasPlaying) {
        wasPlaying = run.playing;
        setPlaying(wasPlaying);
      }
      showTime(run, time.current);
    }
    show();
    return run.subscribe(show);
  }, [run]);

  /** One slider moves without React: the axis is asked of the run. */
  function throwAgain(chosen: RacketAxis): void {
    const besideDeg = besideOf(Number(beside.current?.value ?? stepOf(firstDeg)));
    const text = t('racket.degrees', { angle: significant(besideDeg, 2) });
    if (besideText.current) besideText.current.textContent = text;
    beside.current?.setAttribute('aria-valuetext', text);
    run.choose(chosen, radiansFromDegrees(besideDeg));
  }

  const stillness = wantsNoMotion();
  const first = t('racket.degrees', { angle: significant(firstDeg, 2) });
  return (
    <div className="lower-head">
      <ChoiceRow
        label={t('racket.axis')}
        value={axis}
        options={RACKET_AXES.map((value) => ({ value, text: t(`racket.axis.${value}`) }))}
        testId="racket-axis"
        onChoose={(chosen) => {
          setAxis(chosen);
          throwAgain(chosen);
        }}
      />
      <label htmlFor={`${id}-beside`}>{t('racket.beside')}</label>
      <input
        ref={beside}
        id={`${id}-beside`}
        className="racket-slider"
        type="range"
        min={DECADES.from * STEPS}
        max={DECADES.to * STEPS}
        defaultValue={stepOf(firstDeg)}
        aria-valuetext={first}
        data-testid="racket-beside"
        onInput={() => throwAgain(run.thrown.axis)}
      />
      <output className="racket-number" htmlFor={`${id}-beside`} ref={besideText}>
        {first}
      </output>
      {!stillness && (
        <button
          type="button"
          className="ui-button ui-button-main"
          data-testid="racket-throw"
          onClick={() => (run.playing ? run.pause() : run.play())}
        >
          {t(playing ? 'racket.pause' : 'racket.throw')}
        </button>
      )}
      <label htmlFor={`${id}-time`}>{t('racket.timeLabel')}</label>
      <input
        ref={time}
        id={`${id}-time`}
        className="racket-slider"
        type="range"
        min={0}
        max={DURATION}
        step={0.01}
        defaultValue={0}
        data-testid="racket-time"
        onInput={(event) => run.setTime(Number(event.currentTarget.value))}
      />
      {stillness && <span className="lower-quiet">{t('racket.still')}</span>}
    </div>
  );
}

function showTime(run: RacketRun, slider: HTMLInputElement | null): void {
  if (!slider) return;
  slider.value = String(run.time);
  slider.setAttribute('aria-valuetext', t('racket.seconds', { time: fixed(run.time, 2) }));
}
