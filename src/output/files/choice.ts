import { useState } from 'react';
import type { Session } from '../../state/session';
import { useSession } from '../../ui/session';
import type { PictureChoice } from './pictureChoice';
import type { SolidChoice } from './solidChoice';

/** Degrees between the rows of the curve's table. */
export const CURVE_STEPS = ['0.1', '0.5', '1', '5'] as const;

/** What is chosen in the room; no part of the design. */
interface FilesChoice {
  readonly solid: SolidChoice;
  readonly picture: PictureChoice;
  readonly curveStep: (typeof CURVE_STEPS)[number];
}

/** The room is taken down when another is looked at; what was chosen in it stays for as long as the page is open. */
const kept = new WeakMap<Session, Partial<FilesChoice>>();

/** One section's choice; `first` makes it from what was kept, if anything was. */
export function useKept<Key extends keyof FilesChoice>(
  key: Key,
  first: (before: FilesChoice[Key] | undefined) => FilesChoice[Key],
): readonly [FilesChoice[Key], (next: FilesChoice[Key]) => void] {
  const session = useSession();
  const [choice, setChoice] = useState(() => first(kept.get(session)?.[key]));
  function choose(next: FilesChoice[Key]): void {
    kept.set(session, { ...kept.get(session), [key]: next });
    setChoice(next);
  }
  return [choice, choose];
}
