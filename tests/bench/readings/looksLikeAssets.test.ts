import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { looksLikeReadings } from '../../../src/bench/readings/looksLikeReadings';

it('no file of fixtures or assets that is something else is taken for readings', () => {
  const roots = ['../../fixtures/', '../../../assets/'].map(
    (path) => new URL(path, import.meta.url),
  );
  const files = roots.flatMap((root) =>
    readdirSync(root, { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(?:csv|txt|dat|tsv|pol|json)$/i.test(name))
      .filter((name) => !/reading|bench|run/i.test(name))
      .map((name) => new URL(name.replaceAll('\\', '/'), root)),
  );
  expect(files.length).toBeGreaterThan(3);
  const taken = files.filter((file) => looksLikeReadings(readFileSync(file, 'utf8')) > 0.5);
  expect(taken.map(String)).toEqual([]);
});
