/** Waits until no dialog is open but the one that asks about a link: two on top of each other hide what each is about. */
export function untilNoDialog(): Promise<void> {
  return new Promise((resolve) => {
    if (!isBusy()) return resolve();
    const observer = new MutationObserver(() => {
      if (isBusy()) return;
      observer.disconnect();
      resolve();
    });
    observer.observe(document.body, {
      subtree: true,
      childList: true,
      attributes: true,
      attributeFilter: ['open'],
    });
  });
}

function isBusy(): boolean {
  return document.querySelector('dialog[open]:not(:has(.share-arrived))') !== null;
}
