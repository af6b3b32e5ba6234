/** Whether a person closed the browser's own file window without choosing. */
export function isCancelled(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'AbortError';
}

/** What the browser says about a file that could not be opened or saved. */
export function reasonOf(error: unknown): string {
  return error instanceof Error ? error.message : String(error);
}

/** The file's text, or null where its bytes are not UTF-8: guessed letters would be kept as if they were meant. */
export async function utf8Text(file: Blob): Promise<string | null> {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
  } catch {
    return null;
  }
}
