const NAME = 'stillgrip-autosave';
/** A page that is being reloaded may hold the lock for a moment still. */
const PATIENCE = 1500;

/**
 * True once this tab alone may write what all tabs share, and then until it is closed; false where another tab has
 * that right. A browser without locks cannot tell: true.
 */
export function takeWriteLock(): Promise<boolean> {
  if (typeof navigator === 'undefined' || !navigator.locks) return Promise.resolve(true);
  return new Promise((resolve) => {
    const patience = new AbortController();
    const timer = setTimeout(() => patience.abort(), PATIENCE);
    navigator.locks
      .request(NAME, { signal: patience.signal }, () => {
        clearTimeout(timer);
        resolve(true);
        // Held as long as the page lives.
        return new Promise<void>(() => {});
      })
      .catch(() => resolve(false));
  });
}
