import { RELEASE_LIMITS } from '../design/release/releaseChoices';
import { FIRST_LET_GO } from './letGo';
import type { LetGoChoices, LetGoDesk } from './letGoTypes';
import type { LocalNotes } from './localNotes';

const NOTE = 'letGo';

/** Keeps damping, rebound and the like in the browser from now on. */
export function keepLetGo({ store }: LetGoDesk, notes: LocalNotes): () => void {
  return store.subscribe(({ choices }, before) => {
    if (choices !== before.choices) notes.write(NOTE, JSON.stringify(choices));
  });
}

/** Those of the last visit; whatever in them is not understood is as it is at first. */
export function readLetGo(notes: LocalNotes): LetGoChoices {
  const text = notes.read(NOTE);
  if (text === null) return FIRST_LET_GO;
  try {
    return choicesFrom(JSON.parse(text));
  } catch {
    return FIRST_LET_GO;
  }
}

function choicesFrom(value: unknown): LetGoChoices {
  if (typeof value !== 'object' || value === null) return FIRST_LET_GO;
  const found = value as Readonly<Record<string, unknown>>;
  const number = (field: keyof typeof RELEASE_LIMITS): number => {
    const { min, max } = RELEASE_LIMITS[field];
    const one = found[field];
    return typeof one === 'number' && one >= min && one <= max ? one : FIRST_LET_GO[field];
  };
  const { slowness } = found;
  return {
    dampingPercent: number('dampingPercent'),
    restitution: number('restitution'),
    sliderMassGrams: number('sliderMassGrams'),
    slowness: isSlowness(slowness) ? slowness : null,
  };
}

/** Of the series that the page offers. */
export const SLOWNESSES: readonly number[] = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

function isSlowness(value: unknown): value is number {
  return typeof value === 'number' && SLOWNESSES.includes(value);
}
