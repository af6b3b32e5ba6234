import { unzipSync } from 'fflate';
import { fail } from '../../engine/result';
import { type CarriedText, MOST_CARRIED, utf8 } from './carried';

/** Where a 3MF package of ours carries its design. */
export const DESIGN_PART = 'Metadata/stillgrip-design.json';

/** Text of the design in a 3MF package. Never throws. */
export function designInThreeMf(bytes: Uint8Array): CarriedText {
  let found: Uint8Array | undefined;
  let tooLarge = false;
  try {
    const wanted = DESIGN_PART.toLowerCase();
    const entries = unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        if (name.toLowerCase().replace(/^\/+/, '') !== wanted) return false;
        tooLarge = originalSize > MOST_CARRIED;
        return !tooLarge;
      },
    });
    found = Object.values(entries)[0];
  } catch {
    return fail({ kind: 'unreadable' });
  }
  if (tooLarge) return fail({ kind: 'tooLarge', limit: MOST_CARRIED });
  return found ? utf8(found) : fail({ kind: 'noDesign' });
}
