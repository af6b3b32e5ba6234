import { X } from 'lucide-react';
import { type RefObject, type ToggleEvent, useId, useLayoutEffect, useRef, useState } from 'react';
import { createPortal } from 'react-dom';
import { sayHelp } from '../../state/help/helpText';
import type { TopicId } from '../../state/help/topics';
import { wordsDesk } from '../../state/help/wordsDesk';
import { useLessonDoor } from '../lessonDoor';
import { useSession } from '../session';
import { FormulaText } from './FormulaText';
import { TopicBody } from './TopicBody';

/**
 * Beside the name that was pressed, in the top layer: one at a time. Escape and a press elsewhere close it (the browser's
 * own popover), and the focus goes back to the name. It never keeps anybody from anything.
 */
export function HelpCard(props: {
  readonly id: TopicId;
  readonly anchor: RefObject<HTMLElement | null>;
  readonly onClosed: () => void;
}) {
  const session = useSession();
  const door = useLessonDoor();
  const card = useRef<HTMLDivElement>(null);
  const title = useId();
  const [id, setId] = useState(props.id);
  const { anchor } = props;

  useLayoutEffect(() => {
    const element = card.current;
    element?.showPopover();
    element?.focus();
    return () => {
      if (element?.matches(':popover-open')) element.hidePopover();
    };
  }, []);
  // Its height changes with the entry; it is rendered anew for nothing else.
  useLayoutEffect(() => {
    if (card.current && anchor.current) placeBeside(anchor.current, card.current);
  });

  function see(other: TopicId): void {
    setId(other);
    card.current?.focus();
    card.current?.scrollTo({ top: 0 });
  }

  function toWords(): void {
    card.current?.hidePopover();
    wordsDesk.setState({ shown: id, search: '' });
    session.actions.setSettings({ room: 'learn' });
    // In the room Learn a lesson that waits has the page.
    door.shown().actions.setSettings({ learnView: 'words' });
  }

  return createPortal(
    <div
      ref={card}
      className="help-card"
      popover="auto"
      role="dialog"
      aria-labelledby={title}
      tabIndex={-1}
      data-testid="help-card"
      onToggle={(event: ToggleEvent<HTMLDivElement>) => {
        if (event.newState === 'closed') props.onClosed();
      }}
    >
      <div className="help-head">
        <h3 id={title}>
          <FormulaText text={sayHelp(`help.${id}.name`)} />
        </h3>
        <button
          type="button"
          className="ui-button ui-button-icon ui-button-bare"
          aria-label={sayHelp('help.close')}
          title={sayHelp('help.close')}
          onClick={() => card.current?.hidePopover()}
        >
          <X aria-hidden="true" />
        </button>
      </div>
      <TopicBody id={id} onSee={see} />
      <button type="button" className="ui-button" data-testid="help-more" onClick={toWords}>
        {sayHelp('help.more')}
      </button>
    </div>,
    // What is outside of an open modal dialog cannot be used.
    anchor.current?.closest('dialog') ?? document.body,
  );
}

const MARGIN = 8;

/** Under the name where there is room, else over it or beside it, inside the window. */
function placeBeside(anchor: HTMLElement, card: HTMLElement): void {
  const from = anchor.getBoundingClientRect();
  const { innerWidth, innerHeight } = window;
  card.style.maxHeight = `${innerHeight - 2 * MARGIN}px`;
  const { offsetWidth: width, offsetHeight: height } = card;
  const left = Math.max(MARGIN, Math.min(from.left, innerWidth - width - MARGIN));
  const below = from.bottom + 6;
  const above = from.top - height - 6;
  const top =
    below + height + MARGIN <= innerHeight
      ? below
      : above >= MARGIN
        ? above
        : Math.max(MARGIN, innerHeight - height - MARGIN);
  const covers = top < from.bottom && top + height > from.top;
  const right = from.right + 6;
  const beside = right + width + MARGIN <= innerWidth ? right : from.left - width - 6;
  card.style.left = `${covers && beside >= MARGIN ? beside : left}px`;
  card.style.top = `${top}px`;
}
