import { describe, expect, it } from 'vitest';
import { isCancelled, reasonOf, utf8Text } from '../../src/ui/fileErrors';

describe('files from the browser', () => {
  // The file picker rejects with an AbortError when it is closed without a choice (File System Access, W3C draft).
  it('a closed file window is no fault, anything else is', () => {
    expect(isCancelled(new DOMException('closed', 'AbortError'))).toBe(true);
    expect(isCancelled(new DOMException('no', 'NotAllowedError'))).toBe(false);
    expect(isCancelled(new Error('AbortError'))).toBe(false);
    expect(reasonOf(new Error('disk full'))).toBe('disk full');
    expect(reasonOf('gone')).toBe('gone');
  });

  // RFC 3629: C3 A9 is e with acute accent; E9 alone (as in ISO 8859-1) is no UTF-8.
  it('bytes that are not UTF-8 are no text', async () => {
    expect(await utf8Text(new Blob([Uint8Array.of(0xc3, 0xa9)]))).toBe('\u00e9');
    expect(await utf8Text(new Blob([Uint8Array.of(0xe9)]))).toBeNull();
  });
});
