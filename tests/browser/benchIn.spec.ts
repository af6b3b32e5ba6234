import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openHead } from './head';

// None of these looks at the stage.
test.use({ picture: false });

/** Drops a file of text where it may be dropped: anywhere on the page. */
async function drop(page: Page, name: string, text: string): Promise<void> {
  await page.evaluate(
    ([file, content]) => {
      const carried = new DataTransfer();
      carried.items.add(new File([content], file, { type: 'text/plain' }));
      for (const type of ['dragenter', 'dragover', 'drop'])
        document.body.dispatchEvent(
          new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer: carried }),
        );
    },
    [name, text] as const,
  );
}

/** Time and force alone: three levels up and down, 3 s each, 20 samples a second. */
function forceLog(): string {
  const levels = [4, 0, -4, -4.6, -0.6, 3.4];
  const rows = levels.flatMap((level, step) =>
    Array.from({ length: 60 }, (_, k) => `${((step * 60 + k) / 20).toFixed(2)},${level}`),
  );
  return `time [s],force [N]\n${rows.join('\n')}\n`;
}

test('a log of force dropped in another room leads to the bench, where its steps get the plan\u2019s pitches', async ({
  page,
}) => {
  await openHead(page);
  await page.getByTestId('room-bench').click();
  await page.getByTestId('lower-benchPlan').click();
  const pitches = page.getByTestId('bench-plan-pitches');
  await pitches.fill('-10 0 200');
  await pitches.press('Enter');
  await expect(page.getByTestId('bench-plan-fields')).toContainText('may jam');
  await pitches.fill('-10 0 10');
  await pitches.press('Enter');
  await expect(page.getByTestId('bench-expected').locator('tbody tr')).toHaveCount(3);
  await page.getByTestId('room-head').click();
  await drop(page, 'gauge.log', forceLog());
  await expect(page.getByTestId('bench-preview')).toBeVisible();
  await expect(page.locator('.files-drop')).toHaveCount(0);
  await page.getByTestId('bench-take').click();
  await expect(page.getByTestId('bench-step-table').locator('tbody tr')).toHaveCount(6);
  await page.getByTestId('bench-steps-take').click();
  await expect(page.getByTestId('bench-steps')).toContainText('for step 1, 2, 3, 4, 5, 6');
  await page.getByTestId('bench-steps-plan').click();
  await expect(page.getByTestId('bench-series').locator('text', { hasText: '+10' })).toHaveCount(2);
  await page.getByTestId('bench-steps-take').click();
  const rows = page.getByTestId('bench-table').locator('tbody tr');
  await expect(rows).toHaveCount(6);
  await expect(rows.nth(3)).toContainText('10.00\u00b0');
  await expect(rows.nth(3)).toContainText('\u22124.60 N compression');
  await expect(page.getByTestId('bench-needs')).toContainText('How fast the rotor turned');
});

test('a table of a blade section dropped on the page still goes to the air', async ({ page }) => {
  await openHead(page);
  await drop(page, 'section.csv', 'alpha,cl,cd,cm\n-10,-1,0.02,0\n0,0,0.01,0\n10,1,0.02,0\n');
  await expect(page.getByText('section.csv', { exact: false })).toBeVisible();
  await expect(page.getByTestId('bench-preview')).toHaveCount(0);
});

test('rows typed by hand outlive another tab and a reload, and can be put right as a run', async ({
  page,
}) => {
  await openHead(page);
  await page.getByTestId('room-bench').click();
  await page.getByTestId('lower-readings').click();
  await page.getByTestId('bench-type').click();
  const grid = page.getByTestId('bench-grid');
  await grid.getByTestId('bench-meta-fitted').fill('With bolt');
  await grid.getByTestId('bench-speed').fill('9000');
  await grid.getByLabel('Row 1, pitch').fill('10');
  await grid.getByLabel('Row 1, force').fill('1,25 C');
  await grid.getByLabel('Row 1, force').press('Enter');
  await expect(grid.getByLabel('Row 2, force')).toBeFocused();
  await page.reload();
  await page.getByTestId('room-bench').click();
  await page.getByTestId('bench-type').click();
  await expect(grid.getByLabel('Row 1, force')).toHaveValue('1,25 C');
  await page.getByTestId('bench-grid-take').click();
  await expect(page.getByTestId('bench-runs')).toContainText('With bolt, 9000 rpm');
  const row = page.getByTestId('bench-table').locator('tbody tr');
  await expect(row).toContainText('\u22121.25 N compression');
  await page.getByTestId('bench-edit-rows').click();
  await grid.getByLabel('Row 1, force').fill('-1.5');
  await page.getByTestId('bench-grid-take').click();
  await expect(row).toContainText('\u22121.50 N compression');
});

test('every sheet that is printed fits a page of A4 and of Letter, the paper white in a dark page', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openHead(page);
  await page.getByTestId('room-bench').click();
  await page.getByTestId('lower-benchPlan').click();
  await page.evaluate(() => {
    window.print = () => {
      const sheets = document.querySelector('[data-testid="bench-sheets"]');
      // They leave the page when printing is over: a copy stays for the test.
      if (sheets) setTimeout((copy) => document.body.append(copy), 0, sheets.cloneNode(true));
    };
  });
  await page.getByTestId('bench-print').click();
  await expect(page.getByTestId('bench-sheets')).toHaveCount(1);
  const sheets = 1 + (await page.getByTestId('bench-sheet').count());
  for (const format of ['A4', 'Letter']) {
    const pdf = (await page.pdf({ format })).toString('latin1');
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(sheets);
  }
  await page.emulateMedia({ media: 'print' });
  const colours = await page
    .getByTestId('bench-sheet')
    .first()
    .locator('td')
    .first()
    .evaluate((cell) => {
      return [getComputedStyle(cell).color, getComputedStyle(document.body).backgroundColor];
    });
  expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
});
