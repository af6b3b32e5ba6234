import { readFile } from 'node:fs/promises';
import type { Download, Locator, Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { boxOf, fieldValue, openHead, settled, verdict, withoutFilePickers } from './head';
import { listenToVerdict, spokenControls, unspoken } from './open/spoken';
import { arrowTo, tabTo } from './open/tabTo';

/** How one step of the job is done: by keys alone, or by single clicks alone. */
interface Hand {
  press(target: Locator): Promise<void>;
  chooseBolt(): Promise<void>;
  takeScrew(): Promise<void>;
  lengthenHead(): Promise<void>;
  save(): Promise<void>;
}

test('the whole job by keyboard alone, every control reached by Tab, and read out with units', async ({
  page,
}) => {
  await doTheJob(page, byKeys(page));
});

test('the whole job by single clicks, without a drag and without a key', async ({ page }) => {
  await doTheJob(page, byClicks(page));
});

/** Demo, catalogue screw, longer head, search, try out, adopt, drawing, file. */
async function doTheJob(page: Page, hand: Hand): Promise<void> {
  await withoutFilePickers(page);
  await openHead(page);
  await hand.press(page.getByTestId('gallery'));
  await hand.press(page.getByTestId('demo-3-ordinary-bolt'));
  await settled(page);
  await expect(page.getByTestId('design-name')).toHaveValue('Dunlin 260, ordinary bolt');

  await hand.chooseBolt();
  await hand.takeScrew();
  await expect(page.getByTestId('catalogue-name')).toContainText('ISO 4762 M3');
  const plain = await boxOf(page, 'bolt');
  await hand.lengthenHead();
  await settled(page);
  expect(await fieldValue(page, 'extensionLengthMm')).toBe(1);
  // A millimetre of head in the drawn bolt, seen by the stage itself.
  expect((await boxOf(page, 'bolt')).max[2] - plain.max[2]).toBeCloseTo(1, 3);
  expect(unspoken(await spokenControls(page))).toEqual([]);

  const before = await verdict(page);
  expect(before).toMatch(/^Centres .*°\. .*\sN to hold ±20°\./);
  await hand.press(page.getByTestId('room-neutralise'));
  await hand.press(page.getByTestId('goal-find'));
  const answer = page.getByTestId('answer-1');
  await hand.press(answer.getByRole('button', { name: 'Try out' }));
  await expect(page.getByTestId('verdict-line')).not.toHaveText(before);
  const tried = await verdict(page);
  await hand.press(answer.getByRole('button', { name: 'Adopt' }));
  await expect(page.getByTestId('answers-said')).toContainText(/is the head now\.$/);
  // What was pressed keeps the focus.
  await expect(answer.getByRole('button', { name: 'is the head' })).toBeFocused();
  expect(await verdict(page)).toBe(tried);
  expect(unspoken(await spokenControls(page))).toEqual([]);

  await hand.press(page.getByTestId('room-make'));
  const drawing = page.waitForEvent('download');
  await hand.press(page.getByTestId('drawing-svg'));
  const sheet = await textOf(await drawing);
  expect(sheet).toContain('<svg');
  expect(sheet).toContain('mm');
  expect(unspoken(await spokenControls(page))).toEqual([]);

  const file = page.waitForEvent('download');
  await hand.save();
  // The file has what was done: the screw of the standard and the one try-out that is the head.
  const design = await textOf(await file);
  const bolt = JSON.parse(design).parts.find((part: { id: string }) => part.id === 'bolt');
  expect(JSON.stringify(bolt)).toContain('4762');
  expect(design.match(/"adopted": ?true/g)).toHaveLength(1);
  expect(await verdict(page)).toBe(tried);
}

async function textOf(download: Download): Promise<string> {
  return readFile(await download.path(), 'utf8');
}

function byKeys(page: Page): Hand {
  const { keyboard } = page;
  return {
    async press(target) {
      await target.waitFor();
      // An item of an open menu is come to by arrows.
      if ((await target.getAttribute('role')) === 'menuitem') await downTo(target);
      else await tabTo(target);
      await keyboard.press('Enter');
    },
    async chooseBolt() {
      // Tab goes on from a menu that was opened, and leaves none standing open.
      await tabTo(page.getByTestId('add-part'));
      await keyboard.press('Enter');
      await expect(page.getByTestId('add-grip')).toBeFocused();
      await keyboard.press('Tab');
      await expect(page.getByTestId('add-grip')).toBeHidden();
      await expect(page.getByTestId('open-shelf')).toBeFocused();
      await tabTo(page.locator('.rail-list [tabindex="0"]'));
      await downTo(page.getByTestId('rail-part-bolt'));
    },
    async takeScrew() {
      await tabTo(page.getByTestId('catalogue-choose'));
      await keyboard.press('Enter');
      await expect(page.getByRole('combobox', { name: /Search by standard/ })).toBeFocused();
      await keyboard.type('4762 M3 22');
      await expect(page.getByTestId('catalogue-take')).toContainText('ISO 4762 M3');
      await keyboard.press('Enter');
    },
    async lengthenHead() {
      const handle = page.locator('[data-handle="bolt/extensionLengthMm"]');
      await tabTo(handle, 'Shift+Tab');
      await page.waitForTimeout(1000);
      const heard = await listenToVerdict(page);
      // A held key: ten steps of 0.1 mm without letting go.
      for (let k = 0; k < 10; k++) await keyboard.down('ArrowUp');
      // Longer than the quiet time after which the verdict is read out.
      await page.waitForTimeout(1000);
      expect(await heard(), 'read out while the key is held').toEqual([]);
      await keyboard.up('ArrowUp');
      await expect.poll(async () => (await heard()).length).toBe(1);
      expect((await heard())[0]).toContain(await verdict(page));
      await expect(handle).toHaveAttribute('aria-valuetext', '1\u00a0mm');
    },
    save: () => keyboard.press('Control+s'),
  };
}

function byClicks(page: Page): Hand {
  return {
    press: (target) => target.click(),
    chooseBolt: () => page.getByTestId('rail-part-bolt').click(),
    async takeScrew() {
      await page.getByTestId('catalogue-choose').click();
      await page.getByRole('option', { name: /^M3 ISO 4762/ }).click();
      await page.getByTestId('catalogue-take').click();
    },
    async lengthenHead() {
      const more = page.getByRole('button', { name: 'More: Head extension' });
      for (let k = 0; k < 10; k++) await more.click();
    },
    save: () => page.getByRole('button', { name: /^Save the design as a file/ }).click(),
  };
}

/** From the first of the list or menu that has the focus. */
async function downTo(target: Locator): Promise<void> {
  await target.page().keyboard.press('Home');
  await arrowTo(target, 'ArrowDown');
}
