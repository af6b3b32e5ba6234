import { t } from '../../messages';
import { significant } from '../../state/quantities';
import { isCancelled, reasonOf } from '../../ui/fileErrors';
import { fileSave } from '../../ui/fileSave';

/** A kind of file that can be saved. */
export interface FileKind {
  readonly extension: string;
  readonly mimeType: string;
  /** What the browser's own window calls it. */
  readonly description: string;
}

export const KINDS = {
  stl: { extension: '.stl', mimeType: 'model/stl', description: 'STL' },
  threeMf: { extension: '.3mf', mimeType: 'model/3mf', description: '3MF' },
  glb: { extension: '.glb', mimeType: 'model/gltf-binary', description: 'GLB' },
  step: { extension: '.step', mimeType: 'model/step', description: 'STEP' },
  png: { extension: '.png', mimeType: 'image/png', description: 'PNG' },
  svg: { extension: '.svg', mimeType: 'image/svg+xml', description: 'SVG' },
  csv: { extension: '.csv', mimeType: 'text/csv', description: 'CSV' },
  json: { extension: '.json', mimeType: 'application/json', description: 'JSON' },
} as const satisfies Readonly<Record<string, FileKind>>;

/**
 * Saves what `make` makes, and says what came of it; nothing where the person thought better of it. The browser asks for a
 * place first, while the press of the button still counts.
 */
export async function saveFile(
  stem: string,
  { extension, mimeType, description }: FileKind,
  make: () => BlobPart | Promise<BlobPart>,
): Promise<string> {
  const fileName = `${stem}${extension}`;
  let size = 0;
  const made = Promise.resolve()
    .then(make)
    .then((content) => {
      const blob = new Blob([content], { type: mimeType });
      size = blob.size;
      return blob;
    });
  // Where the window is closed before the making fails, nobody waits for it.
  made.catch(() => {});
  try {
    const options = { fileName, description, extensions: [extension], mimeTypes: [mimeType] };
    const saved = await fileSave(made, { ...options, id: `stillgrip-${extension.slice(1)}` });
    const values = { file: saved?.name ?? fileName, size: sizeText(size) };
    return t(saved ? 'files.saved' : 'files.handed', values);
  } catch (error) {
    if (isCancelled(error)) return '';
    return t('files.failed', { reason: reasonOf(error) });
  }
}

/** "412 kB": in thousands of bytes, as file managers count. */
export function sizeText(bytes: number): string {
  if (bytes < 1000) return `${bytes}\u00a0B`;
  if (bytes < 999_500) return `${significant(bytes / 1000)}\u00a0kB`;
  return `${significant(bytes / 1e6)}\u00a0MB`;
}
