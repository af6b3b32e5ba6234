import { fail, succeed } from '../../engine/result';
import { faultOf } from '../../meshes/readers/signal';
import { packageName, unpackEntry, zipEntries } from '../../meshes/readers/zip';
import { type CarriedFault, type CarriedText, MOST_CARRIED } from './carried';

/** Where a 3MF package of ours carries its design. */
export const DESIGN_PART = 'Metadata/stillgrip-design.json';

/** Text of the design in a 3MF package, unpacked piece by piece and no further than its limit. Never throws. */
export function designInThreeMf(bytes: Uint8Array): CarriedText {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let stopped: CarriedFault = { kind: 'unreadable' };
  let size = 0;
  let text = '';
  try {
    const entry = zipEntries(bytes).get(packageName(DESIGN_PART));
    if (!entry) return fail({ kind: 'noDesign' });
    unpackEntry(bytes, entry, { bytes: 0 }, (piece) => {
      size += piece.length;
      if (size > MOST_CARRIED) {
        stopped = { kind: 'tooLarge', limit: MOST_CARRIED };
        throw new Error('too large');
      }
      stopped = { kind: 'notUtf8' };
      text += decoder.decode(piece, { stream: true });
      stopped = { kind: 'unreadable' };
    });
    stopped = { kind: 'notUtf8' };
    return succeed(text + decoder.decode());
  } catch (thrown) {
    const { kind } = faultOf(thrown);
    return fail(kind === 'unpacksTooLarge' ? { kind: 'tooLarge', limit: MOST_CARRIED } : stopped);
  }
}
