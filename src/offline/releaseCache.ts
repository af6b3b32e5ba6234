import type { BuiltFile, Release } from './release';

/** What it needs of the browser; the tests bring their own. */
export interface ReleaseCachePorts {
  readonly caches: Pick<CacheStorage, 'open' | 'keys' | 'delete'>;
  readonly fetch: (address: string, options?: RequestInit) => Promise<Response>;
  /** Address of the page's folder, with a slash at the end. */
  readonly scope: string;
}

/** Requests at a time while a release is fetched. */
const AT_A_TIME = 6;
/** Names of files in this folder hold a hash of what is in them. */
const HASHED = /^assets\//;

/**
 * Keeps the files of one release in the browser's caches and answers requests from them.
 *
 * What is kept is fetched with its SHA-256, so that it is this build to the byte, or nothing. A release that
 * was fetched in part goes on from there. Files with a hash in their name are taken over from older releases. Caches
 * carry the folder in their name: copies of the page under other paths of one host keep out of each other's.
 */
export class ReleaseCache {
  private readonly listed: ReadonlyMap<string, BuiltFile>;
  private readonly later: ReadonlyMap<string, BuiltFile>;

  constructor(
    private readonly release: Release,
    private readonly ports: ReleaseCachePorts,
  ) {
    this.listed = new Map(release.files.map((file) => [file.path, file]));
    this.later = new Map(release.later.map((file) => [file.path, file]));
  }

  /** Fetches and keeps what is not kept yet. Rejects where a file cannot be had as the build made it, or be kept. */
  async install(): Promise<void> {
    const cache = await this.ports.caches.open(this.ownCache());
    const older = await this.olderCaches();
    const waiting = [...this.release.files];
    const work = async () => {
      for (let file = waiting.shift(); file; file = waiting.shift()) {
        await this.keep(cache, file, older);
      }
    };
    await Promise.all(Array.from({ length: AT_A_TIME }, work));
  }

  /**
   * Deletes what other releases of this folder left, and the later files that this one does not have. Not to be called while a
   * newer release waits: its files would go with the older ones.
   */
  async tidy(): Promise<void> {
    const stale = await this.staleCaches();
    await Promise.all(stale.map((name) => this.ports.caches.delete(name)));
    const cache = await this.ports.caches.open(this.laterCache());
    for (const request of await cache.keys()) {
      const path = this.pathOf(request.url);
      if (path === null || !this.later.has(path)) await cache.delete(request);
    }
  }

  /**
   * The answer to a request, or null where it is left to the browser: other methods, other hosts, other folders, and
   * files that no build of ours has.
   */
  answer(request: Pick<Request, 'method' | 'url' | 'headers'>): Promise<Response> | null {
    if (request.method !== 'GET' || request.headers.has('range')) return null;
    const path = this.pathOf(request.url);
    if (path === null) return null;
    if (this.listed.has(path)) return this.fromRelease(path);
    const file = this.later.get(path);
    if (file) return this.fromLater(file);
    // A page of an older release that is still open fetches a piece of its own.
    return HASHED.test(path) ? this.fromOlder(path) : null;
  }

  private async fromRelease(path: string): Promise<Response> {
    const address = this.addressOf(path);
    const cache = await this.ports.caches.open(this.ownCache());
    const kept = await cache.match(address);
    if (kept) return kept;
    // The browser or a person took it out of the cache: it is put back, if the host still has this build's.
    const file = this.listed.get(path) as BuiltFile;
    await this.keep(cache, file, []).catch(() => undefined);
    return (await cache.match(address)) ?? this.ports.fetch(address);
  }

  private async fromLater(file: BuiltFile): Promise<Response> {
    const address = this.addressOf(file.path);
    const cache = await this.ports.caches.open(this.laterCache());
    const kept = await cache.match(address);
    if (kept) return kept;
    const answer = await this.ports.fetch(address, { integrity: integrityOf(file) });
    if (answer.ok) {
      // Where there is no room to keep it, it is still of use now.
      await cache.put(address, answer.clone()).catch(() => undefined);
    }
    return answer;
  }

  private async fromOlder(path: string): Promise<Response> {
    const address = this.addressOf(path);
    for (const cache of await this.olderCaches()) {
      const kept = await cache.match(address);
      if (kept) return kept;
    }
    return this.ports.fetch(address);
  }

  private async keep(cache: Cache, file: BuiltFile, older: readonly Cache[]): Promise<void> {
    const address = this.addressOf(file.path);
    if (await cache.match(address)) return;
    if (HASHED.test(file.path)) {
      for (const other of older) {
        const kept = await other.match(address);
        if (kept) return cache.put(address, kept);
      }
    }
    const answer = await this.ports.fetch(address, {
      cache: 'no-cache',
      integrity: integrityOf(file),
    });
    if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
    await cache.put(address, await withoutRedirect(answer));
  }

  private async olderCaches(): Promise<readonly Cache[]> {
    const names = await this.staleCaches();
    return Promise.all(names.map((name) => this.ports.caches.open(name)));
  }

  private async staleCaches(): Promise<readonly string[]> {
    const own = [this.ownCache(), this.laterCache()];
    const names = await this.ports.caches.keys();
    return names.filter((name) => name.startsWith(this.prefix()) && !own.includes(name));
  }

  /** A blank cannot stand in an address: no folder's prefix is the beginning of another's. */
  private prefix(): string {
    return `stillgrip ${this.ports.scope} `;
  }

  private ownCache(): string {
    return `${this.prefix()}${this.release.version}`;
  }

  private laterCache(): string {
    return `${this.prefix()}later`;
  }

  private addressOf(path: string): string {
    return this.ports.scope + path;
  }

  /** Path from the page's folder, the page itself as ''; null outside it. Query and fragment do not count. */
  private pathOf(address: string): string | null {
    const url = new URL(address);
    const place = url.origin + url.pathname;
    if (!place.startsWith(this.ports.scope)) return null;
    const path = place.slice(this.ports.scope.length);
    return path === 'index.html' ? '' : path;
  }
}

function integrityOf(file: BuiltFile): string {
  return `sha256-${file.sha256}`;
}

/** The browser takes no answer that was redirected for a page: it is the same without the mark. */
async function withoutRedirect(answer: Response): Promise<Response> {
  if (!answer.redirected) return answer;
  return new Response(await answer.blob(), { status: answer.status, headers: answer.headers });
}
