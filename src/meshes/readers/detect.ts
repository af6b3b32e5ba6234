import type { MeshFormat } from '../types';
import { asciiText } from './decimal';
import { fitsBinaryStl } from './stlBinary';

const EXTENSIONS: Readonly<Record<string, readonly MeshFormat[]>> = {
  stl: ['stlBinary', 'stlText'],
  obj: ['obj'],
  '3mf': ['3mf'],
  glb: ['glb'],
  step: ['step'],
  stp: ['step'],
};

/** Whether files of this extension are of that format. */
export function extensionFits(extension: string, format: MeshFormat): boolean {
  return EXTENSIONS[extension]?.includes(format) ?? false;
}

/**
 * The format by the bytes, and where these leave it open, by the extension; undefined where neither tells. A binary
 * STL is known by its length, since its header may begin with "solid" as a text one does.
 */
export function detectFormat(bytes: Uint8Array, extension: string): MeshFormat | undefined {
  // Behind the mark of UTF-8 that some editors put first.
  const head = asciiText(bytes, 0, 400).replace(/^\xef\xbb\xbf/, '');
  if (head.startsWith('PK\x03\x04')) return '3mf';
  if (head.startsWith('glTF')) return 'glb';
  if (/^\s*(\/\*[^]*?\*\/\s*)?ISO-10303-21/.test(head)) return 'step';
  if (fitsBinaryStl(bytes)) return 'stlBinary';
  if (/^\s*solid\b/i.test(head) && looksLikeText(bytes)) return 'stlText';
  if (extension === 'stl') return 'stlBinary';
  if (looksLikeText(bytes) && hasObjLines(bytes)) return 'obj';
  return EXTENSIONS[extension]?.[0];
}

const LOOK = 4096;

function looksLikeText(bytes: Uint8Array): boolean {
  return bytes.subarray(0, LOOK).every((byte) => byte !== 0);
}

/** A point or a face among the first lines. */
function hasObjLines(bytes: Uint8Array): boolean {
  for (
    let at = 0;
    at >= 0 && at < Math.min(bytes.length, 1 << 16);
    at = bytes.indexOf(10, at) + 1
  ) {
    if (/^\s*(v[ \t]+[-+.\d]|f[ \t]+[-\d])/.test(asciiText(bytes, at, at + 40))) return true;
    if (bytes.indexOf(10, at) < 0) return false;
  }
  return false;
}
