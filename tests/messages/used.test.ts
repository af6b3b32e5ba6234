import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EN } from '../../src/messages/en';
import { LATER } from '../../src/messages/en/later';

const SOURCE = new URL('../../src/', import.meta.url);

/** All of the source but the messages themselves. */
function otherSource(): string {
  return readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.tsx?$/.test(path) && !/^messages\/(en|de)\//.test(path))
    .map((path) => readFileSync(new URL(path, SOURCE), 'utf8'))
    .join('\n');
}

/** Beginnings of keys whose end is put in: `chart.${quantity}`. */
function openBeginnings(source: string): string[] {
  const found = source.matchAll(/`([a-z]\w*(?:\.\w+)*\.\w*)\$\{/g);
  return [...new Set(Array.from(found, ([, beginning]) => beginning))];
}

/** Ends of keys whose beginning is put in: `${section}.${key}.none`. */
function openEnds(source: string): string[] {
  const found = source.matchAll(/`\$\{[^`]*\}(\.[\w.]+)`/g);
  return [...new Set(Array.from(found, ([, end]) => end))];
}

describe('every message', () => {
  it('is said somewhere', () => {
    const source = otherSource();
    const beginnings = openBeginnings(source);
    const ends = openEnds(source);
    expect(beginnings.length).toBeGreaterThan(5);
    const quoted = new Set(
      Array.from(source.matchAll(/['"]([a-z]\w*(?:\.[\w-]+)+)['"]/g), ([, key]) => key),
    );
    const unsaid = Object.keys({ ...EN, ...LATER }).filter(
      (key) =>
        !quoted.has(key) &&
        !beginnings.some((beginning) => key.startsWith(beginning)) &&
        !ends.some((end) => key.endsWith(end)),
    );
    expect(unsaid).toEqual([]);
  });
});
