/** Bytes as letters that an address takes as they are: base64 of RFC 4648 section 5, without padding. */
export function toBase64Url(bytes: Uint8Array): string {
  let letters = '';
  for (let at = 0; at < bytes.length; at += 8192) {
    letters += String.fromCharCode(...bytes.subarray(at, at + 8192));
  }
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** The bytes again; null where the text is none of these letters, or has a length that no bytes give. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (/[^A-Za-z0-9_-]/.test(text) || text.length % 4 === 1) return null;
  try {
    const letters = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}
