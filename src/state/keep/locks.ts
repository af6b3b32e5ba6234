/** The right to write one design, which one tab has at a time. */
export interface DesignLocks {
  /** False where the browser has none: then every tab is let in. */
  readonly real: boolean;
  /**
   * Stands in line for it. `granted` once it is this tab's, `lost` if another tab takes it over after that, `waiting`
   * where it is not to be had after a moment; `granted` may follow. The call gives it back, or leaves the line.
   */
  take(id: string, told: LockTold, steal?: boolean): () => void;
}

export interface LockTold {
  readonly granted: () => void;
  readonly waiting: () => void;
  readonly lost: () => void;
}

const NAME = 'stillgrip-design-';
/** A page that is being reloaded may hold it for a moment still, ms. */
const PATIENCE = 500;

/** By the browser's own locks, which it gives back when a page is gone, however it went. */
export function browserLocks(): DesignLocks {
  return { real: hasLocks(), take };
}

function hasLocks(): boolean {
  return typeof navigator !== 'undefined' && navigator.locks !== undefined;
}

function take(id: string, told: LockTold, steal = false): () => void {
  // A browser without locks cannot tell; the revisions of the records still keep tabs from writing over each other.
  if (!hasLocks()) {
    told.granted();
    return () => undefined;
  }
  let over = false;
  let has = false;
  let release: () => void = () => undefined;
  const leave = new AbortController();
  const timer = setTimeout(told.waiting, PATIENCE);
  const options: LockOptions = steal ? { steal: true } : { signal: leave.signal };
  navigator.locks
    .request(NAME + id, options, () => {
      clearTimeout(timer);
      if (over) return;
      has = true;
      told.granted();
      return new Promise<void>((resolve) => {
        release = resolve;
      });
    })
    .catch(() => {
      clearTimeout(timer);
      if (over) return;
      if (has) told.lost();
      else told.waiting();
    });
  return () => {
    over = true;
    clearTimeout(timer);
    leave.abort();
    release();
  };
}
