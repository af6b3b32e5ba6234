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
 * arrows, Home, End and first letters move among the items. Items are rendered only while it is open.
 */
export function Menu(props: {
  readonly label: string;
  readonly className?: string;
  readonly title?: string;
  readonly testId?: string;
  readonly button: ReactNode;
  readonly children: (close: () => void) => ReactNode;
}) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLDivElement>(null);
  const [open, setOpen] = useState(false);

  /** The items are rendered before the menu shows, and it stays unseen until it has its place. */
  function onBeforeToggle(event: ToggleEvent<HTMLDivElement>): void {
    const shown = event.newState === 'open';
    if (shown && list.current) list.current.style.visibility = 'hidden';
    flushSync(() => setOpen(shown));
  }
  function onToggle(event: ToggleEvent<HTMLDivElement>): void {
    if (event.newState !== 'open' || !list.current) return;
    placeBelow(button.current, list.current);
    list.current.style.visibility = '';
    items(list.current)[0]?.focus();
  }

  function onKeyDown(event: KeyboardEvent): void {
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
        {open && props.children(() => list.current?.hidePopover())}
      </div>
    </>
  );
}

export function MenuItem(props: {
  readonly onClick: () => void;
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
      onClick={props.onClick}
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

/** Under the button, kept inside the window; above it where there is more room. */
function placeBelow(button: HTMLElement | null, list: HTMLElement | null): void {
  if (!button || !list) return;
  const anchor = button.getBoundingClientRect();
  const { offsetWidth: width, offsetHeight: height } = list;
  const left = Math.max(8, Math.min(anchor.left, window.innerWidth - width - 8));
  const below = anchor.bottom + 4;
  const fits = below + height <= window.innerHeight - 8;
  const top = fits
    ? below
    : Math.max(8, Math.min(anchor.top - height - 4, window.innerHeight - height - 8));
  list.style.left = `${left}px`;
  list.style.top = `${top}px`;
}
