import { describeFault } from '../../design/faultText';
import { unreachable } from '../../engine/result';
import { t } from '../../messages';
import type { LinkFault } from './shareLink';

/** Why a link could not be opened, as the end of a sentence. */
export function linkFaultText(fault: LinkFault): string {
  switch (fault.kind) {
    case 'none':
    case 'malformed':
    case 'damaged':
      return t(`share.fault.${fault.kind}`);
    case 'tooLong':
      return t('share.fault.tooLong', { length: fault.length, limit: fault.limit });
    case 'version':
      return t('share.fault.version', { found: fault.found });
    case 'unpacksTooLarge':
      return t('share.fault.unpacksTooLarge', { limit: fault.limit });
    case 'design':
      return describeFault(fault.fault);
    default:
      return unreachable(fault);
  }
}
