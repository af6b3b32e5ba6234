import { type ComponentType, type ReactNode, useEffect, useState } from 'react';
import { t, withTexts } from '../messages';

/**
 * A component that is fetched when it is first shown. Where that fails (offline, or a newer build has taken the place of
 * this one) it says so in its own place, with a way to try again, and nothing else of the page is touched.
 */
export function lazyRoom<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  waiting: () => ReactNode = () => null,
): ComponentType<Props> {
  let fetched: ComponentType<Props> | null = null;

  return function LazyRoom(props: Props) {
    const [Room, setRoom] = useState(() => fetched);
    const [fault, setFault] = useState<string | null>(null);
    useEffect(() => {
      if (Room || fault !== null) return;
      let wanted = true;
      withTexts(load()).then(
        (room) => {
          fetched = room;
          if (wanted) setRoom(() => room);
        },
        (error: unknown) => {
          if (wanted) setFault(error instanceof Error ? error.message : String(error));
        },
      );
      return () => {
        wanted = false;
      };
    }, [Room, fault]);
    if (Room) return <Room {...props} />;
    if (fault === null) return waiting();
    return (
      <p className="ui-missing" role="alert">
        {t('app.notFetched', { reason: fault })}{' '}
        <button type="button" className="ui-button" onClick={() => setFault(null)}>
          {t('app.tryAgain')}
        </button>
      </p>
    );
  };
}
