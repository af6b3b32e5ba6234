import { checkNumbers } from './checkMeasured';
import { checkNumber, wrongType } from './checkNumber';
import { checkParts } from './checkParts';
import { type DesignFault, fault } from './fault';
import { MAX_NAME } from './limits';
import type { Materials } from './resolve';
import {
  MAX_OTHER_GRIPS,
  OTHER_GRIP_LIMITS,
  type OtherGrip,
  PART_MASS_LIMITS,
} from './sections/grips';

/** The first fault of the other grips, their own parts included, or null. */
export function checkOtherGrips(
  grips: readonly OtherGrip[] | undefined,
  materials: Materials,
): DesignFault | null {
  if (grips === undefined) return null;
  if (grips.length > MAX_OTHER_GRIPS) {
    return fault('otherGrips', { code: 'tooMany', count: grips.length, limit: MAX_OTHER_GRIPS });
  }
  for (let i = 0; i < grips.length; i++) {
    const found = checkGrip(grips[i], `otherGrips[${i}]`, materials);
    if (found) return found;
  }
  return null;
}

function checkGrip(grip: OtherGrip, path: string, materials: Materials): DesignFault | null {
  const { name, parts, partMassesGrams = {} } = grip;
  if (typeof name !== 'string') return fault(`${path}.name`, wrongType('text', name));
  if (name.length > MAX_NAME) {
    return fault(`${path}.name`, { code: 'textTooLong', length: name.length, limit: MAX_NAME });
  }
  const found = checkNumbers(grip, OTHER_GRIP_LIMITS, path);
  if (found) return found;
  for (const [id, mass] of Object.entries(partMassesGrams)) {
    const wrong = checkNumber(mass, PART_MASS_LIMITS, `${path}.partMassesGrams.${id}`);
    if (wrong) return wrong;
  }
  const inParts = parts ? checkParts(parts, materials) : null;
  return inParts && fault(`${path}.${inParts.path}`, inParts.reason);
}
