import { MAX_NAME } from './limits';

/** The name itself where it is not taken, else with the first free number in brackets: "Washer (2)". */
export function freshNameAmong(taken: ReadonlySet<string>, name: string): string {
  if (!taken.has(name)) return name;
  const stem = name.replace(/ \(\d+\)$/, '');
  for (let n = 2; ; n++) {
    const ending = ` (${n})`;
    const next = stem.slice(0, MAX_NAME - ending.length) + ending;
    if (!taken.has(next)) return next;
  }
}

/** The first of `stem-1`, `stem-2` ... that is not taken. */
export function freshIdAmong(taken: ReadonlySet<string>, stem: string): string {
  for (let n = 1; ; n++) {
    const id = `${stem}-${n}`;
    if (!taken.has(id)) return id;
  }
}
