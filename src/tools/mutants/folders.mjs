/** Tests of a folder; `!` leaves one out that takes longer than all the others together. */
function engine(name, more = []) {
  return {
    name: `engine/${name}`,
    files: [`src/engine/${name}/**/*.ts`],
    tests: [`tests/engine/${name}/**/*.test.ts`, ...more],
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
  engine('feathering', ['!**/multibodyOracle.test.ts']),
  engine('linkage'),
  engine('friction'),
  engine('mass'),
  engine('balance'),
  engine('loads'),
  engine('lag'),
  engine('solve'),
  engine('air'),
  engine('release', ['!**/multibodyRelease.test.ts']),
  engine('identify', ['!**/recovery.test.ts']),
  engine('clearance'),
  {
    name: 'meshes/readers',
    files: ['src/meshes/readers/**/*.ts', 'src/meshes/readMeshFile.ts', 'src/meshes/importMesh.ts'],
    tests: ['tests/meshes/**/*.test.ts', '!**/hostile.test.ts', '!**/exported.test.ts'],
  },
  {
    name: 'meshes/checks',
    files: ['src/meshes/checks/**/*.ts', 'src/meshes/checkMesh.ts'],
    tests: ['tests/meshes/**/*.test.ts'],
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
    tests: ['tests/design/*.test.ts'],
  },
  {
    name: 'bench/readings',
    files: ['src/bench/readings/**/*.ts'],
    tests: ['tests/bench/readings/**/*.test.ts'],
  },
];
