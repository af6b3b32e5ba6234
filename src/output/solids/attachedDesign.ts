import type { Design } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { parseDesign } from '../../design/file';
import { fail, type Result, succeed } from '../../engine/result';
import { faultOf } from '../../meshes/readers/signal';
import { packageName, unpackEntry, zipEntries } from '../../meshes/readers/zip';
import { DESIGN_PART } from './threeMfFile';

export type AttachmentFault =
  /** The bytes are no ZIP package that can be read. */
  | { readonly kind: 'noPackage' }
  /** A package, but none that carries a design. */
  | { readonly kind: 'noDesign' }
  | { readonly kind: 'tooLarge'; readonly limit: number }
  | { readonly kind: 'notUtf8' }
  | { readonly kind: 'design'; readonly fault: DesignFault };

/** Larger designs are not unpacked, bytes. */
export const MOST_ATTACHED = 64 * 1024 * 1024;

/** The design that a 3MF package of ours carries. Never throws. */
export function attachedDesign(bytes: Uint8Array): Result<Design, AttachmentFault> {
  const text = designText(bytes);
  if (!text.ok) return text;
  const read = parseDesign(text.value);
  return read.ok ? read : fail({ kind: 'design', fault: read.error });
}

/** The text of the part that carries it, unpacked piece by piece and no further than its limit. */
function designText(bytes: Uint8Array): Result<string, AttachmentFault> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let stopped: AttachmentFault = { kind: 'noPackage' };
  let size = 0;
  let text = '';
  try {
    const entry = zipEntries(bytes).get(packageName(DESIGN_PART));
    if (!entry) return fail({ kind: 'noDesign' });
    unpackEntry(bytes, entry, { bytes: 0 }, (piece) => {
      size += piece.length;
      if (size > MOST_ATTACHED) {
        stopped = { kind: 'tooLarge', limit: MOST_ATTACHED };
        throw new Error('too large');
      }
      stopped = { kind: 'notUtf8' };
      text += decoder.decode(piece, { stream: true });
      stopped = { kind: 'noPackage' };
    });
    stopped = { kind: 'notUtf8' };
    return succeed(text + decoder.decode());
  } catch (thrown) {
    const { kind } = faultOf(thrown);
    return fail(kind === 'unpacksTooLarge' ? { kind: 'tooLarge', limit: MOST_ATTACHED } : stopped);
  }
}
