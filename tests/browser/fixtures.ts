import { type BrowserContext, test as base, expect } from '@playwright/test';
import { withoutWebGl } from './head';

export { expect };

/**
 * The test function of every browser test. `page.goto('./')` opens the app. After each test it asserts that the
 * pages logged no error and nothing deprecated, threw none, did nothing that their content policy forbids, and asked
 * nothing of any host but the one that serves the app. What violates the policy or goes elsewhere is never allowed by `allowed`.
 * A context that a test makes by itself (browser.newContext) is not watched.
 */
export const test = base.extend<{
  allowed: RegExp | null;
  violates: boolean;
  picture: boolean;
  faults: readonly string[];
  cleanPage: void;
}>({
  /** Faults that a test brings about on purpose. */
  allowed: [null, { option: true }],
  /** Whether a test violates the policy on purpose, and looks at `faults` itself. */
  violates: [false, { option: true }],
  /** False where a test looks at no 3D picture: drawn in software it is a third of the opening of a page. */
  picture: [true, { option: true }],
  faults: async ({ context, baseURL, picture }, runTest) => {
    if (!picture) await withoutWebGl(context);
    await runTest(watchFaults(context, new URL(baseURL ?? '').origin));
  },
  cleanPage: [
    async ({ faults, allowed, violates }, runTest) => {
      await runTest();
      const left = faults.filter((fault) =>
        NEVER_ALLOWED.test(fault) ? !violates : !allowed?.test(fault),
      );
      expect(left, 'errors, violations of the policy and foreign requests of the page').toEqual([]);
    },
    { auto: true },
  ],
});

/** How the browser words a violation, and what `watchFaults` calls a request elsewhere. */
const NEVER_ALLOWED = /Content Security Policy|Trusted ?(Type|Script|HTML)|^(request|socket): /;

/** What a context does wrong from now on; the list grows. */
export function watchFaults(context: BrowserContext, origin: string): string[] {
  const faults: string[] = [];
  context.on('console', (message) => {
    const told = message.type() === 'warning' && /deprecated/i.test(message.text());
    if (told || message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  context.on('weberror', (webError) => {
    faults.push(`uncaught: ${webError.error().stack ?? webError.error().message}`);
  });
  context.on('request', (request) => {
    if (isForeign(request.url(), origin)) faults.push(`request: ${request.url()}`);
  });
  context.on('page', (page) => {
    page.on('websocket', (socket) => faults.push(`socket: ${socket.url()}`));
  });
  return faults;
}

function isForeign(address: string, origin: string): boolean {
  const url = new URL(address);
  return url.protocol !== 'data:' && url.protocol !== 'blob:' && url.origin !== origin;
}
