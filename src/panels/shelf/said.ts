import type { Notice } from '../../state/store';

/** What a dialog has to say of the last thing done in it, and how that is taken back. */
export interface Said extends Notice {
  readonly details?: readonly string[];
  readonly undo?: () => void;
}

export function told(text: string, undo?: () => void): Said {
  return { tone: 'plain', text, ...(undo ? { undo } : {}) };
}

export function warned(text: string, details: readonly string[] = []): Said {
  return { tone: 'warning', text, ...(details.length > 0 ? { details } : {}) };
}
