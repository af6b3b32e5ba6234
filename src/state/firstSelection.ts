import type { Design } from '../design/design';
import { partType } from '../parts/registry';
import type { Session } from './session';

/** What is selected when a design opens: the first visible part whose type asks for it; else nothing. */
export function firstSelection(design: Design): string | null {
  return design.parts.find((part) => !part.hidden && partType(part.kind).selectedFirst)?.id ?? null;
}

/** Opens a sound design as one undo step and selects in it. */
export function openAndSelect({ actions }: Session, design: Design): void {
  const opened = actions.openDesign(design);
  if (opened.ok) actions.select(firstSelection(design));
}
