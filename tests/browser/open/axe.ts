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

/**
 * What axe finds on the page as it is, or in the part of it that a selector names: by all rules in the colours that it has,
 * light or dark, and then of the colours alone in the others, which stay. One line for each element.
 */
export async function findings(page: Page, within?: string): Promise<string[]> {
  const isDark = await page.evaluate(() => matchMedia('(prefers-color-scheme: dark)').matches);
  const [first, second] = isDark ? (['dark', 'light'] as const) : (['light', 'dark'] as const);
  const all = await run(page, ALL, within);
  await theme(page, second);
  const colours = await run(page, COLOURS, within);
  return [
    ...all.map((line) => `${first}: ${line}`),
    ...colours.map((line) => `${second}: ${line}`),
  ];
}

async function theme(page: Page, name: 'light' | 'dark'): Promise<void> {
  await page.emulateMedia({ colorScheme: name, reducedMotion: 'reduce' });
  await settled(page, 1);
}

interface Axe {
  run(within: Document | string, options: RunOptions): Promise<AxeResults>;
}

/** Rejects where nothing of the page is that part. */
function run(page: Page, options: RunOptions, within?: string): Promise<string[]> {
  return page.evaluate(
    async ([given, part]) => {
      const { axe } = window as unknown as { axe: Axe };
      const { violations } = await axe.run(part ?? document, given);
      return violations.flatMap(({ id, nodes }) =>
        nodes.map(({ target, any, all, none }) => {
          const why = [...any, ...all, ...none].map(({ message }) => message).join('; ');
          return `${id}: ${target.join(' ')}: ${why}`;
        }),
      );
    },
    [options, within] as const,
  );
}
