import { fileOpen } from 'browser-fs-access';
import type { DesignFault } from '../../design/fault';
import { describeFault } from '../../design/faultText';
import { t } from '../../messages';
import type { Shelf } from '../../state/shelf';
import { MAX_ITEMS, parseShelf, serializeShelf } from '../../state/shelfFile';
import type { ShelfItem } from '../../state/shelfItem';
import { isCancelled, reasonOf, utf8Text } from '../../ui/fileErrors';
import { fileSave, savedText } from '../../ui/fileSave';
import { fileStem } from '../../ui/fileStem';
import { type Said, told, warned } from './said';

const FILES = {
  description: 'Stillgrip shelf',
  extensions: ['.json'],
  mimeTypes: ['application/json'],
  id: 'stillgrip-shelf',
};
/** Larger files are not even read. */
const MAX_BYTES = 64 * 1024 * 1024;
/** Faults of a file that are told one by one. */
const FAULTS_TOLD = 8;

/** Saves some of the shelf, or all of it, as a file. Null where the person thought better of it. */
export async function saveShelf(items: readonly ShelfItem[], name?: string): Promise<Said | null> {
  const stem = name === undefined ? 'stillgrip-shelf' : `${fileStem(name, 'part')}-shelf`;
  const fileName = `${stem}.json`;
  const text = new Blob([serializeShelf(items)], { type: 'application/json' });
  try {
    const saved = await fileSave(text, { ...FILES, fileName });
    return told(savedText(saved, fileName));
  } catch (error) {
    return isCancelled(error) ? null : warned(t('shelf.saveFailed', { reason: reasonOf(error) }));
  }
}

/** Asks for a shelf file and takes it in, as a whole or not at all. */
export async function openShelf(shelf: Shelf): Promise<Said | null> {
  try {
    const file = await fileOpen(FILES);
    return await takeInFile(shelf, file);
  } catch (error) {
    return isCancelled(error) ? null : warned(t('shelf.openFailed', { reason: reasonOf(error) }));
  }
}

async function takeInFile(shelf: Shelf, file: File): Promise<Said> {
  const refused = (details: readonly string[]) =>
    warned(t('shelf.fileRefused', { file: file.name }), details);
  if (file.size > MAX_BYTES) {
    return refused([t('shelf.tooLarge', { limit: MAX_BYTES / 1024 / 1024 })]);
  }
  const text = await utf8Text(file);
  if (text === null) return refused([t('shelf.notUtf8')]);
  const read = parseShelf(text);
  if (!read.ok) return refused(faultTexts(read.error));
  const outcome = await shelf.takeIn(read.value);
  if (!outcome.ok) return warned(t('shelf.fileFull', { file: file.name, limit: MAX_ITEMS }));
  const key = outcome.value.renamed > 0 ? 'shelf.tookInRenamed' : 'shelf.tookIn';
  return told(t(key, { file: file.name, ...outcome.value }));
}

/** The first few faults in words. */
export function faultTexts(faults: readonly DesignFault[]): string[] {
  const texts = faults
    .slice(0, FAULTS_TOLD)
    .map((one) => (one.reason.code === 'wrongFormat' ? t('shelf.notShelf') : describeFault(one)));
  const more = faults.length - texts.length;
  return more > 0 ? [...texts, t('shelf.moreFaults', { count: more })] : texts;
}
