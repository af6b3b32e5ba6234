import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { licencePage, licenceStyle, type NamedText } from './licencePage.ts';
import { type BundledPackage, licenceFault, mixingFault } from './licenceRules.ts';

/** What the collector hears of a built file; the bundles of the workers are built apart and have the same. */
interface BuiltChunk {
  readonly type: 'chunk' | 'asset';
  readonly fileName: string;
  readonly modules?: Readonly<Record<string, { readonly renderedLength: number }>>;
  readonly originalFileNames?: readonly string[];
}

/**
 * Lists every package of which something is in the built folder, with its licence, on a plain page of its own. The
 * build fails where a licence is not allowed. `collect` goes into the build of the page and of the workers alike.
 */
export function licences(root: string, texts: readonly NamedText[]) {
  const folders = new Set<string>();

  function collect(): Plugin {
    return {
      name: 'licences-collect',
      apply: 'build',
      generateBundle(_options, bundle) {
        for (const file of Object.values(bundle) as readonly BuiltChunk[]) {
          const used = Object.entries(file.modules ?? {})
            .filter(([, module]) => module.renderedLength > 0)
            .map(([id]) => id);
          for (const id of [...used, ...(file.originalFileNames ?? [])]) {
            const folder = packageFolder(id);
            if (folder !== null) folders.add(folder);
          }
          // Not the bundler's own helpers and stand-ins, which have no path.
          const real = used.filter((id) => !id.startsWith('\0') && id.includes('/'));
          const fault = mixingFault(file.fileName, [...new Set(real.map(packageName))]);
          if (fault !== null) this.error(fault);
        }
      },
    };
  }

  const page: Plugin = {
    name: 'licences-page',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler() {
        const found = [...folders]
          .map((folder) => readPackage(join(root, folder)))
          .toSorted((a, b) => (a.name < b.name ? -1 : 1));
        for (const one of found) {
          const fault = licenceFault(one);
          if (fault !== null) this.error(`licences: ${fault}`);
        }
        this.emitFile({
          type: 'asset',
          fileName: 'licences.html',
          source: licencePage(found, texts),
        });
        this.emitFile({ type: 'asset', fileName: 'licences.css', source: licenceStyle() });
      },
    },
  };
  return { collect, page };
}

/** Folder of the package that a module belongs to, from the project folder; null for our own. */
function packageFolder(id: string): string | null {
  const match = /^(?:.*\/)?(node_modules\/(?:.*\/node_modules\/)?(?:@[^/]+\/)?[^/]+)\//.exec(
    id.replaceAll('\\', '/'),
  );
  return match?.[1] ?? null;
}

function packageName(id: string): string | null {
  return packageFolder(id)?.replace(/^.*node_modules\//, '') ?? null;
}

function readPackage(folder: string): BundledPackage {
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const author = typeof about.author === 'string' ? about.author : about.author?.name;
  const source = typeof about.repository === 'string' ? about.repository : about.repository?.url;
  return {
    name: about.name,
    version: about.version,
    licence: typeof about.license === 'string' ? about.license : '',
    text: licenceText(folder),
    source: source ?? about.homepage ?? '',
    author: author ?? '',
  };
}

function licenceText(folder: string): string {
  const places = [folder, join(folder, 'dist')].filter((place) => existsSync(place));
  const files = places.flatMap((place) =>
    readdirSync(place, { withFileTypes: true })
      .filter((entry) => entry.isFile() && /^(licen[cs]e|notice|copying)\b/i.test(entry.name))
      .map((entry) => join(place, entry.name))
      .toSorted(),
  );
  return files.map((file) => readFileSync(file, 'utf8').trim()).join('\n\n');
}
