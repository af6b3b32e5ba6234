import { useEffect, useRef } from 'react';
import { tinykeys } from 'tinykeys';
import { describeFault } from '../design/faultText';
import { t } from '../messages';
import { removeAndSelectNext, tellRefusal } from '../state/editing';
import { copyText, isPartText, partFrom } from '../state/partClipboard';
import { refusalText } from '../state/refusalText';
import type { Session } from '../state/session';
import { useSession } from '../ui/session';
import { type Command, SHORTCUTS } from './shortcuts';

/** What the page itself does for a key; the rest is done to the session. */
export interface PageCommands {
  readonly open: () => void;
  readonly save: () => void;
  readonly saveAs: () => void;
  readonly help: () => void;
}

/** Binds every key of the table, and copy and paste of parts through the browser's own clipboard events. */
export function useShortcuts(page: PageCommands): void {
  const session = useSession();
  const latest = useRef(page);
  useEffect(() => {
    latest.current = page;
  });
  useEffect(() => {
    const run = commands(session, () => latest.current);
    const bindings: Record<string, (event: KeyboardEvent) => void> = {};
    for (const { command, presses, whileTyping } of SHORTCUTS) {
      for (const press of command ? presses : []) {
        bindings[press] = (event) => {
          if (event.defaultPrevented || (isTyping(event.target) && !whileTyping)) return;
          if (isLetterKey(event) && !session.store.getState().settings.letterKeys) return;
          if (document.querySelector('dialog[open], :popover-open')) return;
          if (session.store.getState().gesture && !IN_A_DRAG.has(command as Command)) return;
          if (command === 'remove' && !meansThePart(event.target)) return;
          event.preventDefault();
          run[command as Command]();
        };
      }
    }
    return tinykeys(window, bindings);
  }, [session]);
  useEffect(() => {
    const copy = (event: ClipboardEvent) => copyPart(session, event);
    const paste = (event: ClipboardEvent) => pastePart(session, event);
    document.addEventListener('copy', copy);
    document.addEventListener('paste', paste);
    return () => {
      document.removeEventListener('copy', copy);
      document.removeEventListener('paste', paste);
    };
  }, [session]);
}

function commands(session: Session, page: () => PageCommands): Record<Command, () => void> {
  const { store, actions, letGo } = session;
  const selected = (act: (id: string) => void) => () => {
    const { selection } = store.getState();
    if (selection !== null) act(selection);
  };
  const turn = (degrees: number) => () => {
    const at = store.getState().pitchDeg + degrees;
    actions.setPitch(Math.min(90, Math.max(-90, Math.round(at * 10) / 10)));
  };
  return {
    undo: actions.undo,
    redo: actions.redo,
    open: () => page().open(),
    save: () => page().save(),
    saveAs: () => page().saveAs(),
    help: () => page().help(),
    duplicate: selected((id) => tellRefusal(session, actions.duplicatePart(id), id)),
    remove: selected((id) => removeAndSelectNext(session, id)),
    escape() {
      if (store.getState().gesture) actions.gesture.cancel();
      else if (letGo.loose) letGo.stop();
      else actions.select(null);
    },
    pitchDown: turn(-1),
    pitchUp: turn(1),
    pitchFlat: () => actions.setPitch(0),
    letGo: () => (letGo.loose ? letGo.stop() : letGo.letGo()),
  };
}

/** What a key may still do while something is being dragged. */
const IN_A_DRAG: ReadonlySet<Command> = new Set(['undo', 'redo', 'escape']);

/** Delete takes the selected part only where the parts are: in the list, on the stage, or with nothing in focus. */
function meansThePart(target: EventTarget | null): boolean {
  return (
    target === document.body ||
    (target instanceof Element &&
      target.closest('.rail-list, .stage-canvas, [data-handle]') !== null)
  );
}

/** A letter, digit or sign of its own, with or without Shift: such keys may be switched off. */
function isLetterKey(event: KeyboardEvent): boolean {
  return event.key.length === 1 && !(event.ctrlKey || event.metaKey || event.altKey);
}

function isTyping(target: EventTarget | null): boolean {
  if (!(target instanceof HTMLElement)) return false;
  if (target.isContentEditable || target instanceof HTMLTextAreaElement) return true;
  if (target instanceof HTMLSelectElement) return true;
  return (
    target instanceof HTMLInputElement &&
    !['checkbox', 'radio', 'range', 'button'].includes(target.type)
  );
}

function copyPart(session: Session, event: ClipboardEvent): void {
  if (isTyping(event.target) || document.getSelection()?.isCollapsed === false) return;
  const { selection } = session.store.getState();
  const placed = selection === null ? undefined : session.live.model.placed(selection);
  if (!placed) return;
  event.clipboardData?.setData(
    'text/plain',
    copyText(placed.part, placed.pose, session.store.getState().design),
  );
  event.preventDefault();
}

function pastePart({ store, actions }: Session, event: ClipboardEvent): void {
  const text = event.clipboardData?.getData('text/plain') ?? '';
  if (isTyping(event.target) || !isPartText(text)) return;
  event.preventDefault();
  const { design, settings } = store.getState();
  const carried = partFrom(text, design);
  const reason = carried.ok ? null : describeFault(carried.error);
  const outcome = carried.ok
    ? actions.pastePart(carried.value.part, carried.value.materials)
    : null;
  const refused =
    outcome && !outcome.ok ? refusalText(outcome.error, design, null, settings.units) : reason;
  if (refused !== null) {
    actions.notify({ tone: 'warning', text: t('app.pasteRefused', { reason: refused }) });
  }
}
