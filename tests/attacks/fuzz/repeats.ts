import { zipSync } from 'fflate';
import { pngWithDesign } from '../../../src/state/carried/pngDesign';
import { pixelPng } from '../../support/png';
import { joined } from './bytes';
import type { Corpus } from './corpus';
import type { Door } from './door';
import { linkWith } from './packed';

/** Pieces that, one after another, keep a pattern or a list busy: blanks, digits, marks, openings without an end. */
const PIECES = [
  ' ',
  '\t',
  '\n',
  '\r\n',
  '\u00a0',
  '0',
  '1',
  'a',
  'A',
  '-',
  '+',
  '.',
  ',',
  ';',
  ':',
  '=',
  '"',
  '""',
  "'",
  '|',
  '(',
  '[',
  '{',
  '<',
  '/*',
  '#',
  '%',
  '\\',
  '_',
  '\u0301',
  '\ud83d\ude00',

  '1 ',
  '1,',
  '1;',
  '1\t',
  '1.',
  '1e',
  '1 000',
  '1,000',
  '1a',
  'a1',
  'aA',
  'a ',
  'a:',
  'a=',
  '(a',
  'a (',
  '[1]',
  ' (',

  '1\n',
  'a\n',
  '1,2\n',
  '1;2\n',
  '1 2\n',
  '"a",',
  '"\n',
  '"a',
  '{"a":',
  '[0,',
  '{"id":"a"},',
  '#1=A();',
  'N N ',

  'v 0 0 0\n',
  'f 1 1 1\n',
  'f 1 1 1 1 1 1 ',
  'facet ',
  'solid ',
  'endsolid ',
  '<a ',
  '<a>',
  '<a/>',
  '&a;',
  'Re = 1\n',

  '- ',
  '1/',
  '(1+',
  '1 1/',
  '1-',
  '\u2212',
  'push rod ',
  'deg/',
  'x.y.',
  '\ufeff',
  'e1',
  '1\u2019',
  "1'000",
] as const;

export interface Repeat {
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** For each piece: alone, in the middle of a good input, and behind its end; packed where the door takes packages. */
export function repeatsOf(door: Door, corpus: Corpus, size: number): Repeat[] {
  if (door.form === 'bytes') return [];
  const good = new TextDecoder().decode(corpus.get(door.good[0]));
  return PIECES.flatMap((piece) => {
    const many = piece.repeat(Math.ceil(size / piece.length));
    const shown = JSON.stringify(piece);
    if (door.form !== 'text') {
      return [{ name: `${shown} packed`, bytes: packed(door, corpus, many) }];
    }
    return [
      { name: `${shown} alone`, bytes: encoded(many) },
      { name: `${shown} alone, then a letter`, bytes: encoded(`x${many}!`) },
      { name: `${shown} inside`, bytes: encoded(inside(good, many)) },
      { name: `${shown} behind`, bytes: encoded(good + many) },
    ];
  });
}

function encoded(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

function inside(good: string, many: string): string {
  const at = Math.floor(good.length / 2);
  return good.slice(0, at) + many + good.slice(at);
}

const RELATIONS =
  '<Relationships><Relationship Target="/3D/a.model" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>';

function packed(door: Door, corpus: Corpus, many: string): Uint8Array {
  if (door.form === 'link')
    return encoded(linkWith(`{"format":"stillgrip-design","name":"${many}`));
  if (door.form === 'png') return pngWithDesign(pixelPng(), many);
  if (door.form === 'zip') {
    return zipSync(
      {
        '_rels/.rels': encoded(RELATIONS),
        '3D/a.model': encoded(`<model>${many}`),
        'Metadata/stillgrip-design.json': encoded(many),
      },
      { level: 0 },
    );
  }
  const json = encoded(many);
  const head = new Uint8Array(20);
  const view = new DataView(head.buffer);
  head.set(encoded('glTF'));
  view.setUint32(4, 2, true);
  view.setUint32(8, 20 + json.length, true);
  view.setUint32(12, json.length, true);
  head.set(encoded('JSON'), 16);
  return joined(head, json);
}
