import { useEffect, useRef } from 'react';
import { t } from '../../messages';
import { fixed, significant } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { signedDegrees } from '../../state/words/pitchText';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { setText, setValues } from '../marks/svg';
import { plottedFriction, plottedQuantity, plottedValue } from './quantity';

const ROWS = [-1, -0.5, 0, 0.5, 1];

/**
 * The numbers a gauge would show: the quantity at flat pitch, at the pitch in use both ways, and half way. Each pitch
 * is a button that takes the pointer there.
 */
export function SetPitches() {
  const session = useSession();
  const root = useRef<HTMLDListElement>(null);
  const caption = useRef<HTMLParagraphElement>(null);
  const used = useRef(0);
  useEffect(() => {
    const list = root.current;
    if (!list) return;
    function go(event: Event): void {
      const row = event.target instanceof HTMLElement && event.target.dataset.row;
      if (row) session.actions.setPitch(used.current * Number(row));
    }
    list.addEventListener('click', go);
    return () => list.removeEventListener('click', go);
  }, [session]);
  useLive((reading, changes) => {
    if (!root.current || !caption.current || !(changes.design || changes.settings)) return;
    used.current = reading.usedPitchDeg;
    fill(root.current, caption.current, reading, session);
  }, 'lists');

  return (
    <div className="chart-set" data-testid="set-pitch-table">
      <p className="chart-set-caption" ref={caption} />
      <dl className="chart-set-list" ref={root}>
        {ROWS.map((row) => (
          <div className="chart-set-row" key={row}>
            <dt>
              <button type="button" className="chart-set-pitch" data-row={row} />
            </dt>
            <dd className="chart-set-value" />
            <dd className="chart-set-friction" />
          </div>
        ))}
      </dl>
    </div>
  );
}

function fill(
  list: HTMLElement,
  caption: HTMLElement,
  reading: HeadReading,
  session: Session,
): void {
  const quantity = plottedQuantity(reading, session.store.getState().settings);
  const name = t(`chart.short.${quantity.kind}`);
  setText(caption, t('chart.setPitches', { quantity: name, unit: quantity.unit }));
  const pitches = list.querySelectorAll('.chart-set-pitch');
  const values = list.querySelectorAll('.chart-set-value');
  const bands = list.querySelectorAll('.chart-set-friction');
  ROWS.forEach((row, i) => {
    const pitch = row * reading.usedPitchDeg;
    const label = signedDegrees(pitch, Number.isInteger(pitch) ? 0 : 1);
    setText(pitches[i], label);
    setValues(pitches[i], { title: t('dial.goTo', { angle: label }) });
    const value = plottedValue(reading, quantity, pitch);
    const friction = plottedFriction(reading, quantity, pitch);
    setText(values[i], value === null ? t('chart.noValue') : gaugeText(value));
    setText(
      bands[i],
      friction === null || value === null
        ? ''
        : t('chart.frictionPair', {
            friction: friction < 10 ? fixed(friction, 2) : significant(friction),
          }),
    );
  });
}

/** As a gauge reads: hundredths below ten, else three digits, sign always. */
function gaugeText(value: number): string {
  if (Math.abs(value) < 0.005) return fixed(0, 2);
  const text = Math.abs(value) < 10 ? fixed(value, 2) : significant(value);
  return value > 0 ? `+${text}` : text;
}
