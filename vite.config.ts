import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

function projectPath(path: string): string {
  return fileURLToPath(new URL(path, import.meta.url));
}

/**
 * While developing, Vite puts styles and a refresh script in line and talks to the page over a web socket; the
 * content policy of the built page allows none of that.
 */
const developmentPolicy: Plugin = {
  name: 'development-policy',
  apply: 'serve',
  transformIndexHtml: {
    order: 'pre',
    handler: (html) =>
      html
        .replace(/style-src 'self' '[^']+'/, "style-src 'self' 'unsafe-inline'")
        .replace("script-src 'self'", "script-src 'self' 'unsafe-inline'")
        .replace("connect-src 'self'", "connect-src 'self' ws:")
        .replace(/; require-trusted-types-for 'script'/, ''),
  },
};

/** Licences of what the built folder carries in files of its own, by the name that each gets in `licences`. */
const LICENCES = {
  'open-cascade.txt': './node_modules/replicad-opencascadejs/LICENSE',
  'occt-import-js.txt': './node_modules/occt-import-js/dist/license.occt-import-js.txt',
  'occt-import-js-open-cascade.txt': './node_modules/occt-import-js/dist/license.occt.txt',
  'liberation-fonts.txt': './src/output/fonts/LICENSE',
  'inter-font.txt': './node_modules/@fontsource-variable/inter/LICENSE',
};

/** Puts them beside what they are for. */
const licences: Plugin = {
  name: 'licences',
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

export default defineConfig({
  root: projectPath('./src'),
  // Relative addresses: the built folder works under any path.
  base: './',
  publicDir: projectPath('./assets'),
  // Workers load parts of themselves when needed (the CAD kernel), which the classic form cannot.
  worker: { format: 'es' },
  plugins: [react(), developmentPolicy, licences],
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
    maxWorkers: availableParallelism(),
    // What takes 5 s alone may take 50 on a busy machine: a limit on hangs, not on speed.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
