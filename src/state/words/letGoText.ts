import type { HeadRun } from '../../design/release/headRun';
import { M } from '../../engine/mass/moments';
import { degreesFromRadians, type Radians, radians, radiansFromDegrees } from '../../engine/units';
import { addTexts, type MessageKey, t } from '../../messages';
import { LET_GO_ROOM } from '../../messages/en/letGoRoom';
import type { LetGoState } from '../letGoTypes';
import {
  displayEnergy,
  displayForce,
  displayMoment,
  fixed,
  show,
  signedQuantity,
  significant,
} from '../quantities';
import type { HeadReading } from '../reading';
import type { DisplayUnits } from '../settings';
import { pushForce } from './letGoShort';
import { signedDegrees } from './pitchText';

addTexts('letGoRoom', LET_GO_ROOM);

/** "9.74 ms", "1.20 s". */
export function timeText(seconds: number): string {
  return seconds < 1 ? `${significant(1000 * seconds)}\u00a0ms` : `${significant(seconds)}\u00a0s`;
}
/** "-210 rad/s": its size where only that matters. */
export function rateText(rate: number): string {
  return `${significant(Math.abs(rate))}\u00a0rad/s`;
}
const deg = (pitch: Radians) => signedDegrees(degreesFromRadians(pitch));
const size = (moment: number, units: DisplayUnits) => show(displayMoment(Math.abs(moment), units));

/** What would happen at the pitch of the page, told from moment and friction there alone. */
export function heldText(reading: HeadReading, pitchDeg: number, units: DisplayUnits): string {
  const moment = reading.momentAt(pitchDeg);
  const friction = reading.friction.at(pitchDeg);
  const pitch = signedDegrees(pitchDeg);
  if (!(reading.totals[M] > 0)) return t('letGo.fault.inertia');
  if (reading.rotor.angularSpeed === 0) return t('letGo.heldNoSpin', { pitch });
  if (Number.isNaN(moment)) return t('letGo.fault.moment', { pitch });
  const values = { pitch, moment: size(moment, units), friction: size(friction, units) };
  const way = t(moment > 0 ? 'letGo.up' : 'letGo.down');
  const nothing = Math.abs(moment) < 1e-9 * reading.momentScale || moment === 0;
  if (nothing) {
    return t(
      friction === 0 && flees(reading, pitchDeg) ? 'letGo.heldEdge' : 'letGo.heldStill',
      values,
    );
  }
  if (friction === 0) return t('letGo.heldFlees', { ...values, way });
  return Math.abs(moment) <= friction
    ? t('letGo.heldStays', values)
    : t('letGo.heldGoes', { ...values, way });
}

/** Whether the grip would leave this equilibrium: the moment grows away from it on both sides. */
function flees(reading: HeadReading, pitchDeg: number): boolean {
  const [below, above] = [-1, 1].map((side) => reading.momentAt(pitchDeg + side * BESIDE_DEG));
  return below < 0 && above > 0;
}
/** Far enough for the moment to stand out of rounding, degrees. */
const BESIDE_DEG = 0.01;

/** So many swings make it clear that little brakes it. */
const MANY_SWINGS = 20;

/** A run that stands still for the moment. */
export function pausedText(run: HeadRun, units: DisplayUnits): string {
  const long = run.release.time > MANY_SWINGS * run.swing;
  return t('letGo.paused', { now: long ? runText(run, units) : '' }).trim();
}

/** How a run has ended, or how it goes at present. */
export function runText(run: HeadRun, units: DisplayUnits): string {
  const { release, head } = run;
  const outcome = run.outcome();
  const moment = size(head.system.moment(release.pitch), units);
  const friction = size(head.system.friction(release.pitch), units);
  switch (outcome.kind) {
    case 'stays': {
      const pitch = deg(outcome.pitch);
      if (release.phase === 'atStop') return t('letGo.staysOnStop', { pitch });
      const drive = head.system.moment(release.pitch) + release.hand;
      const rubs = head.system.friction(release.pitch) > 0 && drive !== 0;
      if (rubs) return t('letGo.stays', { pitch, moment, friction });
      return t(staysOnEdge(run) ? 'letGo.staysEdge' : 'letGo.staysStill', { pitch });
    }
    case 'settles': {
      const values = { pitch: deg(outcome.pitch), time: timeText(outcome.time), moment, friction };
      const key = outcome.by === 'friction' ? 'letGo.settlesFriction' : 'letGo.settlesDamping';
      return `${t(key, values)}${struckText(run)}`;
    }
    case 'runsToStop':
      return t('letGo.runsToStop', {
        pitch: deg(outcome.pitch),
        reached: timeText(outcome.reached),
        rate: rateText(release.firstHit?.rate ?? 0),
        time: timeText(outcome.time),
      });
    case 'noMoment': {
      const end = release.rate < 0 ? head.ends.low : head.ends.high;
      const key = end.why === 'stop' ? 'open' : end.why;
      return t(`letGo.${key}`, {
        pitch: deg(outcome.pitch),
        time: timeText(outcome.time),
        rate: rateText(release.rate),
      });
    }
    case 'oscillates':
      return t('letGo.oscillates', {
        low: deg(outcome.low),
        high: deg(outcome.high),
        time: timeText(release.time),
      });
    default:
      return nowText(run);
  }
}

/** It stands where the moment, nothing here, drives away on both sides. */
function staysOnEdge({ head: { system }, release }: HeadRun): boolean {
  const beside = radiansFromDegrees(BESIDE_DEG);
  const [below, above] = [-1, 1].map((side) =>
    system.moment(radians(release.pitch + side * beside)),
  );
  return below < 0 && above > 0;
}

function struckText({ release }: HeadRun): string {
  const { hits, firstHit } = release;
  if (!firstHit) return '';
  const times = hits === 1 ? t('letGo.once') : t('letGo.often', { count: hits });
  return ` ${t('letGo.struck', { times, rate: rateText(firstHit.rate) })}`;
}

/** "4.20 ms after it was let go: -3.2 degrees, 210 rad/s." */
export function nowText({ release, time }: HeadRun): string {
  const rate = release.rate < 0 ? '\u2212' : '';
  return t('letGo.now', {
    time: timeText(time),
    pitch: deg(release.pitch),
    rate: `${rate}${rateText(release.rate)}`,
  });
}

/** "Push: +3.2 N at the push rod (27 N mm about the axis)." */
export function pushText(run: HeadRun, reading: HeadReading, units: DisplayUnits): string {
  const moment = signedQuantity(displayMoment(run.release.hand, units));
  const force = pushForce(run, reading, units);
  return force === null
    ? t('letGo.pushesMoment', { moment })
    : t('letGo.pushes', { force, moment });
}

/** What friction makes of the force that holds it where it is. */
export function needText(run: HeadRun, reading: HeadReading, units: DisplayUnits): string {
  const pitchDeg = degreesFromRadians(run.release.pitch);
  const force = reading.forceAt(pitchDeg);
  const rubs = reading.forceOf(reading.friction.at(pitchDeg), pitchDeg);
  if (force === null || rubs === null) return '';
  return t('letGo.pushNeed', {
    need: signedQuantity(displayForce(force, units)),
    friction: show(displayForce(Math.abs(rubs), units)),
  });
}

/** Rows of the energy ledger: what came in, then where it is. */
export function bookRows(
  run: HeadRun,
  units: DisplayUnits,
): readonly (readonly [MessageKey, string])[] {
  const { energy } = run.release;
  const taken = run.taken;
  const fallen = run.head.system.energy(run.from) - energy.potential;
  const amount = (value: number) => {
    // Rounding of the sum is no energy.
    const seen = Math.abs(value) < 1e-9 * energy.scale ? 0 : value;
    return show(displayEnergy(seen, units));
  };
  return [
    ['letGo.bookFallen', amount(fallen)],
    ['letGo.bookGiven', amount(energy.given)],
    ['letGo.bookMotion', amount(energy.kinetic)],
    ['letGo.bookFriction', amount(taken.friction)],
    ['letGo.bookDamping', amount(taken.damping)],
    ['letGo.bookStops', amount(taken.stops)],
  ];
}

/** How well the ledger balances, as a share of the greatest energy of motion. */
export function bookBalance({ release }: HeadRun): string {
  const { error, scale } = release.energy;
  if (!(scale > 0)) return '0';
  const share = Math.abs(error) / scale;
  return share < 1e-12 ? '1e\u221212' : share.toExponential(0).replace('-', '\u2212');
}

export function faultText(fault: NonNullable<LetGoState['fault']>): string {
  switch (fault.kind) {
    case 'noReach':
      return t('letGo.fault.noReach');
    case 'notFetched':
      return t('letGo.fault.notFetched', { reason: fault.reason });
    case 'choice':
      return t('letGo.fault.choice', { field: fieldName(fault.field) });
    case 'outsideTravel':
      return t('letGo.fault.outsideTravel', {
        pitch: deg(fault.pitch),
        low: deg(fault.low),
        high: deg(fault.high),
      });
    case 'noValue':
      return t(`letGo.fault.${fault.field}`, { pitch: deg(fault.pitch) });
    default:
      return t('letGo.fault.other', { field: fault.field, value: fixed(fault.value, 3) });
  }
}

const FIELDS = {
  dampingPercent: 'letGo.damping',
  restitution: 'letGo.rebound',
  sliderMassGrams: 'letGo.sliderMass',
} as const;

export function fieldName(field: keyof typeof FIELDS): string {
  return t(FIELDS[field]);
}
