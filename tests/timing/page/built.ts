import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const BUILT = fileURLToPath(new URL('../../../dist/', import.meta.url));

/** Sent as it is: it is packed already. */
const PACKED = /\.(woff2|png)$/;

/** The face of Latin letters: the browser fetches the others only where their letters are shown. */
const FACE = /^assets\/inter-latin-wght-normal-/;

const lengths = new Map<string, number>();

/** Bytes of a file of the built folder as a host sends it, packed by gzip. */
export function sentBytes(path: string): number {
  let length = lengths.get(path);
  if (length === undefined) {
    const bytes = readFileSync(BUILT + path);
    length = PACKED.test(path) ? bytes.length : gzipSync(bytes, { level: 9 }).length;
    lengths.set(path, length);
  }
  return length;
}

export function sentSum(paths: Iterable<string>): number {
  let sum = 0;
  for (const path of paths) sum += sentBytes(path);
  return sum;
}

/** What the page asks for before any of its script has run, and what that imports: scripts, styles and the typeface. */
export function firstFiles(): ReadonlySet<string> {
  const page = readFileSync(`${BUILT}index.html`, 'utf8');
  const named = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.(?:js|css))"/g)].map(
    ([, path]) => path,
  );
  const face = readdirSync(`${BUILT}assets`)
    .map((name) => `assets/${name}`)
    .find((path) => FACE.test(path));
  return new Set(['index.html', ...(face ? [face] : []), ...named, ...closure(named)]);
}

/** Each script that is fetched when it is asked for, by its name without the sum, with all that comes with it and was not there. */
export function laterFiles(): ReadonlyMap<string, ReadonlySet<string>> {
  const first = firstFiles();
  const rooms = new Map<string, ReadonlySet<string>>();
  for (const file of readdirSync(`${BUILT}assets`)) {
    if (!file.endsWith('.js')) continue;
    const text = script(`assets/${file}`);
    for (const [, entry] of text.matchAll(/import\(\s*[`"']\.\/([\w.-]+\.js)[`"']\s*\)/g)) {
      const whole = closure([`assets/${entry}`]);
      rooms.set(nameOf(entry), new Set([...whole].filter((path) => !first.has(path))));
    }
  }
  return rooms;
}

/** `AirRoom-DXyz1234.js`: AirRoom. */
function nameOf(file: string): string {
  return file.replace(/-[\w-]{8}\.\w+$/, '');
}

/** Scripts with all that they import in turn. */
function closure(paths: readonly string[]): ReadonlySet<string> {
  const found = new Set<string>();
  const open = paths.filter((path) => path.endsWith('.js'));
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    if (found.has(path)) continue;
    found.add(path);
    for (const [, file] of script(path).matchAll(
      /(?:from|import)\s*[`"']\.\/([\w.-]+\.js)[`"']/g,
    )) {
      open.push(`assets/${file}`);
    }
  }
  return found;
}

const scripts = new Map<string, string>();

function script(path: string): string {
  let text = scripts.get(path);
  if (text === undefined) {
    text = readFileSync(BUILT + path, 'utf8');
    scripts.set(path, text);
  }
  return text;
}
