import { createContext, type ReactNode, useContext, useState } from 'react';
import { lazyRoom } from '../../ui/lazyRoom';

export type PartDialog = 'shelf' | 'massCard';

const OpenContext = createContext<((name: PartDialog) => void) | null>(null);

const LazyShelf = lazyRoom(() => import('./ShelfDialog').then(({ ShelfDialog }) => ShelfDialog));
const LazyMassCard = lazyRoom(() =>
  import('../massCard/MassCardDialog').then(({ MassCardDialog }) => MassCardDialog),
);
const DIALOGS = { shelf: LazyShelf, massCard: LazyMassCard } as const;

/**
 * The shelf and the mass card, for the page to put round everything: they outlive the drawer that a rail may be in.
 * Either is fetched when it is first opened.
 */
export function PartDialogs(props: { readonly children: ReactNode }) {
  const [open, setOpen] = useState<PartDialog | null>(null);
  const [seen, setSeen] = useState<readonly PartDialog[]>([]);

  function show(name: PartDialog): void {
    setOpen(name);
    setSeen((before) => (before.includes(name) ? before : [...before, name]));
  }

  return (
    <OpenContext value={show}>
      {props.children}
      {seen.map((name) => {
        const Dialog = DIALOGS[name];
        return (
          <Dialog
            key={name}
            open={open === name}
            onClose={() => setOpen((now) => (now === name ? null : now))}
          />
        );
      })}
    </OpenContext>
  );
}

/** Opens one of them. Throws outside `PartDialogs`: a programmer's fault. */
export function useOpenPartDialog(): (name: PartDialog) => void {
  const show = useContext(OpenContext);
  if (!show) throw new Error('useOpenPartDialog(): there is no PartDialogs above');
  return show;
}
