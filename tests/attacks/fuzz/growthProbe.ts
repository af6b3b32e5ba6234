import { goodInputs } from './corpus';
import { DOORS } from './doors';
import { repeatsOf } from './repeats';
import { Bench } from './run';

const corpus = await goodInputs();
const bench = new Bench(new TextDecoder().decode(corpus.get('turned nut')));
for (const door of DOORS) {
  const small = repeatsOf(door, corpus, 1 << 14);
  const large = repeatsOf(door, corpus, 1 << 16);
  for (const [k, { name, bytes }] of large.entries()) {
    const time = async (b: Uint8Array) => {
      const t = process.cpuUsage();
      const f = await bench.open(door, b);
      const u = process.cpuUsage(t);
      if (f) console.log('FIND', name, f);
      return (u.user + u.system) / 1000;
    };
    const a = await time(small[k].bytes);
    let b = await time(bytes);
    if (b > 60) {
      b = Math.min(b, await time(bytes));
    }
    if (b > 60) console.log(door.name, '|', name, '|', a.toFixed(0), b.toFixed(0));
  }
}
console.log('done');
