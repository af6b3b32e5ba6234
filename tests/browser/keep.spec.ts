import type { BrowserContext, Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { drag, handleAt, openHead } from './head';

async function rename(page: Page, name: string): Promise<void> {
  await page.getByTestId('design-name').fill(name);
  await page.getByTestId('design-name').press('Enter');
}
const kept = (page: Page) =>
  expect(page.getByTestId('autosave-state')).toHaveText('Kept in this browser');
const nameOf = (page: Page) => expect(page.getByTestId('design-name'));

async function another(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto('./');
  await expect(page.getByTestId('verdict-line')).not.toBeEmpty();
  return page;
}

test('a page closed in the middle of a drag comes back with what was called kept, and asks for nothing', async ({
  page,
  context,
}) => {
  await openHead(page);
  await rename(page, 'Kept work');
  await kept(page);
  const handle = await handleAt(page, 'bolt', 'lengthMm');
  await drag(page, handle, { dx: 0, dy: -40 }, false);
  await page.waitForTimeout(1000);
  const stored = await page.getByTestId('input-lengthMm').inputValue();
  await page.close({ runBeforeUnload: false });
  const next = await another(context);
  await nameOf(next).toHaveValue('Kept work');
  await expect(next.getByTestId('input-lengthMm')).toHaveValue(stored);
  await expect(next.getByTestId('first-minute')).toBeHidden();

  // Left in the same moment as it is changed.
  await rename(next, 'In the last moment');
  await next.reload();
  await nameOf(next).toHaveValue('In the last moment');
  await kept(next);
});

test.describe('where nobody looks at the stage', () => {
  test.use({ picture: false });

  test('a second tab says that the first keeps the design, works on a copy, and can take over', async ({
    page,
    context,
  }) => {
    await openHead(page);
    await rename(page, 'Of the first');
    await kept(page);
    const second = await another(context);
    const line = second.getByTestId('keep-line');
    await expect(line).toContainText('another tab');
    await rename(second, 'Of the second');
    await expect(second.getByTestId('notice')).toContainText('as a copy');
    await expect(line).toBeHidden();
    await kept(second);

    const third = await another(context);
    await third.getByTestId('designs').click();
    const list = third.getByTestId('designs-list');
    await expect(list.getByRole('listitem')).toHaveCount(2);
    await list.getByRole('button', { name: /^Open Of the first/ }).click();
    await nameOf(third).toHaveValue('Of the first');
    await rename(page, 'Of the first, changed');
    await kept(page);
    await third.getByTestId('keep-take-over').click();
    await nameOf(third).toHaveValue('Of the first, changed');
    await expect(page.getByTestId('keep-line')).toContainText('another tab');
    await kept(third);
  });

  test('a state kept under a name comes back after undoable opening; a removed design comes back, by keys alone', async ({
    page,
  }) => {
    await openHead(page);
    await rename(page, 'Before');
    await kept(page);
    await page.getByTestId('designs').press('Enter');
    await page.getByTestId('designs-name').fill('the good one');
    await page.keyboard.press('Enter');
    const states = page.getByTestId('designs-states');
    await expect(states).toContainText('the good one');
    await page.keyboard.press('Escape');
    await expect(page.getByTestId('designs')).toBeFocused();

    await rename(page, 'After');
    await kept(page);
    await page.getByTestId('designs').press('Enter');
    await states.getByRole('button', { name: /^Go back to the good one/ }).press('Enter');
    await nameOf(page).toHaveValue('Before');
    await page.getByTestId('undo').press('Enter');
    await nameOf(page).toHaveValue('After');

    await page.getByTestId('designs').press('Enter');
    await states
      .getByRole('button', { name: /the good one, .*as a design of its own/ })
      .press('Enter');
    await nameOf(page).toHaveValue('Before');
    await kept(page);
    await page.getByTestId('designs').press('Enter');
    const list = page.getByTestId('designs-list');
    await list.getByRole('button', { name: /^Remove After/ }).press('Enter');
    await expect(list).not.toContainText('After');
    await expect(page.getByTestId('designs-aside')).toContainText('After');
    await page.getByTestId('designs-undo').press('Enter');
    await expect(list).toContainText('After');
  });

  test.describe('where the browser fails', () => {
    test('no storage at all: said under the bar, a file offered, the page works', async ({
      page,
    }) => {
      await page.addInitScript(() => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('not here', 'SecurityError');
        };
      });
      await openHead(page);
      await rename(page, 'Kept nowhere');
      const line = page.getByTestId('keep-line');
      await expect(line).toContainText('does not let this page store anything');
      await expect(line.getByTestId('keep-save-file')).toBeVisible();
      await expect(page.getByTestId('autosave-state')).toHaveText('Not kept: save a file');
      // The local note still has it.
      await page.reload();
      await nameOf(page).toHaveValue('Kept nowhere');
    });

    test('designs thrown away by the browser are missed, and a first visit is not', async ({
      page,
    }) => {
      await openHead(page);
      await expect(page.getByTestId('notice')).toBeHidden();
      await rename(page, 'Thrown away');
      await kept(page);
      await page.goto('./favicon.svg');
      await page.evaluate(
        () =>
          new Promise((resolve) => {
            indexedDB.deleteDatabase('stillgrip-designs').onsuccess = resolve;
          }),
      );
      await openHead(page);
      await expect(page.getByTestId('notice')).toContainText('thrown away');
    });
  });

  /** Puts a record over that of the design on the stage, as a newer page might have it. */
  async function writeAsNewer(page: Page): Promise<void> {
    await page.evaluate(async () => {
      const opening = indexedDB.open('stillgrip-designs');
      await new Promise((done) => {
        opening.onsuccess = done;
      });
      const writing = opening.result.transaction(['cards', 'texts'], 'readwrite');
      const keys = writing
        .objectStore('cards')
        .getAllKeys(IDBKeyRange.bound('design/', 'design/~'));
      keys.onsuccess = () => {
        for (const key of keys.result) {
          writing.objectStore('cards').put({ format: 2, key, anything: 'else' }, key);
          writing.objectStore('texts').put('of a newer page', key);
        }
      };
      await new Promise((done) => {
        writing.oncomplete = done;
      });
      opening.result.close();
    });
  }

  test('what a newer page has written is left alone: the older one goes on with a copy, and says so', async ({
    page,
  }) => {
    await openHead(page);
    await rename(page, 'Of the older page');
    await kept(page);
    await writeAsNewer(page);
    await rename(page, 'Of the older page, changed');
    await expect(page.getByTestId('notice')).toContainText('newer version');
    await kept(page);
    await page.getByTestId('designs').click();
    await expect(page.getByTestId('designs-list')).toContainText('Of the older page, changed');
    await expect(page.getByTestId('designs-room')).toContainText('left alone: 1');
    const texts = await page.evaluate(async () => {
      const opening = indexedDB.open('stillgrip-designs');
      await new Promise((done) => {
        opening.onsuccess = done;
      });
      const reading = opening.result.transaction('texts').objectStore('texts').getAll();
      await new Promise((done) => {
        reading.onsuccess = done;
      });
      opening.result.close();
      return reading.result as string[];
    });
    expect(texts).toContain('of a newer page');
  });

  test('a store that a newer page has rearranged is not written to; the work is in memory, a file is offered', async ({
    page,
    context,
  }) => {
    await openHead(page);
    await rename(page, 'Of the older page');
    await kept(page);
    const newer = await context.newPage();
    await newer.goto('./favicon.svg');
    await newer.evaluate(async () => {
      const opening = indexedDB.open('stillgrip-designs', 2);
      await new Promise((done, fail) => {
        opening.onsuccess = done;
        opening.addEventListener('error', fail);
        opening.onblocked = fail;
      });
    });
    await rename(page, 'Of the older page, changed');
    const line = page.getByTestId('keep-line');
    await expect(line).toContainText('newer version of this page has changed the storage');
    await expect(line.getByTestId('keep-save-file')).toBeVisible();
    await nameOf(page).toHaveValue('Of the older page, changed');
  });

  test('a full storage lets the oldest states without a name go, says so, and keeps the work', async ({
    page,
  }) => {
    await openHead(page);
    await rename(page, 'Before it was full');
    await kept(page);
    await page.evaluate(async () => {
      const opening = indexedDB.open('stillgrip-designs');
      await new Promise((done) => {
        opening.onsuccess = done;
      });
      const stores = ['cards', 'texts'];
      const writing = opening.result.transaction(stores, 'readwrite');
      const [cards, texts] = stores.map((name) => writing.objectStore(name));
      const known = cards.openCursor(IDBKeyRange.bound('design/', 'design/~'));
      known.onsuccess = () => {
        const card = known.result?.value;
        if (!card) throw new Error('no design is kept');
        // 40 states of 1 kB each, hours apart.
        for (let k = 1; k <= 40; k++) {
          const savedAt = card.savedAt - k * 3_600_000;
          const key = `past/${card.id}/${String(savedAt).padStart(15, '0')} ${k} old${k}`;
          const bulk = Array.from(crypto.getRandomValues(new Uint8Array(500)), (byte) =>
            byte.toString(16).padStart(2, '0'),
          ).join('');
          cards.put({ ...card, key, savedAt, stamp: `old${k}`, length: bulk.length }, key);
          texts.put(bulk, key);
        }
      };
      await new Promise((done) => {
        writing.oncomplete = done;
      });
      opening.result.close();
    });
    // As a full storage does, until something is taken away. A limit set from outside does not bind this browser at once.
    await page.evaluate(() => {
      const { put, delete: remove } = IDBObjectStore.prototype;
      let removed = 0;
      IDBObjectStore.prototype.put = function (...given) {
        if (removed < 40) throw new DOMException('no room', 'QuotaExceededError');
        return put.apply(this, given);
      };
      IDBObjectStore.prototype.delete = function (...given) {
        removed++;
        return remove.apply(this, given);
      };
    });
    await rename(page, 'Made while it was full');
    await expect(page.getByTestId('notice')).toContainText('earlier states without a name');
    await kept(page);
    await page.reload();
    await nameOf(page).toHaveValue('Made while it was full');
    await page.getByTestId('designs').click();
    const states = page.getByTestId('designs-states').getByRole('listitem');
    // The list comes a moment after its dialog.
    await expect(states).not.toHaveCount(0);
    const left = await states.count();
    expect(left).toBeLessThan(40);
    expect(left).toBeGreaterThan(10);
  });

  test('what an earlier build kept comes along, once', async ({ page }) => {
    await openHead(page);
    await rename(page, 'Of this build');
    await kept(page);
    // As the earlier build had it: one record in a database of its own.
    await page.evaluate(async () => {
      const opened = indexedDB.open('stillgrip', 1);
      opened.onupgradeneeded = () => opened.result.createObjectStore('designs');
      await new Promise((done) => {
        opened.onsuccess = done;
      });
      const writing = opened.result.transaction('designs', 'readwrite');
      writing
        .objectStore('designs')
        .put({ text: '{"name":"Of the earlier build"}', savedAt: 1 }, 'current');
      await new Promise((done) => {
        writing.oncomplete = done;
      });
      opened.result.close();
    });
    for (let visit = 0; visit < 2; visit++) {
      await page.reload();
      await nameOf(page).toHaveValue('Of this build');
      await page.getByTestId('designs').click();
      const rows = page.getByTestId('designs-list').getByText('Of the earlier build');
      await expect(rows).toHaveCount(1);
    }
    const databases = await page.evaluate(async () =>
      (await indexedDB.databases()).map(({ name }) => name),
    );
    expect(databases).toEqual(['stillgrip-designs']);
  });
});
