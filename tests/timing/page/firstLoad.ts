import type { Page } from '@playwright/test';

/** When a page that opens for the first time shows what, ms after it was asked for, and the files that it fetched. */
export interface FirstLoad {
  readonly firstPaint: number;
  /** Verdict, dial and chart show the head: the page can be used. */
  readonly usable: number;
  /** The fields of the selected part are there. */
  readonly fields: number;
  /** The stage has drawn the parts. */
  readonly stage: number;
  /** Files asked for before it could be used, and those that followed by themselves. */
  readonly first: readonly string[];
  readonly after: readonly string[];
}

interface Seen {
  usable?: number;
  fields?: number;
  stage?: number;
}

/** Looks at the page with every frame and notes when what is there. Runs in the page, before anything else. */
function watchOpening(): void {
  const seen: Seen = {};
  Object.assign(window, { opening: seen });
  const find = (selector: string) => document.querySelector(selector);
  function look(): void {
    const now = performance.now();
    if (seen.usable === undefined) {
      const line = find('[data-testid="verdict-line"]')?.textContent ?? '';
      if (line !== '' && find('.dial-mark') && find('.uplot canvas')) seen.usable = now;
    }
    if (find('[data-testid="fields"]')) seen.fields ??= now;
    if ((window.stillgrip?.scene?.drawnTriangles() ?? 0) > 500) seen.stage ??= now;
    if (seen.usable === undefined || seen.fields === undefined || seen.stage === undefined) {
      requestAnimationFrame(look);
    }
  }
  requestAnimationFrame(look);
}

/** Opens the page, which must be a new one without a past. `address` ends in a stroke. */
export async function firstLoad(page: Page, address: string): Promise<FirstLoad> {
  await page.addInitScript(watchOpening);
  await page.goto(address);
  await page.waitForFunction(() => {
    const { usable, fields, stage } = (window as unknown as { opening: Seen }).opening;
    return usable !== undefined && fields !== undefined && stage !== undefined;
  });
  await page.waitForLoadState('networkidle');
  const found = await page.evaluate(() => ({
    seen: (window as unknown as { opening: Required<Seen> }).opening,
    firstPaint: performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? Number.NaN,
    files: performance
      .getEntriesByType('resource')
      .map(({ name, startTime }) => ({ name, startTime })),
  }));
  const { usable } = found.seen;
  const paths = (early: boolean) => [
    ...new Set(
      found.files
        .filter(({ startTime }) => startTime < usable === early)
        .map(({ name }) => name.replace(/[?#].*/, '').slice(address.length)),
    ),
  ];
  return {
    ...found.seen,
    firstPaint: found.firstPaint,
    first: ['index.html', ...paths(true)],
    after: paths(false),
  };
}
