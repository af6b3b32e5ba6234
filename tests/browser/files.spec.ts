import { readFileSync } from 'node:fs';
import { WebIO } from '@gltf-transform/core';
import type { Download, Page } from '@playwright/test';
import { unzipSync } from 'fflate';
import loadImporter from 'occt-import-js';
import { SaxesParser } from 'saxes';
import { STLLoader } from 'three/examples/jsm/loaders/STLLoader.js';
import { readCsv } from '../output/data/readCsv';
import { expect, test } from './fixtures';
import { openHead, settled, withoutFilePickers } from './head';

/** A head that is one pin of 25.4 mm across and along. */
const PIN = {
  format: 'stillgrip-design',
  version: 1,
  name: 'Inch pin',
  rotor: { speedRpm: 1000, bladeCount: 2, torqueOffsetMm: 0, preconeDeg: 0 },
  parts: [
    {
      id: 'pin',
      kind: 'cylinder',
      name: 'Pin',
      diameterMm: 25.4,
      lengthMm: 25.4,
      boreMm: 0,
      densityKgM3: 7850,
      pose: { positionMm: [40, 0, 0], rotationDeg: [0, 0, 0] },
    },
  ],
};

async function openFiles(page: Page): Promise<void> {
  await page.getByTestId('room-make').click();
  await page.getByTestId('lower-files').click();
  await expect(page.getByTestId('files-room')).toBeVisible();
}

async function openPin(page: Page): Promise<void> {
  await withoutFilePickers(page);
  await openHead(page);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open' }).click();
  await (await chooser).setFiles({
    name: 'pin.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(PIN)),
  });
  await expect(page.getByTestId('design-name')).toHaveValue('Inch pin');
  await openFiles(page);
  await expect(page.getByTestId('files-content')).toContainText('In it: Pin.');
}

async function saved(page: Page, testId: string): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent('download');
  await page.getByTestId(testId).click();
  const got: Download = await download;
  return { name: got.suggestedFilename(), bytes: readFileSync(await got.path()) };
}

function span(values: readonly number[]): number {
  return values.reduce((a, b) => Math.max(a, b)) - values.reduce((a, b) => Math.min(a, b));
}

function spans(positions: ArrayLike<number>): number[] {
  const all = Array.from(positions);
  return [0, 1, 2].map((k) => span(all.filter((_, i) => i % 3 === k)));
}

function vertices(bytes: Uint8Array): number[] {
  const points: number[] = [];
  const parser = new SaxesParser();
  parser.on('opentag', ({ name, attributes }) => {
    const at = attributes as Record<string, string>;
    if (name === 'vertex') points.push(Number(at.x), Number(at.y), Number(at.z));
  });
  parser.write(new TextDecoder().decode(unzipSync(bytes)['3D/3dmodel.model'])).close();
  return points;
}

test('a pin of 25.4 mm is saved as STL, 3MF and GLB and measures 25.4 mm to other readers', async ({
  page,
}) => {
  await openPin(page);
  await page.getByTestId('files-format').selectOption('stl');
  const stl = await saved(page, 'files-save-solid');
  expect(stl.name).toBe('inch-pin-head.stl');
  await expect(page.getByTestId('files-solids')).toContainText(
    'Handed to the browser to download as inch-pin-head.stl',
  );
  const { buffer, byteOffset, byteLength } = stl.bytes;
  const geometry = new STLLoader().parse(
    buffer.slice(byteOffset, byteOffset + byteLength) as ArrayBuffer,
  );
  for (const size of spans(geometry.getAttribute('position').array)) {
    expect(size).toBeCloseTo(25.4, 4);
  }

  await page.getByTestId('files-format').selectOption('threeMf');
  const threeMf = await saved(page, 'files-save-solid');
  for (const size of spans(vertices(threeMf.bytes))) expect(size).toBeCloseTo(25.4, 9);

  await page.getByTestId('files-what').selectOption('part');
  await page.getByTestId('files-format').selectOption('glb');
  const glb = await saved(page, 'files-save-solid');
  expect(glb.name).toBe('inch-pin-pin.glb');
  const document = await new WebIO().readBinary(new Uint8Array(glb.bytes));
  const place = document.getRoot().listMeshes()[0].listPrimitives()[0].getAttribute('POSITION');
  for (const size of spans(place?.getArray() ?? [])) expect(size).toBeCloseTo(0.0254, 8);
});

test('STEP is made in the page by a kernel that is fetched only when asked for', async ({
  page,
}) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).pathname));
  const kernel = () => asked.filter((path) => /replicad.*\.wasm$|stepWorker/.test(path));
  await openPin(page);
  await page.getByTestId('files-format').selectOption('step');
  await settled(page);
  expect(asked.length).toBeGreaterThan(5);
  expect(kernel()).toEqual([]);

  await page.getByTestId('files-step-make').click();
  await expect(page.getByTestId('files-step-cancel')).toBeFocused();
  await page.getByTestId('files-step-cancel').click();
  await expect(page.getByTestId('files-step-make')).toBeFocused();
  await expect(page.getByTestId('files-step-said')).toContainText('Cancelled');

  await page.getByTestId('files-step-make').click();
  await expect(page.getByTestId('files-save-solid')).toBeVisible({ timeout: 90_000 });
  expect(kernel().some((path) => path.endsWith('.wasm'))).toBe(true);
  await expect(page.getByTestId('files-step-said')).toContainText('one body');
  const step = await saved(page, 'files-save-solid');
  expect(step.name).toBe('inch-pin-head.step');
  const importer = await loadImporter({ print: () => {}, printErr: () => {} } as never);
  const read = importer.ReadStepFile(new Uint8Array(step.bytes), {
    linearUnit: 'millimeter',
  } as never);
  expect(read.success).toBe(true);
  const along = read.meshes.flatMap(
    (mesh: { attributes: { position: { array: readonly number[] } } }) =>
      Array.from(mesh.attributes.position.array).filter((_, i) => i % 3 === 2),
  );
  expect(span(along)).toBeCloseTo(25.4, 6);
  expect(step.bytes.toString('latin1')).toContain('CYLINDRICAL_SURFACE');

  await page.getByTestId('files-unit').selectOption('in');
  await expect(page.getByTestId('files-step-said')).toContainText('has changed');
  const licence = await page.getByRole('link', { name: /licence/ }).getAttribute('href');
  const answer = await page.request.get(new URL(licence ?? '', page.url()).href);
  expect(await answer.text()).toContain('GNU LESSER GENERAL PUBLIC LICENSE');
});

/** Size, colour of a corner, and the share of pixels that are not white, as the browser reads the picture. */
function look(page: Page, bytes: Buffer) {
  return page.evaluate(async (base64) => {
    const raw = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([raw], { type: 'image/png' }));
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
    const context = canvas.getContext('2d');
    if (!context) throw new Error('no context');
    context.drawImage(bitmap, 0, 0);
    const { data } = context.getImageData(0, 0, bitmap.width, bitmap.height);
    let drawn = 0;
    for (let i = 0; i < data.length; i += 4) {
      if (data[i] + data[i + 1] + data[i + 2] < 750) drawn++;
    }
    const corner = [...data.subarray(0, 4)];
    return { width: bitmap.width, height: bitmap.height, corner, drawn: (4 * drawn) / data.length };
  }, bytes.toString('base64'));
}

/** Pixels a metre as the PNG states them. */
function density(png: Buffer): number {
  const at = png.indexOf('pHYs');
  return png.readUInt32BE(at + 4);
}

test('pictures have the size that is asked for, on white in the dark too, and leave the stage alone', async ({
  page,
}) => {
  await page.emulateMedia({ colorScheme: 'dark' });
  await withoutFilePickers(page);
  await openHead(page);
  await openFiles(page);
  await settled(page);
  const stage = page.locator('.stage-canvas');
  const before = await stage.screenshot();
  await page.getByTestId('files-width-px').fill('800');
  await page.getByTestId('files-width-px').press('Enter');
  await expect(page.getByTestId('files-picture-size')).toContainText('500 pixels');
  const shot = await saved(page, 'files-save-picture');
  expect(shot.name).toMatch(/-stage\.png$/);
  const seen = await look(page, shot.bytes);
  expect(seen).toMatchObject({ width: 800, height: 500, corner: [255, 255, 255, 255] });
  // The head fills a part of it and not all.
  expect(seen.drawn).toBeGreaterThan(0.05);
  expect(seen.drawn).toBeLessThan(0.8);
  expect(density(shot.bytes)).toBe(11811);
  await settled(page);
  expect((await stage.screenshot()).equals(before)).toBe(true);
  // Handles and colour of the selected part are not in it: with another selected it is the same picture.
  await page.getByTestId('rail-part-grip').click();
  await settled(page);
  expect((await stage.screenshot()).equals(before)).toBe(false);
  expect((await saved(page, 'files-save-picture')).bytes.equals(shot.bytes)).toBe(true);

  await page.getByTestId('files-which').selectOption('chart');
  await page.getByTestId('files-width-mm').fill('101.6');
  await page.getByTestId('files-width-mm').press('Enter');
  const chart = await look(page, (await saved(page, 'files-save-picture')).bytes);
  expect(chart.width).toBe(1200);
  expect(chart.drawn).toBeGreaterThan(0.01);
  await page.getByTestId('files-picture-format').selectOption('svg');
  const svg = (await saved(page, 'files-save-picture')).bytes.toString('utf8');
  expect(svg).toContain('width="101.6mm"');
  expect(() => new SaxesParser().write(svg).close()).not.toThrow();

  await page.getByTestId('files-width-mm').fill('5');
  await page.getByTestId('files-width-mm').press('Enter');
  await expect(page.getByTestId('files-picture-size')).toContainText(
    '10\u00a0mm to 2000\u00a0mm, not 5\u00a0mm',
  );
  const save = page.getByTestId('files-save-picture');
  await expect(save).toHaveAttribute('aria-disabled', 'true');

  // What was typed is read as in every other field, or refused in words; nothing of it is dropped.
  const width = page.getByTestId('files-width-mm');
  await width.fill('101,6');
  await width.press('Enter');
  await expect(width).toHaveValue('101.6');
  await width.fill('5 1/2 in');
  await width.press('Enter');
  await expect(width).toHaveValue('139.7');
  await width.fill('wide');
  await width.press('Enter');
  await expect(width).toHaveAttribute('aria-invalid', 'true');
  await expect(width).toHaveValue('wide');
  await width.press('Escape');
  await expect(width).toHaveValue('139.7');
  // The choice is still there after a look at another room, and a save leaves the focus where it was.
  await page.getByTestId('lower-report').click();
  await page.getByTestId('lower-files').click();
  await expect(width).toHaveValue('139.7');
  await saved(page, 'files-save-picture');
  await expect(save).toBeFocused();
});

test('tables and the design itself are saved and read back', async ({ page }) => {
  await withoutFilePickers(page);
  await openHead(page);
  await openFiles(page);
  await page.getByTestId('files-curve-step').selectOption('5');
  for (const [testId, rows] of [
    ['files-save-curve', 37],
    ['files-save-parts', 12],
    ['files-save-loads', 20],
  ] as const) {
    const { name, bytes } = await saved(page, testId);
    expect(name).toMatch(/\.csv$/);
    const table = readCsv(bytes.toString('utf8'));
    expect(table.above[0]).toMatch(/^Design: Dunlin 260/);
    expect(table.rows.length).toBeGreaterThanOrEqual(rows);
  }
  const { name, bytes } = await saved(page, 'files-save-design');
  expect(name).toMatch(/^dunlin-260.*\.json$/);
  expect(JSON.parse(bytes.toString('utf8')).format).toBe('stillgrip-design');
});
