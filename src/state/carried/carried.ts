import type { Design } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { parseDesign } from '../../design/file';
import { fail, type Result, succeed } from '../../engine/result';

/** Why no design came out of a file that could carry one. */
export type CarriedFault =
  /** The bytes are no file of that kind, or a damaged one. */
  | { readonly kind: 'unreadable' }
  /** A sound file without a design of ours in it. */
  | { readonly kind: 'noDesign' }
  | { readonly kind: 'tooLarge'; readonly limit: number }
  | { readonly kind: 'notUtf8' }
  | { readonly kind: 'design'; readonly fault: DesignFault };

/** Text of a design as it was found in a file, not judged yet. */
export type CarriedText = Result<string, Exclude<CarriedFault, { readonly kind: 'design' }>>;

/** Longer texts are left in the file, bytes. */
export const MOST_CARRIED = 64 * 1024 * 1024;
/** By what our files know their design: the name in a PNG, the namespace in an SVG, the relation in a 3MF package. */
export const PNG_KEYWORD = 'stillgrip-design';
export const DESIGN_NAMESPACE = 'urn:stillgrip:design';

/** The design, if the text is a sound one: a carried design has to pass what any design file has to. */
export function judged(text: CarriedText): Result<Design, CarriedFault> {
  if (!text.ok) return text;
  const read = parseDesign(text.value);
  return read.ok ? read : fail({ kind: 'design', fault: read.error });
}

export function utf8(bytes: Uint8Array): CarriedText {
  try {
    return succeed(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return fail({ kind: 'notUtf8' });
  }
}
