import { MAX_NAME } from '../design/limits';
import { t } from '../messages';
import type { Session } from '../state/session';
import { benchDeskOf } from './deskOf';
import { decodeText } from './readings/decodeText';
import { looksLikeReadings } from './readings/looksLikeReadings';

/** Bytes of a file that are looked at; `looksLikeReadings` reads fewer. */
const LOOKED_AT = 65_536;

/** Larger files are not even read: the longest text that is taken (`MAX_READINGS_TEXT`) in UTF-16. */
const MAX_BYTES = 128 * 1024 * 1024;

/** How much a file looks like readings of a bench, from 0 to 1 (`looksLikeReadings`); 0 for what is no text. */
export async function likenessOf(file: Blob): Promise<number> {
  const bytes = new Uint8Array(await file.slice(0, LOOKED_AT).arrayBuffer());
  const decoded = decodeText(file.size > LOOKED_AT ? wholeLines(bytes) : bytes);
  return decoded.ok ? looksLikeReadings(decoded.value.text) : 0;
}

/** Up to the last line end, so that no letter is cut in two; of UTF-16, whose letters have two bytes, as it is. */
function wholeLines(bytes: Uint8Array): Uint8Array {
  const end = bytes.lastIndexOf(0x0a) + 1;
  return bytes.includes(0) || end === 0 ? bytes : bytes.subarray(0, end);
}

/** Puts files before the person, one after the other; nothing is taken yet. One that is too large is not even read. */
export async function offerFiles(session: Session, files: readonly File[]): Promise<void> {
  const large = files.find(({ size }) => size > MAX_BYTES);
  if (large) {
    const reason = t('app.fileTooLarge', { limit: MAX_BYTES / 1024 / 1024 });
    const text = t('app.fileRefused', { file: large.name, reason });
    session.actions.notify({ tone: 'warning', text });
  }
  const readable = files.filter(({ size }) => size <= MAX_BYTES);
  const sources = readable.map(async (file) => ({
    // A file system allows longer names than a design does.
    name: file.name.replace(/\.[^.]*$/, '').slice(0, MAX_NAME),
    source: new Uint8Array(await file.arrayBuffer()),
  }));
  benchDeskOf(session).offer(...(await Promise.all(sources)));
}
