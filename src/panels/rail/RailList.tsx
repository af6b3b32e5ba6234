import { EyeOff } from 'lucide-react';
import { type KeyboardEvent, useEffect, useRef } from 'react';
import { t } from '../../messages';
import { removeAndSelectNext } from '../../state/editing';
import { useAppState, useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import type { RailOrder } from './Rail';
import { RenameField } from './RenameField';
import { writeRows, writeWhole } from './railNumbers';
import type { RailItem } from './useRailItems';

/** Value of the row that stands for the whole head: nothing selected. */
const WHOLE = '';

/**
 * The parts as one list box: one tab stop, arrows choose, F2 renames, Delete removes, Alt with an arrow moves. Masses
 * and bars are written into the rows with every frame; React renders only when parts come, go or change names.
 */
export function RailList(props: {
  readonly rows: readonly RailItem[];
  readonly order: RailOrder;
  readonly renaming: string | null;
  readonly onRename: (id: string | null) => void;
  readonly label: string;
}) {
  const { rows, order, renaming, onRename } = props;
  const session = useSession();
  const { store, live, actions } = session;
  const selection = useAppState((state) => state.selection) ?? WHOLE;
  const list = useRef<HTMLUListElement>(null);
  const values = [...rows.map((row) => row.id), WHOLE];

  function writeNumbers(): void {
    const { settings, gesture } = store.getState();
    if (!list.current) return;
    writeRows(list.current, live.reading, settings.units, !gesture);
    const whole = list.current.querySelector<HTMLElement>('[data-whole]');
    if (whole) writeWhole(whole, live.reading, settings.units);
  }
  useLive((_, changes) => {
    if (changes.design || changes.settings) writeNumbers();
  }, 'lists');
  // Rows that React has just made are filled at once; words for screen readers follow when a drag has ended.
  useEffect(writeNumbers);
  useEffect(() =>
    store.subscribe((state, before) => {
      if (before.gesture && !state.gesture) {
        live.flush();
        writeNumbers();
      }
    }),
  );
  const opened = useRef(false);
  useEffect(() => {
    // Not at first: scrolling would move the place where the Tab key starts.
    if (opened.current) rowOf(list.current, selection)?.scrollIntoView({ block: 'nearest' });
    opened.current = true;
  }, [selection]);

  function choose(value: string): void {
    actions.select(value === WHOLE ? null : value);
    rowOf(list.current, value)?.focus();
  }

  function onKeyDown(event: KeyboardEvent): void {
    const at = values.indexOf(selection);
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined && event.altKey && selection !== WHOLE) {
      if (order === 'list') actions.movePart(selection, step);
    } else if (step !== undefined) choose(values[at + step] ?? values[at]);
    else if (event.key === 'Home') choose(values[0]);
    else if (event.key === 'End') choose(WHOLE);
    else if (event.key === 'F2' && selection !== WHOLE) onRename(selection);
    else if (event.key === 'Delete' && selection !== WHOLE) {
      removeAndSelectNext(session, selection, values);
      requestAnimationFrame(() =>
        rowOf(list.current, store.getState().selection ?? WHOLE)?.focus(),
      );
    } else return;
    event.preventDefault();
    event.stopPropagation();
  }

  return (
    <div className="rail-scroll">
      <ul
        ref={list}
        className="rail-list"
        role="listbox"
        aria-label={props.label}
        onKeyDown={onKeyDown}
      >
        {rows.map((item) => (
          <Row
            key={item.id}
            item={item}
            selected={item.id === selection}
            onChoose={() => choose(item.id)}
            onRename={() => onRename(item.id)}
          />
        ))}
        <li
          className="rail-row rail-whole"
          role="option"
          aria-selected={selection === WHOLE}
          tabIndex={selection === WHOLE ? 0 : -1}
          data-value={WHOLE}
          data-whole=""
          data-testid="rail-whole"
          onClick={() => choose(WHOLE)}
        >
          <span className="rail-mark" aria-hidden="true" />
          <span className="rail-name">{t('rail.whole')}</span>
          <span className="rail-mass" data-place="mass" />
          <span className="rail-note">{t('rail.wholeNote')}</span>
          <span className="rail-note rail-note-end" data-place="share" />
        </li>
      </ul>
      {renaming !== null && (
        <RenameField
          key={renaming}
          id={renaming}
          onDone={() => {
            onRename(null);
            rowOf(list.current, renaming)?.focus();
          }}
        />
      )}
    </div>
  );
}

function Row(props: {
  readonly item: RailItem;
  readonly selected: boolean;
  readonly onChoose: () => void;
  readonly onRename: () => void;
}) {
  const { item, selected } = props;
  return (
    <li
      className="rail-row"
      role="option"
      aria-selected={selected}
      tabIndex={selected ? 0 : -1}
      data-value={item.id}
      data-part={item.id}
      data-hidden={item.hidden || undefined}
      data-testid={`rail-part-${item.id}`}
      onClick={props.onChoose}
      onDoubleClick={props.onRename}
    >
      <span className="rail-mark" aria-hidden="true" />
      <span className="rail-name">{item.name}</span>
      {item.hidden && <EyeOff className="rail-hidden" aria-hidden="true" />}
      <span className="rail-mass" data-place="mass" aria-hidden="true" />
      <span className="ui-unseen" data-place="spoken" />
      <span className="rail-track" aria-hidden="true">
        <span className="rail-bar" data-place="bar" />
      </span>
    </li>
  );
}

function rowOf(list: HTMLElement | null, value: string): HTMLElement | null {
  return list?.querySelector<HTMLElement>(`[data-value="${CSS.escape(value)}"]`) ?? null;
}
