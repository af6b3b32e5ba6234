import {
  type KeyboardEvent,
  type ReactNode,
  type ToggleEvent,
  useId,
  useRef,
  useState,
} from 'react';
import { flushSync } from 'react-dom';

/**
 * A button that opens a menu in the top layer. Escape and a click elsewhere close it (the browser's own popover);
 * arrows, Home, End and first letters move among the items, and Tab goes on from the button. Items are mounted only while it is open.
 */
export function Menu(props: {
  readonly label: string;
  readonly className?: string;
  readonly title?: string;
  readonly testId?: string;
  readonly button: ReactNode;
  readonly children: ReactNode;
}) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState(false);

  /** The items are rendered before the menu shows, and it stays unseen until it has its place. */
  function onBeforeToggle(event: ToggleEvent<HTMLDivElement>): void {
    if (event.newState !== 'open') return;
    if (list.current) list.current.style.visibility = 'hidden';
    flushSync(() => setOpen(true));
  }
  /** Items go only after the menu has closed: the browser gives the focus back while one of them still has it. */
  function onToggle(event: ToggleEvent<HTMLDivElement>): void {
    if (event.newState !== 'open') setOpen(false);
    if (event.newState !== 'open' || !list.current) return;
    placeBelow(button.current, list.current);
    list.current.style.visibility = '';
    items(list.current)[0]?.focus();
  }

  function onKeyDown(event: KeyboardEvent): void {
    // The focus is back on the button before the browser moves it on: nothing behind the menu is gone through.
    if (event.key === 'Tab') return list.current?.hidePopover();
    const all = items(list.current);
    const at = all.indexOf(document.activeElement as HTMLElement);
    const to = targetOf(event.key, at, all);
    if (to === null) return;
    event.preventDefault();
    all[to]?.focus();
  }

  return (
    <>
      <button
        type="button"
        ref={button}
        className={props.className ?? 'ui-button'}
        aria-label={props.label}
        aria-haspopup="menu"
        aria-expanded={open}
        aria-controls={id}
        popoverTarget={id}
        title={props.title}
        data-testid={props.testId}
      >
        {props.button}
      </button>
      <div
        id={id}
        ref={list}
        className="ui-menu"
        popover="auto"
        role="menu"
        aria-label={props.label}
        tabIndex={-1}
        onBeforeToggle={onBeforeToggle}
        onToggle={onToggle}
        onKeyDown={onKeyDown}
      >
        {open && props.children}
      </div>
    </>
  );
}

/** One choice; the menu closes after it unless `onClick` answers 'stay'. */
export function MenuItem(props: {
  readonly onClick: () => 'stay' | void;
  readonly checked?: boolean;
  readonly aside?: ReactNode;
  readonly note?: string | undefined;
  readonly testId?: string;
  readonly children: ReactNode;
}) {
  const radio = props.checked !== undefined;
  return (
    <button
      type="button"
      className="ui-menu-item"
      role={radio ? 'menuitemradio' : 'menuitem'}
      aria-checked={props.checked}
      tabIndex={-1}
      data-testid={props.testId}
      onClick={(event) => {
        const menu = event.currentTarget.closest<HTMLElement>('[popover]');
        if (props.onClick() !== 'stay') menu?.hidePopover();
      }}
    >
      <span>
        {props.children}
        {props.note && <span className="ui-menu-item-note">{props.note}</span>}
      </span>
      {props.aside && <span className="ui-menu-item-aside">{props.aside}</span>}
    </button>
  );
}

function items(list: HTMLElement | null): HTMLElement[] {
  return list ? [...list.querySelectorAll<HTMLElement>('[role^="menuitem"]')] : [];
}

function targetOf(key: string, at: number, all: readonly HTMLElement[]): number | null {
  const count = all.length;
  if (count === 0) return null;
  if (key === 'ArrowDown') return (at + 1) % count;
  if (key === 'ArrowUp') return (at - 1 + count) % count;
  if (key === 'Home') return 0;
  if (key === 'End') return count - 1;
  if (key.length !== 1 || key === ' ') return null;
  for (let step = 1; step <= count; step++) {
    const next = (at + step) % count;
    if (all[next].textContent?.toLowerCase().startsWith(key.toLowerCase())) return next;
  }
  return null;
}

/** Under the button, kept inside the window; above it, growing upward, where it does not fit below. */
function placeBelow(button: HTMLElement | null, list: HTMLElement | null): void {
  if (!button || !list) return;
  const anchor = button.getBoundingClientRect();
  const { offsetWidth: width, offsetHeight: height } = list;
  const fits = anchor.bottom + height + 12 <= window.innerHeight;
  const above = !fits && anchor.top > window.innerHeight - anchor.bottom;
  list.style.left = `${Math.max(8, Math.min(anchor.left, window.innerWidth - width - 8))}px`;
  list.style.top = above ? 'auto' : `${anchor.bottom + 4}px`;
  list.style.bottom = above ? `${window.innerHeight - anchor.top + 4}px` : 'auto';
  const room = above ? anchor.top - 12 : window.innerHeight - anchor.bottom - 12;
  list.style.maxHeight = `${Math.min(640, room)}px`;
}
