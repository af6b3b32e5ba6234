import { createContext, lazy, type ReactNode, Suspense, useContext, useState } from 'react';

export type PartDialog = 'shelf' | 'massCard';

const OpenContext = createContext<((name: PartDialog) => void) | null>(null);

const LazyShelf = lazy(() =>
  import('./ShelfDialog').then(({ ShelfDialog }) => ({ default: ShelfDialog })),
);
const LazyMassCard = lazy(() =>
  import('../massCard/MassCardDialog').then(({ MassCardDialog }) => ({ default: MassCardDialog })),
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
          <Suspense key={name} fallback={null}>
            <Dialog
              open={open === name}
              onClose={() => setOpen((now) => (now === name ? null : now))}
            />
          </Suspense>
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
