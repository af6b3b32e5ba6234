import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import type { Seeded } from '../../support/seeded';
import { handleAt, openDemo, settled } from '../head';

/** What was under way when the browser is killed. */
export const DEEDS = ['drag', 'save', 'import', 'open', 'history'] as const;
export type Deed = (typeof DEEDS)[number];

/** What the visitor of one page did and meant to do, noted before it is done. */
export interface Doings {
  /** How often the deed was begun. */
  begun: number;
  /** Names that the page was asked to show, in order; one that was gone back to stands there again. */
  readonly asked: string[];
  /** How long the bolt of each file that was dropped is drawn, head and all, by the design's name, mm. */
  readonly dropped: Map<string, number>;
  /** Whether files are written in place, else downloaded. */
  readonly byHandle: boolean;
  /** Whether the bolt is being drawn. */
  drawing: boolean;
  /** Names of the designs in files that were asked for, in order, and whether the page said that it was saved. */
  readonly saves: { readonly name: string; said: boolean }[];
}

type Act = (page: Page, random: Seeded, doings: Doings, tag: string) => Promise<void>;

/** Does it again and again, until the browser is no more. */
export const DO: Readonly<Record<Deed, Act>> = {
  drag: drawBolt,
  save: renameAndSave,
  import: dropDesign,
  open: openAnother,
  history: nameAndGoBack,
};

export async function rename(page: Page, doings: Doings, name: string): Promise<void> {
  doings.asked.push(name);
  const field = page.getByTestId('design-name');
  await field.fill(name);
  await field.press('Enter');
}

/** By its handle, one way, without a pause. */
async function drawBolt(page: Page, random: Seeded, doings: Doings): Promise<void> {
  await page.getByTestId('rail-part-bolt').click();
  await settled(page);
  const from = await handleAt(page, 'bolt', 'lengthMm');
  const way = random.pick([1, -1]);
  doings.drawing = true;
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  doings.begun++;
  for (let k = 1; k <= 60; k++) await page.mouse.move(from.x, from.y - way * 2 * k);
  await page.mouse.up();
  doings.drawing = false;
}

/** Over the file that it wrote before, where it has one. */
async function renameAndSave(page: Page, random: Seeded, doings: Doings, tag: string) {
  const name = `${tag} saved ${random.whole(0, 1e9)}`;
  await rename(page, doings, name);
  const notice = page.getByTestId('notice');
  if (await notice.isVisible()) await notice.getByRole('button').click();
  const save = { name, said: false };
  doings.saves.push(save);
  doings.begun++;
  await page.keyboard.press('Control+s');
  await notice.getByText(doings.byHandle ? /^Saved .*json/ : /^Handed .*json/).waitFor();
  save.said = true;
}

/** A design of its own, as it comes from a disk. */
async function dropDesign(page: Page, random: Seeded, doings: Doings, tag: string) {
  const name = `${tag} file ${random.whole(0, 1e9)}`;
  const { text, drawnMm } = demoFile(name, 18 + random.whole(0, 80) / 10);
  doings.asked.push(name);
  doings.dropped.set(name, drawnMm);
  doings.begun++;
  await page.evaluate((given) => {
    const carried = new DataTransfer();
    carried.items.add(new File([given], 'dropped.json'));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: carried, cancelable: true }));
  }, text);
  await page.waitForTimeout(random.whole(0, 400));
}

/** A demo head by another name, with a bolt of its own. */
function demoFile(name: string, lengthMm: number): { text: string; drawnMm: number } {
  const file = new URL('../../../assets/designs/4-turned-nut.json', import.meta.url);
  const design = JSON.parse(readFileSync(file, 'utf8'));
  const bolt = design.parts.find((part: { id: string }) => part.id === 'bolt');
  bolt.lengthMm = lengthMm;
  return {
    text: JSON.stringify({ ...design, name }),
    drawnMm: lengthMm + bolt.headHeightMm + bolt.extensionLengthMm,
  };
}

/** A demo head, and then one of those that are kept. */
async function openAnother(page: Page, random: Seeded, doings: Doings, tag: string) {
  const title = random.pick([
    'Long bolt, no blade',
    'Blade with ordinary bolt',
    'Blade with the right turned nut',
  ]);
  doings.begun++;
  await openDemo(page, title);
  await rename(page, doings, `${tag} demo ${random.whole(0, 1e9)}`);
  await page.getByTestId('designs').click();
  const rows = page.getByTestId('designs-list').getByRole('button', { name: /^Open / });
  await rows.last().waitFor();
  const usable = rows.and(page.locator(':enabled'));
  await usable.nth(random.whole(0, Math.min(3, (await usable.count()) - 1))).click();
  await page.waitForTimeout(random.whole(0, 300));
}

/** Keeps the state under a name, changes it, goes back to an earlier one, and takes that back. */
async function nameAndGoBack(page: Page, random: Seeded, doings: Doings, tag: string) {
  await rename(page, doings, `${tag} past ${random.whole(0, 1e9)}`);
  await page.getByTestId('designs').click();
  doings.begun++;
  await page.getByTestId('designs-name').fill(`state ${doings.asked.at(-1)}`);
  await page.keyboard.press('Enter');
  await page.getByTestId('designs-said').getByText('Kept as').waitFor();
  await page.keyboard.press('Escape');
  await rename(page, doings, `${tag} past ${random.whole(0, 1e9)}`);
  await page.getByTestId('designs').click();
  const back = page.getByTestId('designs-states').getByRole('button', { name: /^Go back/ });
  const goal = await back.first().getAttribute('aria-label');
  const [now] = doings.asked.slice(-1);
  doings.asked.push(doings.asked.findLast((name) => goal?.includes(name)) ?? now);
  await back.first().click();
  if (random.unit() < 0.5) {
    doings.asked.push(now);
    await page.getByTestId('undo').click();
  }
}
