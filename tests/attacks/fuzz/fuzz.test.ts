import { beforeAll, describe, expect, it } from 'vitest';
import { type Corpus, goodInputs } from './corpus';
import { DOORS } from './doors';
import { Bench, type Find, inputOf } from './run';

let corpus: Corpus;
let bench: Bench;
beforeAll(async () => {
  corpus = await goodInputs();
  bench = new Bench(new TextDecoder().decode(corpus.get('turned nut')));
});

describe('every door', () => {
  it.each(DOORS)('takes its good inputs: $name', async (door) => {
    for (const name of door.good) {
      const bytes = corpus.get(name);
      expect(bytes, name).toBeDefined();
      const opened = await door.open(bytes as Uint8Array, bench.session);
      expect(opened, name).toEqual({ taken: true, flaw: null });
      expect(await bench.open(door, bytes as Uint8Array), name).toBeNull();
    }
  });
});
