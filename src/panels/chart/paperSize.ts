/** As wide as A4 and Letter leave it beside the set pitches, CSS pixels. */
const PAPER_WIDTH = 500;
/** Paper has room for more than a low window. */
const PAPER_HEIGHT = 260;

/**
 * Gives the plot a size of its own while the page is printed: paper lays it out anew without telling, and the drawn curve
 * and the marks over it would no longer fit together. Returns the way to stop.
 */
export function keepSizeOnPaper(host: HTMLElement, resize: () => void): () => void {
  function onPaper(): void {
    const { clientWidth, clientHeight } = host;
    host.style.width = `${Math.min(clientWidth, PAPER_WIDTH)}px`;
    host.style.height = `${Math.max(clientHeight, PAPER_HEIGHT)}px`;
    resize();
  }
  function onScreen(): void {
    host.style.width = '';
    host.style.height = '';
    resize();
  }
  window.addEventListener('beforeprint', onPaper);
  window.addEventListener('afterprint', onScreen);
  return () => {
    window.removeEventListener('beforeprint', onPaper);
    window.removeEventListener('afterprint', onScreen);
  };
}
