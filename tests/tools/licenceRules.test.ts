import { describe, expect, it } from 'vitest';
import { licenceFault, mixingFault } from '../../src/tools/build/licenceRules';

// Names of licences: SPDX License List (spdx.org/licenses). The build asks these of every package in it and fails
// where one has a fault; tests/browser/offline.spec.ts looks at the page that it makes.
describe('a package in the built folder', () => {
  it.each([['MIT'], ['ISC'], ['(MIT AND Zlib)'], ['(MPL-2.0 OR Apache-2.0)'], ['BSD-3-Clause']])(
    'may be under %s',
    (licence) => {
      expect(licenceFault({ name: 'any', licence })).toBeNull();
    },
  );

  it.each([
    ['GPL-3.0-only'],
    ['LGPL-2.1'],
    ['AGPL-3.0-or-later'],
    ['MPL-2.0'],
    ['(MIT AND GPL-2.0)'],
    ['UNLICENSED'],
    ['SEE LICENSE IN x'],
    [''],
  ])('may not be under "%s"', (licence) => {
    expect(licenceFault({ name: 'any', licence })).toContain('any');
  });

  it('may be under the LGPL only by name and with that licence', () => {
    expect(licenceFault({ name: 'occt-import-js', licence: 'LGPL-2.1' })).toBeNull();
    expect(licenceFault({ name: 'occt-import-js', licence: 'GPL-2.0' })).not.toBeNull();
  });

  it('under the LGPL shares no file with anything else', () => {
    expect(mixingFault('a.js', ['occt-import-js'])).toBeNull();
    expect(mixingFault('a.js', ['three', null])).toBeNull();
    expect(mixingFault('a.js', ['occt-import-js', null])).toContain('our own code');
    expect(mixingFault('a.js', ['three', 'replicad-opencascadejs'])).toContain('three');
  });
});
