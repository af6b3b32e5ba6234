import {
  Archive,
  ArrowDown,
  ArrowUp,
  Copy,
  Eye,
  EyeOff,
  FlipVertical2,
  type LucideIcon,
  Pencil,
  Trash2,
} from 'lucide-react';
import { t } from '../../messages';
import { removeAndSelectNext, tellRefusal } from '../../state/editing';
import { useAppState, useSession } from '../../ui/session';
import { keepPart } from '../shelf/shelfDesk';
import type { RailOrder } from './Rail';

/** What can be done with the selected part, as buttons always in the same place. */
export function RailTools(props: {
  readonly order: RailOrder;
  readonly ids: readonly string[];
  readonly onRename: (id: string) => void;
}) {
  const session = useSession();
  const { actions } = session;
  const id = useAppState((state) => state.selection);
  const hidden = useAppState(
    (state) => state.design.parts.find((part) => part.id === state.selection)?.hidden === true,
  );
  const order = props.order === 'list' ? null : t('rail.moveNote');

  /** `hinder`: why it cannot be done to the selected part. */
  function tool(
    label: string,
    Icon: LucideIcon,
    act: (id: string) => void,
    hinder: string | null = null,
  ) {
    const why = id === null ? t('rail.noneChosen') : hinder;
    return (
      <button
        type="button"
        className="ui-button ui-button-icon ui-button-bare"
        aria-label={label}
        title={why ?? label}
        aria-disabled={why !== null}
        onClick={() => id !== null && why === null && act(id)}
      >
        <Icon aria-hidden="true" />
      </button>
    );
  }

  return (
    <div className="rail-tools" role="group" aria-label={t('rail.tools')}>
      {tool(t('rail.rename'), Pencil, props.onRename)}
      {tool(t(hidden ? 'rail.show' : 'rail.hide'), hidden ? EyeOff : Eye, (part) =>
        actions.setHidden(part, !hidden),
      )}
      {tool(t('rail.duplicate'), Copy, (part) =>
        tellRefusal(session, actions.duplicatePart(part), part),
      )}
      {tool(t('rail.mirror'), FlipVertical2, (part) =>
        tellRefusal(session, actions.mirrorPart(part), part),
      )}
      {tool(t('shelf.keep'), Archive, (part) => {
        void keepPart(session, part).then(({ tone, text }) => actions.notify({ tone, text }));
      })}
      {tool(t('rail.up'), ArrowUp, (part) => actions.movePart(part, -1), order)}
      {tool(t('rail.down'), ArrowDown, (part) => actions.movePart(part, 1), order)}
      {tool(t('rail.remove'), Trash2, (part) => removeAndSelectNext(session, part, props.ids))}
    </div>
  );
}
