import { readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { PART_TYPES } from '../src/parts/registry';

const sourceFolder = fileURLToPath(new URL('../src/', import.meta.url));

/** Which layers each layer may import besides itself. */
const kernel = ['engine', 'parts', 'design', 'messages'];
const shared = [...kernel, 'neutralise', 'meshes', 'state', 'ui'];
const allowedLayers: Record<string, readonly string[]> = {
  messages: [],
  engine: [],
  parts: ['engine', 'messages'],
  design: ['engine', 'parts', 'messages'],
  worker: [],
  offline: [],
  meshes: ['engine', 'parts', 'worker'],
  neutralise: [...kernel, 'meshes', 'worker'],
  state: [...kernel, 'neutralise', 'meshes', 'worker'],
  ui: [...kernel, 'neutralise', 'state'],
  scene: shared,
  panels: shared,
  bench: [...shared, 'worker'],
  lessons: shared,
  output: [...shared, 'worker'],
  app: [...shared, 'worker', 'offline', 'scene', 'panels', 'bench', 'lessons', 'output'],
  cli: kernel,
  tools: [...kernel, 'lessons', 'offline'],
};

/** Which layers may import a package, for those that not every layer may. `x` stands for `x/...` as well. */
const upper = ['state', 'ui', 'scene', 'panels', 'bench', 'lessons', 'output', 'app'];
const packageUsers: Record<string, readonly string[]> = {
  three: ['scene', 'meshes'],
  'three-mesh-bvh': ['scene', 'meshes'],
  'three-stdlib': ['scene'],
  '@react-three': ['scene'],
  leva: upper,
  jspdf: ['output'],
  'dxf-writer': ['output'],
  replicad: ['output'],
  'replicad-opencascadejs': ['output'],
  react: upper,
  'react-dom': upper,
  zundo: upper,
  zustand: upper,
  node: ['cli', 'tools'],
};
const layersWithoutPackages = ['engine', 'messages', 'offline'];

const browserGlobals = new Set([
  'document',
  'fetch',
  'indexedDB',
  'localStorage',
  'navigator',
  'requestAnimationFrame',
  'sessionStorage',
  'window',
]);

/** Says what is wrong with one import of one file (path from src); undefined if it is in order. */
function importFault(file: string, target: string): string | undefined {
  const from = layerOf(file);
  const allowed = allowedLayers[from];
  if (allowed === undefined) return `${file}: the layer ${from} is not in the table`;
  return target.startsWith('.')
    ? layerFault(file, target, allowed)
    : packageFault(file, from, target);
}

function layerFault(file: string, target: string, allowed: readonly string[]): string | undefined {
  const path = posix.join(posix.dirname(file), target);
  const to = layerOf(path);
  if (to === layerOf(file) || allowed.includes(to)) return undefined;
  return `${file}: may not import ${path}`;
}

function packageFault(file: string, from: string, target: string): string | undefined {
  const name = target.startsWith('node:') ? 'node' : target;
  const rule = Object.keys(packageUsers).find((key) => name === key || name.startsWith(`${key}/`));
  const users = rule === undefined ? undefined : packageUsers[rule];
  const forbidden = layersWithoutPackages.includes(from) || users?.includes(from) === false;
  return forbidden ? `${file}: may not import the package ${target}` : undefined;
}

/** The folder under src; the name itself for a file that lies in src; ".." for what lies outside. */
function layerOf(path: string): string {
  return path.split('/')[0] ?? '';
}

/** Every module a text imports, for types or values, statically or not, and the workers it starts. */
function importsOf(text: string): string[] {
  const imported = ts.preProcessFile(text, true, true).importedFiles.map((file) => file.fileName);
  const workers = text.matchAll(/new URL\(\s*['"`]([^'"`]+)['"`],\s*import\.meta\.url/g);
  return [...imported, ...Array.from(workers, (match) => match[1] ?? '')];
}

/** The browser's global names a text uses as such: not as a property of something, nor in a comment. */
function browserGlobalsIn(text: string): string[] {
  const found: string[] = [];
  function visit(node: ts.Node): void {
    if (ts.isIdentifier(node) && browserGlobals.has(node.text) && !isPropertyName(node)) {
      found.push(node.text);
    }
    ts.forEachChild(node, visit);
  }
  visit(ts.createSourceFile('text.ts', text, ts.ScriptTarget.Latest, true));
  return found;
}

function isPropertyName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  return (
    (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent)) && parent.name === node
  );
}

function sourceFiles(): string[] {
  return readdirSync(sourceFolder, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.d.ts'));
}

function read(file: string): string {
  return readFileSync(`${sourceFolder}/${file}`, 'utf8');
}

describe('the layers of the source', () => {
  const files = sourceFiles();

  it('were found at all', () => {
    expect(files.length).toBeGreaterThanOrEqual(10);
    expect(files.filter((file) => layerOf(file) === 'engine').length).toBeGreaterThanOrEqual(1);
    expect(files.flatMap((file) => importsOf(read(file))).length).toBeGreaterThanOrEqual(10);
  });

  it('import one way only', () => {
    const faults = files.flatMap((file) =>
      importsOf(read(file)).map((target) => importFault(file, target)),
    );
    expect(faults.filter((fault) => fault !== undefined)).toEqual([]);
  });

  it('leave the browser out of the engine', () => {
    const engine = files.filter((file) => layerOf(file) === 'engine');
    const uses = engine.flatMap((file) =>
      browserGlobalsIn(read(file)).map((name) => `${file}: ${name}`),
    );
    expect(uses).toEqual([]);
  });
});

describe('the check of the layers', () => {
  it.each([
    ['engine/mass/sphere.ts', '../../parts/bolt'],
    ['engine/mass/sphere.ts', 'zod'],
    ['engine/units.ts', 'node:fs'],
    ['engine/units.ts', '../messages/english'],
    ['messages/english.ts', '../engine/units'],
    ['parts/bolt/mesh.ts', '../../design/schema'],
    ['parts/bolt/mesh.ts', 'three'],
    ['design/schema.ts', '../state/store'],
    ['design/schema.ts', 'zustand/vanilla'],
    ['state/store.ts', '../ui/button'],
    ['state/store.ts', 'three/examples/jsm/loaders/GLTFLoader.js'],
    ['scene/rotor.tsx', '../panels/rail'],
    ['bench/room.tsx', '../lessons/first'],
    ['panels/dial.tsx', '@react-three/fiber'],
    ['panels/dial.tsx', 'node:path'],
    ['ui/button.tsx', '../scene/rotor'],
    ['cli/analyse.ts', '../state/store'],
    ['tools/writeSchema.ts', '../app/main'],
    ['app/main.tsx', '../cli/analyse'],
    ['app/main.tsx', '../../tests/helper'],
    ['somewhere/file.ts', './other'],
  ])('finds fault with %s importing %s', (file, target) => {
    expect(importFault(file, target)).toContain(file);
  });

  it.each([
    ['engine/mass/sphere.ts', '../math/vector'],
    ['parts/bolt/index.ts', '../../engine/mass/sphere'],
    ['design/schema.ts', 'zod/mini'],
    ['scene/rotor.tsx', 'three/examples/jsm/loaders/GLTFLoader.js'],
    ['scene/rotor.tsx', '../ui/button'],
    ['app/main.tsx', '../scene/rotor'],
    ['cli/analyse.ts', 'node:fs'],
  ])('lets %s import %s', (file, target) => {
    expect(importFault(file, target)).toBeUndefined();
  });

  it('sees imports of every form', () => {
    const text = `
      import a from './a';
      import type { B } from './b';
      export { c } from './c';
      const d = await import('./d');
      import './e.css';
      const worker = new Worker(new URL('./f.ts', import.meta.url), { type: 'module' });
      // import g from './g';`;
    expect(importsOf(text).toSorted()).toEqual(['./a', './b', './c', './d', './e.css', './f.ts']);
  });

  it('tells a browser global from a comment and from a property of the same name', () => {
    const text = `// the window
      const length = window.innerWidth + frame.window + { document: 1 }.document;`;
    expect(browserGlobalsIn(text)).toEqual(['window']);
  });
});

describe('part types', () => {
  it('are told apart nowhere outside src/parts: what differs is asked of the type', () => {
    const kinds = PART_TYPES.map((type) => type.kind).join('|');
    const compared = new RegExp(`kind\\s*[!=]==\\s*['"](${kinds})['"]|case ['"](${kinds})['"]`);
    expect("part.kind === 'bolt'").toMatch(compared);
    const files = readdirSync(new URL('../src/', import.meta.url), { recursive: true })
      .map(String)
      .filter((file) => /\.tsx?$/.test(file) && !file.startsWith('parts'));
    expect(files.length).toBeGreaterThan(100);
    const wrong = files.filter((file) =>
      compared.test(readFileSync(new URL(`../src/${file}`, import.meta.url), 'utf8')),
    );
    expect(wrong).toEqual([]);
  });
});
