/** A package of which something is in the built folder. */
export interface BundledPackage {
  readonly name: string;
  readonly version: string;
  /** SPDX expression of its package.json; empty where it gives none. */
  readonly licence: string;
  /** Its licence files, one after the other; empty where it brings none. */
  readonly text: string;
  /** Where it comes from, as its package.json says. */
  readonly source: string;
  readonly author: string;
}

/** Licences that ask for no more than that their text goes along. */
const PERMISSIVE = ['MIT', 'ISC', '0BSD', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', 'Zlib'];

/** What may be in the built folder although its licence asks for more, and how that is met. */
export const APART: Readonly<Record<string, { readonly licence: string; readonly how: string }>> = {
  'occt-import-js': {
    licence: 'LGPL-2.1',
    how: 'Reads STEP. Unchanged, in files of its own that are fetched when a STEP file is read; another build of it can be put in their place.',
  },
  'replicad-opencascadejs': {
    licence: 'LGPL-2.1-only',
    how: 'Writes STEP. Unchanged, in files of its own that are fetched when a STEP file is written; another build of it can be put in their place.',
  },
  '@fontsource-variable/inter': {
    licence: 'OFL-1.1',
    how: 'The typeface of the page, unchanged, in files of its own.',
  },
};

/** Why a package may not be in the built folder; null where it may. Of "A OR B" one that is allowed is enough. */
export function licenceFault(found: Pick<BundledPackage, 'name' | 'licence'>): string | null {
  const { name, licence } = found;
  if (licence === '') return `${name} gives no licence`;
  if (APART[name]?.licence === licence) return null;
  const choices = licence.replace(/^\(|\)$/g, '').split(' OR ');
  if (choices.some((choice) => choice.split(' AND ').every((one) => PERMISSIVE.includes(one)))) {
    return null;
  }
  return `${name} is under ${licence}, which is neither permissive nor stated as apart`;
}

/** Whether a file that holds something of a package apart holds anything of another; names the two. */
export function mixingFault(file: string, packages: readonly (string | null)[]): string | null {
  const apart = packages.find((name) => name !== null && name in APART);
  if (apart === undefined) return null;
  const other = packages.find((name) => name !== apart);
  if (other === undefined) return null;
  return `${file} mixes ${apart} with ${other ?? 'our own code'}`;
}
