import { type Changes, joined } from './changes';

/** In the order in which everybody is told at once. */
export const TURNS = [
  'each',
  'curve',
  'chart',
  'dial',
  'ring',
  'layers',
  'names',
  'fan',
  'verdict',
  'legend',
  'lists',
  'page',
] as const;

/**
 * Whom a listener belongs to. `each`: what lies under the hand, told with every picture. The others wait during a drag where a
 * picture has no time left for them, and take about as long as one another. `curve`: what works out the curves that `chart` draws;
 * `names`: of the lines in the chart; `dial`: what turns inside the ring, `legend`: its words; `page`: what React draws.
 */
export type Turn = (typeof TURNS)[number];

/** Who shows what another has left, and has to hear it after that one whenever that one was told. */
const THEN: Readonly<Partial<Record<Turn, Turn>>> = { curve: 'chart', chart: 'names' };

/** Of a picture, ms, from the beginning of the telling to the end of those who may wait. */
const TIME = 1.2;

/** A picture that has taken so long before anybody who may wait is told is late, ms. */
const LATE = 1;

type Listener = (changes: Changes) => void;

/** Who listens at one turn, and what they have not been told yet. */
interface Seat {
  readonly listeners: Set<Listener>;
  missed: Changes | null;
  /** How long telling them took the last time, ms. */
  took: number;
}

/**
 * Tells listeners what has changed: all at once, or those for whom there is time, who have waited longest first. Nobody misses
 * anything: what a listener was not told waits, joined with what comes after, until its turn or until `tellAll`.
 */
export class Turns {
  private readonly seats = new Map<Turn, Seat>(
    TURNS.map((turn) => [turn, { listeners: new Set(), missed: null, took: 0 }]),
  );
  /** Those who may wait, who have waited longest first. */
  private readonly waiting: Turn[] = TURNS.filter((turn) => turn !== 'each');
  /** The last picture was late and told none of them. */
  private passed = false;

  /** `now`: a clock in ms. */
  constructor(private readonly now: () => number) {}

  subscribe(listener: Listener, turn: Turn): () => void {
    const { listeners } = this.seat(turn);
    listeners.add(listener);
    return () => listeners.delete(listener);
  }

  /** Whether somebody listens who has not been told everything. */
  get behind(): boolean {
    for (const { missed } of this.seats.values()) if (missed !== null) return true;
    return false;
  }

  /** Everybody who has something to hear. Throws the first fault of a listener when all have been told. */
  tellAll(changes: Changes | null): void {
    this.hear(changes);
    const faults: unknown[] = [];
    for (const turn of TURNS) this.tell(turn, faults);
    if (faults.length > 0) throw faults[0];
  }

  /**
   * `each`, the one who has waited longest, and of the others whoever is likely to be done in time in a picture that was
   * begun at `begun` (ms of the clock). A picture that is late already (a collection of garbage, mostly) tells `each` alone, but
   * never two in turn. Throws as `tellAll` does.
   */
  tellInTime(changes: Changes | null, begun: number): void {
    this.hear(changes);
    const faults: unknown[] = [];
    this.tell('each', faults);
    this.passed = !this.passed && this.now() > begun + LATE;
    const told: Turn[] = [];
    for (const turn of this.passed ? [] : this.waiting) {
      const { missed, took } = this.seat(turn);
      if (missed === null) continue;
      if (told.length > 0 && this.now() + took > begun + TIME) continue;
      this.tell(turn, faults);
      told.push(turn);
    }
    for (const turn of told) {
      this.waiting.splice(this.waiting.indexOf(turn), 1);
      this.waiting.push(turn);
    }
    if (faults.length > 0) throw faults[0];
  }

  private hear(changes: Changes | null): void {
    if (changes === null) return;
    for (const turn of TURNS) this.leave(turn, changes);
  }

  /** One listener that fails must not leave the others on old numbers. */
  private tell(turn: Turn, faults: unknown[]): void {
    const seat = this.seat(turn);
    const { missed } = seat;
    if (missed === null) return;
    seat.missed = null;
    const began = this.now();
    for (const listener of seat.listeners) {
      try {
        listener(missed);
      } catch (fault) {
        faults.push(fault);
      }
    }
    seat.took = this.now() - began;
    const then = THEN[turn];
    if (then) this.leave(then, missed);
  }

  /** To be heard at that turn, where somebody listens. */
  private leave(turn: Turn, changes: Changes): void {
    const seat = this.seat(turn);
    if (seat.listeners.size > 0) seat.missed = joined(seat.missed, changes);
  }

  private seat(turn: Turn): Seat {
    return this.seats.get(turn) as Seat;
  }
}
