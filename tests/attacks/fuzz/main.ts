import { mkdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { goodInputs } from './corpus';
import { ALL_FILES, cutFinds } from './cuts';
import { DOORS } from './doors';
import { GROWN } from './grown';
import { repeatsOf } from './repeats';
import { Bench, type Find, inputOf, MOST_MS } from './run';
import { smallest } from './shrink';

const HELP = `Usage: npm run fuzz -- [--count 1000000] [--seed 1] [--from 0] [--door NAME] [--out FOLDER]
Bends good inputs and puts them before every door of the page. Every find is written to FOLDER, as it was and made small.
One input again: --seed, --from and --door as the find says them, --count 1.
--cuts: instead, every good input of every door cut short at every byte.
--growth: instead, 64 kB of each of some hundred pieces over and over, and sound inputs from 64 kB to 1 MB.`;

/** Finds after which there is no point in going on. */
const MOST_FINDS = 200;
const EVERY_MS = 5000;

async function main(): Promise<void> {
  const { values } = parseArgs({
    options: {
      count: { type: 'string', default: '1000000' },
      seed: { type: 'string', default: '1' },
      from: { type: 'string', default: '0' },
      door: { type: 'string' },
      out: { type: 'string', default: join(tmpdir(), 'stillgrip-fuzz') },
      cuts: { type: 'boolean', default: false },
      growth: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
    },
  });
  const [count, seed, from] = [values.count, values.seed, values.from].map(Number);
  const doors = DOORS.filter(({ name }) => values.door === undefined || name === values.door);
  if (values.help || doors.length === 0 || ![count, seed, from].every(Number.isSafeInteger)) {
    console.log(`${HELP}\nDoors: ${DOORS.map(({ name }) => name).join('; ')}`);
    process.exitCode = values.help ? 0 : 1;
    return;
  }
  if (values.cuts || values.growth) {
    const finds = values.cuts ? await runCuts(doors) : await runGrowth(doors);
    process.exitCode = finds > 0 ? 1 : 0;
    return;
  }
  process.exitCode = (await run({ doors, count, seed, from, out: values.out })) > 0 ? 1 : 0;
}

async function makeBench() {
  const corpus = await goodInputs();
  return { corpus, bench: new Bench(new TextDecoder().decode(corpus.get('turned nut'))) };
}

/** Every good input cut at every byte. */
async function runCuts(doors: typeof DOORS): Promise<number> {
  const { corpus, bench } = await makeBench();
  let all = 0;
  let found = 0;
  for (const [door, file] of ALL_FILES) {
    if (!doors.some(({ name }) => name === door)) continue;
    const { finds, cuts } = await cutFinds(bench, corpus, door, file, 1);
    all += cuts;
    found += finds.length;
    console.log(`${door}, ${file}: ${cuts} cuts, ${finds.length} found`);
    for (const find of finds.slice(0, 3)) console.log(`  ${find}`);
  }
  console.log(`${all} cuts: ${found} found`);
  return found;
}

/** What takes more than the limit, or grows faster than its length. */
async function runGrowth(doors: typeof DOORS): Promise<number> {
  const { corpus, bench } = await makeBench();
  let found = 0;
  for (const door of doors) {
    let slowest = 0;
    for (const { name, bytes } of repeatsOf(door, corpus, 1 << 16)) {
      let find = await bench.open(door, bytes, MOST_MS);
      if (find?.what === 'slow') find = await bench.open(door, bytes, MOST_MS);
      slowest = Math.max(slowest, bench.took);
      if (find) found++;
      if (find) console.log(`${door.name}, ${name}: ${find.what}: ${find.detail}`);
    }
    const times: string[] = [];
    for (let size = 1 << 16; size <= 1 << 20 && door.name in GROWN; size *= 2) {
      const grown = GROWN[door.name](size);
      const bytes = typeof grown === 'string' ? new TextEncoder().encode(grown) : grown;
      let find = await bench.open(door, bytes, MOST_MS);
      // The first run of code is slow once.
      for (let again = 0; again < 2 && find?.what === 'slow'; again++)
        find = await bench.open(door, bytes, MOST_MS);
      if (find) found++;
      times.push(find ? `${find.what} ${find.detail.slice(0, 80)}` : bench.took.toFixed(0));
    }
    const grown = times.length > 0 ? `; doubled from 64 kB to 1 MB: ${times.join(', ')} ms` : '';
    console.log(`${door.name}: slowest of the pieces ${slowest.toFixed(0)} ms${grown}`);
  }
  console.log(`${found} found`);
  return found;
}

interface Run {
  readonly doors: typeof DOORS;
  readonly count: number;
  readonly seed: number;
  readonly from: number;
  readonly out: string;
}

/** Runs them all and gives the number of finds. */
async function run({ doors, count, seed, from, out }: Run): Promise<number> {
  const { corpus, bench } = await makeBench();
  const start = performance.now();
  const seen = new Map<string, number>();
  const slowest = new Map<string, number>();
  let finds = 0;
  let done = 0;
  let told = start;
  for (; done < count && finds < MOST_FINDS; done++) {
    const { door, bytes } = inputOf(doors, corpus, seed, from + done);
    let find = await bench.open(door, bytes, MOST_MS);
    const took = bench.took;
    // Code that runs for the first time is slow once, and so is a collection of rubbish: the best of four counts.
    for (let again = 0; again < 3 && find?.what === 'slow'; again++) {
      find = await bench.open(door, bytes, MOST_MS);
    }
    if (took > (slowest.get(door.name) ?? 0)) slowest.set(door.name, took);
    if (find) {
      finds++;
      const kind = `${find.door}: ${find.what} ${find.detail.slice(0, 80)}`;
      const times = (seen.get(kind) ?? 0) + 1;
      seen.set(kind, times);
      if (times <= 2) await report(bench, find, bytes, out, { seed, at: from + done, doors });
    }
    const now = performance.now();
    if (now - told > EVERY_MS) {
      told = now;
      const rate = Math.round((1000 * (done + 1)) / (now - start));
      console.log(`${done + 1} of ${count}, ${rate} a second, ${finds} found`);
    }
  }
  const seconds = ((performance.now() - start) / 1000).toFixed(0);
  console.log(
    `${done} inputs at ${doors.length} doors in ${seconds} s, seed ${seed}: ${finds} found`,
  );
  console.log(`The open design is ${bench.isWhole() ? 'as it was' : 'ANOTHER'}`);
  for (const [name, ms] of slowest)
    console.log(`  ${name}: slowest ${ms.toFixed(0)} ms of processor time`);
  for (const [kind, times] of seen) console.log(`  ${times} x ${kind}`);
  return finds + (bench.isWhole() ? 0 : 1);
}

async function report(
  bench: Bench,
  find: Find,
  bytes: Uint8Array,
  out: string,
  { seed, at, doors }: { seed: number; at: number; doors: typeof DOORS },
): Promise<void> {
  const door = DOORS.find(({ name }) => name === find.door) as (typeof DOORS)[number];
  const line = find.detail.split('\n').slice(0, 2).join(' ');
  const small = await smallest(bytes, async (less) => {
    if (find.what === 'slow') return false;
    const other = await bench.open(door, less);
    return other?.what === find.what && other.detail.slice(0, 40) === find.detail.slice(0, 40);
  });
  mkdirSync(out, { recursive: true });
  const stem = join(out, `${find.door.replaceAll(/\W+/g, '-')}-${seed}-${at}`);
  writeFileSync(`${stem}.input`, bytes);
  writeFileSync(`${stem}.small`, small);
  writeFileSync(`${stem}.txt`, `${find.what}: ${find.detail}\n`);
  const only = doors.length === DOORS.length ? '' : ` --door "${find.door}"`;
  console.log(`FOUND at ${find.door}: ${find.what}: ${line}`);
  console.log(
    `  ${small.length} bytes: ${JSON.stringify(new TextDecoder().decode(small.subarray(0, 160)))}`,
  );
  console.log(
    `  again: npm run fuzz -- --seed ${seed} --from ${at} --count 1${only}; written to ${stem}.*`,
  );
}

await main();
