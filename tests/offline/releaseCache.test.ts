import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { BuiltFile, Release } from '../../src/offline/release';
import { ReleaseCache } from '../../src/offline/releaseCache';

const SCOPE = 'https://host.example/some/where/';

/** A cache and a network as a browser has them, in so far as it uses them. */
class World {
  readonly caches = new Map<string, Map<string, Response>>();
  readonly served = new Map<string, string>();
  readonly asked: string[] = [];
  network = true;
  /** Puts that succeed before there is no room left. */
  room = Number.POSITIVE_INFINITY;

  serve(path: string, text: string): BuiltFile {
    this.served.set(SCOPE + path, text);
    return { path, sha256: createHash('sha256').update(text).digest('base64') };
  }

  keptOf(release: Release): ReleaseCache {
    return new ReleaseCache(release, { caches: this.storage(), fetch: this.fetch, scope: SCOPE });
  }

  readonly fetch = async (address: string, options: RequestInit = {}): Promise<Response> => {
    this.asked.push(address.slice(SCOPE.length));
    const text = this.served.get(address);
    if (!this.network) throw new TypeError('no network');
    if (text === undefined) return new Response('', { status: 404 });
    const sum = `sha256-${createHash('sha256').update(text).digest('base64')}`;
    // What browsers do: Subresource Integrity, W3C, 3.3.5.
    if (options.integrity !== undefined && options.integrity !== sum) throw new TypeError('sum');
    return new Response(text);
  };

  private storage(): Pick<CacheStorage, 'open' | 'keys' | 'delete'> {
    return {
      keys: async () => [...this.caches.keys()],
      delete: async (name) => this.caches.delete(name),
      open: async (name) => {
        const held = this.caches.get(name) ?? new Map<string, Response>();
        this.caches.set(name, held);
        return this.cache(held);
      },
    };
  }

  private cache(held: Map<string, Response>): Cache {
    const addressOf = (asked: RequestInfo | URL) =>
      typeof asked === 'object' && 'url' in asked ? asked.url : String(asked);
    const cache: Partial<Cache> = {
      match: async (asked) => held.get(addressOf(asked))?.clone(),
      put: async (asked, response) => {
        if (this.room-- <= 0) throw new Error('QuotaExceededError');
        held.set(addressOf(asked), response);
      },
      delete: async (asked) => held.delete(addressOf(asked)),
      keys: async () => [...held.keys()].map((address) => new Request(address)),
    };
    return cache as Cache;
  }
}

function request(path: string, options: RequestInit = {}): Request {
  return new Request(new URL(path, SCOPE), options);
}

function releaseIn(world: World, version: string, page = 'page'): Release {
  return {
    version,
    files: [
      world.serve('', page),
      world.serve('assets/app-1.js', 'app'),
      world.serve('designs/a.json', '{}'),
    ],
    later: [world.serve('assets/kernel-1.wasm', 'kernel')],
  };
}

async function textOf(answer: Promise<Response> | null): Promise<string | null> {
  return answer === null ? null : (await answer).text();
}

describe('what is kept for use without a network', () => {
  it('answers for every file of the release, and for the page under each of its addresses', async () => {
    const world = new World();
    const kept = world.keptOf(releaseIn(world, 'one'));
    await kept.install();
    world.network = false;
    for (const page of ['', '?from=mail', 'index.html']) {
      expect(await textOf(kept.answer(request(page)))).toBe('page');
    }
    expect(await textOf(kept.answer(request('assets/app-1.js')))).toBe('app');
    expect(await textOf(kept.answer(request('designs/a.json')))).toBe('{}');
  });

  it('is this build to the byte: a file of another build under the same name is not kept', async () => {
    const world = new World();
    const release = releaseIn(world, 'one');
    world.served.set(`${SCOPE}designs/a.json`, '{"another":1}');
    await expect(world.keptOf(release).install()).rejects.toThrow('sum');
  });

  it('is not called kept where a file is missing or there is no room', async () => {
    const world = new World();
    const release = releaseIn(world, 'one');
    world.room = 2;
    await expect(world.keptOf(release).install()).rejects.toThrow('QuotaExceeded');
    const other = new World();
    const missing = releaseIn(other, 'one');
    other.served.delete(`${SCOPE}assets/app-1.js`);
    await expect(other.keptOf(missing).install()).rejects.toThrow('404');
  });

  it('goes on where it was cut off, and fetches nothing twice', async () => {
    const world = new World();
    const release = releaseIn(world, 'one');
    world.room = 1;
    await expect(world.keptOf(release).install()).rejects.toThrow();
    world.room = Number.POSITIVE_INFINITY;
    world.asked.length = 0;
    await world.keptOf(release).install();
    expect(world.asked.length).toBe(2);
  });

  it('takes a hashed file from the release before, and asks anew for what has no hash', async () => {
    const world = new World();
    await world.keptOf(releaseIn(world, 'one')).install();
    world.asked.length = 0;
    await world.keptOf(releaseIn(world, 'two', 'newer page')).install();
    expect(world.asked.toSorted()).toEqual(['', 'designs/a.json']);
  });

  it('leaves the older page its own files until it is tidied, and then nothing of them', async () => {
    const world = new World();
    const older = releaseIn(world, 'one');
    await world.keptOf(older).install();
    const newer = world.keptOf({
      version: 'two',
      files: [world.serve('', 'newer'), world.serve('assets/app-2.js', 'app two')],
      later: [],
    });
    await newer.install();
    world.network = false;
    expect(await textOf(newer.answer(request('assets/app-1.js')))).toBe('app');
    await newer.tidy();
    expect([...world.caches.keys()].toSorted()).toEqual([
      `stillgrip ${SCOPE} later`,
      `stillgrip ${SCOPE} two`,
    ]);
    await expect(newer.answer(request('assets/app-1.js'))).rejects.toThrow('no network');
  });

  it('is made whole again by use where a file has gone, and gives what the host has where it is another', async () => {
    const world = new World();
    const release = releaseIn(world, 'one');
    const cache = world.keptOf(release);
    await cache.install();
    world.caches.get(`stillgrip ${SCOPE} one`)?.clear();
    world.served.set(`${SCOPE}designs/a.json`, '{"newer":1}');
    expect(await textOf(cache.answer(request('')))).toBe('page');
    expect(await textOf(cache.answer(request('designs/a.json')))).toBe('{"newer":1}');
    world.network = false;
    expect(await textOf(cache.answer(request('')))).toBe('page');
    await expect(cache.answer(request('designs/a.json'))).rejects.toThrow('no network');
  });

  it('holds a large file from its first use on, and lets it go with its release', async () => {
    const world = new World();
    const kept = world.keptOf(releaseIn(world, 'one'));
    await kept.install();
    expect(world.asked).not.toContain('assets/kernel-1.wasm');
    expect(await textOf(kept.answer(request('assets/kernel-1.wasm')))).toBe('kernel');
    world.network = false;
    expect(await textOf(kept.answer(request('assets/kernel-1.wasm')))).toBe('kernel');
    const newer = world.keptOf({ ...releaseIn(world, 'two'), later: [] });
    await newer.tidy();
    expect(world.caches.get(`stillgrip ${SCOPE} later`)?.size).toBe(0);
  });

  it('gives a large file also where there is no room to keep it', async () => {
    const world = new World();
    const kept = world.keptOf(releaseIn(world, 'one'));
    await kept.install();
    world.room = 0;
    expect(await textOf(kept.answer(request('assets/kernel-1.wasm')))).toBe('kernel');
  });

  it('leaves alone what is none of its own: other hosts, folders, methods, parts of files', () => {
    const world = new World();
    const kept = world.keptOf(releaseIn(world, 'one'));
    for (const foreign of ['https://other.example/some/where/', '/some/', '/some/wherever/', 'x']) {
      expect(kept.answer(request(foreign)), foreign).toBeNull();
    }
    expect(kept.answer(request('', { method: 'POST' }))).toBeNull();
    expect(kept.answer(request('', { headers: { range: 'bytes=0-1' } }))).toBeNull();
  });

  it('of another folder of the same host is not touched', async () => {
    const world = new World();
    const foreign = ['stillgrip https://host.example/some/ one', 'stillgrip-other', 'else'];
    for (const name of foreign) world.caches.set(name, new Map());
    const kept = world.keptOf(releaseIn(world, 'one'));
    await kept.install();
    await kept.tidy();
    for (const name of foreign) expect(world.caches.has(name), name).toBe(true);
  });
});
