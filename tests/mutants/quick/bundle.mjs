// Puts the tests and what they test into one script, quick/tests.cjs, in the working folder: run by StrykerJS after it
// has put its mutants into the sources there. MUTANT_TESTS: the files of tests, parted by commas.
import { mkdirSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';

const files = process.env.MUTANT_TESTS.split(',');
const shim = resolve('tests/mutants/quick/vitestShim.mjs');
const entry = resolve('quick/entry.ts');
mkdirSync('quick', { recursive: true });
writeFileSync(entry, files.map((file) => `import ${JSON.stringify(resolve(file))};`).join('\n'));

const tests = {
  name: 'all-tests',
  enforce: 'pre',
  resolveId: (id) => (id === 'vitest' ? { id: shim, external: true } : undefined),
  transform(code, id) {
    if (!/\.[mc]?tsx?$/.test(id)) return undefined;
    const here = code.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href));
    const file = files.find((one) => resolve(one) === id);
    if (!file) return here;
    return `import { beginFile } from 'vitest';beginFile(${JSON.stringify(file)});${here}`;
  },
};

await build({
  configFile: false,
  logLevel: 'warn',
  plugins: [tests],
  build: {
    ssr: entry,
    target: 'esnext',
    minify: false,
    outDir: 'quick',
    emptyOutDir: false,
    rolldownOptions: {
      output: { format: 'cjs', entryFileNames: 'tests.cjs', codeSplitting: false },
    },
  },
});
