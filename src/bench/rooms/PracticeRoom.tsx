import { useState } from 'react';
import { factor95 } from '../../engine/identify/distributions';
import { displayForce, show, significant } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { displaySecondMoment } from '../../state/shownUnits';
import { MathText } from '../../ui/MathText';
import { useAppState, useRestingDesign, useSession } from '../../ui/session';
import type { BenchAnalysis } from '../analysis';
import { gaugePlace } from '../gaugePlace';
import { type PracticeBench, practiceBench } from '../practice';
import { runFromTable } from '../readings/benchSection';
import { previewReadings, storedFrom } from '../readings/preview';
import { rungName } from '../rungs';
import { say } from '../say';
import './bench.css';
import { withHalf } from './fit/fitWords';
import { NumberField } from './NumberField';
import { gaugeFaultText, partName } from './plan/planText';
import { useAnalysis } from './useAnalysis';
import { useBench, useDesk } from './useDesk';

/** A usual length of a pitch arm (common practice). */
const PRACTICE_ARM_MM = 20;
const SEED = { min: 0, max: 2 ** 32 - 1 };

/** A virtual gauge on the head as designed, with hidden errors: readings to practise on, and the truth when asked for. */
export function PracticeRoom() {
  const desk = useDesk();
  const { store } = useSession();
  const practice = useBench((state) => state.practice);
  const step = useBench((state) => state.gaugeStepN);
  const [seed, setSeed] = useState(1);
  const [said, setSaid] = useState('');

  function make(from: number): void {
    setSeed(from);
    const place = gaugePlace(desk.store.getState(), PRACTICE_ARM_MM);
    const made = practiceBench(store.getState().design, {
      seed: from,
      gaugeStep: step,
      ...(place && { place }),
    });
    if (!made.ok)
      return setSaid(
        made.error.kind === 'error' ? say('benchRoom.practice.error') : gaugeFaultText(made.error),
      );
    desk.set({ practice: { bench: made.value, revealed: false } });
    setSaid(say('benchRoom.practice.made', { count: made.value.runs.length, seed: from }));
  }
  function take(bench: PracticeBench): void {
    for (const { key, text } of bench.runs) {
      const preview = previewReadings(text);
      if (!preview.ok) throw new Error(`PracticeRoom: ${preview.error.reason.code}`);
      const name = say('benchRoom.practice.run', { rung: rungName(key), seed: bench.seed });
      const { id: _, ...run } = runFromTable('', storedFrom(name, preview.value));
      const fault = desk.addRun(run);
      if (fault !== null) return setSaid(say(`benchRoom.take.${fault}`));
    }
    setSaid(say('benchRoom.practice.taken', { count: bench.runs.length }));
  }

  return (
    <section
      className="bench-room lower-scroll"
      aria-label={say('benchRoom.practice')}
      data-testid="bench-practice"
      tabIndex={0}
    >
      <div className="bench-stack">
        <p className="lower-quiet">{say('benchRoom.practice.help')}</p>
        <div className="bench-fields">
          <NumberField
            label={say('benchRoom.practice.seed')}
            unit=""
            {...SEED}
            isWhole
            value={seed}
            testId="bench-seed"
            onChange={(value) => value !== null && setSeed(value)}
          />
          <button
            type="button"
            className="ui-button ui-button-main"
            data-testid="bench-make"
            onClick={() => make(seed)}
          >
            {say('benchRoom.practice.make')}
          </button>
          <button
            type="button"
            className="ui-button"
            data-testid="bench-other-seed"
            onClick={() => make(seed < SEED.max ? seed + 1 : SEED.min)}
          >
            {say('benchRoom.practice.other')}
          </button>
          {practice && (
            <>
              <button
                type="button"
                className="ui-button"
                data-testid="bench-take-practice"
                onClick={() => take(practice.bench)}
              >
                {say('benchRoom.practice.take')}
              </button>
              <button
                type="button"
                className="ui-button"
                data-testid="bench-reveal"
                aria-expanded={practice.revealed}
                onClick={() =>
                  desk.set({ practice: { ...practice, revealed: !practice.revealed } })
                }
              >
                {say(practice.revealed ? 'benchRoom.practice.hide' : 'benchRoom.practice.reveal')}
              </button>
            </>
          )}
        </div>
        <p role="status" data-testid="bench-practice-said">
          {said}
        </p>
        {practice?.revealed && (
          <div>
            <h3 className="ui-heading">
              {say('benchRoom.practice.truth', { seed: practice.bench.seed })}
            </h3>
            <Truth bench={practice.bench} />
          </div>
        )}
      </div>
    </section>
  );
}

function Truth({ bench }: { readonly bench: PracticeBench }) {
  const design = useRestingDesign();
  const units = useAppState((state) => state.settings.units);
  const { errors, runs } = bench;
  const last = runs[runs.length - 1];
  const lines = [
    ...Object.entries(errors.massShares).map(([id, share]) =>
      say(share < 0 ? 'benchRoom.truth.lighter' : 'benchRoom.truth.heavier', {
        part: partName(design, id),
        percent: significant(100 * Math.abs(share), 3),
      }),
    ),
    ...Object.entries(errors.seatShiftsMm).map(([id, shift]) =>
      say('benchRoom.truth.seat', { part: partName(design, id), shift: significant(shift, 3) }),
    ),
    say('benchRoom.truth.friction', {
      friction: significant(errors.frictionFactor, 3),
      drag: significant(errors.dragFactor, 3),
    }),
    say('benchRoom.truth.gauge', {
      zero: show(displayForce(errors.zeroN, units)),
      noise: show(displayForce(errors.noiseN, units), 2),
      pitch: significant(errors.pitchSigmaDeg, 2),
    }),
    say('benchRoom.truth.shared', {
      gain: signed(100 * (errors.gainShare ?? 0)),
      // It says how much shorter the arm is.
      lever: signed(-100 * (errors.leverShare ?? 0)),
      speed: signed(100 * (errors.speedShare ?? 0)),
      pitch: signed(errors.pitchZeroDeg ?? 0),
    }),
    say('benchRoom.truth.head', {
      spread: show(displaySecondMoment(last.truth.spread, units)),
      product: show(displaySecondMoment(last.truth.product, units)),
    }),
    ...foundText(useAnalysis(), units),
  ];
  return (
    <ul className="bench-words" data-testid="bench-truth">
      {lines.map((line) => (
        <li key={line}>
          <MathText text={line} />
        </li>
      ))}
    </ul>
  );
}

/** What the fit of the runs that count says of the same two numbers; nothing before there is one. */
function foundText({ rungs }: BenchAnalysis, units: DisplayUnits): readonly string[] {
  const whole = rungs.find(({ rung }) => rung.key === 'asDesigned');
  const measured = whole?.fitted.ok ? whole.fitted.value.measured : null;
  if (!measured) return [];
  const factor = factor95(measured.freedom);
  const text = (value: number, variance: number) =>
    withHalf(
      displaySecondMoment(value, units),
      displaySecondMoment(factor * Math.sqrt(variance), units).value,
    );
  const { spread, product, covariance } = measured;
  return [
    say('benchRoom.truth.found', {
      spread: text(spread, covariance[0]),
      product: text(product, covariance[3]),
    }),
  ];
}

function signed(value: number): string {
  return `${value > 0 ? '+' : ''}${significant(value, 2)}`;
}
