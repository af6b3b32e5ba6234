import { fileSave as saveByBrowser } from 'browser-fs-access';
import { t } from '../messages';
import { isCancelled } from './fileErrors';

type Given = Parameters<typeof saveByBrowser>;

/**
 * Writes a file where the browser lets a page do that, else hands it over as a download (and then gives null). Written is a
 * copy that takes the file's place when it is whole (File System Access, createWritable): a fault leaves the file as it was.
 * Rejects with an AbortError only where a person closed the browser's window; a writing that the browser has broken off has
 * that name too, and rejects with another.
 */
export async function fileSave(
  made: Given[0],
  options: Given[1],
  handle: FileSystemFileHandle | null = null,
): Promise<FileSystemFileHandle | null> {
  let chosen = false;
  try {
    return await saveByBrowser(made, options, handle, false, () => {
      chosen = true;
    });
  } catch (error) {
    if (isCancelled(error) && (chosen || (await isThere(handle)))) {
      throw new Error(t('app.saveBroken'), { cause: error });
    }
    throw error;
  }
}

/**
 * What came of a `fileSave`: saved where the browser has told so; of a download it tells nothing, so it is called handed over.
 */
export function savedText(saved: FileSystemFileHandle | null, fileName: string): string {
  return saved ? t('app.saved', { file: saved.name }) : t('app.handed', { file: fileName });
}

/** Where it is not, the browser's window was opened in its place. */
async function isThere(handle: FileSystemFileHandle | null): Promise<boolean> {
  try {
    return (await handle?.getFile()) !== undefined;
  } catch {
    return false;
  }
}
