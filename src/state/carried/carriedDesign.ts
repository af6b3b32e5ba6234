import type { Design } from '../../design/design';
import { fail, type Result } from '../../engine/result';
import { type CarriedFault, type CarriedText, judged, utf8 } from './carried';
import { designInPng, isPng } from './pngDesign';
import { designInSvg } from './svgDesign';
import { designInThreeMf } from './threeMfDesign';

/** Whether a package has a design in it, sound or not: then it is opened, else brought in as a body. */
export function carriesDesign(threeMf: Uint8Array): boolean {
  const found = designInThreeMf(threeMf);
  return found.ok || found.error.kind === 'notUtf8' || found.error.kind === 'tooLarge';
}

/** The design that an SVG, PNG or 3MF file carries, told by its bytes. Never throws. */
export function carriedDesign(bytes: Uint8Array): Result<Design, CarriedFault> {
  return judged(carriedText(bytes));
}

function carriedText(bytes: Uint8Array): CarriedText {
  if (isPng(bytes)) return designInPng(bytes);
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return designInThreeMf(bytes);
  const text = utf8(bytes);
  return text.ok ? designInSvg(text.value) : fail({ kind: 'unreadable' });
}
