import { useId, useState } from 'react';
import type { DragRow } from '../../design/sections/friction';
import { t } from '../../messages';
import { refusalText } from '../../state/refusalText';
import { useAppState, useSession } from '../../ui/session';
import { dragText, parseDrag } from './dragText';

const NO_ROWS: readonly DragRow[] = [];

/**
 * The drag of the linkage measured at rest, typed or pasted as a table. Taken on when the field is left; what cannot be
 * read stays as it was typed, with the reason.
 */
export function DragTable() {
  const rows = useAppState((state) => state.design.friction?.drag ?? NO_ROWS);
  // Undo and another design put their own table in, over a draft.
  return <DragField key={dragText(rows)} rows={rows} />;
}

function DragField({ rows }: { readonly rows: readonly DragRow[] }) {
  const { store, actions } = useSession();
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const kept = dragText(rows);

  function commit(): void {
    if (draft === null) return;
    const read = parseDrag(draft);
    if (!read.ok) {
      setFault(read.error);
      return;
    }
    // The same readings are no change, and nothing to undo.
    if (dragText(read.value) === kept) {
      setDraft(null);
      setFault(null);
      return;
    }
    const drag = read.value.length > 0 ? read.value : undefined;
    const outcome = actions.setSection('friction', { drag });
    const { design, settings } = store.getState();
    setFault(outcome.ok ? null : refusalText(outcome.error, design, null, settings.units));
    if (outcome.ok) setDraft(null);
  }

  return (
    <div className="conditions-table" data-help={t('conditions.dragHelp')}>
      <label className="field-label" htmlFor={id}>
        {t('conditions.drag')}
      </label>
      <textarea
        id={id}
        className="conditions-text"
        rows={Math.min(8, Math.max(3, rows.length + 1))}
        spellCheck={false}
        placeholder={t('conditions.dragNone')}
        aria-describedby={`${id}-help${fault ? ` ${id}-fault` : ''}`}
        aria-invalid={fault !== null}
        data-testid="input-drag"
        value={draft ?? kept}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={commit}
        onKeyDown={(event) => {
          if (event.key !== 'Escape' || draft === null) return;
          event.preventDefault();
          setDraft(null);
          setFault(null);
        }}
      />
      <p className="conditions-hint" id={`${id}-help`}>
        {t('conditions.dragHelp')}
      </p>
      {fault && (
        <p className="field-fault" role="alert" id={`${id}-fault`}>
          {fault}
        </p>
      )}
    </div>
  );
}
