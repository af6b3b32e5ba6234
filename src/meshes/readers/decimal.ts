const LONGEST = 400;
const ZERO = 48;

/**
 * The decimal number written in bytes [start, end) of ASCII text: sign, digits with an optional point, optional
 * exponent. NaN for anything else, so also for "nan", "inf", "0x1", a decimal comma and the empty text. Correctly
 * rounded: up to 15 digits and powers of ten up to 22 are exact doubles, so one operation rounds once; the rest goes
 * through the language's own reading.
 */
export function parseDecimal(bytes: Uint8Array, start: number, end: number): number {
  let i = start;
  const negative = bytes[i] === 45;
  if (negative || bytes[i] === 43) i++;
  let mantissa = 0;
  let exact = true;
  let digits = 0;
  let power = 0;
  let point = false;
  for (; i < end; i++) {
    const digit = bytes[i] - ZERO;
    if (digit >= 0 && digit <= 9) {
      digits++;
      if (mantissa < 1e14) {
        mantissa = 10 * mantissa + digit;
        if (point) power--;
      } else exact = false;
    } else if (bytes[i] === 46 && !point) point = true;
    else break;
  }
  if (digits === 0) return NaN;
  if (i < end) {
    if ((bytes[i] | 32) !== 101) return NaN;
    const exponent = parseExponent(bytes, i + 1, end);
    if (Number.isNaN(exponent)) return NaN;
    power += exponent;
  }
  if (!exact || power > 22 || power < -22) return slowDecimal(bytes, start, end);
  const size = power < 0 ? mantissa / 10 ** -power : mantissa * 10 ** power;
  return negative ? -size : size;
}

function parseExponent(bytes: Uint8Array, start: number, end: number): number {
  let i = start;
  const negative = bytes[i] === 45;
  if (negative || bytes[i] === 43) i++;
  if (i >= end) return NaN;
  let value = 0;
  for (; i < end; i++) {
    const digit = bytes[i] - ZERO;
    if (!(digit >= 0 && digit <= 9)) return NaN;
    value = Math.min(1e6, 10 * value + digit);
  }
  return negative ? -value : value;
}

function slowDecimal(bytes: Uint8Array, start: number, end: number): number {
  return end - start > LONGEST ? NaN : Number(asciiText(bytes, start, end));
}

/** Bytes as text, one character each: for short stretches such as a number or a keyword. */
export function asciiText(bytes: Uint8Array, start: number, end: number): string {
  return String.fromCharCode(...bytes.subarray(start, Math.min(end, start + LONGEST)));
}

const DECIMAL = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/** The same for a text: NaN unless it is a decimal number. */
export function decimalOf(text: string | undefined): number {
  return text !== undefined && text.length <= LONGEST && DECIMAL.test(text) ? Number(text) : NaN;
}

/** A word from the file fit to be shown: short, without control characters. */
export function shownWord(text: string): string {
  let shown = '';
  for (const letter of text.slice(0, 40))
    shown += letter >= ' ' && letter !== '\x7f' ? letter : '?';
  return text.length > 40 ? `${shown}...` : shown;
}
