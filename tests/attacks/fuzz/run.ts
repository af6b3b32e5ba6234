import type { Design } from '../../../src/design/design';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { createSession } from '../../../src/state/createSession';
import type { Session } from '../../../src/state/session';
import { mutatedBytes } from './bytes';
import type { Corpus } from './corpus';
import type { Door } from './door';
import { mutatedInside } from './packed';
import { ofInput } from './random';
import { mutatedText } from './tokens';

/** An input that a door did not stand up to. */
export interface Find {
  readonly door: string;
  readonly what: 'threw' | 'flaw' | 'wordless' | 'changed' | 'slow';
  readonly detail: string;
}

/** Processor time that an input may take, ms, for each 64 kB begun: what else the machine does is not counted. */
export const MOST_MS = 250;

/** The page's state, opened with a design that no input may change unasked. */
export class Bench {
  readonly session: Session;
  /** Processor time of the last opening, ms. */
  took = 0;
  /** Whether the door took it. */
  wasTaken = false;
  private readonly design: Design;
  private readonly text: string;

  constructor(text: string) {
    const read = parseDesign(text);
    if (!read.ok) throw new Error('Bench(): the design is not sound');
    this.design = read.value;
    this.session = createSession(read.value, () => {});
    this.text = serializeDesign(read.value);
  }

  /** Opens one input at a door; null where it stands up to it. `most`: ms, undefined where time is not looked at. */
  async open(door: Door, bytes: Uint8Array, most?: number): Promise<Find | null> {
    const found = (what: Find['what'], detail: string) => ({ door: door.name, what, detail });
    const start = process.cpuUsage();
    try {
      const opened = await door.open(bytes, this.session);
      const { user, system } = process.cpuUsage(start);
      const took = (user + system) / 1000;
      this.took = took;
      this.wasTaken = opened.taken;
      if (!opened.taken && opened.words === '') return found('wordless', 'refused without a word');
      if (!opened.taken && !this.isUntouched()) return found('changed', 'the design is another');
      if (opened.taken && opened.flaw !== null) return found('flaw', opened.flaw);
      if ('polluted' in {}) return found('changed', 'the prototype of every object is another');
      const limit = (most ?? Infinity) * Math.ceil(Math.max(1, bytes.length) / 65_536);
      if (took > limit)
        return found('slow', `${took.toFixed(0)} ms of processor time for ${bytes.length} bytes`);
      return null;
    } catch (error) {
      return found(
        'threw',
        error instanceof Error ? (error.stack ?? error.message) : String(error),
      );
    } finally {
      Reflect.deleteProperty(Object.prototype, 'polluted');
      if (!this.isUntouched()) this.putBack();
    }
  }

  private isUntouched(): boolean {
    return this.session.store.getState().design === this.design;
  }

  /** Whether the design's text is what it was: nothing was written into the object itself. */
  isWhole(): boolean {
    return serializeDesign(this.design) === this.text;
  }

  private putBack(): void {
    const { actions, store } = this.session;
    if (!actions.openDesign(this.design).ok) throw new Error('Bench.putBack(): refused');
    store.temporal.getState().clear();
  }
}

/** The input of a number: which door, and what comes to it. The same for the same seed on every machine. */
export function inputOf(
  doors: readonly Door[],
  corpus: Corpus,
  seed: number,
  index: number,
): { readonly door: Door; readonly bytes: Uint8Array } {
  const random = ofInput(seed, index);
  const door = doors[index % doors.length];
  const good = corpus.get(random.pick(door.good)) as Uint8Array;
  const other = corpus.get(random.pick([...corpus.keys()])) as Uint8Array;
  const kind = random.unit();
  if (door.form === 'bytes' || kind < 0.4)
    return { door, bytes: mutatedBytes(good, random, other) };
  const text = new TextDecoder();
  const inside = mutatedInside(door.form, good, random, text.decode(other.subarray(0, 20_000)));
  if (inside) return { door, bytes: inside };
  const changed = mutatedText(text.decode(good), random, text.decode(other.subarray(0, 20_000)));
  return { door, bytes: new TextEncoder().encode(changed) };
}
