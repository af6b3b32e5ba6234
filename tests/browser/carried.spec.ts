import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openHead } from './head';
import { dropFiles } from './tour';

/** What stands in for the pickers of the file system, which no test can drive: real files, in the page's own folder. */
interface Pickers {
  /** The file that the next opening gives. */
  pick: string;
  /** Names that saving has proposed. */
  readonly asked: string[];
}

declare global {
  interface Window {
    pickers?: Pickers;
  }
}

/** To be called before the page opens. Handles are the browser's own (File System, WHATWG: the origin private file system). */
async function withOwnFolder(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const pickers: Pickers = { pick: '', asked: [] };
    const folder = () => navigator.storage.getDirectory();
    Object.assign(window, {
      pickers,
      showOpenFilePicker: async () => [await (await folder()).getFileHandle(pickers.pick)],
      showSaveFilePicker: async ({ suggestedName }: { suggestedName: string }) => {
        pickers.asked.push(suggestedName);
        return (await folder()).getFileHandle(suggestedName, { create: true });
      },
    });
  });
}

/** Bytes of a file of that folder; none while it is not there, as for a moment when what was written takes its place. */
async function bytesOf(page: Page, name: string): Promise<Buffer> {
  const base64 = await page.evaluate(async (file) => {
    const folder = await navigator.storage.getDirectory();
    const handle = await folder.getFileHandle(file).catch(() => null);
    if (!handle) return '';
    const bytes = new Uint8Array(await (await handle.getFile()).arrayBuffer());
    let letters = '';
    for (const byte of bytes) letters += String.fromCharCode(byte);
    return btoa(letters);
  }, name);
  return Buffer.from(base64, 'base64');
}

const asked = (page: Page) => page.evaluate(() => window.pickers?.asked ?? []);

/** Presses what saves, and waits for the name under which it was written. */
async function savedAs(page: Page, press: () => Promise<void>): Promise<string> {
  const before = (await asked(page)).length;
  await press();
  await expect.poll(async () => (await asked(page)).length).toBe(before + 1);
  const name = (await asked(page))[before];
  await expect.poll(async () => (await bytesOf(page, name)).length).toBeGreaterThan(400);
  return name;
}

async function rename(page: Page, name: string): Promise<void> {
  await page.getByTestId('design-name').fill(name);
  await page.getByTestId('design-name').press('Enter');
}

async function open(page: Page, file: string): Promise<void> {
  await page.evaluate((pick) => {
    if (window.pickers) window.pickers.pick = pick;
  }, file);
  await page.getByRole('button', { name: 'Open' }).click();
}

test('a design comes back out of its SVG, PNG and 3MF, opened or dropped, and saving never writes over them', async ({
  page,
}) => {
  await withOwnFolder(page);
  await openHead(page);
  await rename(page, 'Rides along');
  await page.getByTestId('room-make').click();
  await page.getByTestId('lower-files').click();
  await page.getByTestId('files-which').selectOption('dial');
  await page.getByTestId('files-carries').check();
  const files: string[] = [];
  for (const format of ['svg', 'png']) {
    await page.getByTestId('files-picture-format').selectOption(format);
    files.push(await savedAs(page, () => page.getByTestId('files-save-picture').click()));
  }
  await page.getByTestId('files-format').selectOption('threeMf');
  files.push(await savedAs(page, () => page.getByTestId('files-save-solid').click()));
  expect(files.map((name) => name.split('.').at(-1))).toEqual(['svg', 'png', '3mf']);
  const bytes = await Promise.all(files.map((name) => bytesOf(page, name)));

  // A design with a file of its own: saving it asks once, and writes there from then on.
  const save = () => page.keyboard.press('Control+s');
  await rename(page, 'At home');
  expect(await savedAs(page, save)).toBe('at-home.json');
  await page.getByTestId('files-carries').focus();
  const home = () => bytesOf(page, 'at-home.json');
  await rename(page, 'At home again');
  const times = (await asked(page)).length;
  await save();
  // For a moment the file is not there: what was written takes its place.
  await expect.poll(async () => (await home()).toString()).toContain('"At home again"');
  expect((await asked(page)).length).toBe(times);

  const name = page.getByTestId('design-name');
  const kept = await home();
  for (const [k, file] of files.entries()) {
    for (const way of ['opened', 'dropped']) {
      if (way === 'opened') await open(page, file);
      else await dropFiles(page, [{ name: file, bytes: bytes[k] }]);
      await expect(name, `${file}, ${way}`).toHaveValue('Rides along');
      const mine = `Out of ${k} ${way}`;
      await rename(page, mine);
      // Neither into the picture nor into the file of the design before.
      const saved = await savedAs(page, save);
      expect(saved).toBe(`out-of-${k}-${way}.json`);
      expect(JSON.parse((await bytesOf(page, saved)).toString()).name).toBe(mine);
      expect((await bytesOf(page, file)).equals(bytes[k]), `${file}, ${way}`).toBe(true);
      expect((await home()).equals(kept)).toBe(true);
    }
  }

  // A picture without a design is refused in words, and the open one stays.
  const plain = readFileSync(new URL('../../dist/favicon.svg', import.meta.url));
  await dropFiles(page, [{ name: 'plain.svg', bytes: plain }]);
  await expect(page.getByTestId('notice')).toContainText('plain.svg');
  await expect(name).toHaveValue('Out of 2 dropped');
});
