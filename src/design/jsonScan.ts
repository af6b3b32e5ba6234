import { joinPath } from './path';

/** Where and why a JSON text cannot be taken. */
export interface ScanStop {
  readonly kind: 'end' | 'syntax' | 'depth' | 'repeatedKey' | 'prototypeKey';
  /** UTF-16 units before the place. */
  readonly at: number;
  /** The value being read; for a key that cannot be taken, the object that has it. */
  readonly path: string;
  /** The key that cannot be taken, else empty. */
  readonly key: string;
}

/** An object or list that is still open. */
interface Level {
  /** Keys so far; null for a list. */
  readonly keys: Set<string> | null;
  /** Null until an object's first key was read. */
  step: string | number | null;
}

/**
 * Walks a JSON text (RFC 8259) without building it and without recursion; null where it is sound and no deeper than
 * `maxDepth`. Accepts exactly what JSON.parse accepts, save repeated keys, `__proto__` and depth; tested against it
 * on mutated texts.
 */
export function scanJson(text: string, maxDepth: number): ScanStop | null {
  return new JsonScanner(text, maxDepth).run();
}

class JsonScanner {
  private at = 0;
  private readonly levels: Level[] = [];

  constructor(
    private readonly text: string,
    private readonly maxDepth: number,
  ) {}

  run(): ScanStop | null {
    this.space();
    do {
      const stop = this.value() ?? this.afterValue();
      if (stop) return stop;
    } while (this.levels.length > 0);
    return this.at === this.text.length ? null : this.stop();
  }

  /** Reads one scalar or empty container, or opens one and reads up to its first value. */
  private value(): ScanStop | null {
    for (;;) {
      const mark = this.text[this.at];
      if (mark !== '{' && mark !== '[') return this.scalar(mark) ? null : this.stop();
      if (this.levels.length >= this.maxDepth) return this.stop('depth');
      this.at++;
      this.space();
      if (this.text[this.at] === (mark === '{' ? '}' : ']')) {
        this.at++;
        return null;
      }
      this.levels.push(mark === '{' ? { keys: new Set(), step: null } : { keys: null, step: 0 });
      const stop = mark === '{' ? this.key() : null;
      if (stop) return stop;
    }
  }

  /** Reads closing marks up to a comma and what follows it, or to the end of the outermost value. */
  private afterValue(): ScanStop | null {
    this.space();
    for (;;) {
      const level = this.levels.at(-1);
      if (!level) return null;
      const mark = this.text[this.at];
      if (mark === ',') {
        this.at++;
        this.space();
        if (level.keys) return this.key();
        level.step = (level.step as number) + 1;
        return null;
      }
      if (mark !== (level.keys ? '}' : ']')) return this.stop();
      this.at++;
      this.levels.pop();
      this.space();
    }
  }

  /** Reads a key and its colon. */
  private key(): ScanStop | null {
    const level = this.levels.at(-1) as Level;
    const from = this.at;
    if (!this.string()) return this.stop();
    const raw = this.text.slice(from, this.at);
    const key = raw.includes('\\') ? (JSON.parse(raw) as string) : raw.slice(1, -1);
    const kind = key === '__proto__' ? 'prototypeKey' : level.keys?.has(key) ? 'repeatedKey' : null;
    if (kind) return { kind, at: from, path: this.path(this.levels.length - 1), key };
    level.keys?.add(key);
    level.step = key;
    this.space();
    if (this.text[this.at] !== ':') return this.stop();
    this.at++;
    this.space();
    return null;
  }

  private scalar(mark: string | undefined): boolean {
    if (mark === '"') return this.string();
    if (mark === 't') return this.word('true');
    if (mark === 'f') return this.word('false');
    if (mark === 'n') return this.word('null');
    return this.number();
  }

  private word(word: string): boolean {
    for (const letter of word) {
      if (this.text[this.at] !== letter) return false;
      this.at++;
    }
    return true;
  }

  private string(): boolean {
    if (this.text[this.at] !== '"') return false;
    for (this.at++; this.at < this.text.length; this.at++) {
      const code = this.text.charCodeAt(this.at);
      if (code === 0x22) {
        this.at++;
        return true;
      }
      if (code < 0x20) return false;
      if (code === 0x5c && !this.escape()) return false;
    }
    return false;
  }

  /** From a backslash to the last character of its escape. */
  private escape(): boolean {
    this.at++;
    const mark = this.text[this.at];
    if (mark !== 'u') return mark !== undefined && '"\\/bfnrt'.includes(mark);
    for (let i = 0; i < 4; i++) {
      this.at++;
      if (!/^[0-9a-fA-F]$/.test(this.text[this.at] ?? '')) return false;
    }
    return true;
  }

  private number(): boolean {
    if (this.text[this.at] === '-') this.at++;
    if (this.text[this.at] === '0') this.at++;
    else if (!this.digits()) return false;
    if (this.text[this.at] === '.') {
      this.at++;
      if (!this.digits()) return false;
    }
    if (this.text[this.at] !== 'e' && this.text[this.at] !== 'E') return true;
    this.at++;
    if (this.text[this.at] === '+' || this.text[this.at] === '-') this.at++;
    return this.digits();
  }

  private digits(): boolean {
    const from = this.at;
    while (isDigit(this.text.charCodeAt(this.at))) this.at++;
    return this.at > from;
  }

  private space(): void {
    while (isSpace(this.text.charCodeAt(this.at))) this.at++;
  }

  private path(depth: number): string {
    return joinPath(this.levels.slice(0, depth).flatMap(({ step }) => step ?? []));
  }

  private stop(kind: 'depth' | 'syntax' = 'syntax'): ScanStop {
    const ended = kind === 'syntax' && this.at >= this.text.length;
    const path = this.path(this.levels.length);
    return { kind: ended ? 'end' : kind, at: this.at, path, key: '' };
  }
}

function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39;
}

function isSpace(code: number): boolean {
  return code === 0x20 || code === 0x0a || code === 0x0d || code === 0x09;
}
