import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { settled, stageDrawn } from './head';
import { type See, WALKS } from './language/walk';
import { findings, withAxe } from './open/axe';

// axe-core is an independent reader of the rules of WCAG 2.2 that a machine can judge; the rest was judged by eye.

for (const [name, walk] of Object.entries(WALKS)) {
  test(`axe finds nothing, light and dark: ${name}`, async ({ page, context }) => {
    await withAxe(context);
    await page.goto('./');
    await stageDrawn(page);
    await expectNothing(page, (see) => walk(page, see));
  });
}

test('axe finds nothing on a phone, light and dark', async ({ page, context }) => {
  await withAxe(context);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('./');
  await expect(page.getByTestId('verdict-line')).not.toBeEmpty();
  await expectNothing(page, async (see) => {
    for (const room of ['head', 'neutralise', 'make', 'bench', 'learn']) {
      await page.getByTestId(`room-${room}`).click();
      // Folds that were opened stay open from room to room.
      const folded = page.locator('.app-fold:not([open]) > summary');
      while ((await folded.count()) > 0) await folded.first().click();
      await settled(page);
      await see(room);
    }
  });
});

async function expectNothing(page: Page, walk: (see: See) => Promise<void>): Promise<void> {
  const found: string[] = [];
  let looked = 0;
  await walk(async (screen) => {
    looked++;
    found.push(...(await findings(page)).map((line) => `${screen}, ${line}`));
  });
  expect(looked).toBeGreaterThan(0);
  expect(found).toEqual([]);
}
