/** A folder of the engine with the tests of the same name; `without` leaves out tests too slow to run again and again. */
function engine(name, without = []) {
  return {
    name: `engine/${name}`,
    files: [`src/engine/${name}/**/*.ts`],
    tests: [`tests/engine/${name}`],
    without,
  };
}

/** What can be mutated: the files, and the tests that should notice. Names are those of `npm run mutants NAME`. */
export const folders = [
  engine('math'),
  {
    name: 'engine/units',
    files: ['src/engine/units.ts', 'src/engine/result.ts'],
    tests: ['tests/engine/units.test.ts', 'tests/engine/result.test.ts'],
  },
  engine('feathering', ['multibodyOracle.test.ts', 'manyCurves.test.ts']),
  engine('linkage', ['reachScan.test.ts']),
  engine('friction'),
  engine('mass', ['meshLarge.test.ts', 'highPrecision.test.ts', 'ledgerMillion.test.ts']),
  engine('balance'),
  engine('loads'),
  engine('lag'),
  engine('solve'),
  engine('air', ['manyRotors.test.ts']),
  engine('release', ['multibodyRelease.test.ts', 'thousandSwings.test.ts', 'randomGrips.test.ts']),
  engine('identify', ['recovery.test.ts', 'curveFit.test.ts', 'benchChances.test.ts']),
  engine('clearance', ['nearestGap.test.ts']),
  {
    // Without STEP, whose reader starts a CAD kernel for every mutant.
    name: 'meshes/readers',
    files: ['src/meshes/readers/**/*.ts', '!src/meshes/readers/step.ts'],
    tests: ['tests/meshes/readers'],
  },
  {
    name: 'meshes/checks',
    files: ['src/meshes/checks/**/*.ts', 'src/meshes/checkMesh.ts'],
    // Not checks.test.ts and crossings.test.ts beside them: rays and balls of thousands of triangles.
    tests: ['tests/meshes/checks', 'tests/meshes/unit.test.ts'],
    without: ['intricate.test.ts'],
  },
  {
    name: 'design/reading',
    files: [
      'src/design/file.ts',
      'src/design/json*.ts',
      'src/design/schema*.ts',
      'src/design/check*.ts',
      'src/design/migrations.ts',
    ],
    // Not schemaPolicy.test.ts, which loads the sources a second time, nor what tries thousands of random designs and texts
    // (fileRandom.test.ts, jsonScanRandom.test.ts).
    tests: [
      'tests/design/reading',
      'tests/design/faults.test.ts',
      'tests/design/file.test.ts',
      'tests/design/jsonGrammar.test.ts',
      'tests/design/jsonText.test.ts',
      'tests/design/migrations.test.ts',
      'tests/design/schema.test.ts',
      'tests/design/toleranceSection.test.ts',
      'tests/design/tryOutsFile.test.ts',
      'tests/bench/benchRecord.test.ts',
    ],
  },
  {
    name: 'bench/readings',
    files: ['src/bench/readings/**/*.ts'],
    tests: ['tests/bench/readings'],
    without: ['long.test.ts', 'generated.test.ts', 'looksLikeAssets.test.ts'],
  },
  {
    name: 'parts/airfoilFile',
    files: ['src/parts/airfoilFile.ts'],
    tests: ['tests/parts/airfoilFile.test.ts'],
  },
];
