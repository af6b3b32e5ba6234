import { createContext, useContext } from 'react';
import type { FileDesk } from '../panels/files/fileDesk';
import type { ReadingsDoor } from '../panels/files/readingsDoor';
import type { FirstMinute } from '../state/firstMinute';
import type { Keeper } from '../state/keep/keeper';
import type { KeepPorts } from '../state/keep/ports';
import type { OfflineWatch } from './offline/offlineWatch';

/** What the page has besides its session: the files and what keeps the work. */
export interface PageServices {
  readonly desk: FileDesk;
  /** The way of tables with readings to the bench. */
  readonly readings: ReadingsDoor;
  /** Keeps the work in the browser. */
  readonly keeper: Keeper;
  /** What the keeper needs of the browser. */
  readonly keepPorts: KeepPorts;
  /** What a newcomer may try first. */
  readonly firstMinute: FirstMinute;
  /** The page kept for use without a network, and newer versions of it. */
  readonly offline: OfflineWatch;
}

const ServicesContext = createContext<PageServices | null>(null);

export const ServicesProvider = ServicesContext.Provider;

export function useServices(): PageServices {
  const services = useContext(ServicesContext);
  if (!services) throw new Error('useServices(): there is no ServicesProvider above');
  return services;
}
