import { isDeepStrictEqual } from 'node:util';
import type { Design } from '../../../src/design/design';
import { parseDesign, serializeDesign } from '../../../src/design/file';
import { HeadModel } from '../../../src/design/headModel';
import type { Session } from '../../../src/state/session';

/** What a door made of something: a refusal in words, or something taken and what is wrong with that all the same. */
export type Opened =
  | { readonly taken: false; readonly words: string }
  | { readonly taken: true; readonly flaw: string | null };

/** How inputs for a door are bent: word by word, or inside what packs them. Bytes are bent at every door. */
export type Form = 'text' | 'zip' | 'glb' | 'png' | 'link' | 'bytes';

/** A way by which a file, a pasted text or a kept note comes into the page. */
export interface Door {
  readonly name: string;
  /** Source files where it begins. `doors.test.ts` finds those that no door names. */
  readonly entries: readonly string[];
  readonly form: Form;
  /** Names of good inputs (`corpus.ts`): all are taken. */
  readonly good: readonly string[];
  /** As the page does it; a door that changes the open design does so in `session`. */
  open(bytes: Uint8Array, session: Session): Opened | Promise<Opened>;
}

export function refused(words: string): Opened {
  return { taken: false, words };
}

export function taken(flaw: string | null = null): Opened {
  return { taken: true, flaw };
}

/** A file's text as the page reads it, or null where it is not UTF-8 (`ui/fileErrors`). */
export function strictText(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** A file's text as `Blob.text` gives it, or what a clipboard holds. */
export function anyText(bytes: Uint8Array): string {
  return new TextDecoder().decode(bytes);
}

/** What is wrong with a design that was taken: it must be written and read again as it is, and weigh something finite. */
export function designFlaw(design: Design): string | null {
  const text = serializeDesign(design);
  const again = parseDesign(text);
  if (!again.ok) return `written, it is refused: ${JSON.stringify(again.error).slice(0, 300)}`;
  if (!isDeepStrictEqual(JSON.parse(text), JSON.parse(serializeDesign(again.value)))) {
    return 'written and read, it is another';
  }
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) return `it cannot be weighed: ${JSON.stringify(loaded.error).slice(0, 300)}`;
  const numbers = [model.harmonics, model.parts.map(({ moments_G }) => moments_G)];
  return hasNonNumber(numbers) ? 'it weighs something that is no number' : null;
}

/** Whether anything in it is NaN or infinite. */
export function hasNonNumber(value: unknown): boolean {
  if (typeof value === 'number') return !Number.isFinite(value);
  if (typeof value !== 'object' || value === null) return false;
  if (ArrayBuffer.isView(value))
    return (value as Float64Array).some((one) => !Number.isFinite(one));
  return Object.values(value).some(hasNonNumber);
}
