import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import { openHead } from './head';

// None of these looks at the stage.
test.use({ picture: false });

// Drawn in software: fewer pixels, and the same page.
test.use({ viewport: { width: 1300, height: 640 } });

/** Sheets leave the page when printing is over: a copy of each stays for the test in place of the paper. */
async function keepSheets(page: Page): Promise<void> {
  await page.evaluate(() => {
    window.print = () => {
      const sheet = document.querySelector('[data-testid="lesson-sheet"]:not([data-kept])');
      if (!sheet) throw new Error('keepSheets(): there was no sheet to print');
      for (const before of document.querySelectorAll('[data-kept]')) before.remove();
      const copy = sheet.cloneNode(true) as HTMLElement;
      copy.dataset.kept = '';
      setTimeout(() => document.body.append(copy));
    };
  });
}

/** Sheets of A4 that the browser would print, with margins as a printer leaves them. */
async function sheetsOfPaper(page: Page): Promise<number> {
  const edge = '15mm';
  const margin = { top: edge, right: edge, bottom: edge, left: edge };
  const pdf = (await page.pdf({ format: 'A4', margin })).toString('latin1');
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}

test('a lesson is printed for the pupil without answers and for the teacher with them, in the chosen units and in German', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await openHead(page);
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lesson-two-lumps').click();
  await page.getByTestId('lesson-teacher').locator('summary').click();
  await keepSheets(page);
  const sheet = page.locator('[data-kept]');

  await page.getByTestId('lesson-print-pupil').click();
  await expect(sheet).toContainText('Name:');
  await expect(sheet).toContainText('one 10\u00a0mm ahead of it');
  await expect(sheet).toContainText('Neither: it stays where it is');
  await expect(sheet).not.toContainText('Distance counts squared');
  await expect(sheet).not.toContainText('Answer');
  // Five steps with room to write are higher than one sheet, and none of it is cut off.
  expect(await sheetsOfPaper(page)).toBe(2);
  await page.emulateMedia({ media: 'print' });
  const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
  expect(paper).toBe('rgb(255, 255, 255)');
  await page.emulateMedia({ media: 'screen' });

  // 10 mm / 25.4 = 0.394 in.
  await page.getByTestId('units').selectOption('inch');
  await page.getByTestId('lesson-print-teacher').click();
  await expect(sheet).toContainText('one 0.394\u00a0in ahead of it');
  await expect(sheet).toContainText('Answer: \u201cBack to flat\u201d.');
  await expect(sheet).toContainText('Distance counts squared');

  await page.getByTestId('units').selectOption('metric');
  await page.getByTestId('language').selectOption('de');
  await expect(page.getByTestId('lesson-view')).toContainText('Zwei Massenpunkte an einem Stab');
  await page.getByTestId('lesson-teacher').locator('summary').click();
  await page.getByTestId('lesson-print-teacher').click();
  await expect(sheet).toContainText('\u201eZur\u00fcck, bis er flach liegt\u201c');
  await expect(sheet).toContainText('Der Abstand z\u00e4hlt im Quadrat');
});
