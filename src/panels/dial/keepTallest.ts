import type { Session } from '../../state/session';

/**
 * Lines come and go under a moving hand, and the dial above has the room they leave: while something is dragged, what they have
 * at its beginning and what they take in it is not given back, for a dial that grows and shrinks cannot be read. Returns
 * the way to end that.
 */
export function keepTallest(root: HTMLElement, store: Session['store']): () => void {
  /** As it was last laid out, px. */
  let height = 0;
  let kept = 0;

  function keep(): void {
    if (height <= kept) return;
    kept = height;
    root.style.minHeight = `${height}px`;
  }

  const observer = new ResizeObserver(() => {
    height = root.offsetHeight;
    if (store.getState().gesture) keep();
  });
  observer.observe(root);
  const stop = store.subscribe((state, before) => {
    if (state.gesture === before.gesture) return;
    kept = 0;
    root.style.minHeight = '';
    if (state.gesture) keep();
  });
  return () => {
    observer.disconnect();
    stop();
  };
}
