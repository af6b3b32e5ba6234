import { readFile, writeFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { LESSON_FILES, lessonOf, lessonText } from '../lessons/course/files';
import { SOLUTIONS, type Solved } from '../lessons/course/solutions';
import { expect, test } from './fixtures';
import { openDemo, openHead, settled, stageDrawn, verdict, withoutFilePickers } from './head';
import { arrowTo, tabTo } from './open/tabTo';

/** What Ctrl+S writes. */
async function saved(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await page.keyboard.press('Control+s');
  return readFile(await (await download).path(), 'utf8');
}

/** A row of tabs is one stop of Tab; the arrows go along it. */
async function chooseTab(page: Page, testId: string): Promise<void> {
  await tabTo(page.getByTestId('lower-pitch'));
  await arrowTo(page.getByTestId(testId), 'ArrowRight');
}

async function press(page: Page, testId: string): Promise<void> {
  await tabTo(page.getByTestId(testId));
  await page.keyboard.press('Enter');
}

/** One step by keys alone. */
async function solve(page: Page, solved: Solved): Promise<void> {
  if ('choose' in solved) {
    await tabTo(page.getByTestId('choice-0'));
    await page.keyboard.press('Space');
    for (let down = 0; down < solved.choose; down++) await page.keyboard.press('ArrowDown');
    await press(page, 'lesson-answer');
  } else if ('number' in solved) {
    await tabTo(page.getByTestId('lesson-number'));
    await page.keyboard.type(solved.number);
    await page.keyboard.press('Enter');
  } else if ('press' in solved) {
    for (const testId of solved.press) {
      if (testId.startsWith('lower-')) await chooseTab(page, testId);
      else await press(page, testId);
    }
  } else {
    for (const [at, text] of solved.turn) {
      await tabTo(page.getByTestId(`knob-${at}`));
      await page.keyboard.press('Control+a');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    }
  }
  await expect(page.getByTestId('lesson-told')).toBeVisible();
}

// Drawn in software: fewer pixels, and the same page.
test.use({ viewport: { width: 1300, height: 640 } });

test('every lesson is finished by keyboard alone, none by waiting, and the own design is the same to the byte', async ({
  page,
}) => {
  const warnings: string[] = [];
  page.on('console', (message) => warnings.push(message.text()));
  // Who wants no moving pictures sees the end of a run at once.
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await withoutFilePickers(page);
  await openHead(page);
  const before = await saved(page);
  await page.getByTestId('room-learn').focus();
  await page.keyboard.press('Enter');
  const lessons = LESSON_FILES.map(lessonOf);
  await press(page, `lesson-${lessons[0].id}`);
  await expect(page.getByTestId('lesson-line')).toContainText('waits untouched');
  await stageDrawn(page);
  for (const [place, { id, title }] of lessons.entries()) {
    await expect(page.getByTestId('lesson-view')).toHaveAttribute('data-lesson', id);
    await expect(page.getByTestId('lesson-line')).toContainText(title);
    for (const [at, solved] of SOLUTIONS[id].entries()) {
      await expect(page.getByTestId('lesson-step')).toContainText(`Step ${at + 1} of`);
      await expect(page.getByTestId('lesson-told')).toHaveCount(0);
      await solve(page, solved);
      if (at < SOLUTIONS[id].length - 1) await press(page, 'lesson-next');
    }
    await expect(page.getByTestId('lesson-finished')).toBeVisible();
    if (place < lessons.length - 1) await press(page, 'lesson-next-lesson');
  }
  await press(page, 'lessons-all');
  await expect(page.getByTestId('lesson-line')).toHaveCount(0);
  await expect(page.getByTestId('lessons-progress')).toHaveText(
    `${lessons.length} of ${lessons.length} done`,
  );
  expect(await saved(page)).toBe(before);
  await expect(page.getByTestId('undo')).toBeDisabled();

  // What is done is remembered, and the stage that came and went left one canvas and no lost context.
  await page.reload();
  await expect(page.getByTestId('lessons-progress')).toContainText(`${lessons.length} of`);
  await expect(page.locator('.stage-canvas canvas')).toHaveCount(1);
  expect(warnings.filter((text) => /context/i.test(text))).toEqual([]);
});

test('a lesson waits in another room, comes from a file, and its head can be taken and given back', async ({
  page,
}, testInfo) => {
  await withoutFilePickers(page);
  await openHead(page);
  const own = { line: await verdict(page), file: await saved(page) };
  await page.getByTestId('room-learn').click();
  const broken = testInfo.outputPath('broken.json');
  const text = lessonText('3-bolt-stands-up.json');
  await writeFile(broken, text.replace('"flees"', '"wins"'));
  await choose(page, broken);
  await expect(page.getByTestId('lesson-fault')).toContainText(
    'steps[0].choices[1].when[0].verdict',
  );
  const file = testInfo.outputPath('mine.json');
  await writeFile(
    file,
    text.replace('"bolt-stands-up"', '"mine"').replace(/"title": "[^"]*"/, '"title": "My lesson"'),
  );
  // The page's own Open takes it as well.
  const chooser = page.waitForEvent('filechooser');
  await page.keyboard.press('Control+o');
  await (await chooser).setFiles(file);
  await expect(page.getByTestId('lesson-line')).toContainText('My lesson');
  await page.getByTestId('choice-1').check();
  await page.getByTestId('lesson-answer').click();
  await expect(page.getByTestId('verdict-line')).toContainText('Flees');

  // Another room shows the own design; the lesson is where it was when the room is Learn again. Units go with the person.
  await page.getByTestId('room-head').click();
  await expect(page.getByTestId('lesson-line')).toHaveCount(0);
  // The verdict is written with the next picture.
  await expect.poll(() => verdict(page)).toBe(own.line);
  await page.getByTestId('units').selectOption('inch');
  await page.getByTestId('room-learn').click();
  await expect(page.getByTestId('lesson-told')).toBeVisible();
  await expect(page.getByTestId('lesson-watch')).toContainText('ozf');
  expect(JSON.parse(await saved(page)).name).toBe('A bolt alone');

  await page.getByTestId('lesson-take').click();
  await expect(page.getByTestId('lesson-line')).toHaveCount(0);
  await page.getByTestId('room-head').click();
  await expect(page.getByTestId('verdict-line')).toContainText('Flees');
  await page.getByTestId('undo').click();
  await settled(page);
  expect(await saved(page)).toBe(own.file);

  // A demo opens as the own design, and the lesson is put away for it.
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lesson-two-lumps').click();
  await expect(page.getByTestId('lesson-line')).toBeVisible();
  await openDemo(page, 'Bare grip');
  await expect(page.getByTestId('lesson-line')).toHaveCount(0);
  expect(JSON.parse(await saved(page)).name).toContain('bare grip');
});

async function choose(page: Page, path: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByTestId('lesson-open').click();
  await (await chooser).setFiles(path);
}

test('a reload inside a lesson comes back to it, at its step, and the own design is as it was', async ({
  page,
}) => {
  await openHead(page);
  await page.getByTestId('design-name').fill('My own');
  await page.getByTestId('design-name').press('Enter');
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lesson-two-lumps').click();
  const line = page.getByTestId('lesson-line');
  await expect(line).toContainText('My own');
  await page.getByTestId('choice-0').check();
  await page.getByTestId('lesson-answer').click();
  await page.getByTestId('lesson-next').click();
  const panel = page.getByTestId('lessons');
  const before = await panel.innerText();
  await page.reload();
  await expect(line).toContainText('My own');
  await expect.poll(() => panel.innerText()).toBe(before);
  await page.getByTestId('room-head').click();
  await expect(page.getByTestId('design-name')).toHaveValue('My own');
  await page.getByTestId('room-learn').click();
  await page.getByTestId('lesson-leave').click();
  await page.reload();
  await expect(page.getByTestId('lessons')).toBeVisible();
  await expect(line).toHaveCount(0);
});
