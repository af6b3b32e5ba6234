import { Inflate } from 'fflate';
import { malformed, refuse } from './signal';

/**
 * Reads the ZIP packages of 3MF: PKWARE APPNOTE 6.3, stored and deflated entries, sizes in ZIP64 fields. The package is
 * in memory; what it unpacks to is handed on piece by piece and never held, and is counted while it comes, since the
 * sizes that a package claims prove nothing.
 */
export interface ZipEntry {
  readonly name: string;
  readonly method: number;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  readonly headerAt: number;
}

const MOST_ENTRIES = 10_000;
/** All that may come out of one package, bytes. Five million triangles of 3MF are about 350 MB. */
const MOST_BYTES = 1_000_000_000;
/** Text packs about five to twenty times; deflate ends at 1032 times. Of all that comes out to the whole package. */
const MOST_RATIO = 200;
/** Below this the ratio does not matter, bytes. */
const RATIO_FROM = 4_000_000;
/** Fed to the inflater at a time, bytes: at the greatest ratio 2 MB come out at once. */
const PIECE = 1 << 11;

/** Sums over all entries of a package what came out of it. */
export interface UnpackBudget {
  bytes: number;
}

/** The table of contents at the end of the package, by name in small letters without the leading slash. */
export function zipEntries(bytes: Uint8Array): Map<string, ZipEntry> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { count, start } = findDirectory(view);
  if (count > MOST_ENTRIES) {
    refuse({ kind: 'unpacksTooLarge', format: '3mf', what: 'entries', limit: MOST_ENTRIES });
  }
  const entries = new Map<string, ZipEntry>();
  let at = start;
  for (let i = 0; i < count; i++) {
    if (at + 46 > view.byteLength || view.getUint32(at, true) !== 0x02014b50) {
      malformed('3mf', `has a broken table of contents at entry ${i + 1} of ${count}`);
    }
    const nameSize = view.getUint16(at + 28, true);
    const extraSize = view.getUint16(at + 30, true);
    const next = at + 46 + nameSize + extraSize + view.getUint16(at + 32, true);
    if (next > view.byteLength) malformed('3mf', 'ends inside its table of contents');
    const raw = bytes.subarray(at + 46, at + 46 + nameSize);
    const name = packageName(new TextDecoder().decode(raw));
    if ((view.getUint16(at + 8, true) & 1) !== 0) {
      refuse({ kind: 'unsupported', format: '3mf', name: 'encryption' });
    }
    if (entries.has(name)) malformed('3mf', `has two entries of one name (${name.slice(0, 40)})`);
    entries.set(name, {
      name,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      ...sizesOf(view, at, at + 46 + nameSize, extraSize),
    });
    at = next;
  }
  checkApart(view, [...entries.values()]);
  return entries;
}

/**
 * Each entry has bytes of its own: many that share the same ones come to any amount (a bomb of no great ratio). One whose
 * place is wrong is told when it is unpacked.
 */
function checkApart(view: DataView, entries: readonly ZipEntry[]): void {
  const inOrder = entries.toSorted((a, b) => a.headerAt - b.headerAt);
  let end = 0;
  for (const entry of inOrder) {
    if (entry.headerAt < end) malformed('3mf', 'holds entries that lie over one another');
    end = Math.max(end, (dataStart(view, entry.headerAt) ?? 0) + entry.packedSize);
  }
}

/** Where the packed bytes behind a local header begin; undefined where there is none. */
function dataStart(view: DataView, at: number): number | undefined {
  if (at + 30 > view.byteLength || view.getUint32(at, true) !== 0x04034b50) return undefined;
  return at + 30 + view.getUint16(at + 26, true) + view.getUint16(at + 28, true);
}

/** Names of parts are compared without regard to case (ECMA-376 part 2); "\" does not occur in them. */
export function packageName(name: string): string {
  return name.toLowerCase().replace(/^\/+/, '');
}

/** The end record, and the ZIP64 one where it defers to that. */
function findDirectory(view: DataView): { count: number; start: number } {
  const end = view.byteLength;
  for (let at = end - 22; at >= Math.max(0, end - 22 - 0xffff); at--) {
    if (view.getUint32(at, true) !== 0x06054b50) continue;
    const count = view.getUint16(at + 10, true);
    const start = view.getUint32(at + 16, true);
    if (count !== 0xffff && start !== 0xffffffff) return { count, start };
    const locator = at - 20;
    if (locator < 0 || view.getUint32(locator, true) !== 0x07064b50) return { count, start };
    const wide = large(view, locator + 8);
    if (wide + 56 > end || view.getUint32(wide, true) !== 0x06064b50) break;
    return { count: large(view, wide + 32), start: large(view, wide + 48) };
  }
  return malformed('3mf', 'is a ZIP package without its table of contents, as if cut short');
}

/** Eight bytes as a number; too large for a file is as good as any. */
function large(view: DataView, at: number): number {
  if (at + 8 > view.byteLength) return Number.MAX_SAFE_INTEGER;
  return view.getUint32(at, true) + 2 ** 32 * view.getUint32(at + 4, true);
}

function sizesOf(view: DataView, record: number, extraAt: number, extraSize: number) {
  let packedSize = view.getUint32(record + 20, true);
  let size = view.getUint32(record + 24, true);
  let headerAt = view.getUint32(record + 42, true);
  for (let at = extraAt; at + 4 <= extraAt + extraSize; ) {
    const kind = view.getUint16(at, true);
    let field = at + 4;
    at = field + view.getUint16(at + 2, true);
    if (kind !== 1) continue;
    if (size === 0xffffffff) {
      size = large(view, field);
      field += 8;
    }
    if (packedSize === 0xffffffff) {
      packedSize = large(view, field);
      field += 8;
    }
    if (headerAt === 0xffffffff) headerAt = large(view, field);
  }
  return { packedSize, size, headerAt };
}

/** Unpacks one entry into `take`, piece by piece; checks size and sum at its end. */
export function unpackEntry(
  bytes: Uint8Array,
  entry: ZipEntry,
  budget: UnpackBudget,
  take: (piece: Uint8Array) => void,
): void {
  const packed = packedBytes(bytes, entry);
  let size = 0;
  let crc = 0xffffffff;
  function count(piece: Uint8Array): void {
    size += piece.length;
    budget.bytes += piece.length;
    if (budget.bytes > MOST_BYTES) {
      refuse({ kind: 'unpacksTooLarge', format: '3mf', what: 'bytes', limit: MOST_BYTES });
    }
    if (budget.bytes > RATIO_FROM && budget.bytes > MOST_RATIO * bytes.length) {
      refuse({ kind: 'unpacksTooLarge', format: '3mf', what: 'ratio', limit: MOST_RATIO });
    }
    crc = addToCrc(crc, piece);
    if (piece.length > 0) take(piece);
  }
  const shown = entry.name.slice(0, 60);
  if (entry.method === 0) {
    for (let at = 0; at < packed.length; at += 1 << 20) count(packed.subarray(at, at + (1 << 20)));
  } else if (entry.method === 8) inflate(packed, shown, count);
  else refuse({ kind: 'unsupported', format: '3mf', name: `ZIP method ${entry.method}` });
  if (size !== entry.size || (crc ^ 0xffffffff) >>> 0 !== entry.crc) {
    malformed('3mf', `holds a damaged entry (${shown})`);
  }
}

function packedBytes(bytes: Uint8Array, entry: ZipEntry): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const shown = entry.name.slice(0, 60);
  const start =
    dataStart(view, entry.headerAt) ??
    malformed('3mf', `holds an entry that is not where it should be (${shown})`);
  if (start + entry.packedSize > bytes.length) {
    malformed('3mf', `ends inside an entry (${shown})`);
  }
  return bytes.subarray(start, start + entry.packedSize);
}

function inflate(packed: Uint8Array, shown: string, take: (piece: Uint8Array) => void): void {
  const pieces: Uint8Array[] = [];
  const stream = new Inflate((piece) => pieces.push(piece));
  for (let at = 0; at < packed.length; at += PIECE) {
    try {
      stream.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
    } catch {
      malformed('3mf', `holds a damaged entry (${shown})`);
    }
    for (const piece of pieces.splice(0)) take(piece);
  }
}

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

function addToCrc(crc: number, piece: Uint8Array): number {
  let c = crc;
  for (const byte of piece) c = CRC_TABLE[(c ^ byte) & 0xff] ^ (c >>> 8);
  return c;
}
