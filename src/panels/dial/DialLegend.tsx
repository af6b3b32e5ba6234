import { useEffect, useRef } from 'react';
import { M } from '../../engine/mass/moments';
import { type MessageKey, t } from '../../messages';
import { closedSpans, flatOutOfReach } from '../../state/closedSpans';
import { displayMoment, show } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { spreadSide } from '../../state/spread';
import { type PitchMark, pitchMarks } from '../../state/words/pitchMarks';
import { signedDegrees } from '../../state/words/pitchText';
import { HelpName } from '../../ui/help/HelpName';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { ElementPool, setShown, setText, setValues } from '../marks/svg';
import { keepTallest } from './keepTallest';

/**
 * Below the dial: which way the moment turns the grip at the present pitch, and the key to the marks. The rest and
 * flee angles are buttons that take the pointer there, the keyboard's way to the marks on the ring.
 */
export function DialLegend() {
  const session = useSession();
  const root = useRef<HTMLDivElement>(null);
  const view = useRef<LegendView | null>(null);
  useEffect(() => {
    if (root.current) view.current = createLegendView(root.current, session);
    return () => view.current?.destroy();
  }, [session]);
  useLive((reading) => view.current?.update(reading), 'legend');

  return (
    <div className="dial-legend" ref={root}>
      <p className="dial-drive-text" data-testid="dial-drive" />
      <ul className="dial-key">
        <li className="dial-key-item" data-kind="stable">
          <span className="dial-swatch dial-swatch-stable" aria-hidden="true" />
          <HelpName id="restAngle">{t('dial.rests')}</HelpName>
        </li>
        <li className="dial-key-item" data-kind="unstable">
          <span className="dial-swatch dial-swatch-unstable" aria-hidden="true" />
          <HelpName id="fleeAngle">{t('dial.flees')}</HelpName>
        </li>
        <li className="dial-key-item" data-kind="tangent">
          <span className="dial-swatch dial-swatch-tangent" aria-hidden="true" />
          <HelpName id="equilibrium">{t('dial.touches')}</HelpName>
        </li>
        {CLOSED.map((why) => (
          <li className="dial-key-item" data-kind={why} key={why}>
            <span className={`dial-swatch dial-swatch-lock dial-lock-${why}`} aria-hidden="true" />
            <HelpName id={why === 'stop' ? 'sliderTravel' : 'overCentre'}>
              {t(`dial.${why}`)}
            </HelpName>
            <span className="dial-lock-angles" />
          </li>
        ))}
        <li className="dial-key-item" data-kind="band" data-testid="dial-bands">
          <span className="dial-swatch dial-swatch-band" aria-hidden="true" />
          <HelpName id="holdingBand">{t('dial.holds')}</HelpName>
          <span className="dial-band-angles" />
        </li>
        <li className="dial-key-item dial-key-wide" data-kind="ellipse">
          <span className="dial-swatch dial-swatch-ellipse" aria-hidden="true" />
          <HelpName id="spreadEllipse">
            <span className="dial-ellipse-text" />
          </HelpName>
        </li>
      </ul>
    </div>
  );
}

const CLOSED = ['overCentre', 'stop', 'unreachable'] as const;

/** "-24.2 to +22.9 degrees" of each band, the widest three. */
function bandText(reading: HeadReading): string {
  return reading.bandsDeg
    .toSorted((a, b) => b[1] - b[0] - (a[1] - a[0]))
    .slice(0, 3)
    .map(([from, to]) => t('dial.fromTo', { from: signedDegrees(from), to: signedDegrees(to) }))
    .join(', ');
}

interface LegendView {
  update(reading: HeadReading): void;
  destroy(): void;
}

function createLegendView(root: HTMLDivElement, session: Session): LegendView {
  const { store, actions } = session;
  const drive = root.querySelector('.dial-drive-text') as HTMLElement;
  const bands = root.querySelector('.dial-band-angles') as HTMLElement;
  const ellipseText = root.querySelector('.dial-ellipse-text') as HTMLElement;
  const swatch = root.querySelector('.dial-swatch-ellipse') as HTMLElement;
  const items = new Map(
    Array.from(root.querySelectorAll<HTMLElement>('.dial-key-item'), (one) => [
      one.dataset.kind,
      one,
    ]),
  );
  const item = (kind: string) => items.get(kind) as HTMLElement;
  const kinds = ['stable', 'unstable', 'tangent'] as const;
  const made: HTMLElement[] = [];
  const pitchOf = new Map<HTMLElement, number>();
  const pools = kinds.map((kind) => {
    return new ElementPool(() => {
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'dial-angle';
      button.addEventListener('click', () => actions.setPitch(pitchOf.get(button) ?? 0));
      item(kind).append(button);
      made.push(button);
      return button;
    });
  });

  function update(reading: HeadReading): void {
    const { pitchDeg, settings } = store.getState();
    const marks = pitchMarks(reading);
    kinds.forEach((kind, k) => {
      const angles = marks.filter((mark) => mark.kind === kind);
      const buttons = pools[k].take(angles.length);
      angles.forEach((mark, i) => {
        const angle = signedDegrees(mark.pitchDeg);
        setText(buttons[i], angle);
        pitchOf.set(buttons[i], mark.pitchDeg);
        setValues(buttons[i], {
          'data-pitch-deg': mark.pitchDeg.toFixed(2),
          title: t('dial.goTo', { angle }),
        });
      });
      setShown(item(kind), angles.length > 0);
    });
    setShown(item('ellipse'), reading.totals[M] > 0);
    // Where no pitch is reached from flat there is no angle to name.
    const closed = flatOutOfReach(reading.linkage) ? [] : closedSpans(reading.linkage);
    for (const why of CLOSED) {
      const edges = closed.filter((span) => span.why === why).map((span) => span.edgeDeg);
      setShown(item(why), edges.length > 0);
      const angles = item(why).querySelector('.dial-lock-angles') as HTMLElement;
      setText(angles, edges.map((angle) => signedDegrees(angle)).join(', '));
    }
    setShown(item('band'), reading.bandsDeg.length > 0);
    setText(bands, bandText(reading));
    const side = spreadSide(reading);
    setText(ellipseText, t(side === 'round' ? 'dial.ellipseRound' : 'dial.ellipse'));
    setValues(swatch, { class: `dial-swatch dial-swatch-ellipse dial-swatch-${side}` });
    const moment = displayMoment(Math.abs(reading.momentAt(pitchDeg)), settings.units);
    setText(drive, driveText(reading, pitchDeg, marks, show(moment)));
  }

  const letHeight = keepTallest(root, store);

  return {
    update,
    destroy() {
      letHeight();
      for (const button of made) button.remove();
    },
  };
}

/** "Driven down by 41.2 N mm, toward rest at -1.8\u00b0." */
function driveText(
  reading: HeadReading,
  pitchDeg: number,
  marks: readonly PitchMark[],
  moment: string,
): string {
  if (!(reading.totals[M] > 0)) return t('dial.empty');
  if (reading.rotor.angularSpeed === 0) return t('dial.standsStill');
  if (reading.equilibria.kind === 'neutral') return t('dial.neutral');
  const here = marks.find((mark) => Math.abs(mark.pitchDeg - pitchDeg) < 0.05);
  if (here?.kind === 'stable') return t('dial.atRest');
  if (here?.kind === 'unstable') return t('dial.atFlee');
  if (here) return t('dial.atTouch');
  const driving = reading.momentAt(pitchDeg);
  if (Number.isNaN(driving)) return t('dial.noReach');
  if (reading.bandsDeg.some(([from, to]) => pitchDeg >= from && pitchDeg <= to)) {
    return t('dial.held', { moment });
  }
  const up = driving > 0;
  const ahead = up
    ? marks.find((mark) => mark.pitchDeg > pitchDeg)
    : marks.findLast((mark) => mark.pitchDeg < pitchDeg);
  const ends = reading.linkage?.ends;
  const end = up ? ends?.high : ends?.low;
  const jams = end && end.why !== 'open' && Math.abs(end.deg) > Math.abs(pitchDeg);
  if (jams && (!ahead || Math.abs(ahead.pitchDeg) > Math.abs(end.deg))) {
    const angle = signedDegrees(end.deg);
    return t(`dial.${up ? 'up' : 'down'}To.${end.why}` as MessageKey, { moment, angle });
  }
  if (!ahead) return t(up ? 'dial.upPastEnd' : 'dial.downPastEnd', { moment });
  const angle = signedDegrees(ahead.pitchDeg);
  return t(up ? 'dial.upToRest' : 'dial.downToRest', { moment, angle });
}
