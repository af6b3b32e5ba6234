import { beforeEach, describe, expect, it } from 'vitest';
import type { Changes } from '../../src/state/changes';
import { TURNS, type Turn, Turns } from '../../src/state/turns';

const MAY_WAIT: readonly Turn[] = TURNS.filter((turn) => turn !== 'each');

function moved(...parts: string[]): Changes {
  return { design: true, parts: new Set(parts), pitch: false, selection: false, settings: false };
}

describe('turns of listeners', () => {
  let clock: number;
  let turns: Turns;
  let told: [Turn, Changes][];

  /** A listener at a turn, taking so many ms of the test's clock. */
  function listener(turn: Turn, takes = 0): void {
    turns.subscribe((changes) => {
      clock += takes;
      told.push([turn, changes]);
    }, turn);
  }

  /** One picture of a drag that has just begun; who was told in it. */
  function picture(changes: Changes | null = moved('bolt')): Turn[] {
    told = [];
    turns.tellInTime(changes, clock);
    return told.map(([turn]) => turn);
  }

  beforeEach(() => {
    clock = 1000;
    turns = new Turns(() => clock);
    told = [];
  });

  it('tells everybody in every picture that has time for all', () => {
    for (const turn of ['each', ...MAY_WAIT] as const) listener(turn, 0.05);
    for (let k = 0; k < 5; k++) {
      expect(picture().toSorted()).toEqual(['each', ...MAY_WAIT].toSorted());
      expect(turns.behind).toBe(false);
    }
  });

  it('tells one more than `each` in every second picture that is late from the first, and nobody waits longer than a round', () => {
    listener('each', 10);
    for (const turn of MAY_WAIT) listener(turn, 10);
    const pictures = Array.from({ length: 4 * MAY_WAIT.length }, () => picture());
    expect(pictures.every(([first]) => first === 'each')).toBe(true);
    expect(pictures.map(({ length }) => length)).toEqual(pictures.map((_, k) => 1 + (k % 2)));
    for (const from of [0, pictures.length / 2]) {
      const others = pictures
        .slice(from, from + pictures.length / 2)
        .flatMap(([, ...more]) => more);
      expect(others.toSorted()).toEqual(MAY_WAIT.toSorted());
    }
  });

  it('tells one in a picture that has no time for two, and nobody waits longer than a round', () => {
    listener('each');
    for (const turn of MAY_WAIT) listener(turn, 10);
    const rounds = [0, 1].map(() => MAY_WAIT.map(() => picture()));
    for (const round of rounds) {
      expect(round.every(([first, ...more]) => first === 'each' && more.length === 1)).toBe(true);
      expect(round.map(([, second]) => second).toSorted()).toEqual(MAY_WAIT.toSorted());
    }
    expect(turns.behind).toBe(true);
  });

  it('passes over one that would not be done in time for another that will', () => {
    for (const turn of MAY_WAIT) listener(turn, turn === 'verdict' || turn === 'lists' ? 0.1 : 1);
    // How long each takes is found out the first time.
    for (let k = 0; k < 5; k++) picture();
    const seen = MAY_WAIT.map(() => picture());
    expect(seen.every((who) => who.filter((turn) => MAY_WAIT.includes(turn)).length >= 2)).toBe(
      true,
    );
    for (const turn of MAY_WAIT) expect(seen.flat()).toContain(turn);
    // 1 ms and two of 0.1 have room in 1.2 ms, two of 1 ms have not.
    expect(seen.some((who) => who.includes('verdict') && who.includes('lists'))).toBe(true);
    for (const who of seen) {
      expect(who.filter((turn) => ['chart', 'dial', 'layers'].includes(turn)).length).toBeLessThan(
        2,
      );
    }
  });

  it('keeps what somebody missed, and joins it with what comes after', () => {
    listener('chart', 10);
    listener('dial', 10);
    picture(moved('bolt'));
    const first = told[0][0];
    picture(moved('nut'));
    const second = told[0];
    expect(second[0]).not.toBe(first);
    expect([...(second[1].parts as ReadonlySet<string>)].toSorted()).toEqual(['bolt', 'nut']);
    expect(second[1].design).toBe(true);
  });

  it.each(['design', 'pitch', 'selection', 'settings'] as const)(
    'does not lose %s while it joins',
    (name) => {
      listener('chart', 10);
      listener('dial', 10);
      const quiet = { design: false, pitch: false, selection: false, settings: false } as const;
      picture({ ...quiet, parts: new Set(), [name]: true });
      const [[was]] = told;
      told = [];
      turns.tellAll({ ...quiet, parts: 'all' });
      const heard = new Map(told);
      const late = heard.get(was === 'chart' ? 'dial' : 'chart');
      expect(late).toEqual({ ...quiet, parts: 'all', [name]: true });
    },
  );

  it('lets a pause catch up with what is left, and then says nothing more', () => {
    listener('each');
    for (const turn of MAY_WAIT) listener(turn, 10);
    picture();
    const after = MAY_WAIT.slice(1).map(() => picture(null));
    expect(after.every((who) => who.length === 1)).toBe(true);
    expect(turns.behind).toBe(false);
    expect(picture(null)).toEqual([]);
  });

  it('tells the chart after the curve and the names after the chart, whichever came first in the drag and in the pause', () => {
    for (const turn of MAY_WAIT) listener(turn, 10);
    for (let moves = 1; moves <= 2 * MAY_WAIT.length; moves++) {
      const heard: Turn[] = [];
      for (let k = 0; k < moves; k++) heard.push(...picture());
      // The hand pauses for a picture, then rests.
      heard.push(...picture(null));
      told = [];
      turns.tellAll(null);
      heard.push(...told.map(([turn]) => turn));
      expect(heard.lastIndexOf('chart')).toBeGreaterThan(heard.lastIndexOf('curve'));
      expect(heard.lastIndexOf('names')).toBeGreaterThan(heard.lastIndexOf('chart'));
      expect(turns.behind).toBe(false);
    }
  });

  it('tells everybody at once when it is told to', () => {
    for (const turn of ['each', ...MAY_WAIT] as const) listener(turn, 10);
    turns.tellAll(moved('bolt'));
    expect(told.map(([turn]) => turn)).toEqual(['each', ...MAY_WAIT]);
    expect(turns.behind).toBe(false);
  });

  it('does not let one that fails keep others from being told, and says so', () => {
    turns.subscribe(() => {
      throw new Error('first');
    }, 'each');
    listener('each');
    listener('chart');
    expect(() => turns.tellInTime(moved('bolt'), clock)).toThrow('first');
    expect(told.map(([turn]) => turn)).toEqual(['each', 'chart']);
    expect(() => turns.tellAll(moved('bolt'))).toThrow('first');
    expect(turns.behind).toBe(false);
  });

  it('keeps nothing for a turn at which nobody listens, nor for one who has gone', () => {
    turns.tellInTime(moved('bolt'), clock);
    expect(turns.behind).toBe(false);
    const stop = turns.subscribe(() => told.push(['chart', moved()]), 'chart');
    stop();
    turns.tellAll(moved('bolt'));
    expect(told).toEqual([]);
  });
});
