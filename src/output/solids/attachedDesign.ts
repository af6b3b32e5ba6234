import { unzipSync } from 'fflate';
import type { Design } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { parseDesign } from '../../design/file';
import { fail, type Result } from '../../engine/result';
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
  let found: Uint8Array | undefined;
  let tooLarge = false;
  try {
    const wanted = DESIGN_PART.toLowerCase();
    const entries = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (name.toLowerCase().replace(/^\/+/, '') !== wanted) return false;
        tooLarge = originalSize > MOST_ATTACHED;
        return !tooLarge;
      },
    });
    found = Object.values(entries)[0];
  } catch {
    return fail({ kind: 'noPackage' });
  }
  if (tooLarge) return fail({ kind: 'tooLarge', limit: MOST_ATTACHED });
  if (!found) return fail({ kind: 'noDesign' });
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(found);
  } catch {
    return fail({ kind: 'notUtf8' });
  }
  const read = parseDesign(text);
  return read.ok ? read : fail({ kind: 'design', fault: read.error });
}
