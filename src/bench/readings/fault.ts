/**
 * What is wrong with a table of readings, and where. `row` counts from 1 as a spreadsheet or an editor shows it (blank
 * rows, comments and headings count; a cell with line breaks is still one row); `column` counts from 1. Either is null
 * where the fault belongs to no row or no column. Words are made by `faultText`.
 */
export interface ReadingsFault {
  readonly row: number | null;
  readonly column: number | null;
  /** The column's heading, empty where it has none. */
  readonly heading: string;
  readonly reason: ReadingsReason;
}

export type ReadingsReason =
  | { readonly code: 'empty' }
  | { readonly code: 'tooLong'; readonly length: number; readonly limit: number }
  /** Bytes that are no text: a workbook, a picture, a PDF. */
  | { readonly code: 'notText' }
  | { readonly code: 'workbook' }
  /** UTF-16 with half a character at its end. */
  | { readonly code: 'cutOff' }
  | { readonly code: 'openQuote' }
  | { readonly code: 'textAfterQuote'; readonly found: string }
  | { readonly code: 'tooManyRows'; readonly limit: number }
  | { readonly code: 'tooManyColumns'; readonly count: number; readonly limit: number }
  | { readonly code: 'cellTooLong'; readonly length: number; readonly limit: number }
  | { readonly code: 'noTable' }
  | { readonly code: 'noRows' }
  /** The comma parts the columns and is the decimal sign as well. */
  | { readonly code: 'commaIsBoth'; readonly cells: number; readonly columns: number }
  /** Every number could be thousands or three decimals: the person must say. */
  | { readonly code: 'decimalUnclear'; readonly found: string }
  | { readonly code: 'cancelled' }
  // Of the mapping.
  | { readonly code: 'noReadingColumn' }
  | { readonly code: 'noPlaceColumn' }
  | { readonly code: 'unitMissing' }
  | { readonly code: 'unitUnknown'; readonly found: string }
  | { readonly code: 'unitWrong'; readonly found: string; readonly role: string }
  | { readonly code: 'roleTwice'; readonly role: string; readonly first: number }
  | { readonly code: 'columnGone'; readonly columns: number }
  // Of a row.
  | { readonly code: 'tooManyCells'; readonly cells: number; readonly columns: number }
  | { readonly code: 'noValue'; readonly found: string }
  | { readonly code: 'notANumber'; readonly found: string }
  | { readonly code: 'notFinite'; readonly found: string }
  | { readonly code: 'otherDecimal'; readonly found: string; readonly decimal: string }
  | { readonly code: 'ambiguousNumber'; readonly found: string }
  | { readonly code: 'overRange'; readonly found: string }
  | { readonly code: 'badSense'; readonly found: string }
  | { readonly code: 'senseMissing' }
  | { readonly code: 'signContradicts'; readonly found: string; readonly sense: string }
  | { readonly code: 'badTravel'; readonly found: string }
  | { readonly code: 'badTime'; readonly found: string }
  | { readonly code: 'twoForces'; readonly first: number }
  | {
      readonly code: 'outOfRange';
      readonly value: number;
      readonly min: number;
      readonly max: number;
      readonly unit: string;
    };

export function readingsFault(
  reason: ReadingsReason,
  row: number | null = null,
  column: number | null = null,
  heading = '',
): ReadingsFault {
  return { row, column, heading, reason };
}
