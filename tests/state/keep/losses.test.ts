import { describe, expect, it } from 'vitest';
import { seeded } from '../../support/seeded';
import { createWorld, isSomewhere, type Operation, type Tab, torn, type World } from './world';

// Brute force over a model of the browser (world.ts names the standards it follows). STILLGRIP_LONG=1 runs the long mode.

const LONG = process.env.STILLGRIP_LONG === '1';
const KILLS = LONG ? 10_000 : 150;
const INTERLEAVINGS = LONG ? 20_000 : 150;
const PATIENCE = LONG ? 1_800_000 : 60_000;

/** A visit with edits, an opening, an undo and a second tab; gives what was called kept, with the time of each edit. */
async function visit(world: World, alive: () => boolean, called: string[]): Promise<void> {
  const tab = await world.openTab();
  const note = () => {
    if (tab.alive && tab.keeper.status.getState().state === 'kept') called.push(tab.text());
  };
  const steps: (() => void)[] = [
    () => tab.edit('a1'),
    () => tab.edit('a2'),
    () => tab.openNew('b1'),
    () => tab.edit('b2'),
    () => tab.undo(),
    () => tab.edit('b3'),
    () => tab.undo(),
    () => tab.undo(),
    () => tab.edit('a3'),
  ];
  for (const act of steps) {
    act();
    for (let i = 0; i < 30 && alive(); i++) {
      if (!(await world.step())) break;
      note();
    }
    if (!alive()) return;
  }
  await world.pass(3000);
  note();
}

describe('a fault at the Nth storage operation', () => {
  for (const kind of ['refused', 'lost answer', 'for good'] as const) {
    it(`(${kind}), for every N: nothing is torn, what was called kept is there, and all is kept in the end`, async () => {
      for (let n = 1; ; n++) {
        const world = createWorld(n);
        world.fault = (operation, what) => faultAt(kind, n, operation, what);
        const called: string[] = [];
        await visit(world, () => true, called);
        expect(torn(world)).toEqual([]);
        const state = [...world.texts.values()].join();
        if (kind !== 'for good') {
          await world.pass(60_000);
          expect(isSomewhere(world, 'a3'), `N = ${n}: ${state}`).toBe(true);
          expect(isSomewhere(world, 'b1'), `N = ${n}: ${state}`).toBe(true);
        }
        const last = called.at(-1);
        if (last !== undefined) expect(isSomewhere(world, last), `N = ${n}: ${state}`).toBe(true);
        if (n > world.operations) break;
        expect(n, 'operations of a visit').toBeLessThan(400);
      }
    });
  }
});

function faultAt(kind: string, n: number, operation: number, what: Operation) {
  if (kind === 'for good') return operation >= n ? { error: 'UnknownError' } : null;
  if (operation !== n) return null;
  return { error: 'AbortError', after: kind === 'lost answer' && what === 'commit' };
}

describe('a page that is killed', () => {
  it(
    `at any of ${KILLS} points: what was called kept is there, nothing torn, at most a second of work gone`,
    async () => {
      let killed = 0;
      for (let point = 0; killed < KILLS; point++) {
        const random = seeded(point);
        const world = createWorld(point);
        const tab = await world.openTab();
        const lines = ['w', 'x', 'y'];
        const edits: { text: string; at: number }[] = [];
        let kept: number | null = null;
        let behindSince: number | null = null;
        const moves = random.whole(5, 40);
        for (let i = 0; i < moves; i++) {
          const act = random.unit();
          if (act < 0.7) tab.edit(`${random.pick(lines)}${point}-${i}`);
          else if (act < 0.8) tab.openNew(`o${point}-${i}`);
          else if (act < 0.9) tab.undo();
          edits.push({ text: tab.text(), at: world.clock });
          await world.pass(random.whole(0, 300));
          for (let k = random.whole(0, 6); k > 0; k--) await world.step();
          const { state } = tab.keeper.status.getState();
          // What a visit begins with is stored with the first change.
          if (state === 'kept' && tab.text() !== 'fresh') kept = edits.length - 1;
          behindSince = state === 'kept' ? null : (behindSince ?? world.clock);
        }
        const at = world.clock;
        tab.kill();
        killed++;
        expect(torn(world)).toEqual([]);
        if (kept !== null && world.cards.size > 0) {
          // Or a later state of the same page has taken its place.
          const left = edits.slice(kept).filter(({ text }) => isSomewhere(world, text));
          expect(left.length, `${point}: ${edits[kept].text}`).toBeGreaterThan(0);
        }
        const next = await world.openTab();
        const found = edits.findLast(({ text }) => text === next.text());
        const later = found && edits.find(({ at: time }) => time > found.at);
        // What was done after the state that is found is at most a second old.
        if (later) expect(at - later.at, `${point}`).toBeLessThanOrEqual(1000);
        next.kill();
      }
      expect(killed).toBe(KILLS);
    },
    PATIENCE,
  );
});

describe('two to four tabs', () => {
  it(
    `in ${INTERLEAVINGS} seeded interleavings: no tab writes over what it has not seen, and no last state is lost`,
    async () => {
      const tally = { commits: 0, copies: 0, takeovers: 0, kills: 0 };
      for (let seed = 1; seed <= INTERLEAVINGS; seed++) await interleave(seed, tally);
      // It happened at all: a test that never meets two writers proves nothing.
      expect(tally.commits).toBeGreaterThan(INTERLEAVINGS);
      expect(tally.copies).toBeGreaterThan(INTERLEAVINGS / 10);
      expect(tally.takeovers).toBeGreaterThan(INTERLEAVINGS / 10);
      expect(tally.kills).toBeGreaterThan(INTERLEAVINGS / 10);
      if (LONG) console.info('interleavings', INTERLEAVINGS, tally);
    },
    PATIENCE,
  );
});

async function interleave(seed: number, tally: Record<string, number>): Promise<void> {
  const random = seeded(seed);
  const world = createWorld(seed);
  const silent: string[] = [];
  const tabs: Tab[] = [];
  world.onCommit = (tab, before) => {
    for (const [key, old] of before) {
      if (!key.startsWith('design/') || world.texts.get(key) === old) continue;
      tally.commits++;
      const now = world.texts.get(key) ?? '';
      const goesOn = tab?.seen.includes(old) || ancestors(now, tabs).has(old);
      if (!goesOn && !isSomewhere(world, old)) silent.push(`${key}: ${old} by ${now}`);
    }
  };
  if (random.unit() < 0.5) {
    const faulty = random.whole(5, 60);
    world.fault = (operation, kind) =>
      operation === faulty
        ? { error: 'AbortError', after: kind === 'commit' && random.unit() < 0.5 }
        : null;
  }
  const count = random.whole(2, 4);
  for (let i = 0; i < 30; i++) {
    const living = tabs.filter((tab) => tab.alive);
    if (living.length < count && random.unit() < 0.3) tabs.push(await world.openTab());
    else if (living.length > 0) move(random.pick(living), random.unit(), `s${seed}-${i}`, tally);
    for (let k = random.whole(0, 8); k > 0; k--) await world.step();
    if (random.unit() < 0.2) await world.pass(random.whole(100, 1500));
  }
  await world.pass(40_000);
  expect(silent.join(), `seed ${seed}`).toBe('');
  expect(torn(world), `seed ${seed}`).toEqual([]);
  for (const tab of tabs.filter((one) => one.alive)) {
    if (tab.messages.some(({ kind }) => kind === 'copied')) tally.copies++;
    const { state } = tab.keeper.status.getState();
    // A stage that only shows what another tab works on may be out of date, and says so.
    const isOwn = tab.text() !== 'fresh' && state !== 'otherTab';
    if (isOwn) expect(isSomewhere(world, tab.text()), `seed ${seed}: ${tab.text()}`).toBe(true);
    expect(['kept', 'otherTab', 'starting'], `seed ${seed}`).toContain(state);
  }
}

/** What a state was made from, on whatever stages: a later page may go on from the rescue note of an earlier one. */
function ancestors(text: string, tabs: readonly Tab[]): ReadonlySet<string> {
  const found = new Set([text]);
  for (const one of found) {
    for (const { seen } of tabs) {
      for (const before of seen.slice(0, Math.max(0, seen.lastIndexOf(one)))) found.add(before);
    }
  }
  return found;
}

function move(tab: Tab, chance: number, text: string, tally: Record<string, number>): void {
  if (chance < 0.55) tab.edit(text);
  else if (chance < 0.63) tab.openNew(text);
  else if (chance < 0.72) tab.undo();
  else if (chance < 0.85) {
    if (tab.keeper.status.getState().state === 'otherTab') tally.takeovers++;
    tab.keeper.takeOver();
  } else if (chance < 0.9) void tab.keeper.workOnCopy();
  else if (chance < 0.95) {
    tally.kills++;
    tab.close();
  } else {
    tally.kills++;
    tab.kill();
  }
}
