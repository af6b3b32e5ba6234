import type { Page } from '@playwright/test';
import { writeStl } from '../../src/meshes/writeStl';
import { boxMesh, cylinderMesh } from '../support/meshes';
import { expect, test } from './fixtures';
import {
  boxOf,
  chartPicture,
  fieldValue,
  openHead,
  setPitchForces,
  settled,
  verdict,
} from './head';

/** Drops files on the page as a file manager would. */
async function dropFiles(
  page: Page,
  files: readonly { readonly name: string; readonly bytes: Uint8Array | string }[],
): Promise<void> {
  const plain = files.map(({ name, bytes }) => ({
    name,
    bytes: [...(typeof bytes === 'string' ? new TextEncoder().encode(bytes) : bytes)],
  }));
  await page.evaluate((given) => {
    const carried = new DataTransfer();
    for (const { name, bytes } of given) {
      carried.items.add(new File([new Uint8Array(bytes)], name));
    }
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: carried, cancelable: true }));
  }, plain);
}

async function railMass(page: Page, id: string): Promise<number> {
  const text = await page.getByTestId(`rail-part-${id}`).innerText();
  return Number(/([\d.]+)\sg/.exec(text)?.[1]);
}

async function takeM3x22(page: Page): Promise<void> {
  await page.getByTestId('catalogue-choose').click();
  const search = page.getByRole('combobox', { name: /Search by standard/ });
  await expect(search).toBeFocused();
  await search.pressSequentially('4762 M3 22');
  await expect(page.getByTestId('catalogue-take')).toContainText('ISO 4762 M3');
  await page.keyboard.press('Enter');
  await expect(page.getByTestId('catalogue-name')).toContainText('ISO 4762 M3');
  await settled(page);
}

test('M3 x 22 from the catalogue, then its weighed mass, change chart and mass card; undo takes both back', async ({
  page,
}) => {
  await openHead(page);
  const before = { forces: await setPitchForces(page), mass: await railMass(page, 'bolt') };
  await takeM3x22(page);
  const bought = { forces: await setPitchForces(page), mass: await railMass(page, 'bolt') };
  // ISO 4762 M3 between the printed 20 and 25 mm: 1.48 g, to the print's resolution and the head's tolerance.
  expect(bought.mass).toBeGreaterThan(1.42);
  expect(bought.mass).toBeLessThan(1.55);
  expect(bought.forces).not.toEqual(before.forces);

  const picture = await chartPicture(page);
  const input = page.getByTestId('input-massGrams');
  await page.getByTestId('measured').locator('summary').click();
  await input.fill('2');
  await input.press('Enter');
  await settled(page);
  expect(await railMass(page, 'bolt')).toBe(2);
  expect(await chartPicture(page)).not.toBe(picture);
  // A heavier bolt pulls away from flat: it takes less to hold a grip that centres.
  const weighed = await setPitchForces(page);
  expect(Math.abs(weighed[0])).toBeLessThan(Math.abs(bought.forces[0]));

  await page.getByTestId('open-mass-card').click();
  await expect(page.getByTestId('mass-card')).toContainText('weighed');
  await expect(page.getByTestId('mass-card')).toContainText('2.00');
  await page.keyboard.press('Escape');
  await expect(page.getByTestId('mass-card')).toBeHidden();

  await page.getByTestId('undo').click();
  await settled(page);
  expect(await setPitchForces(page)).toEqual(bought.forces);
  await page.getByTestId('undo').click();
  await settled(page);
  expect(await setPitchForces(page)).toEqual(before.forces);
  expect(await railMass(page, 'bolt')).toBe(before.mass);
});

test('a mesh that is dropped is reported, weighed and drawn, and undo takes it out again', async ({
  page,
}) => {
  await openHead(page);
  const before = { forces: await setPitchForces(page), verdict: await verdict(page) };
  await dropFiles(page, [{ name: 'lug.stl', bytes: writeStl([boxMesh(30, 8, 6)], 1, 'lug') }]);
  const dialog = page.getByTestId('import-dialog');
  await expect(dialog.getByTestId('import-report')).toContainText('Closed and sound');
  await page.getByTestId('import-material').selectOption('aluminium-6061');
  await page.getByTestId('import-put').click();
  await expect(dialog).toBeHidden();
  await expect(page.getByTestId('rail-part-meshBody-1')).toBeFocused();
  await settled(page);
  // A part by itself has no seats: their fields come with the role of a grip.
  await expect(page.getByTestId('field-boltStationMm')).toBeHidden();
  await page.getByTestId('input-role').selectOption('grip');
  await expect(page.getByTestId('field-boltStationMm')).toBeVisible();
  await page.getByTestId('input-role').selectOption('part');
  await expect(page.getByTestId('field-boltStationMm')).toBeHidden();
  // 30 x 8 x 6 mm of 2700 kg/m3: 3.888 g.
  expect(await railMass(page, 'meshBody-1')).toBeCloseTo(3.89, 2);
  const box = await boxOf(page, 'meshBody-1');
  expect(box.max[0] - box.min[0]).toBeCloseTo(30, 2);
  expect(box.max[2] - box.min[2]).toBeCloseTo(6, 2);
  expect(await setPitchForces(page)).not.toEqual(before.forces);
  for (let step = 0; step < 3; step++) await page.getByTestId('undo').click();
  await settled(page);
  expect(await setPitchForces(page)).toEqual(before.forces);
  expect(await verdict(page)).toBe(before.verdict);
});

test('a body of 30 m is told as a slip of the unit', async ({ page }) => {
  await openHead(page);
  await dropFiles(page, [{ name: 'grip.stl', bytes: writeStl([boxMesh(30, 8, 6)], 1, 'grip') }]);
  await page.getByTestId('import-unit').selectOption('m');
  await expect(page.getByTestId('import-unit-warning')).toContainText('30.0\u00a0m');
  await expect(page.getByTestId('import-unit-warning')).toContainText('millimetres');
});

test('a part is placed by the holes picked on it, and stands there', async ({ page }) => {
  await openHead(page);
  // A tube of bore 8 mm along z in its own file: its bore shall turn about the feathering axis.
  const tube = writeStl([cylinderMesh(9, 12, 24)], 1, 'collar');
  await dropFiles(page, [{ name: 'collar.stl', bytes: tube }]);
  await page.getByTestId('import-place').click();
  await expect(page.getByTestId('pick-panel')).toBeFocused();
  // A press picks a point now: there is nothing of the part to drag.
  await settled(page);
  const handles = await page.evaluate(() => window.stillgrip?.scene?.handles());
  expect(handles).toEqual(['pitch/pitchDeg']);
  await page.getByRole('button', { name: 'From above' }).click();
  await settled(page);
  const before = await boxOf(page, 'meshBody-1');
  const at = async (angle: number) => {
    const r = 8.6;
    const z = before.max[2];
    const spot = await page.evaluate(
      (point) => window.stillgrip?.scene?.screenPosition(point) ?? null,
      [before.centre[0] + r * Math.cos(angle), before.centre[1] + r * Math.sin(angle), z] as [
        number,
        number,
        number,
      ],
    );
    if (!spot) throw new Error('the spot is behind the camera');
    await page.mouse.click(spot.x, spot.y);
    await settled(page);
  };
  await at(0.13);
  await at(2.2);
  await at(4.3);
  await expect(page.getByTestId('pick-panel')).toContainText('Bore: diameter');
  await page.getByTestId('pick-apply').click();
  await expect(page.getByTestId('pick-panel')).toBeHidden();
  await settled(page);
  // The drawn body itself: its axis, 12 mm long, now lies along x, and its round is about the feathering axis.
  const after = await boxOf(page, 'meshBody-1');
  expect(after.max[0] - after.min[0]).toBeCloseTo(12, 1);
  expect(after.centre[1]).toBeCloseTo(0, 0);
  expect(after.centre[2]).toBeCloseTo(0, 0);
  await page.getByTestId('undo').click();
  await settled(page);
  expect((await boxOf(page, 'meshBody-1')).max).toEqual(before.max);
});

test('hostile files end in a message, the page alive and the design untouched', async ({
  page,
}) => {
  await openHead(page);
  const before = await setPitchForces(page);
  const noise = Uint8Array.from({ length: 4096 }, (_, i) => (i * 7919 + (i >> 3) * 31) & 255);
  const lying = writeStl([boxMesh(30, 8, 6)], 1, 'lying');
  new DataView(lying.buffer).setUint32(80, 0xffffffff, true);
  const notANumber = writeStl([boxMesh(30, 8, 6)], 1, 'nan');
  new DataView(notANumber.buffer).setFloat32(84 + 12, Number.NaN, true);
  const cracked = writeStl([boxMesh(30, 8, 6)], 1, 'cracked').slice(0, -50);
  new DataView(cracked.buffer).setUint32(80, 11, true);
  const files = [
    { name: 'empty.stl', bytes: new Uint8Array(0), says: 'empty' },
    { name: 'noise.stl', bytes: noise, says: 'claims' },
    { name: 'noise.3mf', bytes: noise, says: 'ZIP package' },
    { name: 'noise.glb', bytes: noise, says: 'not read here' },
    { name: 'lying.stl', bytes: lying, says: '4' },
    { name: 'nan.stl', bytes: notANumber, says: 'cannot be read because' },
    { name: 'cracked.stl', bytes: cracked, says: 'Open edges: 3' },
  ];
  for (const { name, bytes, says } of files) {
    await dropFiles(page, [{ name, bytes }]);
    const dialog = page.getByTestId('import-dialog');
    await expect(dialog, name).toContainText('The design is as it was.');
    await expect(dialog.getByTestId('import-report'), name).toContainText(says);
    await page.keyboard.press('Escape');
    await expect(dialog).toBeHidden();
  }
  expect(await setPitchForces(page)).toEqual(before);
  // Alive: a value can still be typed.
  await page.getByTestId('input-headHeightMm').fill('3.5');
  await page.getByTestId('input-headHeightMm').press('Enter');
  expect(await fieldValue(page, 'headHeightMm')).toBe(3.5);
});

test('of several bodies dropped at once each is asked for, and none is lost when one is dismissed', async ({
  page,
}) => {
  await openHead(page);
  const bytes = writeStl([boxMesh(30, 8, 6)], 1, 'lug');
  await dropFiles(page, [
    { name: 'first.stl', bytes },
    { name: 'second.stl', bytes },
  ]);
  await expect(page.getByRole('dialog')).toContainText('first.stl');
  await expect(page.getByTestId('import-put')).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toContainText('second.stl');
  await page.getByTestId('import-put').click();
  await expect(page.getByTestId('import-dialog')).toBeHidden();
  await expect(page.getByTestId('rail-part-meshBody-1')).toContainText('second');
});

test.describe('a piece of the page that cannot be fetched', () => {
  test.use({ allowed: /ERR_FAILED/ });

  test('says so, and the rest goes on', async ({ page }) => {
    await page.route(/MassCardDialog/, (route) => route.abort());
    await openHead(page);
    await page.getByTestId('open-mass-card').click();
    await expect(page.getByText('could not be fetched')).toBeVisible();
    expect(await verdict(page)).toMatch(/centres/i);
  });
});
