import { type BrowserContext, expect, type Page } from '@playwright/test';

/** What the page shows of the head, read through the page itself and the stage's read-only door. */
export interface Box {
  readonly min: readonly number[];
  readonly max: readonly number[];
  readonly centre: readonly number[];
}

interface Door {
  readonly scene?: {
    worldPosition(part: string): Box | null;
    handleScreenPosition(part: string, parameter: string): { x: number; y: number } | null;
    handles(): readonly string[];
    screenPosition(point: readonly [number, number, number]): { x: number; y: number } | null;
    sliderBall(): readonly [number, number, number] | null;
    pullArrows(): number;
    turned(): number;
    drawnTriangles(): number;
    drawnFrames(): number;
  };
}

declare global {
  interface Window {
    readonly stillgrip?: Door;
  }
}

/**
 * Makes the page save by download and open by a plain file input: a test cannot drive the picker of the real file
 * system. To be called before the page opens.
 */
export async function withoutFilePickers(page: Page): Promise<void> {
  await page.addInitScript(() => {
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker']) {
      Reflect.deleteProperty(window, name);
      Reflect.deleteProperty(Window.prototype, name);
    }
  });
}

/** Opens the page and waits until the stage has drawn its parts, or says that it cannot. */
export async function openHead(page: Page): Promise<void> {
  await page.goto('./');
  await stageDrawn(page);
}

export async function stageDrawn(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    const scene = window.stillgrip?.scene;
    if (scene) return scene.drawnTriangles() > 500 && scene.handles().length > 0;
    return document.querySelector('.stage [role="note"]') && document.querySelector('.fields');
  });
  await settled(page);
}

/** Waits for so many pictures: what was written has been shown. */
export async function settled(page: Page, pictures = 3): Promise<void> {
  await page.evaluate(
    (count) =>
      new Promise<void>((resolve) => {
        let left = count;
        const next = () => (left-- > 0 ? requestAnimationFrame(next) : resolve());
        next();
      }),
    pictures,
  );
}

export async function boxOf(page: Page, part: string): Promise<Box> {
  const box = await page.evaluate((id) => window.stillgrip?.scene?.worldPosition(id) ?? null, part);
  if (!box) throw new Error(`boxOf(): part is not drawn: ${part}`);
  return box;
}

export async function handleAt(page: Page, part: string, parameter: string) {
  const spot = await page.evaluate(
    ([id, name]) => window.stillgrip?.scene?.handleScreenPosition(id, name) ?? null,
    [part, parameter] as const,
  );
  if (!spot) throw new Error(`handleAt(): handle is not shown: ${part}/${parameter}`);
  return spot;
}

/** Force at the set pitches as the table beside the chart shows it, from -20 to +20 degrees. */
export async function setPitchForces(page: Page): Promise<number[]> {
  const texts = await page
    .getByTestId('set-pitch-table')
    .locator('.chart-set-value')
    .allInnerTexts();
  return texts.map((text) => Number(text.replace('\u2212', '-').replace('+', '').trim()));
}

export function verdict(page: Page): Promise<string> {
  return page.getByTestId('verdict-line').innerText();
}

/** The value of one field of the selected part, as typed there. */
export async function fieldValue(page: Page, name: string): Promise<number> {
  const text = await page.getByTestId(`input-${name}`).inputValue();
  return Number(text.replace('\u2212', '-'));
}

/** Drags from a spot by (dx, dy) client pixels in small steps; `release` false leaves the button down. */
export async function drag(
  page: Page,
  from: { readonly x: number; readonly y: number },
  by: { readonly dx: number; readonly dy: number },
  release = true,
): Promise<void> {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let k = 1; k <= 12; k++) {
    await page.mouse.move(from.x + (by.dx * k) / 12, from.y + (by.dy * k) / 12);
  }
  await settled(page);
  if (release) await page.mouse.up();
  await settled(page);
}

/** The chart's own picture, to tell whether the curve was redrawn. */
export function chartPicture(page: Page): Promise<string> {
  return page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('.uplot canvas');
    return canvas ? canvas.toDataURL() : '';
  });
}

export async function openDemo(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: 'Demo heads' }).click();
  await page.getByRole('menuitem', { name: title }).click();
  await settled(page);
  await expect(page.getByTestId('verdict-line')).not.toBeEmpty();
}

/** A browser that draws no 3D picture. To be called before the page opens. */
export async function withoutWebGl(place: Page | BrowserContext): Promise<void> {
  await place.addInitScript(() => {
    const own = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (
      this: HTMLCanvasElement,
      kind: string,
      ...rest: unknown[]
    ) {
      return /webgl/.test(kind) ? null : Reflect.apply(own, this, [kind, ...rest]);
    } as typeof own;
  });
}
