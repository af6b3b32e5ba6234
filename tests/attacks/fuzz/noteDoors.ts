import { readDraft, readRemembered } from '../../../src/bench/deskNotes';
import { readChoice } from '../../../src/output/drawing/choice';
import { readLetGo } from '../../../src/state/storedLetGo';
import { readPlan } from '../../../src/state/storedPlan';
import { readSettings } from '../../../src/state/storedSettings';
import { anyText, type Door, hasNonNumber, taken } from './door';

/** Small notes that the browser keeps. What is not understood is as at first, so nothing is ever refused. */
function noteDoor(
  name: string,
  entry: string,
  good: string,
  read: (text: string) => unknown,
): Door {
  return {
    name,
    entries: [entry, 'src/state/localNotes.ts'],
    form: 'text',
    good: [good],
    open: (bytes) => taken(hasNonNumber(read(anyText(bytes))) ? 'a number in it is none' : null),
  };
}

function holding(text: string) {
  return { read: () => text, write: () => true, remove: () => {} };
}

export const NOTE_DOORS: readonly Door[] = [
  noteDoor('kept settings', 'src/state/storedSettings.ts', 'settings', (text) =>
    readSettings(holding(text)),
  ),
  noteDoor('kept plan', 'src/state/storedPlan.ts', 'plan', (text) => readPlan(holding(text))),
  noteDoor('kept let go', 'src/state/storedLetGo.ts', 'let go', (text) => readLetGo(holding(text))),
  noteDoor('kept drawing choice', 'src/output/drawing/choice.ts', 'drawing choice', readChoice),
  noteDoor('kept bench notes', 'src/bench/deskNotes.ts', 'bench draft', (text) => [
    readDraft(holding(text)),
    readRemembered(holding(text)),
  ]),
];
