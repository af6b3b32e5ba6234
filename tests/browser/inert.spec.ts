import type { Page } from '@playwright/test';
import { serializeDesign } from '../../src/design/file';
import {
  BENCH_VIEWS,
  LEARN_VIEWS,
  LOWER_ROOMS,
  MAKE_VIEWS,
  NEUTRALISE_VIEWS,
} from '../../src/state/settings';
import { hostileDesign } from '../attacks/hostileDesign';
import { PAYLOADS } from '../attacks/payloads';
import { expect, test } from './fixtures';
import { openHead, settled } from './head';
import { dropFiles } from './tour';

const ROOMS = {
  head: LOWER_ROOMS,
  neutralise: NEUTRALISE_VIEWS,
  make: MAKE_VIEWS,
  bench: BENCH_VIEWS,
  learn: LEARN_VIEWS,
};

/**
 * What markup that got in would leave in the page: elements that the page itself never has, handlers, addresses that run,
 * pictures, scripts and frames from elsewhere, and the mark that every payload sets when it runs.
 */
function brokenInto(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const NEVER =
      'iframe, frame, object, embed, video, audio, base, form[action], template, foreignObject, animate, set, use, marquee, math, body ~ *, body script, body link, body style, body meta, head noscript';
    const found = [...document.querySelectorAll(NEVER)].map((one) => one.outerHTML.slice(0, 120));
    for (const element of document.querySelectorAll('*')) {
      if (element.closest('noscript')) continue;
      for (const { name, value } of element.attributes) {
        const runs = /^on/i.test(name) || name === 'srcdoc';
        const leads = /^(?:href|xlink:href|src|action|formaction|data)$/i.test(name);
        const { protocol, origin } = leads ? new URL(value, location.href) : location;
        const isOwn = origin === location.origin || /^(?:blob|data):$/.test(protocol);
        if (runs || !isOwn) found.push(`${element.tagName} ${name}=${value.slice(0, 80)}`);
      }
    }
    if ('brokenInto' in window) found.push('a payload ran');
    return found;
  });
}

/** How many of the payloads stand as texts, letter by letter, in the elements of a selector; its fields' values count. */
function shownAsText(page: Page, selector: string): Promise<number> {
  // As escapes: half a pair of UTF-16 does not come through the door to the browser.
  return page.evaluate(
    ([within, json]) => {
      const texts = [...document.querySelectorAll(within)].map((one) =>
        one instanceof HTMLInputElement ? one.value : (one.textContent ?? ''),
      );
      const whole = texts.join('\n');
      return (JSON.parse(json) as string[]).filter((payload) => whole.includes(payload)).length;
    },
    [selector, JSON.stringify(PAYLOADS)] as const,
  );
}

test.use({ picture: false });

test('two hundred payloads in names, notes and tables are text on every screen and in print, and nothing of them runs', async ({
  page,
}) => {
  const spoken: string[] = [];
  page.on('dialog', (dialog) => {
    spoken.push(dialog.message());
    void dialog.dismiss();
  });
  await openHead(page);
  const design = hostileDesign();
  await dropFiles(page, [{ name: 'hostile.json', bytes: serializeDesign(design) }]);
  await expect(page.getByTestId('design-name')).toHaveValue(design.name);
  expect(PAYLOADS.length).toBeGreaterThanOrEqual(200);
  expect(await shownAsText(page, '.rail-row .rail-name')).toBe(PAYLOADS.length);

  const found: string[] = [];
  const look = async (screen: string) => {
    await expect(page.locator('.app-loading')).toHaveCount(0);
    await settled(page, 1);
    found.push(...(await brokenInto(page)).map((what) => `${screen}: ${what}`));
  };
  for (const [room, tabs] of Object.entries(ROOMS)) {
    await page.getByTestId(`room-${room}`).click();
    for (const tab of tabs) {
      await page.getByTestId(`lower-${tab}`).click();
      await look(`${room}, ${tab}`);
    }
  }

  await page.getByTestId('room-bench').click();
  await page.getByTestId('lower-readings').click();
  expect(await shownAsText(page, '[data-testid="bench-runs"] li')).toBeGreaterThan(50);
  await page.getByTestId('bench-runs').locator('li button').first().click();
  await settled(page);
  expect(await shownAsText(page, '[data-testid="bench-table"] td')).toBeGreaterThan(40);
  await look('a run of the bench');

  await page.getByTestId('room-neutralise').click();
  await page.getByTestId('lower-tryOuts').click();
  expect(
    await shownAsText(page, '[data-testid="try-outs-room"] :is(input, td, th, span, button)'),
  ).toBeGreaterThan(20);

  // The name of a part, its own material and its note in the fields, and the drawing of it.
  await page.getByTestId('room-make').click();
  await page.getByTestId('lower-drawing').click();
  await page.getByTestId('rail-part-bolt').click();
  const bolt = design.parts.find(({ id }) => id === 'bolt')?.name ?? '';
  await expect(page.getByTestId('drawing-sheet')).toContainText(bolt.slice(0, 8));
  await look('drawing');
  await page.getByTestId('lower-report').click();
  await page.getByTestId('report-remark').fill(PAYLOADS[0]);
  await expect(page.getByTestId('report-sheet')).toContainText(PAYLOADS[0]);
  await look('report');
  await page.emulateMedia({ media: 'print' });
  await look('printed report');
  await page.emulateMedia({ media: 'screen' });

  await expect(page.getByTestId('autosave-state')).toHaveText('Kept in this browser');
  for (const name of ['designs', 'share', 'open-mass-card', 'open-shelf']) {
    await page.getByTestId(name).first().click();
    await page.locator('dialog[open]').waitFor();
    await look(`dialog ${name}`);
    if (name === 'designs') {
      await expect(page.getByTestId('designs-list')).toContainText(design.name);
    }
    await page.keyboard.press('Escape');
  }
  expect(found).toEqual([]);
  expect(spoken).toEqual([]);
  // What looks for them does find one.
  await page.evaluate(() => document.body.append(document.createElement('template')));
  expect(await brokenInto(page)).toEqual(['<template></template>']);
});
