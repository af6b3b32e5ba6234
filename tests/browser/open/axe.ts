import { createRequire } from 'node:module';
import type { BrowserContext, Page } from '@playwright/test';
import type { AxeResults, RunOptions } from 'axe-core';
import { settled } from '../head';

const LIBRARY = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

/** Rules of WCAG 2.0 to 2.2, A and AA, and what the library calls good practice. */
const ALL: RunOptions = {
  runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
  resultTypes: ['violations'],
};

/** What changes with the colours. */
const COLOURS: RunOptions = { runOnly: { type: 'rule', values: ['color-contrast'] } };

/** Puts axe on every page of a context; to be called before the page opens. */
export async function withAxe(context: BrowserContext): Promise<void> {
  await context.addInitScript({ path: LIBRARY });
}

/** What axe finds on the page as it is, and of its colours in the dark. One line for each element. */
export async function findings(page: Page): Promise<string[]> {
  const light = await run(page, ALL);
  await theme(page, 'dark');
  const dark = await run(page, COLOURS);
  await theme(page, 'light');
  return [...light.map((line) => `light: ${line}`), ...dark.map((line) => `dark: ${line}`)];
}

async function theme(page: Page, name: 'light' | 'dark'): Promise<void> {
  await page.emulateMedia({ colorScheme: name, reducedMotion: 'reduce' });
  await settled(page);
}

function run(page: Page, options: RunOptions): Promise<string[]> {
  return page.evaluate(async (given) => {
    const axe = (window as unknown as { axe: { run(o: RunOptions): Promise<AxeResults> } }).axe;
    const { violations } = await axe.run(given);
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, any, all, none }) => {
        const why = [...any, ...all, ...none].map(({ message }) => message).join('; ');
        return `${id}: ${target.join(' ')}: ${why}`;
      }),
    );
  }, options);
}
