import { readFileSync } from 'node:fs';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Design } from '../../src/design/design';
import { parseDesign } from '../../src/design/file';
import { createHeadRun } from '../../src/design/release/headRun';
import { degreesFromRadians, radiansFromDegrees } from '../../src/engine/units';
import { createSession } from '../../src/state/createSession';
import type { Happening } from '../../src/state/happenings';
import { createLetGoDesk, FIRST_LET_GO } from '../../src/state/letGo';
import type { LetGoDesk } from '../../src/state/letGoTypes';
import type { LocalNotes } from '../../src/state/localNotes';
import type { Session } from '../../src/state/session';
import { METRIC_UNITS } from '../../src/state/settings';
import { keepLetGo, readLetGo } from '../../src/state/storedLetGo';
import { runText } from '../../src/state/words/letGoText';

function demo(file: string): Design {
  const text = readFileSync(new URL(`../../assets/designs/${file}.json`, import.meta.url), 'utf8');
  const parsed = parseDesign(text);
  if (!parsed.ok) throw new Error(`demo(): ${file} is not sound: ${parsed.error.path}`);
  return parsed.value;
}

/** Pictures come when the test says so, a sixtieth of a second apart. */
function pictures() {
  let waiting: ((now: number) => void) | null = null;
  let now = 100;
  return {
    frame(callback: (now: number) => void) {
      waiting = callback;
      return () => {
        waiting = null;
      };
    },
    /** Shows so many; fewer where no more are asked for. */
    show(count: number): number {
      let shown = 0;
      for (; shown < count && waiting; shown++) {
        const callback = waiting;
        waiting = null;
        now += 1 / 60;
        callback(now);
      }
      return shown;
    },
  };
}

const LOADED = Promise.resolve(createHeadRun);

describe('letting go on the page', () => {
  let session: Session;
  let clock: ReturnType<typeof pictures>;
  let told: Happening[];
  let calm: boolean;
  let desk: LetGoDesk;

  function open(file: string): void {
    session = createSession(demo(file), () => {});
    clock = pictures();
    told = [];
    calm = false;
    session.happenings.subscribe((happening) => told.push(happening));
    desk = createLetGoDesk(session, { load: () => LOADED, frame: clock.frame, calm: () => calm });
  }
  beforeEach(() => open('3-ordinary-bolt'));

  const pitch = () => session.store.getState().pitchDeg;
  const status = () => desk.store.getState().status;

  async function letGoAt(deg: number): Promise<void> {
    session.actions.setPitch(deg);
    desk.letGo();
    await LOADED;
    await LOADED;
  }

  test('the pitch of the page follows, slowed, and ends where the verdict\u2019s rest angle is, within the holding band', async () => {
    await letGoAt(5);
    expect(status()).toBe('running');
    const { slowness } = desk.store.getState();
    expect(slowness).toBeGreaterThan(50);
    // A picture is a sixtieth of a second of the watch; the first one starts the clock.
    clock.show(31);
    expect(desk.run?.release.time).toBeCloseTo(30 / 60 / slowness, 9);
    expect(pitch()).toBeCloseTo(degreesFromRadians(desk.run?.release.pitch as never), 1.99);
    clock.show(2000);
    expect(status()).toBe('resting');
    const verdict = session.live.reading.verdict();
    if (verdict.kind !== 'centres') throw new Error(verdict.kind);
    const band = session.live.reading.bandsDeg.find(([low, high]) => {
      return low < verdict.restDeg && verdict.restDeg < high;
    });
    if (!band) throw new Error('no band');
    // The page shows hundredths of a degree.
    expect(pitch()).toBeGreaterThan(band[0] - 0.01);
    expect(pitch()).toBeLessThan(band[1] + 0.01);
    expect(told).toEqual([
      { kind: 'letGo', fromDeg: 5, endDeg: expect.closeTo(pitch(), 1.9), outcome: 'settles' },
    ]);
  });

  test('it is no step of undo, and undo stops it', async () => {
    session.actions.setParameter('bolt', 'extensionLengthMm', 3);
    session.live.flush();
    const steps = session.store.temporal.getState().pastStates.length;
    await letGoAt(15);
    clock.show(20);
    expect(session.store.temporal.getState().pastStates.length).toBe(steps);
    session.actions.undo();
    expect(status()).toBe('held');
    // The head is another one: what it did is gone with it.
    expect(desk.run).toBeNull();
    expect(told.at(-1)).toMatchObject({ outcome: 'moving' });
    const stood = pitch();
    expect(clock.show(5)).toBe(0);
    expect(pitch()).toBe(stood);
  });

  test('a hand on the pitch, a drag of anything and Escape take hold', async () => {
    await letGoAt(15);
    clock.show(10);
    session.actions.setPitch(3);
    expect(status()).toBe('held');
    expect(pitch()).toBe(3);
    expect(clock.show(5)).toBe(0);

    await letGoAt(15);
    clock.show(10);
    session.actions.gesture.begin().end();
    expect(status()).toBe('held');

    await letGoAt(15);
    clock.show(10);
    desk.stop();
    expect(status()).toBe('held');
    expect(told.map((one) => 'outcome' in one && one.outcome)).toEqual([
      'moving',
      'moving',
      'moving',
    ]);
  });

  test('paused it stands, steps by a fortieth of a swing, goes on and comes again from where it began', async () => {
    await letGoAt(12);
    clock.show(10);
    desk.pause();
    expect(clock.show(5)).toBe(0);
    const { run } = desk;
    if (!run) throw new Error('no run');
    const time = run.release.time;
    desk.step();
    expect(run.release.time - time).toBeCloseTo(run.swing / 40, 12);
    desk.goOn();
    clock.show(10);
    expect(run.release.time).toBeGreaterThan(time + run.swing / 40);
    desk.toEnd();
    expect(status()).toBe('resting');
    const end = pitch();
    desk.replay();
    expect(pitch()).toBe(12);
    expect(status()).toBe('running');
    desk.toEnd();
    expect(pitch()).toBe(end);
  });

  test('without moving pictures it shows the end and the whole trace at once', async () => {
    calm = true;
    await letGoAt(15);
    expect(status()).toBe('resting');
    expect(clock.show(1)).toBe(0);
    expect(desk.run?.trace.length).toBeGreaterThan(100);
    expect(Math.abs(pitch())).toBeLessThan(3);
  });

  test('what friction holds stays, and says so with its numbers', async () => {
    await letGoAt(-0.7);
    expect(status()).toBe('resting');
    expect(pitch()).toBe(-0.7);
    expect(told).toMatchObject([{ outcome: 'stays', fromDeg: -0.7 }]);
    const { run } = desk;
    if (!run) throw new Error('no run');
    expect(runText(run, METRIC_UNITS)).toMatch(
      /^It stays at \u22120\.7\u00b0: friction holds it \(moment .+ of .+\)\.$/,
    );
  });

  test('where the arm goes over centre it ends and can be let go again from what is shown', async () => {
    open('2-long-bolt');
    await letGoAt(-5);
    clock.show(3000);
    expect(told).toMatchObject([{ outcome: 'stop' }]);
    const { run } = desk;
    if (!run) throw new Error('no run');
    expect(runText(run, METRIC_UNITS)).toContain('over centre, \u221253.7\u00b0');
    // Rounded, but not beyond.
    expect(pitch()).toBeGreaterThanOrEqual(degreesFromRadians(run.head.known.low));
    await letGoAt(pitch());
    expect(desk.store.getState().fault).toBeNull();
    session.actions.setPitch(-70);
    desk.letGo();
    expect(desk.store.getState().fault).toMatchObject({ kind: 'outsideTravel' });
    expect(desk.run).toBeNull();
  });

  test('a push at rest sets it going, is told as a moment, and ends with the hand', async () => {
    await letGoAt(0);
    expect(status()).toBe('resting');
    desk.push({ kind: 'spring', target: radiansFromDegrees(20) });
    expect(status()).toBe('running');
    expect(desk.store.getState().pushing).toBe(true);
    clock.show(120);
    expect(desk.run?.release.hand).toBeGreaterThan(0);
    expect(pitch()).toBeGreaterThan(1);
    // Held by a hand it does not count as come to rest.
    expect(status()).toBe('running');
    desk.push({ kind: 'off' });
    expect(desk.run?.release.hand).toBe(0);
    clock.show(3000);
    expect(status()).toBe('resting');
    // What is held cannot be pushed.
    session.actions.setPitch(2);
    desk.push({ kind: 'moment', moment: 1 });
    expect(status()).toBe('held');
  });

  test('another damping stops what is under way, another slowness does not', async () => {
    await letGoAt(15);
    clock.show(5);
    desk.choose({ slowness: 500 });
    expect(status()).toBe('running');
    const time = desk.run?.release.time ?? Number.NaN;
    clock.show(10);
    expect((desk.run?.release.time ?? Number.NaN) - time).toBeCloseTo(10 / 60 / 500, 9);
    desk.choose({ dampingPercent: 10 });
    expect(status()).toBe('held');
  });

  test('what cannot be fetched is said, and it can be tried again', async () => {
    const failing = Promise.reject(new Error('offline'));
    let asked = 0;
    const lone = createLetGoDesk(session, {
      load: () => (asked++ === 0 ? failing : LOADED),
      frame: clock.frame,
      calm: () => false,
    });
    lone.letGo();
    expect(lone.store.getState().status).toBe('starting');
    await failing.catch(() => {});
    await LOADED;
    expect(lone.store.getState().fault).toEqual({ kind: 'notFetched', reason: 'offline' });
    session.actions.setPitch(10);
    lone.letGo();
    await LOADED;
    await LOADED;
    expect(lone.store.getState().status).toBe('running');
  });

  test('damping and the like are kept in the browser, and what is not understood is as at first', () => {
    const kept = new Map<string, string>();
    const notes: LocalNotes = {
      read: (name) => kept.get(name) ?? null,
      write: (name, text) => Boolean(kept.set(name, text)),
      remove: (name) => kept.delete(name),
    };
    expect(readLetGo(notes)).toEqual(FIRST_LET_GO);
    const stop = keepLetGo(desk, notes);
    desk.choose({ dampingPercent: 7, restitution: 0, slowness: 20 });
    stop();
    expect(readLetGo(notes)).toEqual({
      ...FIRST_LET_GO,
      dampingPercent: 7,
      restitution: 0,
      slowness: 20,
    });
    for (const text of ['', 'null', '3', '{"dampingPercent":-1,"restitution":"x","slowness":3}']) {
      kept.set('letGo', text);
      expect(readLetGo(notes)).toEqual(FIRST_LET_GO);
    }
  });
});
