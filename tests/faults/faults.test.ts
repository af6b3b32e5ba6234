import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { FAULTS } from './list';

function pathOf(relative: string): string {
  return fileURLToPath(new URL(`../../${relative}`, import.meta.url));
}

describe('the list of deliberate faults', () => {
  it('has at least the sixty that were asked for, each with a name of its own', () => {
    expect(FAULTS.length).toBeGreaterThanOrEqual(60);
    expect(new Set(FAULTS.map(({ name }) => name)).size).toBe(FAULTS.length);
  });

  it('finds the text of each fault exactly once in its file, so that it can still be planted', () => {
    const lost = FAULTS.flatMap(({ name, file, find }) => {
      const pieces = readFileSync(pathOf(`src/${file}`), 'utf8').split(find).length;
      return pieces === 2 ? [] : [`${name}: ${pieces - 1} times in ${file}`];
    });
    expect(lost).toEqual([]);
  });

  it('changes something, and names tests that are there', () => {
    const idle = FAULTS.filter(({ find, put }) => find === put || find.trim() === put.trim());
    const missing = FAULTS.flatMap(({ tests }) => tests).filter(
      (path) => !existsSync(pathOf(`tests/${path}`)),
    );
    expect([idle.map(({ name }) => name), missing]).toEqual([[], []]);
  });
});
