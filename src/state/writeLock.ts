const NAME = 'stillgrip-autosave';
/** A page that is being reloaded may hold the lock for a moment still. */
const PATIENCE = 1500;

/**
 * Tells whether this tab alone may write what all tabs share: true once it may, and then until it is closed; false
 * when another tab still has that right after a moment. The request stays in line, so true may follow a false when
 * the other tab closes. A browser without locks cannot tell: true.
 */
export function takeWriteLock(report: (granted: boolean) => void): void {
  if (typeof navigator === 'undefined' || !navigator.locks) return report(true);
  const timer = setTimeout(() => report(false), PATIENCE);
  navigator.locks
    .request(NAME, () => {
      clearTimeout(timer);
      report(true);
      // Held as long as the page lives.
      return new Promise<void>(() => {});
    })
    .catch(() => {
      clearTimeout(timer);
      report(false);
    });
}
