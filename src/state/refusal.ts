import type { DesignFault } from '../design/fault';

/**
 * A refused change as a field shows it: which field should give way, and its limit in the field's own unit. `part` is
 * the id of the part that stands in the way where it is not the one being changed.
 */
export interface Refusal {
  readonly field: string;
  readonly rule:
    | 'notANumber'
    | 'notAnOption'
    | 'atLeast'
    | 'atMost'
    | 'below'
    | 'above'
    | 'unknownPart'
    | 'notAllowed';
  readonly limit?: number;
  /** Parameter that sets the limit, or a noun phrase for it. */
  readonly against?: string;
  readonly part?: string;
  /** The fault it was made from, where there is one. */
  readonly fault?: DesignFault;
}

/** The field's view of a fault. `ids` are the design's part ids in list order; `changed` the part being changed. */
export function refusalOf(fault: DesignFault, ids: readonly string[], changed?: string): Refusal {
  const index = /^parts\[(\d+)\]/.exec(fault.path);
  const owner = index ? ids[Number(index[1])] : undefined;
  const field =
    fault.path
      .replace(/\[\d+\]$/, '')
      .split('.')
      .at(-1) ?? '';
  const about = { field, fault, ...(owner && owner !== changed ? { part: owner } : {}) };
  const { reason } = fault;
  switch (reason.code) {
    case 'wrongType':
    case 'notFinite':
    case 'notWhole':
    case 'missing':
      return { ...about, rule: 'notANumber' };
    case 'notAChoice':
      return { ...about, rule: 'notAnOption' };
    case 'tooSmall':
      return { ...about, rule: 'atLeast', limit: reason.limit };
    case 'tooLarge':
      return { ...about, rule: 'atMost', limit: reason.limit };
    case 'rule':
      return { ...about, rule: reason.rule, limit: reason.limit, against: reason.against };
    case 'offsetOutOfRange':
      return reason.value < reason.low
        ? { ...about, rule: 'atLeast', limit: reason.low }
        : { ...about, rule: 'atMost', limit: reason.high };
    default:
      return { ...about, rule: 'notAllowed' };
  }
}
