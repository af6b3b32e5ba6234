import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** The tests that a run of mutants may use, as globs parted by commas (set by src/tools/mutants). */
const asked = process.env.MUTANT_TESTS?.split(',') ?? [];

/** Files of tests that take long, the longest last: a mutant is dead at the first test that fails. */
const SLOW = [
  'formats.test.ts',
  'eigenSymmetric.test.ts',
  'momentLaws.test.ts',
  'momentCurve.test.ts',
  'reach.test.ts',
  'freeBody.test.ts',
  'measured.test.ts',
  'weighLaws.test.ts',
  'equilibriaEdges.test.ts',
  'ledger.test.ts',
  'spatialRod.test.ts',
  'hoverLaws.test.ts',
  'polarText.test.ts',
  'highPrecision.test.ts',
  'equilibria.test.ts',
  'benchTools.test.ts',
  'checks.test.ts',
  'mesh.test.ts',
  'hostile.test.ts',
];

class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const slowness = ({ moduleId }: TestSpecification) =>
      SLOW.findIndex((name) => moduleId.endsWith(`/${name}`));
    return files.toSorted((a, b) => slowness(a) - slowness(b));
  }
}

/** Only the tests asked for, in node, without the page's plugins: what StrykerJS runs again and again. */
export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    include: asked.filter((glob) => !glob.startsWith('!')),
    exclude: asked.filter((glob) => glob.startsWith('!')).map((glob) => glob.slice(1)),
    environment: 'node',
    isolate: false,
    sequence: { sequencer: QuickFirst },
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
