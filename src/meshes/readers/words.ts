import { asciiText, parseDecimal } from './decimal';

/** Walks the words of ASCII text without making strings of it; a text may be longer than a string can be. */
export class Words {
  /** Bounds of the current word. */
  start = 0;
  end = 0;
  /** Number of the line that the current word stands in, from 1. */
  line = 1;

  constructor(readonly bytes: Uint8Array) {
    // The mark of UTF-8 that some editors put first.
    if (bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf) this.end = 3;
  }

  /** Moves to the next word, across lines; false at the end of the text. */
  next(): boolean {
    const { bytes } = this;
    let i = this.end;
    for (; i < bytes.length && bytes[i] <= 32; i++) if (bytes[i] === 10) this.line++;
    return this.take(i);
  }

  /** Moves to the next word of this line; a backslash before the line's end joins the next line. False at its end. */
  nextInLine(): boolean {
    const { bytes } = this;
    let i = this.end;
    for (; i < bytes.length; i++) {
      if (bytes[i] === 92 && lineEnds(bytes, i + 1)) {
        i = bytes[i + 1] === 13 ? i + 2 : i + 1;
        this.line++;
      } else if (bytes[i] === 10 || bytes[i] > 32) break;
    }
    if (i >= bytes.length || bytes[i] === 10) {
      this.start = i;
      this.end = i;
      return false;
    }
    return this.take(i);
  }

  /** Goes back to the end of the line that the word before this one stands in. */
  toLineEnd(at: number): void {
    for (let i = at; i < this.start; i++) if (this.bytes[i] === 10) this.line--;
    this.start = at;
    this.end = at;
  }

  /** Passes over what is left of the line. */
  skipLine(): void {
    const at = this.bytes.indexOf(10, this.end);
    this.end = at < 0 ? this.bytes.length : at;
  }

  number(): number {
    return parseDecimal(this.bytes, this.start, this.end);
  }
  text(): string {
    return asciiText(this.bytes, this.start, this.end);
  }
  /** Whether the word is this keyword, given in small letters; the text's case does not matter. */
  is(keyword: string): boolean {
    if (this.end - this.start !== keyword.length) return false;
    for (let i = 0; i < keyword.length; i++) {
      if ((this.bytes[this.start + i] | 32) !== keyword.charCodeAt(i)) return false;
    }
    return true;
  }

  private take(from: number): boolean {
    const { bytes } = this;
    let i = from;
    while (i < bytes.length && bytes[i] > 32 && !(bytes[i] === 92 && lineEnds(bytes, i + 1))) i++;
    this.start = from;
    this.end = i;
    return i > from;
  }
}

function lineEnds(bytes: Uint8Array, at: number): boolean {
  return bytes[at] === 10 || (bytes[at] === 13 && bytes[at + 1] === 10);
}
