import type { TravelEnd, TravelEnds } from '../../design/forces/travel';
import type { Hold, Verdict } from '../../design/verdict';
import { type MessageKey, t } from '../../messages';
import { displayForce, displayMoment, fixed, show, showDegrees } from '../quantities';
import type { DisplayUnits } from '../settings';
import { secondMomentText } from '../shownUnits';

/** A verdict in words: the sentence, what is missing, and the four figures. */
export interface VerdictText {
  readonly line: string;
  readonly detail: string;
  readonly hold: string;
  readonly holdLabel: string;
  readonly rest: string;
  readonly difference: string;
  readonly overCentre: string;
}

/** An over-centre angle flatter than this is worth a sentence though the pitch in use stays clear of it. */
const TELL_OVER_CENTRE_DEG = 60;
/** A product of inertia below this (kg m^2, 1 g mm^2) is not worth a word. */
const TELL_PRODUCT = 1e-9;
const TELL_DIFFERENCE = 0.5e-9;
/** Moment from torque offset and precone below this (N m) is not worth a word. */
const TELL_OFF_AXIS = 1e-3;
/** A rest angle is named from here, degrees. */
const TELL_REST_DEG = 0.05;

export function verdictText(
  verdict: Verdict,
  rests: readonly number[],
  units: DisplayUnits,
): VerdictText {
  if (verdict.kind === 'noParts' || verdict.kind === 'noMass') {
    return {
      line: t(`verdict.${verdict.kind}`),
      detail: verdict.kind === 'noMass' ? hiddenText(verdict.hiddenCount) : '',
      hold: t('verdict.none'),
      holdLabel: t('verdict.figureHoldNone'),
      rest: t('verdict.none'),
      difference: t('verdict.none'),
      overCentre: t('verdict.none'),
    };
  }
  const used = plusMinus(verdict.usedPitchDeg);
  const still = verdict.kind === 'standsStill';
  const hold = verdict.hold && !still ? holdText(verdict.hold, units) : t('verdict.none');
  return {
    line: [sentence(verdict, used, units), holdSentence(verdict, hold, used), limits(verdict)]
      .filter((text) => text !== '')
      .join(' '),
    // What is left out comes first: it qualifies every number above.
    detail: [hiddenText(verdict.hiddenCount), missing(verdict, units)].join(' ').trim(),
    hold,
    holdLabel: t('verdict.figureHold', { used }),
    rest: still ? t('verdict.none') : restText(verdict, rests),
    difference: secondMomentText(verdict.shortOfNeutral, units),
    overCentre: overCentreFigure(verdict),
  };
}

type Judged = Exclude<Verdict, { kind: 'noParts' } | { kind: 'noMass' }>;

/** An arm that the rod does not reach, or that goes over centre nowhere, is there all the same. */
function overCentreFigure(verdict: Judged): string {
  if (verdict.overCentreDeg.length > 0) return angles(verdict.overCentreDeg);
  const armless = verdict.ends === null && verdict.kind !== 'noReach';
  return t(armless ? 'verdict.noArm' : 'verdict.none');
}

function sentence(verdict: Judged, used: string, units: DisplayUnits): string {
  switch (verdict.kind) {
    case 'stays':
      return staysText(verdict, used, units);
    case 'noLever':
      return t('verdict.noLever');
    case 'noReach':
      return t('verdict.noReach');
    case 'centres': {
      const key: MessageKey = verdict.hard ? 'verdict.centresHard' : 'verdict.centresGently';
      return Math.abs(verdict.restDeg) < TELL_REST_DEG
        ? t(key)
        : t(`${key}At`, { rest: showDegrees(verdict.restDeg) });
    }
    case 'standsStill':
      return t('verdict.standsStill');
    case 'tilted':
      return t('verdict.tilted', { rest: showDegrees(verdict.restDeg) });
    case 'driven':
      return t(verdict.sign > 0 ? 'verdict.drivenUp' : 'verdict.drivenDown', {
        end: drivenTo(verdict),
      });
    case 'flees': {
      const ends = runsTo(verdict);
      return Math.abs(verdict.fleeDeg) < TELL_REST_DEG || (verdict.flat && bothFar(verdict))
        ? t('verdict.fleesFlat', { ends })
        : t('verdict.fleesFrom', { flee: showDegrees(verdict.fleeDeg), ends });
    }
  }
}

function staysText(
  verdict: Extract<Verdict, { kind: 'stays' }>,
  used: string,
  units: DisplayUnits,
): string {
  if (verdict.by === 'balance' || !verdict.worst) return t('verdict.neutral');
  const hold = holdText(verdict.worst, units);
  if (verdict.by === 'usualDrag' || !verdict.friction) return t('verdict.stays', { hold, used });
  return t('verdict.staysByFriction', { hold, used, friction: holdText(verdict.friction, units) });
}

function restText(verdict: Judged, rests: readonly number[]): string {
  if (verdict.kind !== 'stays') return angles(rests);
  if (verdict.by === 'balance' || rests.length === 0) return t('verdict.everywhere');
  return t('verdict.weakly', { rest: angles(rests) });
}

type Flees = Extract<Verdict, { kind: 'flees' }>;
type Driven = Extract<Verdict, { kind: 'driven' }>;

/** How a run one way ends: at rest, in a jam, at a stop, or beyond the range; and where. */
interface RunEnd {
  readonly how: 'rests' | 'jams' | 'stops' | 'beyond';
  readonly text: string;
  readonly deg: number;
}

/** The first of rest angle and end of the pitch on one side. */
function runEnd(rest: number | null, end: TravelEnd | undefined, sign: 1 | -1): RunEnd {
  const closed = end && end.why !== 'open' && (rest === null || Math.abs(end.deg) < Math.abs(rest));
  if (closed) {
    return { how: end.why === 'stop' ? 'stops' : 'jams', text: showDegrees(end.deg), deg: end.deg };
  }
  if (rest !== null) return { how: 'rests', text: showDegrees(rest), deg: rest };
  const beyond = t(sign > 0 ? 'verdict.beyondAbove' : 'verdict.beyondBelow');
  return { how: 'beyond', text: beyond, deg: sign * 90 };
}

/** "runs to \u00b152\u00b0", "jams at -54\u00b0 or runs to 41\u00b0". */
function runsTo({ below, above, ends, flat }: Flees): string {
  const low = runEnd(below, ends?.low, -1);
  const high = runEnd(above, ends?.high, 1);
  const verb = ({ how, text }: RunEnd) => t(`verdict.run.${how}`, { angle: text });
  if (flat && isFar(low) && isFar(high) && (low.how === 'beyond' || high.how === 'beyond')) {
    return t('verdict.run.rests', { angle: t('verdict.aboutNinety') });
  }
  const same =
    low.how === high.how || [low.how, high.how].every((how) => how !== 'jams' && how !== 'stops');
  if (!same) return t('verdict.or', { first: verb(low), second: verb(high) });
  if (low.how === high.how && Math.abs(low.deg + high.deg) < 0.1) {
    return t(`verdict.run.${low.how}`, { angle: plusMinus(high.deg) });
  }
  const angle = t('verdict.or', { first: low.text, second: high.text });
  return t(`verdict.run.${low.how === 'beyond' ? 'rests' : low.how}`, { angle });
}

/** Within ten degrees of the range's end, or beyond it: the grip lies all but square to the disc. */
function isFar({ deg, how }: RunEnd): boolean {
  return (how === 'rests' || how === 'beyond') && Math.abs(deg) >= 80;
}

function bothFar({ below, above, ends }: Flees): boolean {
  return isFar(runEnd(below, ends?.low, -1)) && isFar(runEnd(above, ends?.high, 1));
}

function drivenTo({ sign, toDeg, ends }: Driven): string {
  const { how, text } = runEnd(toDeg, sign > 0 ? ends?.high : ends?.low, sign);
  return how === 'beyond' ? t('verdict.noRest') : t(`verdict.run.${how}`, { angle: text });
}

function holdSentence(verdict: Judged, hold: string, used: string): string {
  if (
    ['stays', 'standsStill', 'noLever', 'noReach'].includes(verdict.kind) ||
    verdict.hold === null
  )
    return '';
  return t('verdict.hold', { hold, used });
}

/** What ends the pitch: over-centre, a stop, the end of the rod's reach; where it matters. */
function limits(verdict: Judged): string {
  if (verdict.kind === 'standsStill' || verdict.kind === 'noLever' || verdict.kind === 'noReach') {
    return '';
  }
  return [overCentre(verdict), ...endTexts(verdict)].filter((text) => text !== '').join(' ');
}

function overCentre(verdict: Judged): string {
  // Beyond a stop or the end of the rod's reach the arm does not get there.
  const found = verdict.overCentreDeg.filter((angle) => !beyondEnd(verdict.ends, angle));
  if (found.length === 0) return '';
  const shown = { angles: angles(found) };
  if (verdict.overCentreInUse) return t('verdict.overCentreInUse', shown);
  // Where it runs away, the sentence has said where it jams.
  if (verdict.kind === 'stays' || runsAway(verdict)) return '';
  const near = found.some((angle) => Math.abs(angle) < TELL_OVER_CENTRE_DEG);
  return near ? t('verdict.overCentre', shown) : '';
}

function beyondEnd(ends: TravelEnds | null, angle: number): boolean {
  if (!ends) return false;
  return (
    (ends.high.why !== 'overCentre' && angle > ends.high.deg) ||
    (ends.low.why !== 'overCentre' && angle < ends.low.deg)
  );
}

function runsAway(verdict: Judged): boolean {
  return verdict.kind === 'flees' || verdict.kind === 'driven';
}

/** Stops and ends of the rod's reach that lie within the pitch in use. */
function endTexts(verdict: Judged): string[] {
  const { ends } = verdict;
  if (!ends) return [];
  return (['stop', 'unreachable'] as const).flatMap((why) => {
    const found = [ends.low, ends.high].filter(
      (end) => end.why === why && Math.abs(end.deg) < verdict.usedPitchDeg,
    );
    if (found.length === 0) return [];
    const shown = { angles: angles(found.map((end) => end.deg)) };
    return [t(why === 'stop' ? 'verdict.stopAt' : 'verdict.reachEnds', shown)];
  });
}

function missing(verdict: Judged, units: DisplayUnits): string {
  const { shortOfNeutral, product } = verdict;
  const amount = secondMomentText(Math.abs(shortOfNeutral), units);
  const first =
    Math.abs(shortOfNeutral) < TELL_DIFFERENCE
      ? t('verdict.even')
      : t(shortOfNeutral > 0 ? 'verdict.short' : 'verdict.past', { amount });
  const sentences = [first];
  if (Math.abs(product) >= TELL_PRODUCT) {
    sentences.push(t('verdict.product', { amount: secondMomentText(product, units) }));
  }
  if (verdict.offAxisMoment > TELL_OFF_AXIS) {
    const moment = show(displayMoment(verdict.offAxisMoment, units));
    sentences.push(t('verdict.offAxis', { moment }));
  }
  return sentences.join(' ');
}

function hiddenText(count: number): string {
  if (count === 0) return '';
  return count === 1 ? t('verdict.hiddenOne') : t('verdict.hiddenMany', { count });
}

/** Smaller holds are told as less than this, in the unit on screen. */
const LEAST_SHOWN = 0.01;

function holdText(hold: Hold, units: DisplayUnits): string {
  const shown =
    hold.kind === 'force' ? displayForce(hold.size, units) : displayMoment(hold.size, units);
  if (shown.value === 0) return show(shown);
  return shown.value < LEAST_SHOWN
    ? t('verdict.under', { least: show({ ...shown, value: LEAST_SHOWN }, 1) })
    : show(shown);
}

/** "±52°" for a pair about flat, else the angles joined. */
function angles(found: readonly number[]): string {
  if (found.length === 0) return t('verdict.nowhere');
  if (found.length === 2 && Math.abs(found[0] + found[1]) < 0.05) return plusMinus(found[1]);
  return found
    .map((angle) => showDegrees(angle))
    .reduce((first, second) => t('verdict.and', { first, second }));
}

function plusMinus(degrees: number): string {
  const size = Math.abs(degrees);
  return `\u00b1${fixed(size, Math.abs(size - Math.round(size)) < 0.05 ? 0 : 1)}\u00b0`;
}
