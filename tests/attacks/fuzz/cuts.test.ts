import { beforeAll, describe, expect, it, vi } from 'vitest';
import { type Corpus, goodInputs } from './corpus';
import { cutFinds, SMALL_FILES } from './cuts';
import { Bench } from './run';

vi.setConfig({ testTimeout: 120_000 });

let corpus: Corpus;
let bench: Bench;
beforeAll(async () => {
  corpus = await goodInputs();
  bench = new Bench(new TextDecoder().decode(corpus.get('turned nut')));
});

describe('a good input cut short', () => {
  // The larger ones, cut at every byte, are in the long mode: npm run fuzz -- --cuts.
  it.each(SMALL_FILES)('at every byte is refused or sound: %s', async (door, name) => {
    const { finds, cuts } = await cutFinds(bench, corpus, door, name, 1);
    expect(finds).toEqual([]);
    expect(cuts).toBeGreaterThan(5);
  });
});
