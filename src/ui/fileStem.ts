/** Names that one family of systems keeps for its devices, whatever follows the first dot. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** A file name that every system takes, made of a name: letters, digits and single dashes. */
export function fileStem(name: string, otherwise: string): string {
  const stem = name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  if (RESERVED.test(stem)) return `${otherwise}-${stem}`;
  return stem === '' ? otherwise : stem;
}
