import type { MeshFileFault } from '../types';
import { faultOf, malformed } from './signal';

/** Brackets in brackets; the records of the usual application protocols nest half a dozen. */
const DEEPEST = 100;
const SPACE = 32;
const QUOTE = 39;
const OPEN = 40;
const CLOSE = 41;
const STAR = 42;
const SLASH = 47;
const END = 59;
/** Letters of a statement that are looked at: those of the longest name of a section. */
const LOOKED_AT = 20;

/**
 * What is wrong with the frame of a STEP file (ISO 10303-21, clause 5: the exchange structure), or null: the marks at both
 * ends, a header and data, texts and comments that end, brackets that close. It is looked at before the CAD kernel is
 * fetched, since the kernel takes a file that is cut short for a whole one and knows no limit of depth. What the records
 * say is the kernel's affair. Time grows with the length.
 */
export function stepHeadFault(bytes: Uint8Array): MeshFileFault | null {
  try {
    walkStatements(bytes);
    return null;
  } catch (thrown) {
    return faultOf(thrown);
  }
}

function walkStatements(bytes: Uint8Array): void {
  let at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  let depth = 0;
  let statement = '';
  const sections = { first: true, header: false, data: false };
  while (at < bytes.length) {
    const byte = bytes[at++];
    if (byte <= SPACE) {
      if (byte === 0) malformed('step', 'holds bytes that are no text');
    } else if (byte === SLASH && bytes[at] === STAR) at = endOfComment(bytes, at + 1);
    else if (byte === QUOTE) {
      const end = bytes.indexOf(QUOTE, at);
      if (end < 0) malformed('step', 'ends inside a text, as if cut short');
      // A doubled quote is one of the text's own: the text goes on as the next.
      at = end + 1;
    } else if (byte === END && depth === 0) {
      if (takeStatement(statement, sections)) return;
      statement = '';
    } else {
      if (byte === OPEN && ++depth > DEEPEST) {
        malformed('step', `has brackets nested more than ${DEEPEST} deep`);
      }
      if (byte === CLOSE && --depth < 0) malformed('step', 'closes a bracket that is not open');
      if (statement.length < LOOKED_AT) statement += String.fromCharCode(byte);
    }
  }
  malformed('step', 'does not come to END-ISO-10303-21, as if cut short');
}

function endOfComment(bytes: Uint8Array, from: number): number {
  for (let at = bytes.indexOf(STAR, from); at >= 0; at = bytes.indexOf(STAR, at + 1)) {
    if (bytes[at + 1] === SLASH) return at + 2;
  }
  return malformed('step', 'ends inside a comment, as if cut short');
}

interface Sections {
  first: boolean;
  header: boolean;
  data: boolean;
}

/** Takes one statement on; true at the mark of the end. */
function takeStatement(statement: string, sections: Sections): boolean {
  if (sections.first !== (statement === 'ISO-10303-21')) {
    malformed('step', 'does not begin with the mark ISO-10303-21 alone');
  }
  sections.first = false;
  if (statement === 'HEADER') sections.header = true;
  if (/^DATA(?:\(|$)/.test(statement)) sections.data = true;
  if (statement !== 'END-ISO-10303-21') return false;
  if (!sections.header || !sections.data) malformed('step', 'lacks its header or its data');
  return true;
}
