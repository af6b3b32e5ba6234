import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from './fixtures';
import {
  boxOf,
  chartPicture,
  drag,
  fieldValue,
  handleAt,
  openDemo,
  openHead,
  setPitchForces,
  settled,
  verdict,
  withoutFilePickers,
} from './head';

test('the page opens on the ordinary bolt and draws grip, dial and chart', async ({ page }) => {
  await openHead(page);
  expect(await verdict(page)).toMatch(/centres/i);
  const shot = await page.locator('canvas[data-engine]').screenshot();
  // Read back through the page: the stage's picture has many shades, not one flat colour.
  const shades = await page.evaluate(
    async (bytes) => {
      const bitmap = await createImageBitmap(
        new Blob([new Uint8Array(bytes)], { type: 'image/png' }),
      );
      const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
      const context = canvas.getContext('2d');
      context?.drawImage(bitmap, 0, 0);
      const pixels = context?.getImageData(0, 0, bitmap.width, bitmap.height).data ?? [];
      const found = new Set<number>();
      for (let i = 0; i < pixels.length; i += 4) {
        found.add(((pixels[i] >> 3) << 10) | ((pixels[i + 1] >> 3) << 5) | (pixels[i + 2] >> 3));
      }
      return found.size;
    },
    [...shot],
  );
  expect(shades).toBeGreaterThan(60);
  await expect(page.locator('.dial-mark[data-kind="stable"]').first()).toBeVisible();
  expect((await chartPicture(page)).length).toBeGreaterThan(5000);
});

test('dragging the head handle moves store, drawn bolt, curve and verdict; undo restores all', async ({
  page,
}) => {
  await openHead(page);
  const before = {
    verdict: await verdict(page),
    box: await boxOf(page, 'bolt'),
    forces: await setPitchForces(page),
    picture: await chartPicture(page),
  };
  const handle = await handleAt(page, 'bolt', 'extensionLengthMm');
  await drag(page, handle, { dx: 0, dy: -90 });
  const length = await fieldValue(page, 'extensionLengthMm');
  expect(length).toBeGreaterThan(5);
  const after = await boxOf(page, 'bolt');
  // World position of the drawn object in mm: its top has risen by what the field says.
  expect(after.max[2] - before.box.max[2]).toBeCloseTo(length, 3);
  expect(after.min[2]).toBeCloseTo(before.box.min[2], 6);
  expect(await verdict(page)).not.toBe(before.verdict);
  expect(await chartPicture(page)).not.toBe(before.picture);
  expect((await setPitchForces(page))[4]).toBeGreaterThan(before.forces[4] + 3);

  await page.keyboard.press('Control+z');
  await settled(page);
  expect(await verdict(page)).toBe(before.verdict);
  expect(await setPitchForces(page)).toEqual(before.forces);
  expect((await boxOf(page, 'bolt')).max[2]).toBeCloseTo(before.box.max[2], 9);
  await expect.poll(() => fieldValue(page, 'extensionLengthMm')).toBe(0);
});

test('the grip centres, goes neutral and flees in one drag of the head', async ({ page }) => {
  await openHead(page);
  const seen = new Set<string>();
  const legend = page.locator('.dial-legend');
  const before = await legend.evaluate((one: HTMLElement) => one.offsetHeight);
  const handle = await handleAt(page, 'bolt', 'extensionLengthMm');
  await page.mouse.move(handle.x, handle.y);
  await page.mouse.down();
  // At first quickly, then about a fifth of a millimetre a step: the grip stays where it is put over a third of one.
  const steps = [5, 10, 15, 20, ...Array.from({ length: 30 }, (_, k) => 21 + k)];
  for (const up of steps) {
    await page.mouse.move(handle.x, handle.y - up);
    // The verdict may wait for two pictures in which nothing moves.
    await settled(page);
    const line = (await verdict(page)).toLowerCase();
    if (line.includes('centres')) seen.add('centres');
    if (line.includes('stays')) seen.add('stays');
    if (line.includes('flees')) seen.add('flees');
  }
  expect([...seen]).toEqual(['centres', 'stays', 'flees']);

  await test.step('the legend of the dial grows under the hand and is whole', async () => {
    const now = await legend.evaluate(
      (one: HTMLElement) => [one.scrollHeight, one.offsetHeight] as const,
    );
    expect(now[0]).toBeGreaterThan(before);
    expect(now[1]).toBeGreaterThanOrEqual(now[0]);
  });

  await test.step('let go after a pause, the verdict says at once what is beyond its limit', async () => {
    await page.mouse.move(handle.x + 60, 10);
    await settled(page, 5);
    await page.mouse.up();
    expect(await page.getByTestId('verdict-detail').innerText()).toContain('Beyond a limit');
  });

  await test.step('the pitch knob goes along with the station of the bolt', async () => {
    await page.getByTestId('rail-part-grip').click();
    await change(page, 'boltStationMm', '44');
    const knob = await handleAt(page, 'pitch', 'pitchDeg');
    await change(page, 'webThicknessMm', '3.1');
    const later = await handleAt(page, 'pitch', 'pitchDeg');
    expect(Math.hypot(later.x - knob.x, later.y - knob.y)).toBeLessThan(1);
  });
});

async function change(page: Page, field: string, to: string): Promise<void> {
  await page.getByTestId(`input-${field}`).fill(to);
  await page.keyboard.press('Enter');
  await settled(page);
}

test('in the middle of a drag Escape and undo take it back, Shift and Alt change the step, Delete does nothing', async ({
  page,
}) => {
  await openHead(page);
  const flat = (await boxOf(page, 'bolt')).max[2];
  const handle = await handleAt(page, 'bolt', 'extensionLengthMm');
  const high = async () => (await boxOf(page, 'bolt')).max[2] - flat;

  await test.step('before it, what lies under the pointer says what it is', async () => {
    await page.mouse.move(handle.x, handle.y);
    await expect(page.locator('.stage-readout')).toHaveText('Head extension 0\u00a0mm');
  });

  await test.step('Escape', async () => {
    await drag(page, handle, { dx: 0, dy: -60 }, false);
    expect(await high()).toBeGreaterThan(1);
    await page.keyboard.press('Escape');
    await settled(page);
    expect(await high()).toBeCloseTo(0, 9);
    await page.mouse.up();
    await expect(page.getByTestId('undo')).toBeDisabled();
  });

  await test.step('undo, after which the pointer moves nothing more', async () => {
    await drag(page, handle, { dx: 0, dy: -60 }, false);
    await page.keyboard.press('Control+z');
    await page.mouse.move(handle.x, handle.y - 120);
    await settled(page);
    await page.mouse.up();
    await settled(page);
    expect(await high()).toBeCloseTo(0, 9);
    await expect(page.getByTestId('undo')).toBeDisabled();
  });

  await test.step('Shift, Alt and Delete', async () => {
    await drag(page, handle, { dx: 0, dy: -30 }, false);
    const early = await high();
    await page.keyboard.press('Delete');
    await page.keyboard.down('Shift');
    await page.mouse.move(handle.x, handle.y - 60);
    await page.keyboard.up('Shift');
    await settled(page);
    await page.mouse.move(handle.x, handle.y - 90);
    await settled(page);
    expect(await high()).toBeGreaterThan(early + 2);
    await page.keyboard.down('Shift');
    await page.mouse.move(handle.x, handle.y - 91);
    await settled(page);
    await page.mouse.up();
    await page.keyboard.up('Shift');
    await settled(page);
    const length = await high();
    expect(length).toBeCloseTo(Math.round(length), 3);
    await page.getByTestId('undo').click();
    await expect(page.getByTestId('undo')).toBeDisabled();
  });

  await test.step('let go of a head that has shrunk, what is drawn round it follows', async () => {
    await change(page, 'extensionLengthMm', '20');
    await drag(page, await handleAt(page, 'bolt', 'extensionLengthMm'), { dx: 0, dy: 600 });
    const knob = await handleAt(page, 'pitch', 'pitchDeg');
    await change(page, 'extensionLengthMm', '0.1');
    const later = await handleAt(page, 'pitch', 'pitchDeg');
    expect(Math.hypot(later.x - knob.x, later.y - knob.y)).toBeLessThan(5);
  });
});

test('of the demo heads two are neutral: under 1 N at 10 and 20 degrees both ways', async ({
  page,
}) => {
  await openHead(page);
  for (const title of ['Blade with the right turned nut', 'The same weight on both sides']) {
    await openDemo(page, title);
    const forces = await setPitchForces(page);
    expect(forces).toHaveLength(5);
    for (const force of forces) expect(Math.abs(force), title).toBeLessThan(1);
    expect(await verdict(page)).toMatch(/stays/i);
  }
});

test('dial, chart and stage share one pitch', async ({ page }) => {
  await openHead(page);
  const knob = page.getByTestId('dial-knob');
  const blade = await boxOf(page, 'blade');
  const ring = await page.locator('.dial-ring').boundingBox();
  if (!ring) throw new Error('the dial has no ring');
  const centre = { x: ring.x + ring.width / 2, y: ring.y + ring.height / 2 };
  const radius = ring.width / 2;
  const turn = (30 * Math.PI) / 180;
  await drag(
    page,
    { x: centre.x + radius, y: centre.y },
    { dx: radius * (Math.cos(turn) - 1), dy: -radius * Math.sin(turn) },
  );
  const pitch = Number(await knob.getAttribute('aria-valuenow'));
  expect(pitch).toBeGreaterThan(25);
  expect(pitch).toBeLessThan(35);
  const turned = await boxOf(page, 'blade');
  expect(turned.max[2]).toBeGreaterThan(blade.max[2] + 3);
  await expect(page.getByTestId('chart-cursor')).toHaveAttribute('aria-valuenow', String(pitch));

  // Back by the chart: a press in the plot sets the pitch.
  const plot = await page.locator('.u-over').boundingBox();
  if (!plot) throw new Error('the chart has no plot');
  await page.mouse.click(plot.x + plot.width / 2, plot.y + plot.height / 2);
  await settled(page);
  const flat = Number(await knob.getAttribute('aria-valuenow'));
  expect(Math.abs(flat)).toBeLessThan(0.5);
  expect((await boxOf(page, 'blade')).max[2]).toBeLessThan(blade.max[2] + 0.5);

  // And by the stage's own pointer.
  const pointer = await handleAt(page, 'pitch', 'pitchDeg');
  await drag(page, pointer, { dx: 0, dy: -40 });
  expect(Number(await knob.getAttribute('aria-valuenow'))).not.toBe(flat);
});

test('a reload keeps the last change', async ({ page }) => {
  await openHead(page);
  const handle = await handleAt(page, 'bolt', 'extensionLengthMm');
  await drag(page, handle, { dx: 0, dy: -70 });
  const length = await fieldValue(page, 'extensionLengthMm');
  const line = await verdict(page);
  // Back goes to the room before and not off the page.
  await page.getByTestId('room-make').click();
  await page.goBack();
  await expect(page.getByTestId('room-head')).toHaveAttribute('aria-current', 'page');
  await page.reload();
  await openHead(page);
  expect(await fieldValue(page, 'extensionLengthMm')).toBe(length);
  expect(await verdict(page)).toBe(line);
});

test('a field refuses bad input with the reason and keeps the design', async ({ page }) => {
  await openHead(page);
  const line = await verdict(page);
  const input = page.getByTestId('input-threadLengthMm');
  for (const [typed, reason] of [
    ['30', /22/],
    ['-3', /at least|least/i],
    ['NaN', /number/i],
    ['wide', /number/i],
  ] as const) {
    await input.fill(typed);
    await input.press('Enter');
    await expect(page.getByTestId('field-threadLengthMm')).toContainText(reason);
    await expect(input).toHaveAttribute('aria-invalid', 'true');
    expect(await verdict(page)).toBe(line);
  }
  await input.press('Escape');
  await expect(input).toHaveValue('10');
  for (const [typed, kept] of [
    ['9,5', '9.5'],
    ['2*4', '8'],
    ['3/8 in', '9.525'],
  ] as const) {
    await input.fill(typed);
    await input.press('Enter');
    await expect(input).toHaveValue(kept);
  }
});

/** Opens a text as a file of the design. */
async function openText(page: Page, text: string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open' }).click();
  await (await chooser).setFiles({
    name: 'design.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
}

const THREE_LUMPS = new URL('../fixtures/three-lumps.json', import.meta.url);

test('a saved file opens again as the same design, another opens too, and a bad one changes nothing and says why', async ({
  page,
}) => {
  await withoutFilePickers(page);
  await openHead(page);
  const before = await verdict(page);
  const input = page.getByTestId('input-extensionLengthMm');
  await input.fill('3.7');
  await input.press('Enter');
  await expect(page.getByTestId('verdict-line')).not.toHaveText(before);
  const line = await verdict(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: /^save/i }).click();
  const path = await (await download).path();
  await openDemo(page, 'Bare grip');
  await openText(page, readFileSync(path, 'utf8'));
  await expect(page.getByTestId('verdict-line')).toHaveText(line);

  const lumps = readFileSync(THREE_LUMPS, 'utf8');
  await openText(page, lumps);
  await expect(page.getByTestId('design-name')).toHaveValue('Three lumps');
  const forces = await setPitchForces(page);
  const good = JSON.parse(lumps);
  const bad: readonly [string, RegExp][] = [
    [JSON.stringify(good).slice(0, 200), /cut off|ends too early/i],
    [JSON.stringify({ ...good, version: 99 }), /newer/i],
    [JSON.stringify({ ...good, parts: [{ ...good.parts[0], kind: 'sail' }] }), /kind/i],
    [JSON.stringify({ ...good, parts: [{ ...good.parts[2], lengthMm: -1 }] }), /lengthMm/],
    [JSON.stringify({ ...good, parts: [{ ...good.parts[2], boreMm: 9 }] }), /boreMm/],
  ];
  for (const [text, reason] of bad) {
    await openText(page, text);
    await expect(page.getByTestId('notice')).toContainText(reason);
    await expect(page.getByTestId('design-name')).toHaveValue('Three lumps');
    expect(await setPitchForces(page)).toEqual(forces);
  }
});
