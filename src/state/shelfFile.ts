import { wrongType } from '../design/checkNumber';
import { type DesignFault, fault } from '../design/fault';
import { parseJson } from '../design/jsonText';
import { fail, type Result, succeed } from '../engine/result';
import { isObject, itemFrom, type ShelfItem } from './shelfItem';

const SHELF_FORMAT = 'stillgrip-shelf';
const SHELF_VERSION = 1;
/** A shelf of more parts than this is no maker's. */
export const MAX_ITEMS = 1000;

/** The shelf, or some of it, as a file's text. `parseShelf` gives back equal items. */
export function serializeShelf(items: readonly ShelfItem[]): string {
  const text = JSON.stringify({ format: SHELF_FORMAT, version: SHELF_VERSION, items }, null, 2);
  // A list of numbers on one line. Text in quotes never holds a bare line feed, so it is left alone.
  const short = text.replace(/\[\n[-+.\deE,\s]*\n\s*\]/g, (list) => list.replace(/\s+/g, ' '));
  return `${short}\n`;
}

/**
 * The items in a file's text, or every item's first fault with its path (or the one fault of the file as a whole):
 * nothing is half loaded. Never throws on any text.
 */
export function parseShelf(
  text: string,
): Result<readonly ShelfItem[], readonly [DesignFault, ...DesignFault[]]> {
  const json = parseJson(text);
  if (!json.ok) return fail([json.error]);
  const whole = fileFault(json.value);
  if (whole) return fail([whole]);
  const { items: values } = json.value as { readonly items: readonly unknown[] };
  const items: ShelfItem[] = [];
  const faults: DesignFault[] = [];
  const seen = new Map<string, number>();
  for (const [i, value] of values.entries()) {
    const read = itemFrom(value, `items[${i}]`);
    const first = read.ok ? seen.get(read.value.id) : undefined;
    if (!read.ok) faults.push(read.error);
    else if (first !== undefined) {
      const { id } = read.value;
      faults.push(
        fault(`items[${i}].id`, { code: 'unsound', detail: `it repeats items[${first}]` }),
      );
      seen.set(id, first);
    } else {
      seen.set(read.value.id, i);
      items.push(read.value);
    }
  }
  const [one, ...more] = faults;
  return one ? fail([one, ...more]) : succeed(items);
}

/** What is wrong with the file as a whole, or null. */
function fileFault(value: unknown): DesignFault | null {
  if (!isObject(value)) return fault('', wrongType('object', value));
  const { format, version, items } = value;
  if (format !== SHELF_FORMAT) {
    const found = format === undefined ? '' : String(JSON.stringify(format)).slice(0, 60);
    return fault('format', { code: 'wrongFormat', found, expected: SHELF_FORMAT });
  }
  const versioned = versionFault(version);
  if (versioned) return versioned;
  const unknown = Object.keys(value).find((key) => !['format', 'version', 'items'].includes(key));
  if (unknown !== undefined) return fault('', { code: 'unknownKey', key: unknown });
  if (items === undefined) return fault('items', { code: 'missing' });
  if (!Array.isArray(items)) return fault('items', wrongType('list', items));
  if (items.length <= MAX_ITEMS) return null;
  return fault('items', { code: 'tooMany', count: items.length, limit: MAX_ITEMS });
}

function versionFault(version: unknown): DesignFault | null {
  if (version === SHELF_VERSION) return null;
  if (version === undefined) return fault('version', { code: 'missing' });
  if (typeof version !== 'number' || !Number.isSafeInteger(version) || version < 1) {
    const found = String(JSON.stringify(version)).slice(0, 40);
    return fault('version', { code: 'badVersion', found });
  }
  return fault('version', { code: 'newerVersion', found: version, known: SHELF_VERSION });
}
