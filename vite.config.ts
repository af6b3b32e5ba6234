import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { licences } from './src/tools/build/licences.ts';
import { offline } from './src/tools/build/offline.ts';
import { developmentPolicy, servedPolicy } from './src/tools/build/policy.ts';

function projectPath(path: string): string {
  return fileURLToPath(new URL(path, import.meta.url));
}

/** Licences of what the built folder carries in files of its own, by the name that each gets in `licences`. */
const LICENCES = {
  'open-cascade.txt': './node_modules/replicad-opencascadejs/LICENSE',
  'occt-import-js.txt': './node_modules/occt-import-js/dist/license.occt-import-js.txt',
  'occt-import-js-open-cascade.txt': './node_modules/occt-import-js/dist/license.occt.txt',
  'liberation-fonts.txt': './src/output/fonts/LICENSE',
  'inter-font.txt': './node_modules/@fontsource-variable/inter/LICENSE',
};

/** Puts them beside what they are for. */
const licenceFiles: Plugin = {
  name: 'licence-files',
  apply: 'build',
  generateBundle() {
    for (const [name, path] of Object.entries(LICENCES)) {
      this.emitFile({
        type: 'asset',
        fileName: `licences/${name}`,
        source: readFileSync(projectPath(path)),
      });
    }
  },
};

/** What is in the built folder and comes from no package. */
const bundled = licences(projectPath('.'), [
  {
    name: 'Stillgrip',
    licence: 'MIT',
    note: 'This page.',
    text: readFileSync(projectPath('./LICENSE'), 'utf8'),
  },
  {
    name: 'Liberation Sans',
    licence: 'OFL-1.1',
    note: 'The typeface of drawings and reports, unchanged, in files of its own.',
    text: readFileSync(projectPath('./src/output/fonts/LICENSE'), 'utf8'),
  },
]);

/** Packages under the LGPL get files of their own, so that another build of them can be put in their place. */
const APART_GROUPS = ['occt-import-js', 'replicad-opencascadejs'].map((name) => ({
  name,
  test: new RegExp(`node_modules[\\\\/]${name}[\\\\/]`),
}));

/**
 * What packages bring along for what nothing here asks of them, left out of the build: jspdf can turn a page into a
 * document with the first three, leva shows pictures and colours with the others.
 */
const LEFT_OUT: Readonly<Record<string, string>> = {
  html2canvas: 'export default undefined;',
  dompurify: 'export default undefined;',
  canvg: 'export default undefined;',
  'react-dropzone': 'export const useDropzone = undefined;',
  'react-colorful': 'export const RgbaColorPicker = undefined, RgbColorPicker = undefined;',
};

const leftOut: Plugin = {
  name: 'left-out',
  apply: 'build',
  enforce: 'pre',
  resolveId: (id) => (id in LEFT_OUT ? `\0left-out-${id}` : null),
  load: (id) => (id.startsWith('\0left-out-') ? LEFT_OUT[id.slice('\0left-out-'.length)] : null),
};

export default defineConfig({
  root: projectPath('./src'),
  // Relative addresses: the built folder works under any path.
  base: './',
  publicDir: projectPath('./assets'),
  // Workers load parts of themselves when needed (the CAD kernel), which the classic form cannot.
  worker: {
    format: 'es',
    plugins: () => [bundled.collect()],
    rolldownOptions: { output: { codeSplitting: { groups: APART_GROUPS } } },
  },
  plugins: [
    react(),
    leftOut,
    developmentPolicy,
    servedPolicy(projectPath('./src/index.html')),
    licenceFiles,
    bundled.collect(),
    bundled.page,
    offline(),
  ],
  build: {
    target: 'es2022',
    outDir: projectPath('./dist'),
    emptyOutDir: true,
    // three.js alone is about 700 kB before compression.
    chunkSizeWarningLimit: 900,
    rolldownOptions: {
      output: {
        // The two that change least often keep their cached files when the app changes.
        codeSplitting: {
          groups: [
            ...APART_GROUPS,
            { name: 'three', test: /node_modules[\\/]three[\\/]build[\\/]/ },
            { name: 'react', test: /node_modules[\\/](react|react-dom|scheduler)[\\/]/ },
          ],
        },
      },
    },
  },
  test: {
    root: projectPath('.'),
    include: ['tests/**/*.test.{ts,tsx}'],
    exclude: ['tests/browser/**'],
    environment: 'node',
    // Files share their workers' modules: loading them anew for each file took longer than the tests. A test that
    // changes what all share (a global, a prototype) puts it back.
    pool: 'forks',
    isolate: false,
    // Looks once, when it is loaded, what the browser can do: a test that resets modules must be able to load it anew.
    server: { deps: { inline: ['browser-fs-access'] } },
    maxWorkers: availableParallelism(),
    // What takes 5 s alone may take 50 on a busy machine: a limit on hangs, not on speed.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
