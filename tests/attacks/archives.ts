import { crc32, deflateRawSync } from 'node:zlib';
import { strToU8 } from 'fflate';
import { meshXml, modelXml, TONON } from '../meshes/files';

/** One entry of a ZIP, and what its headers say otherwise than is true. */
export interface Entry {
  readonly name: string;
  readonly text: string | Uint8Array;
  readonly stored?: boolean;
  /** Of the table of contents: sizes, sum, method, flags, place of the local header. */
  readonly size?: number;
  readonly packedSize?: number;
  readonly crc?: number;
  readonly method?: number;
  readonly flags?: number;
  readonly headerAt?: number;
  readonly localName?: string;
  /** Names only: no bytes of its own are written. */
  readonly nowhere?: boolean;
}

export interface Lies {
  /** What the end record says of the table of contents. */
  readonly count?: number;
  readonly start?: number;
  readonly comment?: Uint8Array;
  readonly between?: Uint8Array;
}

/** A ZIP package as PKWARE's APPNOTE 6.3 describes it (4.3.7, 4.3.12, 4.3.16), with any lie in it. */
export function zipOf(entries: readonly Entry[], lies: Lies = {}): Uint8Array {
  const pieces: Uint8Array[] = [];
  const places: number[] = [];
  let at = 0;
  const put = (piece: Uint8Array) => {
    pieces.push(piece);
    at += piece.length;
  };
  for (const entry of entries) {
    places.push(at);
    if (entry.nowhere) continue;
    const { raw, packed, method } = content(entry);
    const name = strToU8(entry.localName ?? entry.name);
    put(
      numbers(
        [4, 0x04034b50],
        [2, 20],
        [2, 0],
        [2, method],
        [4, 0],
        [4, crc32(raw)],
        [4, packed.length],
        [4, raw.length],
        [2, name.length],
        [2, 0],
      ),
    );
    put(name);
    put(packed);
  }
  if (lies.between) put(lies.between);
  const start = at;
  for (const [k, entry] of entries.entries()) {
    const { raw, packed, method } = content(entry);
    const name = strToU8(entry.name);
    put(
      numbers(
        [4, 0x02014b50],
        [2, 20],
        [2, 20],
        [2, entry.flags ?? 0],
        [2, entry.method ?? method],
        [4, 0],
        [4, entry.crc ?? crc32(raw)],
        [4, entry.packedSize ?? packed.length],
        [4, entry.size ?? raw.length],
        [2, name.length],
        [2, 0],
        [2, 0],
        [2, 0],
        [2, 0],
        [4, 0],
        [4, entry.headerAt ?? places[k]],
      ),
    );
    put(name);
  }
  const size = at - start;
  const count = lies.count ?? entries.length;
  const comment = lies.comment ?? new Uint8Array(0);
  put(
    numbers(
      [4, 0x06054b50],
      [2, 0],
      [2, 0],
      [2, count],
      [2, count],
      [4, size],
      [4, lies.start ?? start],
      [2, comment.length],
    ),
  );
  put(comment);
  return Uint8Array.from(Buffer.concat(pieces));
}

function content({ text, stored }: Entry) {
  const raw = typeof text === 'string' ? strToU8(text) : text;
  const packed = stored ? raw : deflateRawSync(raw, { level: 9 });
  return { raw, packed, method: stored ? 0 : 8 };
}

function numbers(...fields: readonly (readonly [2 | 4, number])[]): Uint8Array {
  const bytes = new Uint8Array(fields.reduce((sum, [size]) => sum + size, 0));
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (const [size, value] of fields) {
    if (size === 2) view.setUint16(at, value, true);
    else view.setUint32(at, value, true);
    at += size;
  }
  return bytes;
}

const RELATION = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
const RELS: Entry = {
  name: '_rels/.rels',
  text: `<Relationships><Relationship Target="/3D/a.model" Type="${RELATION}"/></Relationships>`,
};
const SOUND = modelXml(`<object id="1">${meshXml(TONON)}</object>`, '<item objectid="1"/>');
const model = (more: Partial<Entry> = {}): Entry => ({ name: '3D/a.model', text: SOUND, ...more });
const PATH = 'xmlns:p="http://schemas.microsoft.com/3dmanufacturing/production/2015/06"';

export interface Archive {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly must: 'read' | 'refuse';
}
const refuse = (name: string, bytes: Uint8Array): Archive => ({ name, bytes, must: 'refuse' });
const read = (name: string, bytes: Uint8Array): Archive => ({ name, bytes, must: 'read' });

/** `count` models that the root names one after the other, each entry made by `entry`. */
function manyModels(count: number, entry: (k: number) => Entry): Uint8Array {
  const items = Array.from({ length: count }, (_, k) => `<item objectid="1" p:path="/m${k}"/>`);
  const root = modelXml('', items.join(''), PATH);
  return zipOf([RELS, model({ text: root }), ...Array.from({ length: count }, (_, k) => entry(k))]);
}

const BLANKS = ' '.repeat(30_000_000);
const fakeEnd = zipOf([]).subarray(0, 22);

/** Packages that lie, outgrow themselves or hold one another. */
export function archives(): Archive[] {
  const sound = zipOf([RELS, model()]);
  const local = zipOf([RELS]).length;
  return [
    read('a plain one', sound),
    read('stored, not packed', zipOf([RELS, model({ stored: true })])),
    read('another name in the local header', zipOf([RELS, model({ localName: 'x' })])),
    read(
      'bytes between the entries and the table',
      zipOf([RELS, model()], { between: new Uint8Array(99) }),
    ),
    read('a comment', zipOf([RELS, model()], { comment: strToU8('made by hand') })),
    ...[0, 1, 0x7fffffff, 0xfffffffe].map((size) =>
      refuse(`a size of ${size} that is not so`, zipOf([RELS, model({ size })])),
    ),
    ...[0, 1, 0x7fffffff, 0xfffffffe].map((packedSize) =>
      refuse(`a packed size of ${packedSize} that is not so`, zipOf([RELS, model({ packedSize })])),
    ),
    refuse('a wrong sum', zipOf([RELS, model({ crc: 1 })])),
    refuse('an unknown method', zipOf([RELS, model({ method: 99 })])),
    refuse('packed where it says stored', zipOf([RELS, model({ method: 0 })])),
    refuse('stored where it says packed', zipOf([RELS, model({ stored: true, method: 8 })])),
    refuse('encrypted', zipOf([RELS, model({ flags: 1 })])),
    refuse('an entry beyond the end', zipOf([RELS, model({ headerAt: 1_000_000 })])),
    refuse('an entry in the middle of another', zipOf([RELS, model({ headerAt: 7 })])),
    refuse(
      'two entries in the same bytes',
      zipOf([RELS, model(), { ...model({ headerAt: local }), name: 'b' }]),
    ),
    refuse(
      'the root in its own relations',
      zipOf([RELS, { ...model({ headerAt: 0 }), nowhere: true }]),
    ),
    refuse('the same name twice', zipOf([RELS, model(), model()])),
    refuse('the same name in capitals', zipOf([RELS, model(), model({ name: '3D/A.MODEL' })])),
    refuse('a table that begins at the end', zipOf([RELS, model()], { start: sound.length - 1 })),
    refuse('a table that begins at 0', zipOf([RELS, model()], { start: 0 })),
    refuse('a table of none', zipOf([RELS, model()], { count: 0 })),
    refuse('a table of one too few', zipOf([RELS, model()], { count: 1 })),
    refuse('a table of one too many', zipOf([RELS, model()], { count: 3 })),
    refuse('a table of 65534', zipOf([RELS, model()], { count: 65_534 })),
    refuse('a ZIP64 table that is not there', zipOf([RELS, model()], { count: 0xffff })),
    refuse('another end in its comment', zipOf([RELS, model()], { comment: fakeEnd })),
    refuse('no table', sound.subarray(0, sound.length - 22)),
    refuse('a package as the model', zipOf([RELS, model({ text: sound })])),
    refuse('a package in a package', zipOf([{ name: 'a.3mf', text: sound }])),
    refuse('__proto__ for a name', zipOf([RELS, { ...model(), name: '__proto__' }])),
    refuse('a way out of the folder', zipOf([RELS, { ...model(), name: '../../3D/a.model' }])),
    refuse(
      'a bomb of blanks',
      zipOf([RELS, model({ text: SOUND.replace('<build>', `${BLANKS}<build>`) })]),
    ),
    refuse('a bomb that says it is small', zipOf([RELS, model({ text: BLANKS, size: 10 })])),
    refuse('a bomb for relations', zipOf([{ ...RELS, text: BLANKS }, model()])),
    refuse(
      'sixty bombs of a megabyte',
      manyModels(60, (k) => ({ name: `m${k}`, text: BLANKS.slice(0, 1_000_000) })),
    ),
    refuse(
      'sixty bombs in the same bytes',
      manyModels(60, (k) => ({
        name: `m${k}`,
        text: modelXml(BLANKS.slice(0, 500_000), ''),
        ...(k > 0 ? { nowhere: true, headerAt: bombPlace() } : {}),
      })),
    ),
  ];
}

/** Where the first of many models has its header: behind the relations and the root that names sixty. */
function bombPlace(): number {
  const items = Array.from({ length: 60 }, (_, k) => `<item objectid="1" p:path="/m${k}"/>`);
  const head = zipOf([RELS, model({ text: modelXml('', items.join(''), PATH) })]);
  return head.length - 22 - (46 + RELS.name.length) - (46 + '3D/a.model'.length);
}
