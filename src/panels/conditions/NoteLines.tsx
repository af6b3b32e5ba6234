import { useRef } from 'react';
import { notesFor } from '../../state/words/conditionNotes';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

/** What follows from a group's numbers, written straight into the page as they change. */
export function NoteLines({ topic }: { readonly topic: string }) {
  const { store } = useSession();
  const list = useRef<HTMLUListElement>(null);
  useLive((reading, changes) => {
    if (!list.current || !(changes.design || changes.settings)) return;
    const lines = notesFor(topic, reading, store.getState().settings.units);
    const rows = list.current.children;
    while (rows.length > lines.length) rows[rows.length - 1].remove();
    lines.forEach((line, i) => {
      const row = rows[i] ?? list.current?.appendChild(document.createElement('li'));
      if (row && row.textContent !== line) row.textContent = line;
    });
  });
  return <ul className="conditions-notes" ref={list} data-testid={`notes-${topic}`} />;
}
