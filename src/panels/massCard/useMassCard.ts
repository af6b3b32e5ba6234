import { useEffect, useRef, useState } from 'react';
import { type MassCard, massCard } from '../../design/massCard';
import { createMoments } from '../../engine/mass/moments';
import type { Session } from '../../state/session';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';

/** Shortest time between two pictures of the card, ms. */
const PACE = 100;

/** The card of the open head, made anew at most ten times a second while the head changes. */
export function useMassCard(): MassCard {
  const session = useSession();
  const [card, setCard] = useState(() => cardNow(session));
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useLive((_, changes) => {
    if (!changes.design) return;
    timer.current ??= setTimeout(() => {
      timer.current = undefined;
      setCard(cardNow(session));
    }, PACE);
  });
  useEffect(() => {
    return () => {
      clearTimeout(timer.current);
      timer.current = undefined;
    };
  }, []);
  return card;
}

function cardNow({ store, live }: Session): MassCard {
  const { model } = live;
  const { weighedTotal } = store.getState().design;
  return massCard(model.parts, model.totals(createMoments()), weighedTotal);
}
