import { useState } from 'react';
import type { Session } from '../../state/session';
import { useSession } from '../../ui/session';
import { SECTION_IDS, type SectionId } from './model';
import type { PaperName } from './pdf/reportPdf';

/** What is chosen for the report; it is no part of the design. */
export interface Choice {
  readonly paper: PaperName;
  readonly sections: ReadonlySet<SectionId>;
  readonly revision: string;
  readonly remark: string;
  /** The sheet on the screen as wide as there is room, or as large as on paper. */
  readonly shown: 'fit' | 'full';
}

export const EVERYTHING: Choice = {
  paper: 'A4',
  sections: new Set(SECTION_IDS),
  revision: '',
  remark: '',
  shown: 'fit',
};

/** The room is taken down when another is looked at; what was chosen in it stays for as long as the page is open. */
const kept = new WeakMap<Session, Choice>();

export function useChoice(): readonly [Choice, (choice: Choice) => void] {
  const session = useSession();
  const [choice, setChoice] = useState(kept.get(session) ?? EVERYTHING);
  function choose(next: Choice): void {
    kept.set(session, next);
    setChoice(next);
  }
  return [choice, choose];
}
