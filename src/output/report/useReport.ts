import { useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { useSession } from '../../ui/session';
import type { Choice } from './choice';
import { type ReportShown, type ReportWatch, watchReport } from './watchReport';

/** The report by what is chosen; the room is drawn anew only when there is another one. */
export function useReport(choice: Choice) {
  const session = useSession();
  const [shown, setShown] = useState<ReportShown>({ report: null, fault: null });
  const chosen = useRef(choice);
  const watch = useRef<ReportWatch | null>(null);
  useEffect(() => {
    const own = watchReport(session, () => chosen.current, setShown);
    watch.current = own;
    // Printed at once by a key, it is as the page is now.
    const print = () => flushSync(own.now);
    window.addEventListener('beforeprint', print);
    return () => {
      window.removeEventListener('beforeprint', print);
      own.stop();
    };
  }, [session]);
  useEffect(() => {
    if (chosen.current === choice) return;
    chosen.current = choice;
    watch.current?.again();
  }, [choice]);
  return { ...shown, retake: () => watch.current?.retake() };
}
