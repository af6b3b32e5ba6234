import { strToU8 } from 'fflate';
import { TONON } from '../meshes/files';

/** A small but valid (or plainly broken) STL that common loaders stumble over, and what must become of it. */
export interface TinyStl {
  readonly name: string;
  readonly bytes: Uint8Array;
  /** Read as the whole body, or refused in words that hold this. */
  readonly must: 'read' | { readonly refuse: RegExp };
}

const CORNERS = Array.from({ length: 4 }, (_, t) =>
  [0, 1, 2].map((k) => {
    const at = 3 * TONON.triangles[3 * t + k];
    return [...TONON.positions.subarray(at, at + 3)];
  }),
);

interface Style {
  readonly head?: string;
  readonly tail?: string;
  readonly end?: string;
  readonly indent?: string;
  readonly gap?: string;
  readonly normal?: string;
  number?(value: number): string;
}

function text(style: Style = {}): string {
  const { head = 'solid a', tail = 'endsolid a\n', end = '\n', indent = ' ', gap = ' ' } = style;
  const { normal = '0 0 0', number = String } = style;
  const lines = [head];
  for (const corners of CORNERS) {
    lines.push(`${indent}facet normal ${normal}`, `${indent}outer loop`);
    for (const corner of corners) {
      lines.push(`${indent}vertex${gap}${corner.map(number).join(gap)}`);
    }
    lines.push(`${indent}endloop`, `${indent}endfacet`);
  }
  return lines.join(end) + end + tail;
}

interface BinaryStyle {
  readonly header?: string;
  readonly attribute?: number;
  readonly normal?: number;
  readonly count?: number;
  readonly more?: number;
}

function binary({
  header = 'a',
  attribute = 0,
  normal = 0,
  count = 4,
  more = 0,
}: BinaryStyle = {}) {
  const bytes = new Uint8Array(84 + 50 * 4 + more);
  const view = new DataView(bytes.buffer);
  bytes.set(strToU8(header.slice(0, 80), true));
  view.setUint32(80, count, true);
  for (const [t, corners] of CORNERS.entries()) {
    const at = 84 + 50 * t;
    for (let k = 0; k < 3; k++) view.setFloat32(at + 4 * k, normal, true);
    for (const [k, value] of corners.flat().entries())
      view.setFloat32(at + 12 + 4 * k, value, true);
    view.setUint16(at + 48, attribute, true);
  }
  return bytes;
}

const read = (name: string, bytes: Uint8Array | string): TinyStl => ({
  name,
  bytes: typeof bytes === 'string' ? strToU8(bytes) : bytes,
  must: 'read',
});
const refuse = (name: string, bytes: Uint8Array | string, words: RegExp): TinyStl => ({
  ...read(name, bytes),
  must: { refuse: words },
});

/** What writers of STL are known to do (common practice, from memory); the format has no standard. */
export const TINY_STLS: readonly TinyStl[] = [
  read('plain text', text()),
  read('CRLF', text({ end: '\r\n', tail: 'endsolid a\r\n' })),
  read('CR alone', text({ end: '\r', tail: 'endsolid a\r' })),
  read('all in one line', text({ end: ' ', tail: 'endsolid a' })),
  read('all in one line, no name', text({ head: 'solid', end: ' ', tail: 'endsolid' })),
  read('no line end at the end', text({ tail: 'endsolid a' })),
  read('no name', text({ head: 'solid', tail: 'endsolid\n' })),
  read('a blank behind solid', text({ head: 'solid ', tail: 'endsolid \n' })),
  read(
    'a name of several words',
    text({ head: 'solid my part (left)', tail: 'endsolid my part\n' }),
  ),
  read('another name at the end', text({ head: 'solid a', tail: 'endsolid b\n' })),
  read('a name that says solid', text({ head: 'solid solid', tail: 'endsolid solid\n' })),
  read('a name that says facet', text({ head: 'solid facet', tail: 'endsolid facet\n' })),
  read('a name that says endsolid', text({ head: 'solid endsolid', tail: 'endsolid endsolid\n' })),
  read(
    'a name with letters beyond ASCII',
    text({ head: 'solid F\u00fc\u00df \u4e2d', tail: 'endsolid\n' }),
  ),
  read('a name with a path', text({ head: 'solid C:\\parts\\', tail: 'endsolid C:\\parts\\\n' })),
  read('a name of 500 letters', text({ head: `solid ${'n'.repeat(500)}` })),
  read('a name that says binary', text({ head: 'solid binary', tail: 'endsolid binary\n' })),
  read('upper case', text().toUpperCase()),
  read('mixed case', text({ head: 'Solid a', tail: 'EndSolid a\n' })),
  read('tabs', text({ indent: '\t\t', gap: '\t' })),
  read('no indent', text({ indent: '' })),
  read('many blanks', text({ indent: '        ', gap: '      ' })),
  read('blanks at the ends of lines', text({ end: '   \n' })),
  read('empty lines between all', text({ end: '\n\n' })),
  read('empty lines before', `\n\n  ${text()}`),
  read('empty lines behind', `${text()}\n\n\n`),
  read('the mark of UTF-8 before', `\ufeff${text()}`),
  read('control-Z at the end', `${text()}\u001a`),
  read('exponents', text({ number: (value) => value.toExponential() })),
  read('exponents with E+00', text({ number: (value) => value.toExponential().toUpperCase() })),
  read('plus signs', text({ number: (value) => (value < 0 ? `${value}` : `+${value}`) })),
  read(
    'no digit before the point',
    text({ number: (value) => String(value).replace(/^(-?)0\./, '$1.') }),
  ),
  read(
    'a point and nothing behind',
    text({ number: (v) => (Number.isInteger(v) ? `${v}.` : `${v}`) }),
  ),
  read('twenty digits', text({ number: (value) => value.toFixed(18) })),
  read('normals that are NaN', text({ normal: 'nan nan nan' })),
  read('normals of -nan(ind)', text({ normal: '-nan(ind) -1.#IND 1.#QNAN' })),
  read('two solids in one text', twoSolids('\n')),
  read('two solids in one line', twoSolids(' ')),
  read('plain binary', binary()),
  read('solid in a binary header', binary({ header: 'solid a' })),
  read('a binary header filled with blanks', binary({ header: 'solid a'.padEnd(80) })),
  read(
    'a whole facet in a binary header',
    binary({ header: 'solid facet normal 0 0 1 outer loop' }),
  ),
  read('colours in the attribute bytes', binary({ attribute: 0xffff })),
  read('a colour in the binary header', binary({ header: 'COLOR=\u00ff\u0000\u0000\u00ff' })),
  read('binary normals that are NaN', binary({ normal: NaN })),
  read('bytes behind the last triangle', binary({ more: 7 })),
  read('solid in the header and bytes behind', binary({ header: 'solid a', more: 512 })),
  refuse('no endsolid', text({ tail: '' }), /before endsolid/),
  refuse('zero facets', 'solid a\nendsolid a\n', /no surface/i),
  refuse('zero facets, binary', binary({ count: 0 }).subarray(0, 84), /no surface/i),
  refuse(
    'decimal commas',
    text({ number: (v) => String(v + 0.5).replace('.', ',') }),
    /"[-\d]+,\d+"/,
  ),
  refuse('a coordinate that is NaN', text({ number: () => 'nan' }), /"nan"/),
  refuse('a coordinate too few', text().replace('5 16.37072', '5'), /vertex|endloop/),
  refuse('four corners', text().replace(' endloop', ' vertex 0 0 0\n endloop'), /endloop/),
  refuse('a triangle too few, binary', binary({ count: 5 }), /claims 5 triangles/),
  refuse('UTF-16', new Uint8Array(Buffer.from(`\ufeff${text()}`, 'utf16le')), /triangles/),
];

function twoSolids(end: string): string {
  const whole = text({ end, tail: '' });
  const middle = whole.split(/(?<=endfacet\s)/);
  const first = middle.slice(0, 2).join('');
  return `${first}endsolid a${end}solid b${end}${middle.slice(2).join('')}endsolid b${end}`;
}
