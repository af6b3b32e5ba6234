import type { Page } from '@playwright/test';
import { noteTimes } from './figures';
import { expect, test } from './fixtures';
import { openHead, setPitchForces, settled, verdict } from './head';

/** Losses in a row of each scene; `npm run losses` asks for 100. */
const LOSSES = Number(process.env.STILLGRIP_LOSSES ?? 2);

// Drawn in software: fewer pixels, and the same page.
test.use({ viewport: { width: 1300, height: 760 } });

/** Takes a graphics context away and, as a driver does, gives it back: ms until the scene has drawn again. */
async function loseAndRegain(page: Page, canvas: string): Promise<number> {
  return page.evaluate(async (selector) => {
    const found = document.querySelector<HTMLCanvasElement>(selector);
    const context = found?.getContext('webgl2');
    const extension = context?.getExtension('WEBGL_lose_context');
    if (!found || !context || !extension) throw new Error(`there is no scene: ${selector}`);
    const heard = (kind: string) =>
      new Promise((done) => found.addEventListener(kind, done, { once: true }));
    const lost = heard('webglcontextlost');
    extension.loseContext();
    await lost;
    // The browser gives it back only after the event has been heard.
    await new Promise((done) => setTimeout(done, 0));
    const drawn = { calls: 0 };
    const draw = context.drawElements.bind(context);
    context.drawElements = (...given) => {
      drawn.calls++;
      draw(...given);
    };
    const from = performance.now();
    const restored = heard('webglcontextrestored');
    extension.restoreContext();
    await restored;
    while (drawn.calls === 0) {
      if (performance.now() - from > 5000) return Number.POSITIVE_INFINITY;
      await new Promise((done) => requestAnimationFrame(done));
    }
    Reflect.deleteProperty(context, 'drawElements');
    return performance.now() - from;
  }, canvas);
}

/** Waits until two pictures in a row are the same. */
async function stands(page: Page, scene: string): Promise<void> {
  let last: Uint8Array = new Uint8Array();
  await expect
    .poll(async () => {
      const before = last;
      last = await page.locator(scene).screenshot();
      return Buffer.from(last).equals(before);
    })
    .toBe(true);
}

test.describe('a lost graphics context', () => {
  test.use({ allowed: /Context Lost/ });

  test('comes back within a second, time after time, with the same stage and numbers', async ({
    page,
  }) => {
    test.setTimeout(120_000 + 8000 * LOSSES);
    await openHead(page);
    await page.getByTestId('room-learn').click();
    await page.getByTestId('lower-racket').click();
    await page.getByTestId('racket-time').fill('3');
    await settled(page);
    const shown = async () => ({
      verdict: await verdict(page),
      flips: await page.getByTestId('racket-flips').innerText(),
      table: await page.getByTestId('racket-table').innerText(),
    });
    const before = await shown();
    for (const scene of ['.stage-canvas canvas', '.racket-picture canvas']) {
      const canvas = page.locator(scene);
      // The stage gives up its room to the racket for a moment: what is compared stands still.
      await stands(page, scene);
      const picture = await canvas.screenshot();
      const times: number[] = [];
      for (let k = 0; k < LOSSES; k++) {
        times.push(await loseAndRegain(page, scene));
        expect(times[k], `${scene}, loss ${k + 1}`).toBeLessThan(1000);
        await expect(page.locator('.stage-note')).toHaveCount(0);
      }
      await stands(page, scene);
      expect(Buffer.compare(await canvas.screenshot(), picture), `picture of ${scene}`).toBe(0);
      noteTimes(scene, times, LOSSES > 2);
    }
    expect(await shown()).toEqual(before);
    await page.getByTestId('lower-pitch').click();
    expect(await setPitchForces(page)).toHaveLength(5);
  });

  test('that does not come back is said where the picture was, and the rest goes on', async ({
    page,
  }) => {
    await openHead(page);
    await page.getByTestId('room-learn').click();
    await page.getByTestId('lower-racket').click();
    for (const scene of ['.stage-canvas', '.racket-picture']) {
      await stands(page, `${scene} canvas`);
      await page.locator(`${scene} canvas`).evaluate((canvas: HTMLCanvasElement) => {
        canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context')?.loseContext();
      });
    }
    await expect(page.locator('.stage-note')).toHaveCount(2);
    for (const said of await page.getByRole('note').allInnerTexts()) {
      expect(said).toContain('waiting for it');
    }
    const before = await verdict(page);
    await page.getByTestId('racket-time').fill('8');
    await expect(page.getByTestId('racket-flips')).not.toBeEmpty();
    await page.getByTestId('input-extensionLengthMm').fill('9');
    await page.getByTestId('input-extensionLengthMm').press('Enter');
    await expect(page.getByTestId('verdict-line')).not.toHaveText(before);
  });
});
