import type { Design } from '../design/design';
import type { Session } from './session';

/** What is selected when a design opens: its first bolt, whose handle cures most heads; else nothing. */
export function firstSelection(design: Design): string | null {
  return design.parts.find((part) => part.kind === 'bolt' && !part.hidden)?.id ?? null;
}

/** Opens a sound design as one undo step and selects in it. */
export function openAndSelect({ actions }: Session, design: Design): void {
  const opened = actions.openDesign(design);
  if (opened.ok) actions.select(firstSelection(design));
}
