import { BlockedError } from '../database';

/** Why the browser does not keep what it should. */
export type Trouble = 'full' | 'refused' | 'blocked' | 'newerPage' | 'slow' | 'broken';

/** A store that does not answer in time. */
export class SilentError extends Error {}

/** By the names that the IndexedDB standard gives to errors. */
export function troubleOf(error: unknown): Trouble {
  if (error instanceof BlockedError) return 'blocked';
  if (error instanceof SilentError) return 'slow';
  const name = (error as { readonly name?: unknown } | null)?.name;
  if (name === 'QuotaExceededError') return 'full';
  if (name === 'VersionError') return 'newerPage';
  if (name === 'SecurityError' || name === 'InvalidStateError' || name === 'NotAllowedError')
    return 'refused';
  return 'broken';
}
