import { t } from '../../messages';
import { displayForce, displayMoment, significant } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { Session } from '../../state/session';
import { isUnreached } from '../../state/words/pitchText';
import { setText, setValues } from '../marks/svg';

const STEP_DEG = 10;
export const TABLE_PITCHES = Array.from(
  { length: 180 / STEP_DEG + 1 },
  (_, i) => -90 + i * STEP_DEG,
);

/** The table follows a drag once the pointer has rested so long, ms. */
const REST_MS = 240;

/** The numbers of the table, kept up to date outside React. */
export interface CurveTableView {
  /** After a change of the head or of the units. */
  update(): void;
  destroy(): void;
}

/**
 * Writes the curve into a table whose rows stand. Nobody reads 38 numbers under a moving hand: while something is dragged
 * they wait until the pointer rests, and are pale (`data-behind`) until then.
 */
export function createCurveTableView(
  table: HTMLTableElement,
  { store, live }: Session,
): CurveTableView {
  const units = table.tHead?.rows[0].cells;
  const cells = Array.from(table.tBodies[0].rows, (row) => [row.cells[1], row.cells[2]] as const);
  let changed = 0;
  let behind = false;
  let timer: ReturnType<typeof setTimeout> | undefined;

  function setBehind(now: boolean): void {
    if (now === behind) return;
    behind = now;
    table.toggleAttribute('data-behind', now);
    setValues(table, { 'aria-busy': String(now) });
  }

  function write(): void {
    const { reading } = live;
    const shown = store.getState().settings.units;
    if (units) {
      setText(units[1], t('chart.forceIn', { unit: displayForce(0, shown).unit }));
      setText(units[2], t('chart.momentIn', { unit: displayMoment(0, shown).unit }));
    }
    TABLE_PITCHES.forEach((pitch, i) => {
      const [forceCell, momentCell] = cells[i];
      const force = reading.forceAt(pitch);
      const moment = clean(reading, pitch);
      // Where the rod does not reach there is no head: neither force nor moment.
      if (Number.isNaN(moment)) {
        for (const cell of cells[i]) setText(cell, t('chart.unreachable'));
        return;
      }
      const none = t(noForce(reading, pitch));
      setText(forceCell, force === null ? none : significant(displayForce(force, shown).value));
      setText(momentCell, significant(displayMoment(moment, shown).value));
    });
    setBehind(false);
  }

  function catchUp(): void {
    timer = undefined;
    if (!behind) return;
    const left = REST_MS - (performance.now() - changed);
    if (left > 1 && store.getState().gesture) timer = setTimeout(catchUp, left);
    else write();
  }

  const stop = store.subscribe((state, before) => {
    if (!before.gesture || state.gesture || !behind) return;
    live.flush();
    if (behind) write();
  });

  return {
    update() {
      if (!store.getState().gesture) {
        write();
        return;
      }
      changed = performance.now();
      setBehind(true);
      timer ??= setTimeout(catchUp, REST_MS);
    },
    destroy() {
      stop();
      clearTimeout(timer);
      timer = undefined;
    },
  };
}

/** The moment, with rounding in place of zero (a sine at 90 degrees) taken for zero. */
function clean(reading: HeadReading, pitchDeg: number): number {
  const moment = reading.momentAt(pitchDeg);
  return Math.abs(moment) < 1e-12 * reading.momentScale ? 0 : moment;
}

/** Why there is no push-rod force at a pitch. */
function noForce(reading: HeadReading, pitchDeg: number) {
  if (!reading.linkage) return 'chart.noForce';
  return isUnreached(reading, pitchDeg) ? 'chart.unreachable' : 'chart.overCentre';
}
