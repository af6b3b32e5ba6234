/** Text for an attribute or an element of XML 1.0: marks escaped, characters that XML does not allow left out. */
export function xmlText(text: string): string {
  const allowed = Array.from(text).filter((letter) => {
    const code = letter.codePointAt(0) ?? 0;
    return code >= 32 && code !== 0xfffe && code !== 0xffff && !(code >= 0xd800 && code <= 0xdfff);
  });
  return allowed
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&apos;');
}
