/** A file name that every system takes, made of a name: letters, digits and single dashes. */
export function fileStem(name: string, otherwise: string): string {
  const stem = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  return stem === '' ? otherwise : stem;
}
