/** How long a page that is not shown waits, ms: it paints nothing, but may be looked at soon. */
const UNSEEN = 500;

/** Resolves when the page has been painted with what React has put into it by now: what is fetched then delays nothing. */
export function afterPaint(): Promise<void> {
  return new Promise((resolve) => {
    const late = setTimeout(resolve, UNSEEN);
    // The first comes before the picture, the second after it.
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        clearTimeout(late);
        resolve();
      }),
    );
  });
}
