import type { LimitUnit } from './limits';

/**
 * What is wrong with a design, and where. `path` leads to the field as in the file (`parts[2].lengthMm`,
 * `rotor.speedRpm`); it is empty for the file as a whole. `reason` carries the numbers; words are made by
 * `faultMessage` or by the page's catalogue.
 */
export interface DesignFault {
  readonly path: string;
  readonly reason: FaultReason;
}

export type FaultReason =
  | { readonly code: 'empty' }
  | { readonly code: 'tooLong'; readonly length: number; readonly limit: number }
  /** The text ends before the JSON does. Line and column count from 1. */
  | { readonly code: 'truncated'; readonly line: number; readonly column: number }
  | {
      readonly code: 'notJson';
      readonly line: number;
      readonly column: number;
      readonly found: string;
    }
  | { readonly code: 'repeatedKey'; readonly key: string; readonly line: number }
  | { readonly code: 'tooDeep'; readonly limit: number }
  | { readonly code: 'wrongFormat'; readonly found: string; readonly expected: string }
  | { readonly code: 'badVersion'; readonly found: string }
  | { readonly code: 'newerVersion'; readonly found: number; readonly known: number }
  | { readonly code: 'olderVersion'; readonly found: number; readonly known: number }
  | { readonly code: 'migrationFailed'; readonly from: number; readonly detail: string }
  | { readonly code: 'missing' }
  | { readonly code: 'unknownKey'; readonly key: string }
  | { readonly code: 'unknownKind'; readonly kind: string; readonly known: readonly string[] }
  | { readonly code: 'wrongType'; readonly expected: string; readonly found: string }
  | { readonly code: 'notFinite' }
  | { readonly code: 'notWhole'; readonly value: number }
  | {
      readonly code: 'tooSmall';
      readonly value: number;
      readonly limit: number;
      readonly unit: LimitUnit;
    }
  | {
      readonly code: 'tooLarge';
      readonly value: number;
      readonly limit: number;
      readonly unit: LimitUnit;
    }
  | { readonly code: 'wrongCount'; readonly count: number; readonly expected: number }
  | { readonly code: 'textTooLong'; readonly length: number; readonly limit: number }
  | { readonly code: 'emptyText' }
  | { readonly code: 'notAChoice'; readonly found: string; readonly options: readonly string[] }
  /** A list other than that of the parts. */
  | { readonly code: 'tooMany'; readonly count: number; readonly limit: number }
  /** A key of a catalogue reference: no such standard or size, or a length too much or too few. */
  | {
      readonly code: 'notInCatalogue';
      readonly key: 'standard' | 'size' | 'lengthMm';
      readonly known?: readonly string[];
      readonly missing?: boolean;
    }
  | { readonly code: 'unknownMaterial'; readonly material: string }
  /** Data from a file that a part type cannot use. */
  | { readonly code: 'unsound'; readonly detail: string }
  /** What was measured of a part cannot be true of its dimensions, or of anything. */
  | { readonly code: 'measuredImpossible'; readonly detail: string }
  /** A swing about an axis that has one already. */
  | { readonly code: 'repeatedAxis'; readonly axis: string }
  | { readonly code: 'tooManyParts'; readonly count: number; readonly limit: number }
  | { readonly code: 'repeatedId'; readonly id: string; readonly first: number }
  | { readonly code: 'repeatedMaterial'; readonly id: string; readonly first: number }
  | { readonly code: 'repeatedTryOut'; readonly id: string; readonly first: number }
  /** Exactly one try-out has no parts of its own: `count` have none. */
  | { readonly code: 'shownTryOuts'; readonly count: number }
  | { readonly code: 'adoptedTwice'; readonly first: number }
  /** The parts of all try-outs together. */
  | { readonly code: 'tooManyTryOutParts'; readonly count: number; readonly limit: number }
  | { readonly code: 'poseOrSocket'; readonly found: 'both' | 'neither' }
  | { readonly code: 'missingParent'; readonly parent: string }
  | {
      readonly code: 'unknownSocket';
      readonly socket: string;
      readonly parent: string;
      readonly known: readonly string[];
    }
  /** The part cannot sit there: the socket takes `socketMates`, the part fits `partMates`. */
  | {
      readonly code: 'misfit';
      readonly kind: string;
      readonly socket: string;
      readonly socketMates: string;
      readonly partMates: readonly string[];
    }
  /** Each of `ids` sits on the next, and the last on the first. */
  | { readonly code: 'cycle'; readonly ids: readonly string[] }
  | {
      readonly code: 'offsetOutOfRange';
      readonly value: number;
      readonly low: number;
      readonly high: number;
    }
  /** A rule between parameters of one part; `against` is the other parameter or a phrase for it. */
  | {
      readonly code: 'rule';
      readonly kind: string;
      readonly field: string;
      readonly rule: 'below' | 'above' | 'atMost' | 'atLeast';
      readonly value: number;
      readonly limit: number;
      readonly against: string;
      readonly unit: LimitUnit;
    };

export function fault(path: string, reason: FaultReason): DesignFault {
  return { path, reason };
}

/**
 * A fault found within something, as it is seen from outside: `path` leads to that thing. Paths are put together here, where
 * something is wrong, so that what is sound costs no text.
 */
export function within(path: string, { path: inner, reason }: DesignFault): DesignFault {
  return { path: path + inner, reason };
}
