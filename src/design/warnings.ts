import { overCentreAngles } from '../engine/linkage/reach';
import type { MeasuredQuantity } from '../engine/mass/measured';
import { createMoments, M } from '../engine/mass/moments';
import { findValidity, type ValidityFinding } from '../engine/mass/validity';
import { degreesFromRadians, type Radians, radiansFromDegrees } from '../engine/units';
import { type BottomedNut, bottomsOut } from './bottomsOut';
import { type ShortBolt, shortBolts } from './engagement';
import type { HeadAir } from './forces/headAir';
import type { HeadForces } from './forces/headForces';
import { slipsAt } from './forces/headLag';
import { limitInUse } from './forces/headLoads';
import type { LimitInUse } from './forces/loadTypes';
import { speedRange } from './forces/speedSweep';
import { type TravelEnds, travelEnds } from './forces/travel';
import type { HeadModel } from './headModel';
import { measuredReport } from './measuredReport';
import { type Misfit, misfits } from './misfits';
import { type Materials, NO_MATERIALS } from './resolve';
import { ROTOR_SECTION } from './sections/rotor';

/** Something that a reader of the results has to know. */
export type DesignWarning =
  | { readonly code: 'noMass' }
  | { readonly code: 'notTurning' }
  | { readonly code: 'neutral' }
  | { readonly code: 'severalArms'; readonly used: string; readonly others: readonly string[] }
  /** The arm's ball lies on the feathering axis: no rod can turn the grip. */
  | { readonly code: 'ballOnAxis'; readonly arm: string }
  | { readonly code: 'overCentre'; readonly pitchesDeg: readonly number[] }
  /** Flat pitch is out of the push rod's reach. */
  | { readonly code: 'noReach' }
  | { readonly code: 'stop' | 'unreachable'; readonly pitchesDeg: readonly number[] }
  /** Air is counted: an estimate. */
  | { readonly code: 'airEstimate' }
  | { readonly code: 'airNoBlade' }
  | { readonly code: 'airNoTable' }
  /** Pitches of the table at which a station has no solution. */
  | { readonly code: 'airUnsolved'; readonly count: number }
  /** Friction is counted, but there is neither a table of drag nor a bearing. */
  | { readonly code: 'frictionUnknown' }
  | { readonly code: 'hiddenParts'; readonly names: readonly string[] }
  /** A part was measured, and the model as drawn is farther off than both are uncertain. SI, as in `measuredReport`. */
  | {
      readonly code: 'measuredDisagrees';
      readonly part: string;
      readonly what: MeasuredQuantity;
      readonly modelled: number;
      readonly measured: number;
      readonly expected: number;
    }
  /** A part enters a keep-out, or comes nearer than the design wants. SI, degrees. */
  | {
      readonly code: 'overlap' | 'tooClose';
      readonly part: string;
      readonly keepOut: string;
      readonly gap: number;
      readonly wanted: number;
      readonly pitchDeg: number;
    }
  /** Something carries more than it may within the pitch in use, at the speed that loads are judged at. */
  | {
      readonly code: 'beyondLimit';
      readonly part: string;
      readonly what: LimitInUse['what'];
      readonly use: number;
      readonly limitRpm: number;
      readonly judgedRpm: number;
      readonly pitchDeg: number;
    }
  /** The clamp force given does not hold the blade as it is drawn, though it counts as clamped. */
  | { readonly code: 'bladeSlips'; readonly part: string; readonly pitchDeg: number }
  | ({ readonly code: 'misfit' } & Misfit)
  | ({ readonly code: 'bottomsOut' } & BottomedNut)
  | ({ readonly code: 'shortBolt' } & ShortBolt)
  | ({ readonly code: 'implausible'; readonly part: string | null } & {
      readonly finding: ValidityFinding;
    });

/**
 * Everything worth a warning about a head and its results in [from, to]. `materials` are the design's own, for the
 * ranges of their densities.
 */
export function findWarnings(
  forces: HeadForces,
  from: Radians,
  to: Radians,
  materials: Materials = NO_MATERIALS,
): readonly DesignWarning[] {
  const { model } = forces;
  const totals = model.totals(createMoments());
  const warnings: DesignWarning[] = [];
  if (totals[M] === 0) warnings.push({ code: 'noMass' });
  else if (model.rotor.angularSpeed === 0) warnings.push({ code: 'notTurning' });
  else if (forces.equilibria(from, to).kind === 'neutral') warnings.push({ code: 'neutral' });
  warnings.push(...armWarnings(forces, from, to));
  warnings.push(...airWarnings(forces.air));
  if (forces.friction && !forces.friction.known) warnings.push({ code: 'frictionUnknown' });
  const hidden = model.parts.filter(({ part }) => part.hidden).map(({ part }) => nameOf(part));
  if (hidden.length > 0) warnings.push({ code: 'hiddenParts', names: hidden });
  for (const misfit of misfits(model)) warnings.push({ code: 'misfit', ...misfit });
  for (const nut of bottomsOut(model)) warnings.push({ code: 'bottomsOut', ...nut });
  for (const bolt of shortBolts(model)) warnings.push({ code: 'shortBolt', ...bolt });
  warnings.push(...limitWarnings(forces), ...clampWarnings(forces));
  warnings.push(...clearanceWarnings(forces));
  warnings.push(...measuredWarnings(model, materials));
  if (totals[M] !== 0) {
    for (const finding of findValidity(totals)) {
      warnings.push({ code: 'implausible', part: null, finding });
    }
  }
  for (const { part, moments_G } of model.parts) {
    if (part.hidden) continue;
    for (const finding of findValidity(moments_G)) {
      const real = finding.kind !== 'massNotPositive' || finding.mass !== 0;
      if (real && !isSize(finding)) {
        warnings.push({ code: 'implausible', part: nameOf(part), finding });
      }
    }
  }
  return warnings;
}

/** Size is judged for the head as a whole; a part may well weigh less than a milligram. */
function isSize(finding: ValidityFinding): boolean {
  return finding.kind === 'implausibleMass' || finding.kind === 'implausibleReach';
}

function limitWarnings(forces: HeadForces): DesignWarning[] {
  const { model } = forces;
  const judgedRpm = speedRange(model.sections.rotor).overspeedRpm;
  const limit = limitInUse(forces, judgedRpm);
  if (!limit || !(limit.use > 1)) return [];
  const { id, what, use, limitRpm, pitchDeg } = limit;
  const part = nameOf(model.placed(id)?.part ?? { id, name: '' });
  return [{ code: 'beyondLimit', part, what, use, limitRpm, judgedRpm, pitchDeg }];
}

function clampWarnings({ model, lag }: HeadForces): DesignWarning[] {
  const { bladeBolt, rotor } = model.sections;
  const used = rotor.usedPitchDeg ?? ROTOR_SECTION.usedPitchDeg.default;
  const pitch = (bladeBolt?.clampForceN ?? 0) > 0 ? slipsAt(lag, radiansFromDegrees(used)) : null;
  const [blade] = lag?.parts ?? [];
  if (pitch === null || !blade) return [];
  return [{ code: 'bladeSlips', part: nameOf(blade.part), pitchDeg: degreesFromRadians(pitch) }];
}

function clearanceWarnings({ model, clearance }: HeadForces): DesignWarning[] {
  const { pairs, wanted } = clearance;
  const named = (id: string) => nameOf(model.placed(id)?.part ?? { id, name: '' });
  return pairs
    .filter((pair) => pair.meeting !== 'clear' || pair.gap < wanted)
    .map(({ part, keepOut, gap, meeting, pitchDeg }) => ({
      code: meeting === 'clear' ? 'tooClose' : 'overlap',
      part: named(part),
      keepOut: named(keepOut),
      gap,
      wanted,
      pitchDeg,
    }));
}

function armWarnings(forces: HeadForces, from: Radians, to: Radians): DesignWarning[] {
  const { model, linkage: found } = forces;
  const [used, ...others] = model.armParts;
  if (!found || !used) return [];
  const { linkage } = found;
  const warnings: DesignWarning[] = [];
  if (others.length > 0) {
    const names = others.map(({ part }) => nameOf(part));
    warnings.push({ code: 'severalArms', used: nameOf(used.part), others: names });
  }
  if (linkage.ball_G[1] === 0 && linkage.ball_G[2] === 0) {
    warnings.push({ code: 'ballOnAxis', arm: nameOf(used.part) });
  }
  const pitchesDeg = overCentreAngles(linkage, model.rotor, from, to).map(degreesFromRadians);
  if (pitchesDeg.length > 0) warnings.push({ code: 'overCentre', pitchesDeg });
  warnings.push(...endWarnings(travelEnds(found, model, from, to)));
  return warnings;
}

function endWarnings(ends: TravelEnds | null): DesignWarning[] {
  if (!ends) return [{ code: 'noReach' }];
  const found = [ends.low, ends.high];
  return (['stop', 'unreachable'] as const).flatMap((why) => {
    const pitchesDeg = found.filter((end) => end.why === why).map((end) => end.deg);
    return pitchesDeg.length > 0 ? [{ code: why, pitchesDeg }] : [];
  });
}

/** What has to be known of an estimate of the air. */
function airWarnings(air: HeadAir): DesignWarning[] {
  switch (air.kind) {
    case 'off':
    case 'notTurning':
      return [];
    case 'noBlade':
      return [{ code: 'airNoBlade' }];
    case 'badTable':
      return [{ code: 'airNoTable' }];
    default:
      return [
        { code: 'airEstimate' },
        ...(air.table.gaps > 0 ? [{ code: 'airUnsolved', count: air.table.gaps } as const] : []),
      ];
  }
}

function measuredWarnings(model: HeadModel, materials: Materials): DesignWarning[] {
  return model.parts.flatMap(({ part, values }) => {
    if (part.hidden || !part.measured) return [];
    const { quantities = [] } = measuredReport(part, values, materials) ?? {};
    return quantities.flatMap(({ comparison }): DesignWarning[] => {
      if (!comparison?.disagrees) return [];
      const { what, modelled, measured, expected } = comparison;
      return [
        { code: 'measuredDisagrees', part: nameOf(part), what, modelled, measured, expected },
      ];
    });
  });
}

function nameOf(part: { readonly id: string; readonly name: string }): string {
  return part.name === '' ? part.id : part.name;
}
