import type { Design } from '../../design/design';
import { describeFault } from '../../design/faultText';
import { fail, type Result } from '../../engine/result';
import { t } from '../../messages';
import type { CarriedFault } from '../../state/carried/carried';

/** Files of ours that a design rides in. */
export const CARRIERS = ['.svg', '.png', '.3mf'];

export function isCarrierName(name: string): boolean {
  return CARRIERS.some((ending) => name.toLowerCase().endsWith(ending));
}

/** A package of bodies: what it is wanted for is told by whether a design of ours is in it. */
export function isPackageName(name: string): boolean {
  return name.toLowerCase().endsWith('.3mf');
}

/** Larger packages are bodies. */
const MAX_PACKAGE = 64 * 1024 * 1024;

/** Whether a package has a design of ours in it, sound or not. What cannot be read is left to the reader of bodies. */
export async function carriesDesign(file: File): Promise<boolean> {
  if (!isPackageName(file.name) || file.size > MAX_PACKAGE) return false;
  try {
    const readers = await import('../../state/carried/carriedDesign');
    return readers.carriesDesign(new Uint8Array(await file.arrayBuffer()));
  } catch {
    return false;
  }
}

/** The design in a file, or why there is none, in words. The readers are fetched with the first such file. */
export async function carriedIn(file: File): Promise<Result<Design, string>> {
  const { carriedDesign } = await import('../../state/carried/carriedDesign');
  const read = carriedDesign(new Uint8Array(await file.arrayBuffer()));
  return read.ok ? read : fail(faultText(read.error));
}

function faultText(fault: CarriedFault): string {
  if (fault.kind === 'design') return describeFault(fault.fault);
  if (fault.kind === 'tooLarge') {
    return t('app.carriedTooLarge', { limit: fault.limit / 1024 / 1024 });
  }
  return t(`app.carried.${fault.kind}`);
}
