import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import {
  boxOf,
  chartPicture,
  drag,
  handleAt,
  openDemo,
  openHead,
  setPitchForces,
  settled,
  verdict,
} from './head';

function sliderBall(page: Page) {
  return page.evaluate(() => window.stillgrip?.scene?.sliderBall() ?? null);
}

test('each share is switched off and on: verdict, numbers and picture follow, and undo takes it back', async ({
  page,
}) => {
  await openHead(page);
  await openDemo(page, 'Blade with the right turned nut');
  const before = { line: await verdict(page), forces: await setPitchForces(page) };
  expect(before.line).toMatch(/^Stays where it is put: .* friction holds/);
  for (const share of ['rodMass', 'air', 'friction']) {
    const picture = await chartPicture(page);
    const box = page.getByTestId(`counted-${share}`);
    await box.uncheck();
    await settled(page);
    expect(await chartPicture(page), share).not.toBe(picture);
    if (share === 'friction') expect(await verdict(page)).toContain('the drag of a small linkage');
    else expect(await setPitchForces(page), share).not.toEqual(before.forces);
    await page.keyboard.press('Control+z');
    await settled(page);
    await expect(box).toBeChecked();
    expect(await setPitchForces(page), share).toEqual(before.forces);
    expect(await verdict(page), share).toBe(before.line);
  }
});

test('the ball is dragged until the arm goes over centre within the pitch in use, and the verdict says so', async ({
  page,
}) => {
  await openHead(page);
  await page.locator('.rail [data-part="arm"], [data-part="arm"]').first().click();
  await settled(page);
  const before = {
    arm: await boxOf(page, 'arm'),
    lock: await page.getByTestId('figure-over-centre').innerText(),
  };
  const handle = await handleAt(page, 'arm', 'ballHeightMm');
  await drag(page, handle, { dx: 0, dy: 160 });
  // The drawn ball has gone down, and over-centre has come nearer to flat.
  expect((await boxOf(page, 'arm')).min[2]).toBeLessThan(before.arm.min[2] - 4);
  const angle = Number(
    (await page.getByTestId('figure-over-centre').innerText())
      .replace('\u2212', '-')
      .replace('\u00b0', ''),
  );
  expect(angle).toBeGreaterThan(
    Number(before.lock.replace('\u2212', '-').replace('\u00b0', '')) + 10,
  );
  expect(await verdict(page)).toContain('Arm goes over centre at');
  // With more pitch in use it lies within it.
  await page.keyboard.press('Escape');
  await page.locator('text=rotor and speed').click();
  const used = page.getByTestId('input-usedPitchDeg');
  await used.fill(String(Math.min(89, Math.ceil(Math.abs(angle)) + 2)));
  await used.press('Enter');
  await settled(page);
  expect(await verdict(page)).toContain('within the pitch in use');
  await expect(page.locator('.dial-lock-overCentre')).toHaveCount(2);
});

test('rod and slider follow the pitch on the stage', async ({ page }) => {
  await openHead(page);
  const before = { slider: await sliderBall(page), rod: await boxOf(page, 'link') };
  if (!before.slider) throw new Error('no slider is drawn');
  await page.getByTestId('dial-knob').focus();
  for (let i = 0; i < 15; i++) await page.keyboard.press('ArrowUp');
  await settled(page);
  const after = { slider: await sliderBall(page), rod: await boxOf(page, 'link') };
  if (!after.slider) throw new Error('no slider is drawn any more');
  // Along the shaft only, and the rod's lower end goes with it.
  expect(after.slider[0]).toBe(before.slider[0]);
  expect(after.slider[1]).toBe(before.slider[1]);
  expect(after.slider[2]).toBeGreaterThan(before.slider[2] + 2);
  expect(after.rod.min[2] - before.rod.min[2]).toBeCloseTo(after.slider[2] - before.slider[2], 0);
});

test('the rooms under the stage open by keyboard, and each says what it is there for', async ({
  page,
}) => {
  await openHead(page);
  await page.getByTestId('lower-pitch').focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByTestId('speed-plot').locator('.plot-line')).not.toHaveCount(0);
  await page.keyboard.press('ArrowRight');
  await expect(page.getByTestId('air-totals')).toContainText('thrust');
  await page.getByTestId('air-column').selectOption('section');
  await expect(page.getByTestId('air-plot').locator('.plot-line')).toHaveCount(3);
  await page.getByTestId('lower-air').focus();
  await page.keyboard.press('ArrowRight');
  const shear = page.getByTestId('load-bolt-shear');
  await expect(shear).toContainText('EN 1993-1-8');
  await expect(shear).toContainText('Within.');
  await page.getByTestId('load-bolt-shear').getByRole('button').click();
  await expect(page.getByTestId('fields')).toContainText('Blade bolt');
  await page.getByTestId('lower-loads').focus();
  await page.keyboard.press('End');
  await expect(page.getByTestId('balance-lines')).toContainText('In balance');
  await page.getByTestId('grip-edit-1').click();
  const mass = page.getByTestId('input-mass-blade');
  await mass.fill('7.5');
  await mass.press('Enter');
  await expect(page.getByTestId('balance-lines')).toContainText('Unbalance');
  await expect(page.getByTestId('balance-lines')).toContainText('ISO 21940-11');
  await page.getByTestId('grip-reset').click();
  await expect(page.getByTestId('balance-lines')).toContainText('In balance');
});

test('a stop, a table of drag and a servo are typed, refused and taken back', async ({ page }) => {
  await openHead(page);
  await page.locator('text=rotor and speed').click();
  await page.getByTestId('fold-slider').click();
  const stop = page.getByTestId('input-highestTravelMm');
  await stop.fill('3');
  await stop.press('Enter');
  await expect(page.getByTestId('notes-slider')).toContainText('meets its stop');
  await expect(page.locator('.dial-lock-stop').first()).toBeVisible();
  await page.getByTestId('fold-friction').click();
  const table = page.getByTestId('input-drag');
  await table.fill('0 0.3\n5 0.4 9');
  await table.blur();
  await expect(page.getByText('Line 2 is not two numbers')).toBeVisible();
  await expect(table).toHaveValue('0 0.3\n5 0.4 9');
  await page.getByTestId('fold-servo').click();
  await expect(page.getByTestId('notes-servo')).toContainText('rated');
  await page.keyboard.press('Escape');
});
