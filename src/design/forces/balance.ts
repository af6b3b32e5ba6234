import {
  balanceGrade,
  correctionMoments,
  standardGrade,
  type Unbalance,
  unbalanceOf,
} from '../../engine/balance/unbalance';
import { accumulate, createMoments, M, type Moments, SX, SY, SZ } from '../../engine/mass/moments';
import { kilogramsFromGrams, metresFromMm } from '../../engine/units';
import { HeadModel } from '../headModel';
import type { OtherGrip } from '../sections/grips';
import type { Balance, Correction, GripMass } from './balanceTypes';

/**
 * The balance of the rotor: the grip that is drawn and the others, evenly spaced, each at flat pitch. Balance is a matter
 * of the rotor plane; what a grip carries on its push rod is the same on each and left out. `otherGrips` beyond the
 * rotor's number of blades do not turn and are left out.
 */
export function balanceOf(model: HeadModel, otherGrips: readonly OtherGrip[]): Balance {
  const { rotor } = model.sections;
  const drawn = model.totals(createMoments());
  const grips = Array.from({ length: rotor.bladeCount }, (_, index) => {
    const angle = (2 * Math.PI * index) / rotor.bladeCount;
    const other = index === 0 ? undefined : otherGrips[index - 1];
    return gripMass(index, angle, other, drawn, model);
  });
  const { x, y } = settled(unbalanceOf(grips), grips);
  const unbalance = Math.hypot(x, y);
  const spin = model.rotor.angularSpeed;
  const gripsMass = grips.reduce((sum, grip) => sum + grip.mass, 0);
  const rotorMass =
    rotor.hubMassGrams === undefined ? null : gripsMass + kilogramsFromGrams(rotor.hubMassGrams);
  const grade = rotorMass && spin > 0 ? balanceGrade(unbalance, rotorMass, spin) : null;
  const angles = grips.map((grip) => grip.angle);
  const { added, left } = correctionMoments({ x, y }, angles);
  return {
    grips,
    unbalance,
    angle: Math.atan2(y, x),
    shaftForce: unbalance * spin * spin,
    rotorMass,
    grade: grade === null ? null : { value: 1000 * grade, standard: standardGrade(grade) },
    corrections: added.flatMap((moment, grip) => correctionOn(grip, moment, model)),
    left,
  };
}

/** Grips that are alike cancel but for the last digits: that is no unbalance. */
function settled({ x, y }: Unbalance, grips: readonly GripMass[]): Unbalance {
  const size = grips.reduce(
    (sum, { mass, station, ahead }) => sum + mass * Math.hypot(station, ahead),
    0,
  );
  const rounding = 1e-13 * size;
  return { x: Math.abs(x) <= rounding ? 0 : x, y: Math.abs(y) <= rounding ? 0 : y };
}

/** On the bolt's station, where weight is easily added; at the grip's own centre where nothing hinges. */
function correctionOn(grip: number, moment: number, model: HeadModel): readonly Correction[] {
  const station = addingStation(model);
  return moment > 0 && station > 0 ? [{ grip, mass: moment / station, station }] : [];
}

function addingStation(model: HeadModel): number {
  const fork = model.parts.find(({ part }) => part.socket?.name.startsWith('bolt'));
  if (fork) return fork.pose.translation[0];
  const totals = model.totals(createMoments());
  return totals[M] > 0 ? totals[SX] / totals[M] : 0;
}

function gripMass(
  index: number,
  angle: number,
  other: OtherGrip | undefined,
  drawn: Moments,
  model: HeadModel,
): GripMass {
  const { precone, torqueOffset } = model.rotor;
  const from = sourceOf(other);
  const moments = other ? otherMoments(other, model) : drawn;
  const mass = moments[M];
  const [x, y, z] =
    mass > 0 ? [moments[SX] / mass, moments[SY] / mass, moments[SZ] / mass] : [0, 0, 0];
  return {
    index,
    name: other?.name ?? '',
    mass: other?.massGrams === undefined ? mass : kilogramsFromGrams(other.massGrams),
    station:
      other?.stationMm === undefined
        ? x * Math.cos(precone) - z * Math.sin(precone)
        : metresFromMm(other.stationMm) * Math.cos(precone) - z * Math.sin(precone),
    ahead: torqueOffset + y,
    angle,
    from,
  };
}

function sourceOf(other: OtherGrip | undefined): GripMass['from'] {
  if (!other) return 'drawn';
  if (other.massGrams !== undefined || other.stationMm !== undefined) return 'weighed';
  if (other.partMassesGrams && Object.keys(other.partMassesGrams).length > 0) return 'partMasses';
  return other.parts ? 'ownParts' : 'drawn';
}

/** Moments of another grip: its own parts or the drawn ones, single parts scaled to what they weigh. */
function otherMoments(other: OtherGrip, drawn: HeadModel): Moments {
  const model = other.parts ? modelOf(other, drawn) : drawn;
  const sum = createMoments();
  for (const { part, moments_G, carriedBy } of model.parts) {
    if (part.hidden || carriedBy !== 'grip') continue;
    const weighed = other.partMassesGrams?.[part.id];
    const factor =
      weighed === undefined || !(moments_G[M] > 0) ? 1 : kilogramsFromGrams(weighed) / moments_G[M];
    accumulate(sum, moments_G, factor);
  }
  return sum;
}

function modelOf(other: OtherGrip, drawn: HeadModel): HeadModel {
  const model = new HeadModel();
  const { rotor } = drawn.sections;
  const outcome = model.load({
    rotor,
    parts: other.parts ?? [],
    materials: drawn.ownMaterials,
  });
  if (!outcome.ok) throw new Error(`modelOf(): another grip is not checked: ${outcome.error.path}`);
  return model;
}
