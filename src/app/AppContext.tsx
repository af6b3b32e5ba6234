import { createContext, useContext } from 'react';
import type { FileDesk } from '../panels/files/fileDesk';
import type { Autosave } from '../state/persistence';

/** What the page has besides its session: the files and the autosave. */
export interface PageServices {
  readonly desk: FileDesk;
  readonly autosave: Autosave;
}

const ServicesContext = createContext<PageServices | null>(null);

export const ServicesProvider = ServicesContext.Provider;

export function useServices(): PageServices {
  const services = useContext(ServicesContext);
  if (!services) throw new Error('useServices(): there is no ServicesProvider above');
  return services;
}
