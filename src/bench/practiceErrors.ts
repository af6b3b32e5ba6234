import type { Design, Part } from '../design/design';
import type { DesignFault } from '../design/fault';
import { HeadModel } from '../design/headModel';
import { withMeasured } from '../design/writeValue';
import { drawsOf } from '../engine/identify/virtualBench';
import { M } from '../engine/mass/moments';
import { type Result, succeed } from '../engine/result';
import { gramsFromKilograms } from '../engine/units';
import { digits } from './digits';
import { guessNewParts } from './ordinaryHead';
import { USUAL_SHARED } from './sharedErrors';

/** What is hidden in a virtual head and its gauge; the truth that is revealed. */
export interface HiddenErrors {
  /** By part: how much heavier it is than the design says, as a share (0.1: a tenth). */
  readonly massShares: Readonly<Record<string, number>>;
  /** By part: how much farther along its seat it sits, mm. */
  readonly seatShiftsMm: Readonly<Record<string, number>>;
  /** Friction of bearings and drag at rest, times the design's. */
  readonly frictionFactor: number;
  readonly dragFactor: number;
  /** Zero of the gauge, N, and standard deviations of a reading (N) and of a pitch setting (deg). */
  readonly zeroN: number;
  readonly noiseN: number;
  readonly pitchSigmaDeg: number;
  /** What all runs have alike, left out: nothing. The gauge and the tachometer show this share too much. */
  readonly gainShare?: number;
  readonly speedShare?: number;
  /** The arm or the linkage is this share shorter than the design says: forces are that much larger. */
  readonly leverShare?: number;
  /** The blade stands this much higher than the scale says. */
  readonly pitchZeroDeg?: number;
}

/** The design as it truly is: weighed masses and seats with their errors. The fault of an error that a rule forbids. */
export function withErrors(
  design: Design,
  { massShares, seatShiftsMm }: HiddenErrors,
): Result<Design, DesignFault> {
  const model = new HeadModel();
  const loaded = model.load(design);
  if (!loaded.ok) return loaded;
  const parts = design.parts.map((part): Part => {
    const share = massShares[part.id];
    const shift = seatShiftsMm[part.id];
    let next = part;
    if (shift && part.socket) {
      const offsetMm = digits((part.socket.offsetMm ?? 0) + shift);
      next = { ...next, socket: { ...part.socket, offsetMm } } as Part;
    }
    if (share) {
      const mass = gramsFromKilograms(model.placed(part.id)?.moments_P[M] ?? 0);
      const massGrams = digits(mass * (1 + share));
      next = withMeasured(next, { ...next.measured, massGrams });
    }
    return next;
  });
  const truth = { ...design, parts };
  const sound = new HeadModel().load(truth);
  return sound.ok ? succeed(truth) : sound;
}

/** Spread of the drawn errors: what a scale, a turned part and a bench of this kind leave (common practice). */
const MASS_SPREAD = 0.05;
const SEAT_SPREAD_MM = 0.15;

/**
 * Errors drawn by a seed: the heaviest part's mass and that of each new part (a standard deviation of 5 %), where a new part
 * sits (0.15 mm), friction from half to twice, a zero within 0.2 N either way, noise from 0.02 to 0.08 N, pitch settings to
 * 0.15 degrees, and what all runs have alike as far as is usual (`USUAL_SHARED`). A seat error that the head does not take is
 * left out.
 */
export function drawErrors(design: Design, seed: number): HiddenErrors {
  const { unit, normal: deviate } = drawsOf(seed, 0x68696464);
  const normal = (sigma: number) => digits4(sigma * deviate());
  const newParts = guessNewParts(design);
  const heaviest = heaviestPart(design);
  const massShares = Object.fromEntries(
    [...new Set([...(heaviest === null ? [] : [heaviest]), ...newParts])].map((id) => [
      id,
      normal(MASS_SPREAD),
    ]),
  );
  const seats = Object.fromEntries(newParts.map((id) => [id, normal(SEAT_SPREAD_MM)]));
  const errors: HiddenErrors = {
    massShares,
    seatShiftsMm: seats,
    frictionFactor: digits4(2 ** (2 * unit() - 1)),
    dragFactor: digits4(2 ** (2 * unit() - 1)),
    zeroN: digits4(0.4 * unit() - 0.2),
    noiseN: digits4(0.02 + 0.06 * unit()),
    pitchSigmaDeg: digits4(0.05 + 0.1 * unit()),
    gainShare: normal(USUAL_SHARED.gainPercent / 100),
    leverShare: normal(USUAL_SHARED.leverPercent / 100),
    speedShare: normal(USUAL_SHARED.speedPercent / 100),
    pitchZeroDeg: normal(USUAL_SHARED.pitchZeroDeg),
  };
  return withErrors(design, errors).ok ? errors : { ...errors, seatShiftsMm: {} };
}

function heaviestPart(design: Design): string | null {
  const model = new HeadModel();
  if (!model.load(design).ok) return null;
  const turning = model.parts.filter(({ part, carriedBy }) => !part.hidden && carriedBy === 'grip');
  const [first] = turning.toSorted((a, b) => b.moments_P[M] - a.moments_P[M]);
  return first?.part.id ?? null;
}

function digits4(value: number): number {
  return Number(value.toPrecision(4));
}
