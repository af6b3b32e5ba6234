import { Fragment, type KeyboardEvent, type ReactNode, useEffect, useId, useRef } from 'react';
import { focusFirst } from './focusFirst';
import './pickList.css';

/**
 * A search box over a list, for choosing one of many by typing. The box keeps the focus: arrows, Page keys go through
 * the list, and Enter is left to the form around it. Items of one `group` must stand together.
 */
export function PickList<Item>(props: {
  readonly label: string;
  readonly placeholder: string;
  readonly listLabel: string;
  /** Said and shown under the box: how many there are, or that there are none. */
  readonly count: string;
  readonly query: string;
  readonly onQuery: (query: string) => void;
  readonly items: readonly Item[];
  readonly keyOf: (item: Item) => string;
  readonly groupOf: (item: Item) => string;
  /** Key of the item that stands out. */
  readonly active: string | null;
  readonly onActive: (key: string) => void;
  readonly onTake: () => void;
  readonly children: (item: Item) => ReactNode;
}) {
  const { items, keyOf, groupOf, active } = props;
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  const at = items.findIndex((item) => keyOf(item) === active);
  useEffect(() => {
    if (active === null) return;
    list.current?.querySelector('[aria-selected="true"]')?.scrollIntoView({ block: 'nearest' });
  }, [active]);

  function onKeyDown(event: KeyboardEvent): void {
    const step = STEPS[event.key];
    if (step === undefined || items.length === 0) return;
    event.preventDefault();
    const next = Math.min(items.length - 1, Math.max(0, at + step));
    props.onActive(keyOf(items[next]));
  }

  return (
    <div className="pick">
      <label className="pick-label" htmlFor={`${id}-box`}>
        {props.label}
      </label>
      <input
        id={`${id}-box`}
        ref={focusFirst}
        className="ui-input pick-box"
        type="text"
        role="combobox"
        aria-expanded="true"
        aria-autocomplete="list"
        aria-controls={`${id}-list`}
        aria-activedescendant={at < 0 ? undefined : `${id}-${at}`}
        autoComplete="off"
        spellCheck={false}
        placeholder={props.placeholder}
        data-testid="pick-search"
        value={props.query}
        onChange={(event) => props.onQuery(event.target.value)}
        onKeyDown={onKeyDown}
      />
      <p className="pick-count" role="status">
        {props.count}
      </p>
      <div
        className="pick-list"
        id={`${id}-list`}
        ref={list}
        role="listbox"
        tabIndex={-1}
        aria-label={props.listLabel}
      >
        {items.map((item, index) => {
          const key = keyOf(item);
          const heads = index === 0 || groupOf(items[index - 1]) !== groupOf(item);
          return (
            <Fragment key={key}>
              {heads && (
                <div className="pick-group" role="presentation">
                  {groupOf(item)}
                </div>
              )}
              {/* The keys belong to the search box, which keeps the focus. */}
              <div
                className="pick-item"
                id={`${id}-${index}`}
                role="option"
                tabIndex={-1}
                aria-selected={key === active}
                data-testid="pick-item"
                onMouseDown={(event) => event.preventDefault()}
                onClick={() => props.onActive(key)}
                onDoubleClick={props.onTake}
                onKeyDown={undefined}
              >
                {props.children(item)}
                <span className="ui-unseen">{groupOf(item)}</span>
              </div>
            </Fragment>
          );
        })}
      </div>
    </div>
  );
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowDown: 1,
  ArrowUp: -1,
  PageDown: 8,
  PageUp: -8,
};
