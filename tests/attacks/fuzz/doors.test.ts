import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { DOORS } from './doors';

const ROOT = fileURLToPath(new URL('../../../', import.meta.url));

/** What reads a file, the clipboard, the address, the browser's notes, or unpacks or parses something. */
const WAYS_IN =
  /fileOpen\(|type="file"|dataTransfer\??\.files|getData\(|\bfile\.text\(\)|\bfile\b.*\.arrayBuffer\(\)|JSON\.parse\(|location\.hash|getItem\(|notes\.read\(|\bonPaste=|<textarea|new Inflate\(|unzip|DecompressionStream|DOMParser|FileReader|readText\(|navigator\.clipboard\.read|launchQueue|\.prompt\(/;

/** Sources that have such a word in them and let nothing in, with the reason. */
const LETS_NOTHING_IN: Readonly<Record<string, string>> = {
  'src/app/FaultReport.tsx': 'shows text to copy',
  'src/app/share/ShareLink.tsx': 'shows text to copy',
  'src/app/demoDesigns.ts': 'the list that comes with the page',
  'src/lessons/course/builtIn.ts': 'the lessons that come with the page',
  'src/lessons/course/desk.ts': 'a list of ids; what is no text is left out',
  'src/cli/analyse.ts': 'not in the page; behind it is the door of a design',
  'src/state/firstMinute.ts': 'only asks whether something is there',
  'src/state/keep/legacyPlaces.ts': 'only asks whether something is there',
};

function sources(): string[] {
  const files = readdirSync(`${ROOT}src`, { recursive: true, encoding: 'utf8' });
  return files
    .map((file) => `src/${file.replaceAll('\\', '/')}`)
    .filter((file) => /\.tsx?$/.test(file) && !/^src\/(?:messages|tools)\//.test(file));
}

describe('the list of doors', () => {
  it('names every source by which something comes in', () => {
    const named = new Set(DOORS.flatMap(({ entries }) => entries));
    const found = sources().filter((file) => WAYS_IN.test(readFileSync(ROOT + file, 'utf8')));
    expect(found.length).toBeGreaterThan(20);
    expect(found.filter((file) => !named.has(file) && !(file in LETS_NOTHING_IN))).toEqual([]);
    // What is excused is still there to be excused.
    expect(Object.keys(LETS_NOTHING_IN).filter((file) => !found.includes(file))).toEqual([]);
  });

  it('names sources that are there, and each door once', () => {
    const all = new Set(sources());
    expect(DOORS.flatMap(({ entries }) => entries).filter((file) => !all.has(file))).toEqual([]);
    expect(new Set(DOORS.map(({ name }) => name)).size).toBe(DOORS.length);
  });
});
