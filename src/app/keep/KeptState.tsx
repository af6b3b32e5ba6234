import { useEffect, useRef } from 'react';
import { t } from '../../messages';
import { useServices } from '../AppContext';

const KEPT = {
  starting: 'app.footStarting',
  kept: 'app.footSaving',
  keeping: 'keep.footKeeping',
  otherTab: 'keep.footOtherTab',
  failed: 'app.footFailed',
} as const;

/** Whether the work is being kept. Written straight into the page: while something is dragged it turns with every saving. */
export function KeptState() {
  const { keeper } = useServices();
  const place = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    function write(): void {
      const { state } = keeper.status.getState();
      if (!place.current) return;
      place.current.dataset.state = state;
      place.current.textContent = t(KEPT[state]);
    }
    write();
    return keeper.status.subscribe(write);
  });
  return <span className="app-foot-state" data-testid="autosave-state" ref={place} />;
}
