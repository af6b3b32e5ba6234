import type { MessageKey } from '../messages';
import { STAGE_KEYS } from '../ui/stageKeys';

/**
 * Every key of the page, once: what it is bound to and what the list under "?" says of it. Rows without `command`
 * belong to the handles and fields themselves and are there to be read.
 */
export type Command =
  | 'undo'
  | 'redo'
  | 'open'
  | 'save'
  | 'saveAs'
  | 'duplicate'
  | 'remove'
  | 'escape'
  | 'pitchDown'
  | 'pitchUp'
  | 'pitchFlat'
  | 'letGo'
  | 'help';

export interface Shortcut {
  readonly group: MessageKey;
  readonly label: MessageKey;
  readonly command?: Command;
  /** What the binding listens for, in the words of the key library; `$mod` is Cmd on a Mac and Ctrl elsewhere. */
  readonly presses: readonly string[];
  /** What is shown; keys of one chord joined by +, alternatives apart. `Mod` is shown as Ctrl or Cmd. */
  readonly keys: readonly string[];
  /** Also while a text field has the focus. */
  readonly whileTyping?: boolean;
}

const SIGNS: Readonly<Record<string, string>> = {
  ArrowLeft: '\u2190',
  ArrowRight: '\u2192',
  ArrowUp: '\u2191',
  ArrowDown: '\u2193',
  '-': '\u2212',
};

export const SHORTCUTS: readonly Shortcut[] = [
  row('app.keysDesign', 'app.keyUndo', 'undo', ['$mod+z'], ['Mod+Z']),
  row(
    'app.keysDesign',
    'app.keyRedo',
    'redo',
    ['$mod+Shift+z', '$mod+y'],
    ['Mod+Shift+Z', 'Mod+Y'],
  ),
  { ...row('app.keysDesign', 'app.keyOpen', 'open', ['$mod+o'], ['Mod+O']), whileTyping: true },
  { ...row('app.keysDesign', 'app.keySave', 'save', ['$mod+s'], ['Mod+S']), whileTyping: true },
  {
    ...row('app.keysDesign', 'app.keySaveAs', 'saveAs', ['$mod+Shift+s'], ['Mod+Shift+S']),
    whileTyping: true,
  },
  row('app.keysPart', 'app.keyDuplicate', 'duplicate', ['$mod+d'], ['Mod+D']),
  row('app.keysPart', 'app.keyDelete', 'remove', ['Delete'], ['Del']),
  shown('app.keysPart', 'app.keyRename', ['F2']),
  shown('app.keysPart', 'app.keyCopy', ['Mod+C', 'Mod+V']),
  shown('app.keysPart', 'app.keyMove', ['Alt+\u2191', 'Alt+\u2193']),
  row('app.keysPart', 'app.keyEscape', 'escape', ['Escape'], ['Esc']),
  row('app.keysPitch', 'app.keyPitchDown', 'pitchDown', ['BracketLeft'], ['[']),
  row('app.keysPitch', 'app.keyPitchUp', 'pitchUp', ['BracketRight'], [']']),
  row('app.keysPitch', 'app.keyPitchFlat', 'pitchFlat', ['0'], ['0']),
  row('app.keysPitch', 'app.keyLetGo', 'letGo', ['l'], ['L']),
  shown('app.keysPitch', 'app.keyPush', ['\u2190', '\u2192']),
  shown('app.keysDrag', 'app.keyNudge', ['\u2190', '\u2192', '\u2191', '\u2193']),
  shown('app.keysDrag', 'app.keyPages', ['PgUp', 'PgDn']),
  shown('app.keysDrag', 'app.keyEnds', ['Home', 'End']),
  shown('app.keysDrag', 'app.keyCoarse', ['Shift', 'Alt']),
  shown('app.keysStage', 'app.keyTurnView', shownKeys(STAGE_KEYS.turn)),
  shown('app.keysStage', 'app.keyTurnViewFar', ['Shift+\u2190', 'Shift+\u2192']),
  shown('app.keysStage', 'app.keyZoomView', shownKeys(STAGE_KEYS.zoom)),
  shown('app.keysStage', 'app.keyWholeView', shownKeys(STAGE_KEYS.whole)),
  shown('app.keysFields', 'app.keyStep', ['\u2191', '\u2193']),
  shown('app.keysFields', 'app.keyStepCoarse', ['Shift+\u2191', 'Alt+\u2191']),
  shown('app.keysFields', 'app.keyCommit', ['Enter']),
  shown('app.keysFields', 'app.keyRestore', ['Esc']),
  row('app.keysPage', 'app.keyHelp', 'help', ['Shift+?', '?'], ['?']),
];

function row(
  group: MessageKey,
  label: MessageKey,
  command: Command,
  presses: readonly string[],
  keys: readonly string[],
): Shortcut {
  return { group, label, command, presses, keys };
}

function shown(group: MessageKey, label: MessageKey, keys: readonly string[]): Shortcut {
  return { group, label, presses: [], keys };
}

/** Keys as the browser names them, as they are shown; the second key of "+" is left out. */
function shownKeys(keys: object): readonly string[] {
  return Object.keys(keys)
    .filter((key) => key !== '=')
    .map((key) => SIGNS[key] ?? key);
}
