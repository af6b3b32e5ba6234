import { length } from '../../engine/math/vector';
import { t } from '../../messages';
import { type PullEntry, type PullTally, pullTally, runningSums } from '../../state/pullTally';
import { displayForce, show, signedQuantity } from '../../state/quantities';
import type { Session } from '../../state/session';
import { displayPosition } from '../../state/shownUnits';
import { entryMoment, entryName, entryPull, turnWay, turnWords } from '../../state/words/pullText';
import { made, write, writeAttribute } from './dom';

/**
 * The rows of the build-up: every step with its pull, what it turns the grip by, and a bar that starts where the one before
 * it ended. A row that is not added yet is there by name only. Kept up to date outside React.
 */
export interface PullTable {
  update(): void;
}

interface Row {
  readonly row: HTMLTableRowElement;
  readonly name: HTMLButtonElement;
  readonly cells: readonly HTMLTableCellElement[];
  readonly bar: ChainBar;
}

export function createPullTable(
  body: HTMLTableSectionElement,
  foot: HTMLTableSectionElement,
  session: Session,
): PullTable {
  const { live, store, pullsShow, actions } = session;
  const rows: Row[] = [];
  let shownEntries: readonly PullEntry[] = [];
  const total = makeTotal(foot);

  function makeRow(index: number): Row {
    const row = made('tr', '', body);
    const head = made('th', '', row);
    head.scope = 'row';
    const name = made('button', 'lower-name', head);
    name.type = 'button';
    name.addEventListener('click', () => {
      const { part } = shownEntries[index];
      if (part !== null) actions.select(part);
    });
    const cells = ['lower-number', 'lower-number pulls-fine', 'lower-number pulls-fine'].map(
      (look) => made('td', look, row),
    );
    cells.push(made('td', 'lower-number', row), made('td', 'pulls-way', row));
    const bar = makeBar(made('td', 'pulls-chain', row));
    cells.push(made('td', 'lower-number', row));
    return { row, name, cells, bar };
  }

  function update(): void {
    const { shown } = pullsShow;
    const { pitchDeg, settings } = store.getState();
    const tally = pullTally(live.reading, pitchDeg, shown.grain, shown.speedRpm);
    const design = pullTally(live.reading, pitchDeg, shown.grain, null);
    const { entries } = tally;
    const waiting = ['', '', '', t('pulls.waiting'), '', ''];
    shownEntries = entries;
    while (rows.length < entries.length) rows.push(makeRow(rows.length));
    const sums = runningSums(entries);
    const span = spanOf([...sums, ...runningSums(design.entries)]);
    rows.forEach((row, i) => {
      row.row.hidden = i >= entries.length;
      if (i >= entries.length) return;
      const entry = entries[i];
      const grown = Math.max(0, Math.min(1, shown.progress - i));
      const stands = grown > 0;
      const newest = stands && i === Math.ceil(shown.progress) - 1;
      row.row.dataset.stands = String(stands);
      row.row.dataset.newest = String(newest);
      write(row.name, entryName(entry));
      writeAttribute(row.name, 'title', entryName(entry));
      const texts = stands ? textsOf(entry, sums[i + 1]) : waiting;
      row.cells.forEach((cell, k) => write(cell, texts[k]));
      const way = turnWay(entry.moment, pitchDeg);
      row.bar.show(span, sums[i], sums[i] + grown * entry.moment, stands ? way : 'none');
    });
    showTotal(tally, span, shown.progress >= entries.length && entries.length > 0);

    function textsOf(entry: PullEntry, sum: number): readonly string[] {
      const { units } = settings;
      const [pull] = entry.pulls;
      const single = entry.pulls.length === 1;
      const lumps =
        entry.pulls.length > 1 ? t('pulls.halves', { count: entry.pulls.length }) : t('pulls.dash');
      return [
        entryPull(entry, units),
        single ? `${displayPosition(pull.lever, units)}\u00a0${units.length}` : lumps,
        single ? show(displayForce(length(pull.turning), units)) : t('pulls.dash'),
        entryMoment(entry.moment, units),
        turnWords(entry.moment, pitchDeg),
        entryMoment(sum, units),
      ];
    }
  }

  function showTotal(tally: PullTally, span: readonly [number, number], all: boolean): void {
    const { pitchDeg, settings } = store.getState();
    const moment = tally.total;
    const force = all ? live.reading.forceOf(moment, pitchDeg) : null;
    write(total.moment, all ? entryMoment(moment, settings.units) : t('pulls.dash'));
    write(total.way, all ? turnWords(moment, pitchDeg) : '');
    write(
      total.force,
      force === null
        ? ''
        : t('pulls.atRod', { force: signedQuantity(displayForce(force, settings.units)) }),
    );
    total.bar.show(span, 0, all ? moment : 0, all ? turnWay(moment, pitchDeg) : 'none');
  }

  return { update };
}

function makeTotal(foot: HTMLTableSectionElement) {
  const row = made('tr', 'pulls-total', foot);
  const head = made('th', '', row);
  head.scope = 'row';
  write(head, t('pulls.total'));
  made('td', '', row);
  made('td', 'pulls-fine', row);
  made('td', 'pulls-fine', row);
  const moment = made('td', 'lower-number', row);
  moment.dataset.testid = 'pulls-total';
  const way = made('td', 'pulls-way', row);
  const bar = makeBar(made('td', 'pulls-chain', row));
  const force = made('td', 'lower-number', row);
  force.dataset.testid = 'pulls-force';
  return { moment, way, bar, force };
}

interface ChainBar {
  show(span: readonly [number, number], from: number, to: number, way: string): void;
}

/** A bar on a common scale with the line of zero. */
function makeBar(cell: HTMLTableCellElement): ChainBar {
  const track = made('div', 'pulls-track', cell);
  track.setAttribute('aria-hidden', 'true');
  const zero = made('span', 'pulls-zero', track);
  const bar = made('span', 'pulls-bar', track);
  return {
    show([low, high], from, to, way) {
      const place = (value: number) => (100 * (value - low)) / (high - low);
      const known = Number.isFinite(from) && Number.isFinite(to);
      zero.style.left = `${place(0).toFixed(2)}%`;
      bar.dataset.way = known ? way : 'none';
      if (!known) return;
      bar.style.left = `${place(Math.min(from, to)).toFixed(2)}%`;
      bar.style.width = `${(place(Math.max(from, to)) - place(Math.min(from, to))).toFixed(2)}%`;
    },
  };
}

/** From the lowest to the highest sum with zero in view; what is not known is left out. */
function spanOf(sums: readonly number[]): readonly [number, number] {
  const known = sums.filter((sum) => !Number.isNaN(sum));
  const low = Math.min(0, ...known);
  const high = Math.max(0, ...known);
  const room = 0.03 * (high - low);
  return low === high ? [-1, 1] : [low - room, high + room];
}
