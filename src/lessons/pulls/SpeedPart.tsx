import { useEffect, useId, useRef } from 'react';
import { length } from '../../engine/math/vector';
import { rpmFromAngularSpeed } from '../../engine/units';
import { t } from '../../messages';
import { type PullEntry, pullTally } from '../../state/pullTally';
import { displayForce, fixed, show } from '../../state/quantities';
import type { Session } from '../../state/session';
import { grouped } from '../../state/shownUnits';
import { entryMoment, entryName, squareText } from '../../state/words/pullText';
import { useRestingDesign, useSession } from '../../ui/session';
import { write, writeAttribute } from './dom';
import { usePulls } from './usePulls';

/** Speeds of the table as shares of the design's. */
const SHARES = [0, 0.25, 0.5, 0.75, 1, 1.2];
const MOST = 1.2;
/** Where the design's rotor stands still: something to try, rpm. */
const STANDING_RPM = 10_000;
const STEP_RPM = 10;
const [WIDE, HIGH] = [220, 74];

/** The square law: a speed that is tried here and changes nothing in the design. */
export function SpeedPart() {
  const session = useSession();
  const { pullsShow, live } = session;
  const design = useRestingDesign();
  const root = useRef<HTMLDivElement>(null);
  const id = useId();
  const designRpm = rpmFromAngularSpeed(live.reading.rotor.angularSpeed);
  const scaleRpm = designRpm > 0 ? designRpm : STANDING_RPM;
  const mostRpm = Math.ceil((MOST * scaleRpm) / STEP_RPM) * STEP_RPM;

  function draw(): void {
    if (root.current) drawSpeed(root.current, session, mostRpm, scaleRpm);
  }
  usePulls(draw);
  // Rendered anew its places are empty.
  useEffect(draw);

  return (
    <section className="pulls-speed" aria-label={t('pulls.speed')} ref={root}>
      <div className="pulls-slider">
        <label htmlFor={id}>{t('pulls.speed')}</label>
        <input
          id={id}
          type="range"
          min={0}
          max={mostRpm}
          step={STEP_RPM}
          data-testid="pulls-speed"
          onChange={(event) => pullsShow.set({ speedRpm: Number(event.target.value) })}
        />
        <button
          type="button"
          className="ui-button"
          data-testid="pulls-speed-back"
          onClick={() => pullsShow.set({ speedRpm: null })}
        >
          {t('pulls.speed.back')}
        </button>
      </div>
      <p className="pulls-speed-value" data-place="value" data-testid="pulls-speed-value" />
      <svg className="pulls-curve" viewBox={`0 0 ${WIDE} ${HIGH + 4}`} role="img">
        <path className="pulls-curve-axis" d={`M0 2V${HIGH}H${WIDE}`} />
        <path className="pulls-curve-line" d={parabola()} />
        <line className="pulls-curve-design" data-place="design" y1={2} y2={HIGH} />
        <path className="pulls-curve-drop" data-place="drop" />
        <circle className="pulls-curve-now" data-place="now" r={4} />
      </svg>
      <p className="lower-quiet">{t('pulls.speed.note')}</p>
      {design.parts.length > 0 && <p className="lower-quiet" data-place="caveat" />}
      <table className="lower-table" data-testid="pulls-speed-table">
        <caption className="ui-unseen">{t('pulls.speed.table')}</caption>
        <thead>
          <tr>
            <th scope="col" className="lower-number">
              {t('pulls.speed.rpm')}
            </th>
            <th scope="col" className="lower-number">
              {t('pulls.speed.square')}
            </th>
            <th scope="col" className="lower-number" data-place="pullOf" />
            <th scope="col" className="lower-number">
              {t('pulls.speed.moment')}
            </th>
          </tr>
        </thead>
        <tbody>
          {SHARES.map((share) => (
            <tr key={share} data-share={share}>
              <th scope="row" className="lower-number" />
              <td className="lower-number" />
              <td className="lower-number" />
              <td className="lower-number" />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function parabola(): string {
  const points = Array.from({ length: 41 }, (_, i) => {
    const share = i / 40;
    return `${(share * WIDE).toFixed(1)} ${(HIGH - share * share * (HIGH - 2)).toFixed(1)}`;
  });
  return `M${points.join('L')}`;
}

function drawSpeed(root: HTMLElement, session: Session, mostRpm: number, scaleRpm: number): void {
  const { pullsShow, live, store } = session;
  const { grain, speedRpm, progress } = pullsShow.shown;
  const { pitchDeg, settings } = store.getState();
  const at = (rpm: number) => pullTally(live.reading, pitchDeg, grain, rpm);
  const designRpm = rpmFromAngularSpeed(live.reading.rotor.angularSpeed);
  const nowRpm = speedRpm ?? designRpm;
  const place = (name: string) => root.querySelector(`[data-place="${name}"]`);
  const slider = root.querySelector('input') as HTMLInputElement;
  // A slider's own steps would round a speed that is not one of them.
  if (Number(slider.value) !== nowRpm) slider.value = String(nowRpm);
  const rpmText = (rpm: number) => grouped(fixed(rpm, 0));
  const value = t('pulls.speed.value', {
    rpm: rpmText(nowRpm),
    share: squareText(nowRpm, scaleRpm),
  });
  writeAttribute(slider, 'aria-valuetext', value);
  write(place('value'), value);
  const share = Math.min(1, nowRpm / mostRpm);
  const [x, y] = [share * WIDE, HIGH - share * share * (HIGH - 2)];
  writeAttribute(place('now'), 'cx', x.toFixed(1));
  writeAttribute(place('now'), 'cy', y.toFixed(1));
  writeAttribute(place('drop'), 'd', `M0 ${y.toFixed(1)}H${x.toFixed(1)}V${HIGH}`);
  const designX = ((scaleRpm / mostRpm) * WIDE).toFixed(1);
  writeAttribute(place('design'), 'x1', designX);
  writeAttribute(place('design'), 'x2', designX);

  const full = at(scaleRpm).entries;
  const index = chosenIndex(full, Math.ceil(progress));
  const part = index < 0 ? t('pulls.dash') : entryName(full[index]);
  const pullAt = (rpm: number) => {
    const entry = at(rpm).entries[index];
    return entry ? show(displayForce(length(entry.force), settings.units)) : t('pulls.dash');
  };
  write(place('pullOf'), t('pulls.speed.pullOf', { part }));
  const curve = {
    part,
    pull: pullAt(mostRpm),
    rpm: rpmText(mostRpm),
    now: pullAt(nowRpm),
    nowRpm: rpmText(nowRpm),
  };
  writeAttribute(root.querySelector('svg'), 'aria-label', t('pulls.speed.curve', curve));
  for (const row of root.querySelectorAll<HTMLElement>('[data-share]')) {
    const rpm = Number(row.dataset.share) * scaleRpm;
    const texts = [
      rpmText(rpm),
      squareText(rpm, scaleRpm),
      pullAt(rpm),
      entryMoment(at(rpm).total, settings.units),
    ];
    texts.forEach((text, k) => write(row.children[k], text));
  }
  const caveats = designRpm === 0 ? [t('pulls.speed.standing')] : [];
  if (full.some((entry) => entry.kind === 'air')) caveats.push(t('pulls.speed.air'));
  write(place('caveat'), caveats.join(' '));
}

/** The newest step that pulls, else the one that pulls hardest; -1: none. */
function chosenIndex(entries: readonly PullEntry[], added: number): number {
  const newest = entries.slice(0, added).findLastIndex(({ pulls }) => pulls.length > 0);
  if (newest >= 0) return newest;
  let best = -1;
  entries.forEach((entry, i) => {
    if (entry.pulls.length === 0) return;
    if (best < 0 || length(entry.force) > length(entries[best].force)) best = i;
  });
  return best;
}
